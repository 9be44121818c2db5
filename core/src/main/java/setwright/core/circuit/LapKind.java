package setwright.core.circuit;

/** What a lap is good for. Only {@link #GOOD} laps are judged; the others are put aside with the reason. */
public enum LapKind {
    GOOD("good lap"),
    OUT("out lap"),
    IN("in lap"),
    /** The recording begins or ends inside it. */
    PARTIAL("not a whole lap"),
    /** Slower as a whole than the driver's own laps: traffic, cooling, fuel saving. */
    SLOW("slow lap"),
    /** One place where time was lost that no other lap loses: a spin, a run wide, a missed braking point. */
    MISTAKE("mistake"),
    /** Left the circuit. */
    OFF_TRACK("off the track"),
    /** Too little data in it to judge. */
    GAPS("gaps in the data");

    private final String words;

    LapKind(String words) {
        this.words = words;
    }

    /** Returns the words a person reads. */
    public String words() {
        return words;
    }
}
