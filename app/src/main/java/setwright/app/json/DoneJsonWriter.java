package setwright.app.json;

/** Writes what was done to a stint or a trial of the logbook as JSON of version 1: docs/amend.schema.json, docs/trial-drop.schema.json. */
public final class DoneJsonWriter {
    private static final int VERSION = 1;

    private DoneJsonWriter() {}

    record Stint(int version, long stint, String words) {}

    record Trial(int version, long trial, String change, String words) {}

    /** Returns the JSON text of a stint that was corrected, ending with a line break. */
    public static String stint(long stint, String words) {
        return Numbers.text(new Stint(VERSION, stint, words));
    }

    /** Returns the JSON text of a trial that was ended, ending with a line break. */
    public static String trial(long trial, String change, String words) {
        return Numbers.text(new Trial(VERSION, trial, change, words));
    }
}
