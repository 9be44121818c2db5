package setwright.core.pooling;

import java.util.List;
import setwright.core.handling.Phase;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.SpeedRange;

/**
 * One problem, held against all drivers.
 *
 * @param phase       where in the corner
 * @param speed       in which corners
 * @param balance     which axle gives up first
 * @param level       a level of balance rather than an axle that lets go
 * @param belongsTo   whose it is
 * @param driver      the one whose it is; empty unless it is one driver's
 * @param common      probability that it is there whoever drives, 0..1
 * @param spreadRad   how far drivers differ in it, rad; NaN for an axle that lets go
 * @param drivers     what each has of it, in the order of their stints
 * @param why         one sentence with the figures
 */
public record PooledFinding(
        Phase phase,
        SpeedRange speed,
        BalanceSign balance,
        boolean level,
        Belongs belongsTo,
        String driver,
        double common,
        double spreadRad,
        List<ByDriver> drivers,
        String why) {
    public PooledFinding {
        drivers = List.copyOf(drivers);
    }

    /** Whose a problem is. */
    public enum Belongs {
        CAR("the car"),
        ONE_DRIVER("one driver"),
        EVERY_DRIVER("every driver"),
        UNDECIDED("undecided");

        private final String words;

        Belongs(String words) {
            this.words = words;
        }

        /** Returns the words a person reads; also the value in JSON. */
        public String words() {
            return words;
        }
    }

    /**
     * One driver's part.
     *
     * @param driver        his name
     * @param sizeRad       level of balance in the problem's direction, rad, drawn toward the other drivers'; NaN for slides
     * @param deviationRad  its standard deviation among drivers, rad; NaN likewise
     * @param seen          laps on which he has it
     * @param of            laps
     * @param alone         probability that he has it and the others have not, 0..1
     */
    public record ByDriver(String driver, double sizeRad, double deviationRad, int seen, int of, double alone) {}
}
