package setwright.core.pooling;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import setwright.core.judgement.Certainty;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Finding;
import setwright.core.judgement.Finding.Cause;
import setwright.core.judgement.PassEvidence;
import setwright.core.pooling.PooledFinding.Belongs;
import setwright.core.pooling.PooledFinding.ByDriver;

/*
 * Design note. The lap is what counts, not the pass: corners of one lap share its driver's mood and tyres. A lap has it when the rear lets
 * go in most of the corners that the finding names.
 */

/** Holds an axle that lets go against all drivers. */
final class SlidePooling {
    private SlidePooling() {}

    static List<PooledFinding> find(List<DriverStint> stints) {
        return Pooler.distinct(stints, false).stream()
                .map(finding -> pooled(stints, finding))
                .toList();
    }

    private static PooledFinding pooled(List<DriverStint> stints, Finding finding) {
        List<String> drivers = Pooler.names(stints);
        List<ShareHierarchy.Count> counts = drivers.stream()
                .map(driver -> count(Pooler.of(stints, driver), finding))
                .toList();
        ShareHierarchy shares = ShareHierarchy.of(counts);
        double[] alone = new double[drivers.size()];
        List<ByDriver> parts = new ArrayList<>();
        for (int j = 0; j < drivers.size(); j++) {
            alone[j] = drivers.size() > 1 ? shares.onlyMostly(j) : 0.0;
            parts.add(new ByDriver(
                    drivers.get(j),
                    Double.NaN,
                    Double.NaN,
                    counts.get(j).seen(),
                    counts.get(j).of(),
                    alone[j]));
        }
        double common = shares.allMostly();
        int who = Pooler.largest(alone);
        boolean nobodyElse = drivers.size() == 1 && Pooler.lapsOnly(stints);
        Belongs belongs = common >= Certainty.CAR
                ? finding.cause() == Cause.DRIVER
                        ? drivers.size() == 1 ? Belongs.ONE_DRIVER : Belongs.EVERY_DRIVER
                        : nobodyElse ? Belongs.UNDECIDED : Belongs.CAR
                : alone[who] >= Certainty.DRIVER ? Belongs.ONE_DRIVER : Belongs.UNDECIDED;
        String driver = belongs == Belongs.ONE_DRIVER ? drivers.get(who) : "";
        return new PooledFinding(
                finding.phase(),
                finding.speed(),
                finding.balance(),
                false,
                belongs,
                driver,
                common,
                Double.NaN,
                parts,
                why(finding, parts, belongs, driver, common));
    }

    private static ShareHierarchy.Count count(List<Diagnosis> stints, Finding finding) {
        int seen = 0;
        int of = 0;
        for (Diagnosis stint : stints) {
            Map<Integer, List<PassEvidence>> laps = PassEvidence.of(stint, finding).stream()
                    .collect(Collectors.groupingBy(evidence -> evidence.pass().lap()));
            of += laps.size();
            seen += (int) laps.values().stream()
                    .filter(passes ->
                            2 * passes.stream().filter(PassEvidence::shows).count() > passes.size())
                    .count();
        }
        return new ShareHierarchy.Count(seen, of);
    }

    private static String why(Finding finding, List<ByDriver> parts, Belongs belongs, String driver, double common) {
        String counts = parts.stream()
                .map(part -> part.driver() + " " + part.seen() + " of " + part.of() + " laps")
                .collect(Collectors.joining(", "));
        String what =
                Pooler.format("The rear lets go %s: %s; ", Places.words(finding.phase(), finding.speed()), counts);
        return what
                + switch (belongs) {
                    case CAR ->
                        Pooler.format(
                                "it is there %s (probability %.2f), so it is the car's.",
                                parts.size() > 1 ? "whoever drives" : "in what he drove", common);
                    case EVERY_DRIVER ->
                        Pooler.format(
                                "all of them do what brings it about (probability %.2f): technique first, for everyone.",
                                common);
                    case ONE_DRIVER ->
                        Pooler.format(
                                "it is more likely %s's technique than the car (probability that all have it %.2f).",
                                driver, common);
                    case UNDECIDED ->
                        common >= Certainty.CAR
                                ? "whether that is the car is not clear: cars in good order do it, too, and nothing but one driver's laps"
                                        + " speaks; ranges on the car sheet or a baseline would tell."
                                : Pooler.format(
                                        "whether all have it is not clear (probability %.2f); more laps would tell.",
                                        common);
                };
    }
}
