package setwright.fleet.ledger;

import java.util.Arrays;

/** What came of a recording. */
public enum Status {
    JUDGED("judged"),
    NOT_ENOUGH_EVIDENCE("not enough evidence"),
    FAILED("failed");

    private final String words;

    Status(String words) {
        this.words = words;
    }

    /** Returns the words of the table. */
    public String words() {
        return words;
    }

    static Status of(String words) {
        return Arrays.stream(values())
                .filter(status -> status.words.equals(words))
                .findFirst()
                .orElse(FAILED);
    }
}
