package setwright.fleet.tree;

import java.io.Serializable;

/**
 * What folders say of a recording; an empty text where they do not.
 *
 * @param circuit  where it was made
 * @param driver   who drove
 * @param car      what he drove
 * @param date     when; texts that sort as the days do, such as 2031-05-09, put recordings in order
 * @param session  which part of the day, likewise
 */
public record Labels(String circuit, String driver, String car, String date, String session) implements Serializable {
    /** Where folders say nothing. */
    public static final Labels NONE = new Labels("", "", "", "", "");

    /** Returns these with one of them set; a key that is none of them changes nothing. */
    Labels with(String key, String value) {
        return switch (key) {
            case "circuit" -> new Labels(value, driver, car, date, session);
            case "driver" -> new Labels(circuit, value, car, date, session);
            case "car" -> new Labels(circuit, driver, value, date, session);
            case "date" -> new Labels(circuit, driver, car, value, session);
            case "session" -> new Labels(circuit, driver, car, date, value);
            default -> this;
        };
    }
}
