package setwright.app.json;

import static setwright.app.json.Numbers.degrees;
import static setwright.app.json.Numbers.known;

import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import setwright.app.evidence.Answer;
import setwright.app.evidence.BalanceTable;
import setwright.app.story.LapsWords;
import setwright.app.story.Storyteller;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;
import setwright.core.circuit.Lap;
import setwright.core.circuit.Stint;
import setwright.core.explanation.Explainer;
import setwright.core.explanation.Explanation;
import setwright.core.explanation.VerdictExplainer;
import setwright.core.handling.Phase;
import setwright.core.handling.SpeedClass;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Finding;
import setwright.core.judgement.LapsNeeded;
import setwright.core.judgement.Repeatability;
import setwright.core.judgement.Repeatability.AtCorner;
import setwright.core.judgement.Repeatability.Measure;
import setwright.core.judgement.SpeedDependence;
import setwright.core.judgement.TimeSince;
import setwright.core.judgement.Trigger;
import setwright.core.judgement.driving.DrivingReview;
import setwright.core.judgement.driving.DrivingReviewer;
import setwright.core.proposal.Proposal;

/** Writes an answer as JSON of version 1. Units do not follow the user's choice: they stand in the field names. */
public final class DiagnosisJsonWriter {
    private static final int VERSION = 1;
    /** Slopes over the square of the speed are given per 1000 m²/s². */
    private static final double SQUARES = 1000.0;

    private DiagnosisJsonWriter() {}

    /**
     * Returns the JSON text, ending with a line break.
     *
     * @param proposal  made on the same diagnosis
     */
    public static String write(Answer answer, Proposal proposal) {
        return Numbers.text(of(answer, changes(answer.diagnosis(), proposal)));
    }

    /** Returns the same without a proposal. */
    public static String write(Answer answer) {
        return Numbers.text(of(answer));
    }

    static DiagnosisJson of(Answer answer) {
        return of(answer, List.of());
    }

    private static List<DiagnosisJson.Change> changes(Diagnosis diagnosis, Proposal proposal) {
        int rank = 1 + proposal.target().map(diagnosis.findings()::indexOf).orElse(0);
        return proposal.chosen().stream()
                .map(chosen -> new DiagnosisJson.Change(
                        rank,
                        chosen.turn().item().name(),
                        chosen.turn().item().value(),
                        chosen.turn().to(),
                        known(chosen.prediction().lapTimeS().central()),
                        known(chosen.prediction().lapTimeS().low()),
                        known(chosen.prediction().lapTimeS().high()),
                        known(1.0 - chosen.prediction().lapTimeS().probabilityPositive()),
                        chosen.prediction().phases().stream()
                                .map(effect -> new DiagnosisJson.Effect(
                                        effect.phase().words(),
                                        effect.speedClass()
                                                .map(SpeedClass::words)
                                                .orElse("all"),
                                        Numbers.degrees(effect.balance().central())))
                                .toList()))
                .toList();
    }

    private static DiagnosisJson of(Answer answer, List<DiagnosisJson.Change> changes) {
        Diagnosis diagnosis = answer.diagnosis();
        List<Finding> findings = diagnosis.findings();
        return new DiagnosisJson(
                VERSION,
                recording(answer),
                driving(diagnosis),
                balance(BalanceTable.of(diagnosis)),
                IntStream.range(0, findings.size())
                        .mapToObj(i -> finding(i + 1, findings.get(i), diagnosis))
                        .toList(),
                TechniqueJsonWriter.of(diagnosis, answer.car()),
                changes,
                diagnosis.verdict().words(),
                diagnosis.reason(),
                Storyteller.tell(answer, Figures.forTerminal(UnitSystem.METRIC)).next().stream()
                        .map(step -> step.replace(Figures.KEPT_TOGETHER, ' '))
                        .toList(),
                new DiagnosisJson.Car(answer.car().description(), answer.car().assumed()),
                ExplanationJsonWriter.reasons(VerdictExplainer.explain(diagnosis)),
                ExplanationJsonWriter.setup(diagnosis.grounds()),
                diagnosis.grounds().time().map(DiagnosisJsonWriter::since),
                diagnosis.axles().map(AxlesJsonWriter::of),
                AdviceJsonWriter.of(answer),
                SensorsJsonWriter.of(answer),
                LapsNeeded.forVerdict(diagnosis),
                diagnosis.inOneCorner().stream().map(DiagnosisJsonWriter::seen).toList());
    }

    private static DiagnosisJson.Seen seen(Finding slide) {
        return new DiagnosisJson.Seen(
                slide.corners().get(0),
                slide.phase().words(),
                slide.balance().words(),
                known(slide.lapShare()),
                degrees(slide.sizeRad()),
                degrees(slide.sizeLowRad()),
                degrees(slide.sizeHighRad()));
    }

    private static DiagnosisJson.TimeSince since(TimeSince time) {
        return new DiagnosisJson.TimeSince(
                longer(time.whole()),
                time.corners().entrySet().stream()
                        .sorted(Map.Entry.comparingByKey())
                        .map(corner -> new DiagnosisJson.LongerAt(corner.getKey(), longer(corner.getValue())))
                        .toList());
    }

    private static DiagnosisJson.Longer longer(TimeSince.Difference since) {
        return new DiagnosisJson.Longer(
                known(since.seconds()), known(since.lowS()), known(since.highS()), since.clear());
    }

    private static DiagnosisJson.Recording recording(Answer answer) {
        Stint stint = answer.diagnosis().stint();
        return new DiagnosisJson.Recording(
                stint.recording().name(),
                stint.laps().size(),
                stint.goodLaps().stream().map(Lap::number).toList(),
                stint.laps().stream()
                        .filter(lap -> !lap.good())
                        .map(lap -> new DiagnosisJson.Aside(lap.number(), LapsWords.reason(lap)))
                        .toList(),
                stint.laps().stream()
                        .map(lap -> new DiagnosisJson.LapTime(lap.number(), known(lap.timeS())))
                        .toList(),
                stint.recording().calibrations().stream()
                        .map(c -> new DiagnosisJson.Calibration(c.what(), known(c.value()), c.unit(), c.reason()))
                        .toList(),
                answer.channels().stream()
                        .map(n -> new DiagnosisJson.Channel(n.column(), n.meaning(), n.unit(), n.evidence()))
                        .toList(),
                answer.remarks());
    }

    private static DiagnosisJson.Driving driving(Diagnosis diagnosis) {
        Repeatability driving = diagnosis.repeatability();
        DrivingReview review = DrivingReviewer.review(diagnosis);
        return new DiagnosisJson.Driving(
                driving.repeatable(),
                driving.corners().stream()
                        .map(entry -> corner(entry, review.at(entry.corner())))
                        .toList(),
                diagnosis.faults().stream().map(DrivingJson::fault).toList(),
                driving.why(),
                known(driving.lapTimeScatterS()),
                known(driving.smallestTimeS()),
                degrees(driving.smallestBalanceRad()),
                degrees(driving.stepBalanceRad()),
                review.lap().map(DrivingJson::cost),
                review.first().stream().map(DrivingJson::place).toList());
    }

    private static DiagnosisJson.Corner corner(AtCorner entry, Optional<DrivingReview.AtCorner> review) {
        Map<String, DiagnosisJson.Scatter> scatter = new LinkedHashMap<>();
        for (Measure measure : Measure.values()) {
            Double value = entry.scatter().get(measure);
            if (value != null) {
                scatter.put(measure.words(), new DiagnosisJson.Scatter(known(value), measure.unit()));
            }
        }
        return new DiagnosisJson.Corner(
                entry.corner(),
                entry.repeatable(),
                entry.worst().words(),
                scatterInMetres(entry),
                entry.passes(),
                scatter,
                degrees(entry.smallestBalanceRad()),
                known(entry.smallestTimeS()),
                review.map(found -> known(found.typicalTimeS())).orElse(OptionalDouble.empty()),
                review.map(DrivingReview.AtCorner::lapsNeeded).orElse(OptionalInt.empty()),
                review.flatMap(DrivingReview.AtCorner::spread).map(DrivingJson::cost),
                DrivingJson.moving(review.flatMap(DrivingReview.AtCorner::event)));
    }

    /** The worst measure's scatter; where that is no length, the largest scatter that is one. */
    private static OptionalDouble scatterInMetres(AtCorner entry) {
        Double worst = entry.scatter().get(entry.worst());
        if (worst != null && entry.worst().unit().equals("m")) {
            return known(worst);
        }
        return Arrays.stream(Measure.values())
                .filter(measure -> measure.unit().equals("m") && entry.scatter().containsKey(measure))
                .map(measure -> entry.scatter().getOrDefault(measure, Double.NaN))
                .filter(Double::isFinite)
                .max(Comparator.naturalOrder())
                .map(Numbers::known)
                .orElse(OptionalDouble.empty());
    }

    private static List<DiagnosisJson.Balance> balance(BalanceTable table) {
        return table.rows().stream()
                .flatMap(row -> Arrays.stream(Phase.values())
                        .flatMap(phase -> row.cell(phase).stream())
                        .map(cell -> new DiagnosisJson.Balance(
                                row.corner().number(),
                                row.corner().direction().name().toLowerCase(Locale.ROOT),
                                row.speedClass().words(),
                                cell.phase().words(),
                                degrees(cell.excess().median()),
                                degrees(cell.excess().low()),
                                degrees(cell.excess().high()),
                                cell.excess().count())))
                .toList();
    }

    private static DiagnosisJson.Finding finding(int rank, Finding finding, Diagnosis diagnosis) {
        Explanation explanation = Explainer.explain(diagnosis, finding);
        Map<String, OptionalDouble> triggers = new LinkedHashMap<>();
        for (Trigger trigger : Trigger.values()) {
            triggers.put(trigger.words(), known(finding.triggers().getOrDefault(trigger, 0.0)));
        }
        return new DiagnosisJson.Finding(
                rank,
                finding.phase().words(),
                finding.speed().words(),
                finding.balance().words(),
                finding.trigger().words(),
                finding.cause().words(),
                finding.corners(),
                known(finding.lapShare()),
                finding.lapWide(),
                known(finding.probability()),
                known(finding.price().seconds()),
                known(finding.price().low()),
                known(finding.price().high()),
                degrees(finding.sizeRad()),
                degrees(finding.sizeLowRad()),
                degrees(finding.sizeHighRad()),
                finding.dependence().map(DiagnosisJsonWriter::dependence),
                triggers,
                finding.why(),
                ExplanationJsonWriter.reasons(explanation.reasons()),
                ExplanationJsonWriter.alternatives(explanation.alternatives()),
                ExplanationJsonWriter.items(diagnosis.grounds().standing(), finding));
    }

    private static DiagnosisJson.SpeedDependence dependence(SpeedDependence found) {
        return new DiagnosisJson.SpeedDependence(
                degrees(SQUARES * found.slopeRadPerM2S2()),
                degrees(SQUARES * found.low()),
                degrees(SQUARES * found.high()),
                known(found.probabilityAero()));
    }
}
