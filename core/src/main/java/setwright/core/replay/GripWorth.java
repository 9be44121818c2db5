package setwright.core.replay;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import setwright.core.car.CarSheet;
import setwright.core.car.model.CarAssembler;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.CarPrior;
import setwright.core.circuit.Corner;
import setwright.core.circuit.Stint;
import setwright.core.handling.Phase;
import setwright.core.numerics.Robust;

/*
 * Design note. Time is followed as for a change of setup (TimeGain): on the driver's own line, with the accelerations that he showed,
 * out of the corner up to his next brake. Only mass, resistance and engine of the car matter here, so that the car as its sheet
 * and kind say will do; nothing is fitted.
 */

/** What more grip in one phase of some corners would be worth on the laps of a stint. */
public final class GripWorth {
    /** More laps tell nothing new: the price of a tenth of grip hardly differs from lap to lap. */
    private static final int MOST_LAPS = 5;

    private final List<DrivenLap> laps;
    private final List<Corner> corners;
    private final List<TimeGain> gains;
    private final CarModel car;

    private GripWorth(List<DrivenLap> laps, List<Corner> corners, CarModel car) {
        this.laps = laps;
        this.corners = corners;
        this.gains = laps.stream().map(lap -> new TimeGain(lap, car)).toList();
        this.car = car;
    }

    /**
     * Prepares the laps of a stint.
     *
     * @param stint  laps on the circuit
     * @param all    its laps that can be replayed
     * @param sheet  of the car as driven
     */
    public static GripWorth of(Stint stint, List<DrivenLap> all, CarSheet sheet) {
        List<DrivenLap> some = new ArrayList<>();
        int step = Math.max(1, all.size() / MOST_LAPS);
        for (int i = 0; i < all.size() && some.size() < MOST_LAPS; i += step) {
            some.add(all.get(i));
        }
        CarModel car = new CarAssembler(sheet).build(CarPrior.of(sheet).middle());
        return new GripWorth(some, stint.circuit().corners(), car);
    }

    /**
     * Returns the time that a lap would be quicker with more grip in a phase, what is carried on to the next corner included.
     *
     * @param phase    in which all accelerations may grow
     * @param numbers  of the corners where they may
     * @param share    by which they may, as a share, &gt;= 0
     * @return s, &gt;= 0, median over laps; NaN when no lap is free of gaps
     */
    public double perLapS(Phase phase, Set<Integer> numbers, double share) {
        double[] seconds = new double[laps.size()];
        for (int i = 0; i < seconds.length; i++) {
            DrivenLap lap = laps.get(i);
            double[] scale = new double[lap.size()];
            for (int k = 0; k < scale.length; k++) {
                boolean there = lap.phase()[k] == EffectLayout.index(phase)
                        && numbers.contains(corners.get(lap.corner()[k]).number());
                scale[k] = there ? Math.log1p(share) : 0.0;
            }
            gains.get(i).faster(scale, car);
            seconds[i] = Math.max(0.0, -Arrays.stream(gains.get(i).time()).sum());
        }
        return Robust.median(seconds);
    }
}
