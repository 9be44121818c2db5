package setwright.core.car.drive;

import java.util.Arrays;

/** Engine, gears and final drive. */
public final class Powertrain {
    private final double[] engineRadPerS;
    private final double[] torqueNm;
    private final double[] ratios;
    private final double finalDrive;
    private final double tyreRadiusM;
    private final double limitRadPerS;
    private final double shiftRadPerS;
    private final double efficiency;

    /**
     * Makes a power train.
     *
     * @param engineRadPerS  engine speeds of the torque curve, rising, rad/s
     * @param torqueNm       torque at each, N m
     * @param ratios         of the gears, first gear first, falling; at least one
     * @param finalDrive     ratio, &gt; 0
     * @param tyreRadiusM    rolling radius, m
     * @param limitRadPerS   engine speed that the limiter allows, rad/s
     * @param shiftRadPerS   engine speed at which the driver changes up, rad/s
     * @param efficiency     share of the power that reaches the wheels, 0..1
     */
    public Powertrain(
            double[] engineRadPerS,
            double[] torqueNm,
            double[] ratios,
            double finalDrive,
            double tyreRadiusM,
            double limitRadPerS,
            double shiftRadPerS,
            double efficiency) {
        if (engineRadPerS.length != torqueNm.length || engineRadPerS.length < 2 || ratios.length == 0) {
            throw new IllegalArgumentException("a torque curve needs two points or more, and a car one gear");
        }
        this.engineRadPerS = engineRadPerS.clone();
        this.torqueNm = torqueNm.clone();
        this.ratios = ratios.clone();
        this.finalDrive = finalDrive;
        this.tyreRadiusM = tyreRadiusM;
        this.limitRadPerS = limitRadPerS;
        this.shiftRadPerS = shiftRadPerS;
        this.efficiency = efficiency;
    }

    /** Returns the torque at full throttle, N m; 0 beyond the limiter. */
    public double torqueNm(double engine) {
        if (engine > limitRadPerS) {
            return 0.0;
        }
        int at = Arrays.binarySearch(engineRadPerS, engine);
        int right = Math.max(1, Math.min(at >= 0 ? at : -at - 1, engineRadPerS.length - 1));
        double span = engineRadPerS[right] - engineRadPerS[right - 1];
        double share = Math.max(0.0, Math.min(1.0, (engine - engineRadPerS[right - 1]) / span));
        return torqueNm[right - 1] + share * (torqueNm[right] - torqueNm[right - 1]);
    }

    /** Returns the engine speed in a gear, counted from 0, at a road speed, rad/s. */
    public double engineRadPerS(int gear, double speedMps) {
        return speedMps / tyreRadiusM * finalDrive * ratios[gear];
    }

    /** Returns the road speed at the limiter in a gear counted from 0, m/s. */
    public double limitMps(int gear) {
        return limitRadPerS * tyreRadiusM / (finalDrive * ratios[gear]);
    }

    public int gears() {
        return ratios.length;
    }

    /** Returns the force at the driven wheels at full throttle in the gear that the driver would be in, N; 0 beyond the limiter. */
    public double driveN(double speedMps) {
        int gear = drivingGear(speedMps);
        return torqueNm(engineRadPerS(gear, speedMps)) * leverage(gear) * efficiency;
    }

    /** Returns the gear, counted from 0, of a driver who accelerates: the lowest below the engine speed at which he changes up. */
    public int drivingGear(double speedMps) {
        return gearBelow(shiftRadPerS, speedMps);
    }

    /**
     * Returns the gear, counted from 0, in which a driver brakes and turns in: the lowest that stays below the limiter.
     */
    public int lowestGear(double speedMps) {
        return gearBelow(limitRadPerS, speedMps);
    }

    private int gearBelow(double engine, double speedMps) {
        double shaft = speedMps / tyreRadiusM * finalDrive; // once: asked at every moment of every replayed lap
        for (int gear = 0; gear < ratios.length; gear++) {
            if (shaft * ratios[gear] < engine) {
                return gear;
            }
        }
        return ratios.length - 1;
    }

    /** Returns the force over torque of the engine in a gear, 1/m. */
    public double leverage(int gear) {
        return finalDrive * ratios[gear] / tyreRadiusM;
    }

    /** Tells whether another gives the same force at every speed. */
    public boolean actsLike(Powertrain other) {
        return finalDrive == other.finalDrive
                && tyreRadiusM == other.tyreRadiusM
                && limitRadPerS == other.limitRadPerS
                && shiftRadPerS == other.shiftRadPerS
                && efficiency == other.efficiency
                && Arrays.equals(ratios, other.ratios)
                && Arrays.equals(engineRadPerS, other.engineRadPerS)
                && Arrays.equals(torqueNm, other.torqueNm);
    }

    /** Returns the share of the power that reaches the wheels, 0..1. */
    public double efficiency() {
        return efficiency;
    }

    public double tyreRadiusM() {
        return tyreRadiusM;
    }

    /** Returns a torque curve of the usual shape, relative to its peak: highest at two thirds of the limit. */
    public static double usualTorqueShape(double engineOverLimit) {
        double away = engineOverLimit - 0.68;
        return Math.max(1.0 - 1.8 * away * away, 0.1);
    }
}
