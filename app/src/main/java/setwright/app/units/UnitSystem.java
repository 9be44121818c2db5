package setwright.app.units;

/** The units that speeds and distances are shown in. Angles are in deg and times in s in both. */
public enum UnitSystem {
    METRIC("km/h", 3.6, "m", 1.0),
    /** 1 mile is 1609.344 m, 1 ft is 0.3048 m (international yard and pound agreement, 1959). */
    IMPERIAL("mph", 3600.0 / 1609.344, "ft", 1.0 / 0.3048);

    private final String speedUnit;
    private final double perMps;
    private final String distanceUnit;
    private final double perMetre;

    UnitSystem(String speedUnit, double perMps, String distanceUnit, double perMetre) {
        this.speedUnit = speedUnit;
        this.perMps = perMps;
        this.distanceUnit = distanceUnit;
        this.perMetre = perMetre;
    }

    /** Returns the unit of speed as shown. */
    public String speedUnit() {
        return speedUnit;
    }

    /** Returns a speed given in m/s in the unit shown. */
    public double speed(double mps) {
        return mps * perMps;
    }

    /** Returns the unit of distance as shown. */
    public String distanceUnit() {
        return distanceUnit;
    }

    /** Returns a distance given in m in the unit shown. */
    public double distance(double metres) {
        return metres * perMetre;
    }
}
