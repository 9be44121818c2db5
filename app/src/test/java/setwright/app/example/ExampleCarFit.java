package setwright.app.example;

import java.util.List;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;
import java.util.stream.IntStream;
import setwright.app.carfit.CarFitAnswer;
import setwright.core.identification.CarFit;
import setwright.core.identification.FitEvidence;
import setwright.core.identification.FittedValue;
import setwright.core.recording.Channel;

/** An invented identification: two quantities told, one not. */
public final class ExampleCarFit {
    private static final long SEED = 20_260_322L;

    private ExampleCarFit() {}

    /** Returns the answer to two recordings. */
    public static CarFitAnswer answer() {
        return new CarFitAnswer(Example.answer().car(), List.of("stint.csv.gz", "stint2.csv.gz"), 24, fit());
    }

    /** Returns an answer in which the laps told nothing. */
    public static CarFitAnswer nothing() {
        return new CarFitAnswer(
                Example.answer().car(),
                List.of("stint.csv.gz"),
                12,
                new CarFit(List.of(fit().values().get(2)), List.of()));
    }

    /** Returns what the laps told. */
    public static CarFit fit() {
        return new CarFit(
                List.of(
                        new FittedValue(
                                "drag_area",
                                "drag area",
                                "m²",
                                0.9,
                                0.5,
                                1.3,
                                1.04,
                                0.98,
                                1.1,
                                true,
                                "the slowing on 14 straights with the clutch shut tells it"),
                        new FittedValue(
                                "front_stiffness",
                                "cornering stiffness of the front axle",
                                "N/rad",
                                110_000,
                                70_000,
                                150_000,
                                96_400,
                                88_000,
                                104_000,
                                true,
                                "quiet cornering in 11 corners tells it"),
                        new FittedValue(
                                "brake_share_front",
                                "share of the braking at the front",
                                "%",
                                62,
                                58,
                                66,
                                62.2,
                                58.1,
                                66.1,
                                false,
                                "no wheel came near locking; wheel speeds, or one stop near locking, would tell it")),
                List.of(grip(), drag()));
    }

    private static FitEvidence grip() {
        RandomGenerator random = RandomGeneratorFactory.of("L64X128MixRandom").create(SEED);
        double[] slip = IntStream.range(0, 600).mapToDouble(i -> 0.01 * i).toArray();
        double[] force = IntStream.range(0, 600)
                .mapToDouble(i -> curve(slip[i]) + 0.06 * random.nextGaussian())
                .toArray();
        double[] fine = IntStream.range(0, 61).mapToDouble(i -> 0.1 * i).toArray();
        return new FitEvidence(
                "Grip of the front axle",
                "slip angle, deg",
                "side force over load",
                List.of(
                        new FitEvidence.Series("laps", false, Channel.of(slip), Channel.of(force)),
                        new FitEvidence.Series(
                                "fitted car",
                                true,
                                Channel.of(fine),
                                Channel.of(IntStream.range(0, 61)
                                        .mapToDouble(i -> curve(fine[i]))
                                        .toArray())),
                        new FitEvidence.Series(
                                "before",
                                true,
                                Channel.of(fine),
                                Channel.of(IntStream.range(0, 61)
                                        .mapToDouble(i -> 0.9 * curve(fine[i]))
                                        .toArray()))));
    }

    private static double curve(double slipDeg) {
        return 1.45 * Math.sin(1.4 * Math.atan(0.32 * slipDeg));
    }

    private static FitEvidence drag() {
        double[] speed = {100, 130, 160, 190, 220};
        double[] slowing = {0.6, 0.9, 1.35, 1.85, 2.5};
        return new FitEvidence(
                "Slowing off the throttle",
                "speed, km/h",
                "deceleration, m/s²",
                List.of(
                        new FitEvidence.Series("straights", false, Channel.of(speed), Channel.of(slowing)),
                        new FitEvidence.Series("fitted car", true, Channel.of(speed), Channel.of(new double[] {
                            0.58, 0.92, 1.33, 1.86, 2.47
                        }))));
    }
}
