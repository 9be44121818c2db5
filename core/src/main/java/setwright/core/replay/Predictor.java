package setwright.core.replay;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.car.model.CarAssembler;
import setwright.core.car.model.CarBelief;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.Moment;
import setwright.core.circuit.Corner;
import setwright.core.circuit.NotEnoughLaps;
import setwright.core.circuit.Stint;
import setwright.core.handling.CornerPass;
import setwright.core.handling.HandlingTrace;

/*
 * Design note. Uncertainty has two sources: the car (its parameters are drawn from what is believed after the laps) and the
 * driving (no two laps ask the same of it). Each draw takes one car and one lap, the laps in turn, so that both are in the
 * interval at the price of one: 200 draws over 10 laps replay each lap with 20 cars.
 */

/** Predicts what changes of setup would have done on the laps of a stint. */
public final class Predictor {
    private static final int DRAWS = 200;
    private static final long SEED = 20_261_125L;

    private final CarSheet sheet;
    private final CarBelief belief;
    private final List<DrivenLap> laps;
    private final List<Corner> corners;
    private final EffectLayout layout;
    private final double lengthM;
    private final double leastLateral;
    private final List<DrivenDraw> ready;

    private Predictor(
            CarSheet sheet, CarBelief belief, List<DrivenLap> laps, Stint stint, EffectLayout layout, double least) {
        this.ready = List.of();
        this.sheet = sheet;
        this.belief = belief;
        this.laps = laps;
        this.corners = stint.circuit().corners();
        this.layout = layout;
        this.lengthM = stint.circuit().line().lengthM();
        this.leastLateral = least;
    }

    /**
     * Prepares the laps of a stint.
     *
     * @param stint   laps on the circuit
     * @param trace   of the same stint
     * @param passes  of the same stint
     * @param sheet   of the car as driven
     * @param belief  what is known of the car's parameters
     * @throws NotEnoughLaps when no good lap is free of gaps
     */
    public static Predictor of(
            Stint stint, HandlingTrace trace, List<CornerPass> passes, CarSheet sheet, CarBelief belief) {
        return of(stint, trace, passes, DrivenLap.of(stint, trace, passes), sheet, belief);
    }

    /**
     * The same where the laps that can be replayed are known.
     *
     * @param laps  as {@link DrivenLap#of} gives them
     * @throws NotEnoughLaps when there is none
     */
    public static Predictor of(
            Stint stint,
            HandlingTrace trace,
            List<CornerPass> passes,
            List<DrivenLap> laps,
            CarSheet sheet,
            CarBelief belief) {
        if (laps.isEmpty()) {
            throw new NotEnoughLaps("no good lap is free of gaps, so that none can be replayed");
        }
        return new Predictor(sheet, belief, laps, stint, EffectLayout.of(stint, passes), DrivenLap.leastLateral(trace));
    }

    private Predictor(Predictor plain, List<DrivenDraw> ready) {
        this.sheet = plain.sheet;
        this.belief = plain.belief;
        this.laps = plain.laps;
        this.corners = plain.corners;
        this.layout = plain.layout;
        this.lengthM = plain.lengthM;
        this.leastLateral = plain.leastLateral;
        this.ready = ready;
    }

    /**
     * Returns one that has done beforehand what does not depend on the change: the same answers, several times sooner, at the price of
     * memory (some tens of megabytes). It is to be asked by one thread at a time.
     */
    public Predictor ready() {
        double[][] cars = belief.draw(DRAWS, SEED);
        CarAssembler assembler = new CarAssembler(sheet);
        return new Predictor(
                this,
                IntStream.range(0, DRAWS)
                        .parallel()
                        .mapToObj(number -> drawn(number, DRAWS, cars[number], assembler))
                        .toList());
    }

    /**
     * Predicts changes, each by itself.
     *
     * @param candidates  each the items that are turned together
     * @return one prediction for each, in the same order
     */
    public List<Prediction> predict(List<List<SetupChange>> candidates) {
        return predict(candidates, DRAWS);
    }

    /**
     * Predicts changes with a number of draws of choice: fewer are quicker and leave the intervals rougher.
     *
     * @param candidates  each the items that are turned together
     * @param draws       &gt;= 1
     * @return one prediction for each, in the same order
     */
    public List<Prediction> predict(List<List<SetupChange>> candidates, int draws) {
        double[][] cars = draws <= ready.size() ? new double[0][] : belief.draw(draws, SEED);
        List<EffectSamples> samples = new ArrayList<>();
        candidates.forEach(candidate -> samples.add(new EffectSamples(layout, draws)));
        CarAssembler assembler = new CarAssembler(sheet);
        List<CarSheet> setups = candidates.stream().map(sheet::with).toList();
        IntStream.range(0, draws).parallel().forEach(number -> {
            DrivenDraw draw = number < ready.size() ? ready.get(number) : drawn(number, draws, cars[number], assembler);
            replay(number, draw, assembler, setups, samples, lengthM);
        });
        CarModel driven = assembler.build(belief.middle());
        double[] speeds = speeds();
        double topSpeed = laps.stream()
                .flatMap(lap -> lap.moments().stream())
                .mapToDouble(Moment::speed)
                .max()
                .orElse(0.0);
        double lapTimeS = laps.stream()
                .mapToDouble(lap -> lap.size() * lap.stepS())
                .average()
                .orElse(0.0);
        return IntStream.range(0, candidates.size())
                .parallel()
                .mapToObj(c -> {
                    CarModel changed = assembler.build(setups.get(c), belief.middle());
                    Prediction prediction = samples.get(c).summary(candidates.get(c), corners, speeds, lapTimeS);
                    List<String> doubts = new ArrayList<>(HandbookSigns.disagreements(sheet, prediction));
                    doubts.addAll(ChangeDoubts.of(setups.get(c), candidates.get(c), changed, topSpeed));
                    return prediction.because(ChangeReasons.of(driven, changed), doubts);
                })
                .toList();
    }

    private static void replay(
            int number,
            DrivenDraw draw,
            CarAssembler assembler,
            List<CarSheet> setups,
            List<EffectSamples> samples,
            double lengthM) {
        for (int c = 0; c < setups.size(); c++) {
            draw.replay(number, assembler.build(setups.get(c), draw.parameters()), samples.get(c), lengthM);
        }
    }

    private DrivenDraw drawn(int number, int draws, double[] parameters, CarAssembler assembler) {
        return new DrivenDraw(parameters, assembler, laps.get(lap(number, draws, laps.size())), leastLateral);
    }

    /** Laps in turn; of more laps than draws some, evenly spread, so that the end of a long stint counts as its beginning does. */
    static int lap(int number, int draws, int laps) {
        return laps <= draws ? number % laps : (int) ((long) number * laps / draws);
    }

    /** Mean speed over the laps in each bin of the lap plot, m/s. */
    private double[] speeds() {
        double[] sum = new double[layout.bins()];
        double[] count = new double[layout.bins()];
        for (DrivenLap lap : laps) {
            for (int k = 0; k < lap.size(); k++) {
                int bin = layout.bin(lap.station()[k], lengthM);
                if (bin >= 0) {
                    sum[bin] += lap.moments().get(k).speed();
                    count[bin]++;
                }
            }
        }
        Arrays.setAll(sum, bin -> sum[bin] / count[bin]);
        return sum;
    }
}
