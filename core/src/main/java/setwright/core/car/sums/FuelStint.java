package setwright.core.car.sums;

/**
 * Fuel for a stint, in whichever unit the use per lap is given: litres or kg.
 *
 * <p><b>Source:</b> use per lap times laps, and a reserve that stays in the tank (common practice).
 *
 * @param perLap   used per lap, &gt; 0
 * @param reserve  left at the end, &gt;= 0
 */
public record FuelStint(double perLap, double reserve) {
    public FuelStint {
        Require.positive("fuel per lap", perLap, "");
        Require.notNegative("reserve", reserve, "");
    }

    /** Returns the fuel at the start for so many laps. */
    public double startFor(double laps) {
        return perLap * laps + reserve;
    }

    /** Returns how many whole laps a filling allows, the reserve kept. */
    public int lapsFrom(double start) {
        double roundOff = 1.0e-9;
        return (int) Math.max(0.0, Math.floor((start - reserve) / perLap + roundOff));
    }

    /** Returns how many laps are begun in a time, the one under way when it is over counted: races end at the line. */
    public static int lapsIn(double seconds, double lapTimeS) {
        double roundOff = 1.0e-9;
        return (int) Math.ceil(seconds / lapTimeS - roundOff);
    }
}
