package setwright.core.judgement;

/** Which axle gives up first. */
public enum BalanceSign {
    UNDERSTEER("understeer"),
    OVERSTEER("oversteer");

    private final String words;

    BalanceSign(String words) {
        this.words = words;
    }

    /** Returns 1 for understeer, -1 for oversteer: the sign of the balance angle. */
    double direction() {
        return this == UNDERSTEER ? 1.0 : -1.0;
    }

    /** Returns the word a person reads; also the value in JSON. */
    public String words() {
        return words;
    }
}
