package setwright.core.pooling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import setwright.core.judgement.Certainty;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Finding;
import setwright.core.judgement.Verdict;
import setwright.core.pooling.PooledFinding.Belongs;

/*
 * Design note. Each stint is judged by itself first. What any of them shows is then held against all drivers: a level of balance with
 * the normal hierarchy (LevelPooling), an axle that lets go with the hierarchy of shares (SlidePooling). A problem that is there whoever
 * drives is the car's; one that a single driver has is more likely his. Where drivers differ in balance the doubt about what a healthy
 * car shows plays no part, as it is the same for all: so a difference may be sure where no level is.
 */

/** Holds the stints of one car against each other. */
public final class Pooler {
    private Pooler() {}

    /**
     * Pools.
     *
     * @param stints  at least one, on one circuit with one car and one setup
     */
    public static PooledDiagnosis pool(List<DriverStint> stints) {
        if (stints.isEmpty()) {
            throw new IllegalArgumentException("nothing to pool: no stint given");
        }
        List<DriverStint> judged = stints.stream()
                .filter(stint -> stint.diagnosis().repeatability().repeatable())
                .filter(stint -> !stint.diagnosis().trace().steering().contradicts())
                .toList();
        List<String> drivers = names(stints);
        if (judged.isEmpty()) {
            return new PooledDiagnosis(
                    stints,
                    drivers,
                    List.of(),
                    stints.stream().anyMatch(stint -> stint.diagnosis().verdict() == Verdict.COACH_THE_DRIVER)
                            ? Verdict.COACH_THE_DRIVER
                            : Verdict.NOT_ENOUGH_EVIDENCE,
                    "No stint is steady enough to be held against another.");
        }
        List<PooledFinding> findings = new ArrayList<>(SlidePooling.find(judged));
        findings.addAll(LevelPooling.find(judged, List.copyOf(findings)));
        findings.sort(Comparator.comparing(PooledFinding::belongsTo)
                .thenComparing(PooledFinding::level)
                .thenComparing(Comparator.comparingDouble(PooledFinding::common).reversed()));
        return conclude(stints, judged, drivers, findings);
    }

    /** Returns the names of the drivers in the order of their first stints. */
    static List<String> names(List<DriverStint> stints) {
        return stints.stream().map(DriverStint::driver).distinct().toList();
    }

    /** Returns the findings of one kind in all stints, one for each phase and sign, the surest of each. */
    static List<Finding> distinct(List<DriverStint> stints, boolean level) {
        return stints.stream()
                .map(DriverStint::diagnosis)
                .flatMap(diagnosis -> shown(diagnosis)
                        .filter(Finding::lapWide)
                        .filter(finding -> diagnosis.grounds().isLevel(finding) == level))
                .collect(Collectors.groupingBy(
                        finding -> List.of(finding.phase(), finding.balance()),
                        Collectors.maxBy(Comparator.comparingDouble(Finding::probability))))
                .values()
                .stream()
                .flatMap(Optional::stream)
                .sorted(Comparator.comparing(Finding::phase).thenComparing(Finding::balance))
                .toList();
    }

    /** Where only laps speak of a car, a suspicion is enough to be held against the others: drivers are further witnesses. */
    private static Stream<Finding> shown(Diagnosis diagnosis) {
        boolean suspected = diagnosis.grounds().standing().isUnknown()
                && diagnosis.findings().stream().noneMatch(Finding::lapWide);
        return suspected
                ? diagnosis.grounds().considered().stream()
                        .filter(finding ->
                                finding.cause() == Finding.Cause.CAR && finding.probability() >= Certainty.CAR)
                : diagnosis.findings().stream();
    }

    /** Tells whether nothing but laps is known of the car. */
    static boolean lapsOnly(List<DriverStint> stints) {
        return stints.stream()
                .allMatch(stint -> stint.diagnosis().grounds().standing().isUnknown());
    }

    /** Returns from which probability on a level of balance is the car's. */
    static double sure(List<DriverStint> stints) {
        return lapsOnly(stints) ? Certainty.CAR_BY_LAPS_ONLY : Certainty.CAR;
    }

    private static PooledDiagnosis conclude(
            List<DriverStint> stints, List<DriverStint> judged, List<String> drivers, List<PooledFinding> findings) {
        String who = judged.size() < stints.size()
                ? " " + (stints.size() - judged.size()) + " of " + stints.size()
                        + " stints were too uneven to be held against the others."
                : "";
        String one = names(judged).size() == 1
                ? " All of it is one driver's: a second driver in the same car would tell car from technique."
                : "";
        Optional<PooledFinding> first = findings.stream().findFirst();
        Verdict verdict;
        String reason;
        if (first.isPresent() && first.get().belongsTo() != Belongs.UNDECIDED) {
            verdict = first.get().belongsTo() == Belongs.CAR ? Verdict.CHANGE_THE_CAR : Verdict.COACH_THE_DRIVER;
            reason = first.get().why();
        } else if (first.isPresent()
                || judged.stream()
                        .map(DriverStint::diagnosis)
                        .map(Diagnosis::verdict)
                        .anyMatch(Verdict.NOT_ENOUGH_EVIDENCE::equals)) {
            verdict = Verdict.NOT_ENOUGH_EVIDENCE;
            reason = first.map(PooledFinding::why).orElse("The stints are too few or too short to agree on anything.");
        } else {
            verdict = Verdict.NOTHING_TO_CHANGE;
            reason = "No problem is common to the stints, and no driver differs from the others by what matters.";
        }
        return new PooledDiagnosis(stints, drivers, findings, verdict, reason + who + one);
    }

    static String format(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }

    static List<Diagnosis> of(List<DriverStint> stints, String driver) {
        return stints.stream()
                .filter(stint -> stint.driver().equals(driver))
                .map(DriverStint::diagnosis)
                .toList();
    }

    /** The index of the largest, -1 for none. */
    static int largest(double[] values) {
        return IntStream.range(0, values.length)
                .boxed()
                .max(Comparator.comparingDouble(i -> values[i]))
                .orElse(-1);
    }
}
