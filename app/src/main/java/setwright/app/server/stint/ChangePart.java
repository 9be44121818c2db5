package setwright.app.server.stint;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import setwright.app.logbook.TrialStatus;
import setwright.app.propose.ProposalAnswer;
import setwright.app.report.change.ProposalReport;
import setwright.app.report.change.ProposalView;
import setwright.app.units.Figures;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupItem;
import setwright.core.car.setup.ItemRange;
import setwright.core.car.setup.Modelled;
import setwright.core.judgement.Diagnosis;

/**
 * What the page says of changes to the car.
 *
 * @param stint     number
 * @param proposal  null as long as items are still being turned
 * @param trouble   why nothing is proposed though items were to be turned; empty when all is well
 * @param knobs     items that can be turned
 * @param chosen    the proposed change as a request would name it; empty without one
 * @param locked    why no other change may be tried now; empty when one may
 * @param untold    why nothing can be predicted; empty when it can
 */
public record ChangePart(
        long stint,
        @Nullable ProposalView proposal,
        String trouble,
        List<Knob> knobs,
        String chosen,
        String locked,
        String untold) {
    public ChangePart {
        knobs = List.copyOf(knobs);
    }

    /**
     * An item that can be turned.
     *
     * @param name      as on the sheet
     * @param words     the same for people
     * @param unit      as on the sheet
     * @param value     as driven
     * @param step      smallest change
     * @param down      steps to its least value, 0 or less
     * @param up        steps to its greatest value
     * @param range     in words
     * @param obstacle  why it cannot be predicted; empty when it can
     */
    public record Knob(
            String name,
            String words,
            String unit,
            String value,
            String step,
            long down,
            long up,
            String range,
            String obstacle) {}

    static ChangePart of(OpenStint stint, String trouble, Optional<TrialStatus> trial, Figures figures) {
        Diagnosis diagnosis = stint.answer().diagnosis();
        CarSheet car = stint.answer().car();
        return new ChangePart(
                stint.laps().stint().number(),
                stint.proposal()
                        .map(proposal -> ProposalReport.view(new ProposalAnswer(stint.answer(), proposal), figures))
                        .orElse(null),
                trouble,
                car.setup().stream().map(item -> knob(item, car)).toList(),
                stint.proposal()
                        .flatMap(proposal -> proposal.chosen())
                        .map(candidate -> candidate.prediction().changes().get(0))
                        .map(change -> change.item() + "=" + ItemRange.plain(change.to()))
                        .orElse(""),
                trial.map(ChangePart::locked).orElse(""),
                diagnosis.grounds().car().isPresent()
                        ? ""
                        : "Nothing can be predicted from these laps: " + diagnosis.reason() + ".");
    }

    private static String locked(TrialStatus trial) {
        return "Trial " + trial.trial().id() + " (" + trial.trial().changeWords() + ") of "
                + trial.car().name()
                + " is under way: everything else stays as it is until that is judged or given up.";
    }

    private static long steps(double way, SetupItem item) {
        return (long) Math.max(0.0, Math.floor(way / item.step() + 1e-6));
    }

    private static Knob knob(SetupItem item, CarSheet car) {
        return new Knob(
                item.name(),
                item.name().replace('_', ' '),
                item.unit(),
                ItemRange.plain(item.value()),
                ItemRange.plain(item.step()),
                -steps(item.value() - item.min(), item),
                steps(item.max() - item.value(), item),
                new ItemRange(item).words(),
                new Modelled(car).obstacle(item).orElse(""));
    }
}
