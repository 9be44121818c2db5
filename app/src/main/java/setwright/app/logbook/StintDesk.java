package setwright.app.logbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import setwright.app.diagnose.Baselines;
import setwright.app.diagnose.Judge;
import setwright.app.diagnose.LapSource;
import setwright.app.diagnose.Progress;
import setwright.app.evidence.Answer;
import setwright.core.baseline.Baseline;
import setwright.core.car.CarSheet;
import setwright.core.circuit.Stint;
import setwright.core.judgement.Diagnosis;
import setwright.core.proposal.LearntEffects;
import setwright.core.proposal.Proposal;
import setwright.intake.columns.RecordingColumns;
import setwright.intake.problem.InputProblem;
import setwright.logbook.Logbook;
import setwright.logbook.problem.LogbookProblem;
import setwright.logbook.row.FindingRow;
import setwright.logbook.row.ProposalRow;
import setwright.logbook.row.VerdictRow;

/** Takes stints out of a logbook to be judged, and notes what was found in them. */
public final class StintDesk {
    private final Logbook logbook;
    private final Judge judge;

    /** Makes one for a logbook, with the judgement it asks. */
    public StintDesk(Logbook logbook, Judge judge) {
        this.logbook = logbook;
        this.judge = judge;
    }

    /**
     * Returns the stint of that number as laps to be judged; without a number the last one. It is held against the last other stint of
     * its car on its circuit of which people said that the car was in good order.
     */
    public KeptLaps laps(Optional<Long> number) {
        return logbook.look(tables -> {
            KeptStint stint = KeptStint.find(tables, number);
            return new KeptLaps(stint, GoodOrder.beside(tables, stint));
        });
    }

    /** Returns the same, held against a reckoned car, whatever people said of other stints. */
    public KeptLaps alone(Optional<Long> number) {
        return new KeptLaps(logbook.look(tables -> KeptStint.find(tables, number)));
    }

    /** Returns stints that are held against each other; where they have not all the same baseline, each without one. */
    public static List<KeptLaps> together(List<KeptLaps> stints) {
        boolean same = stints.stream()
                        .map(one -> one.baseline.map(KeptStint::number))
                        .distinct()
                        .count()
                <= 1;
        return same ? stints : stints.stream().map(KeptLaps::alone).toList();
    }

    /**
     * Returns the same, held against a stint in which the car was in good order.
     *
     * @param good  its number
     * @throws LogbookProblem when it is not of the same car on the same circuit
     */
    public KeptLaps laps(Optional<Long> number, long good) {
        KeptStint stint = logbook.look(tables -> KeptStint.find(tables, number));
        KeptStint baseline = logbook.look(tables -> KeptStint.find(tables, Optional.of(good)));
        if (baseline.number() == stint.number()) {
            throw new LogbookProblem(
                    stint.name() + " cannot be held against itself: name another stint as its baseline.");
        }
        if (baseline.car().id() != stint.car().id()
                || baseline.circuit().id() != stint.circuit().id()) {
            throw new LogbookProblem(baseline.name() + " is no baseline for " + stint.name()
                    + ": it is not of the same car on the same circuit.");
        }
        return new KeptLaps(stint, Optional.of(baseline));
    }

    private Stint laid(KeptStint stint) throws IOException {
        Path file = logbook.recordings().resolve(stint.recording().file());
        mustBeWhole(stint, file);
        return Places.laid(RecordingColumns.read(file), stint.circuit());
    }

    private static void mustBeWhole(KeptStint stint, Path file) throws IOException {
        if (Files.isRegularFile(file)
                && !Digest.of(file).equals(stint.recording().fileDigest())) {
            throw InputProblem.in(String.valueOf(file.getFileName()))
                    .expected("the channels of " + stint.recording().name() + " as they came in")
                    .found("a file that was changed or damaged since")
                    .advice("Bring it back from a copy; it lies in the logbook's folder of recordings.")
                    .problem();
        }
    }

    /**
     * Refuses stints that cannot be held against each other.
     *
     * @throws LogbookProblem when they are not of one car with one setup on one circuit
     */
    public static void mustBelongTogether(List<KeptStint> stints) {
        KeptStint first = stints.get(0);
        for (KeptStint other : stints) {
            if (other.setup().id() != first.setup().id()
                    || other.circuit().id() != first.circuit().id()) {
                throw new LogbookProblem(first.name() + " and " + other.name()
                        + " are not of one car with one setup on one circuit. What a change did is told by setwright trial"
                        + " judge.");
            }
        }
    }

    /** Laps of a stint. */
    public final class KeptLaps implements LapSource {
        private final KeptStint stint;
        private final Optional<KeptStint> baseline;

        KeptLaps(KeptStint stint) {
            this(stint, Optional.empty());
        }

        KeptLaps(KeptStint stint, Optional<KeptStint> baseline) {
            this.stint = stint;
            this.baseline = baseline;
        }

        /** Returns the stint. */
        public KeptStint stint() {
            return stint;
        }

        /** Returns the stint in good order that it is held against. */
        public Optional<KeptStint> baseline() {
            return baseline;
        }

        /** Returns what the answer depends on, in words: the same words, the same answer. */
        public String basis() {
            return basis(stint)
                    + baseline.map(good -> " against " + basis(good)).orElse("");
        }

        private static String basis(KeptStint kept) {
            return "stint " + kept.number() + " setup " + kept.setup().id() + " circuit "
                    + kept.circuit().id();
        }

        private KeptLaps alone() {
            return new KeptLaps(stint);
        }

        @Override
        public String name() {
            return stint.name();
        }

        @Override
        public NamedCar car() {
            return new NamedCar("setup " + stint.setup().number(), Setups.sheet(stint.setup()));
        }

        @Override
        public Answer answer(Progress progress) throws IOException {
            progress.step("car sheet and recording");
            CarSheet car = car().sheet();
            progress.step("laps and corners");
            Stint laid = laid(stint);
            Optional<Baseline> good =
                    baseline.isPresent() ? Optional.of(baseline(baseline.get(), car)) : Optional.empty();
            progress.step("balance and driving");
            Diagnosis diagnosis = judge.diagnose(laid, car, good);
            progress.step("writing");
            return new Answer(
                    diagnosis,
                    car,
                    KeptNotes.read(stint.recording().channels()),
                    stint.recording().remarks().lines().toList());
        }

        private Baseline baseline(KeptStint kept, CarSheet now) throws IOException {
            CarSheet sheet = Setups.sheet(kept.setup());
            Baselines.mustBeOfOneCar(kept.name(), sheet, now);
            return Baselines.of(kept.name(), laid(kept), sheet);
        }

        /** Returns the last verdict on a change of this car, which predictions learn from; 0 when there is none. */
        public long lastVerdict() {
            return logbook.look(tables -> tables.trials().ofCar(stint.car().id()).stream()
                    .flatMap(trial -> tables.verdicts().last(trial.id()).stream())
                    .mapToLong(VerdictRow::id)
                    .max()
                    .orElse(0L));
        }

        @Override
        public LearntEffects learnt() {
            return logbook.look(tables -> Learnt.of(tables, stint.car(), stint.circuit()));
        }

        @Override
        public void found(Answer answer) {
            Diagnosis diagnosis = answer.diagnosis();
            logbook.with(tables -> {
                Optional<String> before = tables.diagnoses()
                        .ofStint(stint.number())
                        .map(row -> words(row.verdict(), tables.diagnoses().findings(row.id())));
                tables.diagnoses().remove(stint.number());
                long id = tables.diagnoses().add(Findings.row(diagnosis, stint.number()));
                List<FindingRow> rows = IntStream.range(0, diagnosis.findings().size())
                        .mapToObj(i -> Findings.row(diagnosis.findings().get(i), id, i + 1))
                        .toList();
                tables.diagnoses().add(rows);
                String now = words(diagnosis.verdict().words(), rows);
                if (!before.equals(Optional.of(now))) {
                    Diary.write(tables, Diary.Kind.DIAGNOSIS, stint.car().id(), Optional.of(stint.number()), now);
                }
                return id;
            });
        }

        private String words(String verdict, List<FindingRow> findings) {
            return "Stint " + stint.number()
                    + baseline.map(good -> ", held against stint " + good.number())
                            .orElse("") + ": " + verdict
                    + findings.stream()
                            .findFirst()
                            .map(first -> "; first problem " + Findings.words(first))
                            .orElse("")
                    + ".";
        }

        @Override
        public void proposed(Proposal proposal) {
            ProposalRow row = Findings.row(proposal, stint.number());
            logbook.with(tables -> {
                Optional<ProposalRow> before = tables.proposals().ofStint(stint.number());
                tables.proposals().remove(stint.number());
                long id = tables.proposals().add(row);
                if (before.isEmpty() || !Findings.alike(before.get(), row)) {
                    Diary.write(
                            tables,
                            Diary.Kind.PROPOSAL,
                            stint.car().id(),
                            Optional.of(stint.number()),
                            "Proposed after stint " + stint.number() + ": " + Findings.words(row) + ".");
                }
                return id;
            });
        }
    }
}
