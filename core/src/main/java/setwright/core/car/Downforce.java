package setwright.core.car;

/** How much of the vertical load the air adds, in the words of a user who has no figures. */
public enum Downforce {
    NONE,
    MODERATE,
    STRONG
}
