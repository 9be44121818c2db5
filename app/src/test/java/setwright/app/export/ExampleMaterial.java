package setwright.app.export;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import setwright.app.evidence.Answer;
import setwright.app.example.Example;
import setwright.app.example.ExampleProposal;
import setwright.app.export.Material.Laps;
import setwright.app.logbook.StoryDesk.Tried;
import setwright.app.propose.ProposalAnswer;
import setwright.logbook.row.CarRow;
import setwright.logbook.row.TrialRow;
import setwright.logbook.row.TriedEffectRow;
import setwright.logbook.row.VerdictRow;

/** Invented material for every table, with whatever names people may think of. */
final class ExampleMaterial {
    private static final Instant NOON = Instant.parse("2026-03-21T12:00:00Z");

    private ExampleMaterial() {}

    static Material named(String name) {
        ProposalAnswer proposed = ExampleProposal.answer();
        Answer answer = Example.answer(name, name, name);
        return new Material(
                List.of(
                        new Laps(name, answer, Optional.of(proposed.proposal())),
                        new Laps("2", Example.answer(), Optional.empty())),
                List.of(tried(name), new Tried(car(name), trial(2, name), Optional.empty(), List.of())));
    }

    private static CarRow car(String name) {
        return new CarRow(1, name, NOON);
    }

    private static TrialRow trial(long id, String name) {
        return new TrialRow(id, 1, 1, 1, 3, 1, name, "", "ABA", 6, TrialRow.OVER, NOON);
    }

    private static Tried tried(String name) {
        return new Tried(
                car(name),
                trial(1, name),
                Optional.of(new VerdictRow(1, 1, "3,4,5", 1.0, "keep", name, NOON)),
                List.of(
                        new TriedEffectRow(
                                1,
                                "",
                                "",
                                "s",
                                OptionalDouble.of(-0.2),
                                OptionalDouble.of(-0.4),
                                OptionalDouble.of(0.01),
                                -0.15,
                                -0.3,
                                -1.0e-7,
                                0.07),
                        new TriedEffectRow(
                                1,
                                "entry",
                                "low",
                                "rad",
                                OptionalDouble.empty(),
                                OptionalDouble.empty(),
                                OptionalDouble.empty(),
                                0.004,
                                0.001,
                                0.007,
                                0.0015)));
    }
}
