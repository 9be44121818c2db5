package setwright.app.export;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import setwright.app.export.Material.Of;
import setwright.app.export.ProposalsTable.Weighed;
import setwright.core.proposal.Candidate;
import setwright.core.proposal.Proposal;
import setwright.core.replay.Effect;

/** Every change that was weighed: one row per item and value. */
final class ProposalsTable implements Table<Of<Weighed>> {
    /**
     * A change with what became of it.
     *
     * @param state  chosen, weighed or refused
     */
    record Weighed(String state, Candidate candidate) {
        /** Returns all changes of a proposal, the chosen one first. */
        static Stream<Weighed> of(Proposal proposal) {
            List<Weighed> all = new ArrayList<>();
            proposal.chosen().ifPresent(chosen -> all.add(new Weighed("chosen", chosen)));
            proposal.others().forEach(other -> all.add(new Weighed("weighed", other)));
            proposal.refused().forEach(refused -> all.add(new Weighed("refused", refused)));
            return all.stream();
        }

        /** Returns the columns that name the change. */
        static <T> List<Column<Of<T>>> change(Function<T, Weighed> weighed) {
            return List.of(
                    Column.text(
                            "item",
                            "name on the car sheet",
                            row -> weighed.apply(row.value())
                                    .candidate()
                                    .turn()
                                    .item()
                                    .name()),
                    Column.number(
                            "setup from",
                            Measure.ITEM,
                            "value now",
                            row -> weighed.apply(row.value())
                                    .candidate()
                                    .turn()
                                    .item()
                                    .value()),
                    Column.number(
                            "setup to",
                            Measure.ITEM,
                            "value to turn it to",
                            row -> weighed.apply(row.value()).candidate().turn().to()));
        }
    }

    @Override
    public String name() {
        return "proposals";
    }

    @Override
    public String words() {
        return "One row per change that was weighed, the chosen one first, those refused last. No row: the car is not to be"
                + " changed.";
    }

    @Override
    public Source source() {
        return Source.PROPOSALS;
    }

    @Override
    public List<Column<Of<Weighed>>> columns() {
        List<Column<Of<Weighed>>> columns = new ArrayList<>(List.of(Material.stint()));
        columns.add(Column.text(
                "state",
                "chosen, weighed (not chosen though nothing forbids it) or refused",
                row -> row.value().state()));
        columns.addAll(Weighed.change(weighed -> weighed));
        columns.add(Column.text(
                "item unit",
                "unit of the item; empty where it has none",
                row -> row.value().candidate().turn().item().unit()));
        columns.add(Column.whole(
                "steps",
                "how many steps that is; negative: down",
                row -> row.value().candidate().turn().steps()));
        columns.add(
                number("score", Measure.TIME, "what it is worth a lap, harm elsewhere taken off", Candidate::score));
        columns.add(number(
                "toward cure",
                Measure.NUMBER,
                "probability that it moves the balance that was found wrong the right way",
                Candidate::towardCure));
        columns.addAll(effect(
                "target", Measure.ANGLE, "change of that balance; positive: toward understeer", Candidate::target));
        columns.addAll(effect(
                "lap time",
                Measure.TIME,
                "predicted change of the lap time; negative: quicker",
                candidate -> candidate.prediction().lapTimeS()));
        columns.add(Column.text(
                "why not",
                "why it is refused, one sentence each",
                row -> String.join(" ", row.value().candidate().objections())));
        return columns;
    }

    private static Column<Of<Weighed>> number(
            String name, Measure measure, String words, ToDoubleFunction<Candidate> value) {
        return Column.number(
                name, measure, words, row -> value.applyAsDouble(row.value().candidate()));
    }

    private static List<Column<Of<Weighed>>> effect(
            String name, Measure measure, String words, Function<Candidate, Effect> effect) {
        return Predicted.columns(
                name,
                measure,
                words,
                row -> Optional.of(effect.apply(row.value().candidate())));
    }

    @Override
    public Stream<Of<Weighed>> rows(Material material) {
        return material.each(one -> one.proposal().stream().flatMap(Weighed::of));
    }
}
