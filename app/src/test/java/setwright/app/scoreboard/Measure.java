package setwright.app.scoreboard;

/** What is counted over all cases. */
enum Measure {
    LAPS("laps of the right kind"),
    CHANNELS("columns mapped rightly"),
    STEERING_ZERO("steering zeros found"),
    YAW_BIAS("yaw rate biases found"),
    CORNERS("corners in their place"),
    EXTRA_CORNERS("corners that are none", Aim.FEW),
    DRIVING("driving gate right"),
    VERDICT("verdicts right"),
    TOP_PROBLEM("top problems right"),
    BALANCE("balance right"),
    PHASE("phase right"),
    SPEED("speed class right"),
    TRIGGER("trigger right"),
    CORNERS_NAMED("affected corners named"),
    CORNERS_RIGHT("named corners affected", Aim.LARGE_SHARE),
    FALSE_PROBLEMS("problems reported on a balanced car", Aim.FEW),
    FALSE_CHANGES("setup changes called for in vain", Aim.FEW),
    CHANGED_BALANCE("balance changes of the predicted sign"),
    CHANGED_BALANCE_SURE("those whose sign was claimed", Aim.LARGE_SHARE),
    CHANGED_BALANCE_INSIDE("true balance changes within the interval for eight in ten"),
    CHANGED_TIME("lap time changes of the predicted sign"),
    CHANGED_WAY("items turned the quicker way"),
    CHANGED_TIME_SURE("those whose lap time sign was claimed", Aim.LARGE_SHARE),
    CHANGED_TIME_INSIDE("true lap time changes within the interval for eight in ten");

    /** What is better. */
    enum Aim {
        MANY,
        FEW,
        /** For counts out of a number that the answer itself decides. */
        LARGE_SHARE
    }

    private final String words;
    private final Aim aim;

    Measure(String words) {
        this(words, Aim.MANY);
    }

    Measure(String words, Aim aim) {
        this.words = words;
        this.aim = aim;
    }

    String words() {
        return words;
    }

    Aim aim() {
        return aim;
    }

    /** Tells whether a result is worse than an earlier one. */
    boolean worse(Count now, Count before) {
        return switch (aim) {
            case MANY -> now.hit() < before.hit();
            case FEW -> now.hit() > before.hit();
            case LARGE_SHARE -> now.share() < before.share() - 1.0e-9;
        };
    }
}
