package setwright.app.story;

import setwright.logbook.row.TriedEffectRow;

/** What a figure of a tried change is of, and in which unit it is shown. */
public final class TriedWords {
    private TriedWords() {}

    /** Returns the figure's name with its unit. */
    public static String place(TriedEffectRow effect) {
        if (effect.phase().isEmpty()) {
            return "lap time, s";
        }
        return effect.phase() + (effect.speed().isEmpty() ? "" : ", " + effect.speed() + " speed") + ", deg";
    }

    /** Returns what the kept figure is multiplied by: balance is kept in rad and shown in deg. */
    public static double scale(TriedEffectRow effect) {
        return effect.unit().equals("rad") ? Math.toDegrees(1.0) : 1.0;
    }
}
