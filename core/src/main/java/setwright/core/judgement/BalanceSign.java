package setwright.core.judgement;

/** Which axle gives up first. */
public enum BalanceSign {
    UNDERSTEER("understeer"),
    OVERSTEER("oversteer");

    private final String words;

    BalanceSign(String words) {
        this.words = words;
    }

    /** Returns the word a person reads; also the value in JSON. */
    public String words() {
        return words;
    }

    /** Returns the sign of its balance angle: 1 for understeer, -1 for oversteer. */
    public double direction() {
        return this == UNDERSTEER ? 1.0 : -1.0;
    }
}
