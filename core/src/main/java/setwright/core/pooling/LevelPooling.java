package setwright.core.pooling;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import setwright.core.handling.Phase;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.BelievedLevel;
import setwright.core.judgement.Certainty;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Finding;
import setwright.core.judgement.SpeedRange;
import setwright.core.judgement.Yardstick;
import setwright.core.pooling.NormalHierarchy.Estimate;
import setwright.core.pooling.PooledFinding.Belongs;
import setwright.core.pooling.PooledFinding.ByDriver;

/** Holds levels of balance against all drivers, and finds the driver who differs from the others. */
final class LevelPooling {
    /** Spread between drivers in one car, before they are compared: half of a typical setup change (our choice). */
    private static final double DRIVERS_RAD = Math.toRadians(0.28);
    /** Spread between stints of one driver: half of that. */
    private static final double STINTS_RAD = 0.5 * DRIVERS_RAD;
    /** A difference between drivers that is worth coaching: half of a typical setup change (our choice); styles differ by less. */
    private static final double APART_RAD = Math.toRadians(0.28);

    private static final List<Phase> PHASES = List.of(Phase.ENTRY, Phase.MID, Phase.EXIT);

    private final List<DriverStint> stints;
    private final List<String> drivers;

    private LevelPooling(List<DriverStint> stints) {
        this.stints = stints;
        this.drivers = Pooler.names(stints);
    }

    /** One place with what the laps of each driver show there. */
    private record Place(Phase phase, SpeedRange speed, NormalHierarchy measured, List<Estimate> raw) {}

    /**
     * Finds them.
     *
     * @param slides  what was found before: a rear that lets go lowers the level of its phase, which is not told again
     */
    static List<PooledFinding> find(List<DriverStint> stints, List<PooledFinding> slides) {
        LevelPooling pooling = new LevelPooling(stints);
        List<PooledFinding> findings = new ArrayList<>();
        for (Finding finding : Pooler.distinct(stints, true)) {
            pooling.place(finding.phase(), finding.speed())
                    .map(place -> pooling.pooled(place, finding.balance()))
                    .ifPresent(findings::add);
        }
        for (int j = 0; j < pooling.drivers.size() && pooling.drivers.size() > 1; j++) {
            pooling.apart(j)
                    .filter(found -> Stream.concat(findings.stream(), slides.stream())
                            .noneMatch(other -> other.phase() == found.phase()))
                    .ifPresent(findings::add);
        }
        return findings;
    }

    private Optional<Place> place(Phase phase, SpeedRange speed) {
        List<Diagnosis> all = stints.stream().map(DriverStint::diagnosis).toList();
        return PlaceLevels.of(all, phase, speed).map(levels -> {
            List<Estimate> raw = drivers.stream()
                    .map(driver -> driver(IntStream.range(0, stints.size())
                            .filter(i -> stints.get(i).driver().equals(driver))
                            .mapToObj(levels::get)
                            .toList()))
                    .toList();
            return new Place(phase, speed, hierarchy(raw, DRIVERS_RAD), raw);
        });
    }

    private static Estimate driver(List<Estimate> stints) {
        return stints.size() == 1
                ? stints.get(0)
                : hierarchy(stints, STINTS_RAD).common();
    }

    private static NormalHierarchy hierarchy(List<Estimate> groups, double scale) {
        return NormalHierarchy.of(
                groups.stream().mapToDouble(Estimate::value).toArray(),
                groups.stream().mapToDouble(Estimate::deviation).toArray(),
                scale);
    }

    private PooledFinding pooled(Place place, BalanceSign sign) {
        double direction = sign.direction();
        double common = common(place, sign);
        double[] alone = IntStream.range(0, drivers.size())
                .mapToDouble(
                        j -> drivers.size() < 2 ? 0.0 : beyond(place.measured().apart(j), direction))
                .toArray();
        int who = Pooler.largest(alone);
        Belongs belongs = common >= Pooler.sure(stints)
                ? Belongs.CAR
                : alone[who] >= Certainty.DRIVER ? Belongs.ONE_DRIVER : Belongs.UNDECIDED;
        return finding(place, sign, belongs, who, common, alone);
    }

    /**
     * Probability that the car has it, whoever drives: that of the driver who has least of it. Each stint's belief holds setup and
     * laps; what they share, the setup and what a healthy car shows, does not average out.
     */
    private double common(Place place, BalanceSign sign) {
        double direction = sign.direction();
        List<Optional<Estimate>> believed =
                drivers.stream().map(driver -> believed(driver, place)).toList();
        if (believed.stream().anyMatch(Optional::isEmpty)) {
            return 0.0;
        }
        NormalHierarchy beliefs = hierarchy(
                IntStream.range(0, drivers.size())
                        .mapToObj(j -> new Estimate(
                                direction * believed.get(j).orElseThrow().value(),
                                place.raw().get(j).deviation()))
                        .toList(),
                DRIVERS_RAD);
        double everyone = 1.0;
        for (int j = 0; j < drivers.size(); j++) {
            Estimate own = beliefs.group(j);
            double doubt = Math.hypot(believed.get(j).orElseThrow().deviation(), own.deviation());
            everyone = Math.min(everyone, NormalHierarchy.above(new Estimate(own.value(), doubt), Yardstick.LEAST_RAD));
        }
        return Math.max(
                everyone,
                drivers.stream().mapToDouble(driver -> own(driver, sign)).min().orElse(0.0));
    }

    /** What is believed of the balance on a driver's stints, the mean of them. */
    private Optional<Estimate> believed(String driver, Place place) {
        List<BelievedLevel> levels = Pooler.of(stints, driver).stream()
                .flatMap(diagnosis -> diagnosis.grounds().levels().stream())
                .filter(level -> level.phase() == place.phase() && level.speed() == place.speed())
                .toList();
        return levels.isEmpty()
                ? Optional.empty()
                : Optional.of(new Estimate(
                        levels.stream()
                                .mapToDouble(BelievedLevel::meanRad)
                                .average()
                                .orElseThrow(),
                        levels.stream()
                                .mapToDouble(BelievedLevel::deviationRad)
                                .average()
                                .orElseThrow()));
    }

    /** Probability of a level of this sign in one driver's own stints, the surest of them. */
    private double own(String driver, BalanceSign sign) {
        return Pooler.of(stints, driver).stream()
                .flatMap(diagnosis -> diagnosis.grounds().level().stream())
                .filter(level -> level.balance() == sign)
                .mapToDouble(Finding::probability)
                .max()
                .orElse(0.0);
    }

    private static double beyond(Estimate apart, double direction) {
        return NormalHierarchy.above(new Estimate(direction * apart.value(), apart.deviation()), APART_RAD);
    }

    /** The place where a driver differs most from the others, when he does so beyond doubt. */
    private Optional<PooledFinding> apart(int j) {
        return PHASES.stream()
                .flatMap(phase -> place(phase, SpeedRange.ALL).stream())
                .max(Comparator.comparingDouble(
                        place -> Math.abs(place.measured().apart(j).value())))
                .flatMap(place -> {
                    Estimate apart = place.measured().apart(j);
                    BalanceSign sign = apart.value() > 0.0 ? BalanceSign.UNDERSTEER : BalanceSign.OVERSTEER;
                    double direction = apart.value() > 0.0 ? 1.0 : -1.0;
                    double sure = beyond(apart, direction);
                    // of two drivers one has more and the other less: it is told once, of him who is further from
                    // balance
                    double own = size(j, place);
                    boolean further = own > Yardstick.LEAST_RAD
                            && IntStream.range(0, drivers.size()).allMatch(other -> size(other, place) <= own);
                    if (sure < Certainty.DRIVER || !further) {
                        return Optional.empty();
                    }
                    double[] alone = new double[drivers.size()];
                    alone[j] = sure;
                    double common = common(place, sign);
                    return Optional.of(finding(
                            place,
                            sign,
                            common >= Pooler.sure(stints) ? Belongs.CAR : Belongs.ONE_DRIVER,
                            j,
                            common,
                            alone));
                });
    }

    private double size(int j, Place place) {
        return believed(drivers.get(j), place)
                .map(estimate -> Math.abs(estimate.value()))
                .orElse(0.0);
    }

    private PooledFinding finding(
            Place place, BalanceSign sign, Belongs belongs, int who, double common, double[] alone) {
        double direction = sign.direction();
        List<ByDriver> parts = new ArrayList<>();
        for (int j = 0; j < drivers.size(); j++) {
            Estimate own = place.measured().group(j);
            double[] laps = Pooler.of(stints, drivers.get(j)).stream()
                    .flatMapToDouble(diagnosis -> PlaceLevels.laps(diagnosis, place.phase(), place.speed()))
                    .toArray();
            int seen = (int) Arrays.stream(laps)
                    .filter(excess -> direction * excess > Yardstick.LEAST_RAD)
                    .count();
            parts.add(new ByDriver(
                    drivers.get(j), direction * own.value(), own.deviation(), seen, laps.length, alone[j]));
        }
        String driver = belongs == Belongs.ONE_DRIVER ? drivers.get(who) : "";
        return new PooledFinding(
                place.phase(),
                place.speed(),
                sign,
                true,
                belongs,
                driver,
                common,
                drivers.size() < 2 ? Double.NaN : place.measured().spread(),
                parts,
                why(place, sign, parts, belongs, driver, common));
    }

    private String why(
            Place place, BalanceSign sign, List<ByDriver> parts, Belongs belongs, String driver, double common) {
        String name = sign == BalanceSign.UNDERSTEER ? "Understeer" : "Oversteer";
        String where = Places.words(place.phase(), place.speed());
        if (belongs == Belongs.ONE_DRIVER) {
            String sizes = parts.stream()
                    .map(part -> Pooler.format("%s %.2f deg", part.driver(), Math.toDegrees(part.sizeRad())))
                    .collect(Collectors.joining(", "));
            return Pooler.format(
                    "%s %s, against a balanced car: %s; the others do not have it: more likely %s's technique than the car"
                            + " (probability that the car has it %.2f).",
                    name, where, sizes, driver, common);
        }
        double direction = sign.direction();
        String sizes = drivers.stream()
                .flatMap(each -> believed(each, place).stream()
                        .map(estimate ->
                                Pooler.format("%s %.2f deg", each, Math.toDegrees(direction * estimate.value()))))
                .collect(Collectors.joining(", "));
        return Pooler.format("%s %s, setup and laps together: %s; ", name, where, sizes)
                + (belongs == Belongs.CAR
                        ? Pooler.format(
                                "it is there %s (probability %.2f), so it is the car's.",
                                drivers.size() > 1 ? "whoever drives" : "in what he drove", common)
                        : Pooler.format(
                                "whether the car has it or a driver is not clear (probability of the car %.2f).",
                                common));
    }
}
