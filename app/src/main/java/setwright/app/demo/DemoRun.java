package setwright.app.demo;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import setwright.app.diagnose.DiagnoseRequest;
import setwright.app.diagnose.Diagnoser;
import setwright.app.diagnose.Progress;
import setwright.app.propose.ChangeProposer;
import setwright.app.simulate.DriverKind;
import setwright.app.simulate.Experiment;
import setwright.app.simulate.Simulation;
import setwright.app.world.RecordingWriter.Form;
import setwright.app.world.WorldCar;
import setwright.core.car.SetupChange;
import setwright.core.judgement.Finding;
import setwright.core.judgement.Verdict;
import setwright.core.proposal.Proposal;
import setwright.core.simulation.driver.DrivenStint;
import setwright.core.simulation.driver.DriverScatter;
import setwright.core.simulation.driver.DriverStyle;
import setwright.core.simulation.fault.Fault;
import setwright.core.simulation.layout.CircuitPlan;
import setwright.core.simulation.logger.LoggerPlan;
import setwright.core.trial.Looks;
import setwright.core.trial.Trial;
import setwright.core.trial.TrialJudge;
import setwright.core.trial.TrialRuns;
import setwright.core.trial.TrialTarget;
import setwright.intake.gather.RecordingFiles;

/** Tells the story: drives its stints, has them judged and does what the answers call for. */
public final class DemoRun {
    /** How many steps are told to the progress. */
    public static final int STEPS = 5;

    private static final int LAPS = 6;
    /** A loose driver loses laps to mistakes, and five that can be read are needed to judge him. */
    private static final int LOOSE_LAPS = 8;

    /** After a spin he goes out again and leaves a little more margin. */
    private static final int LOOSE_TRIES = 5;

    private static final double CAREFUL = 0.98;
    private static final long OTHER_DAY = 1000;

    private static final double RATE_HZ = 50.0;

    private final Diagnoser diagnoser;
    private final ChangeProposer proposer;
    private final WorldCar car;
    private final CircuitPlan circuit;
    private final Optional<Fault> fault;
    private final List<SetupChange> wrong;
    private final long seed;
    private final Path folder;
    private final Path circuitFile;
    private final Simulation simulation = new Simulation();

    /**
     * Prepares a story.
     *
     * @param fault   what is wrong with the car
     * @param size    of the fault
     * @param folder  takes recordings and car sheets
     */
    public DemoRun(
            Diagnoser diagnoser,
            ChangeProposer proposer,
            WorldCar car,
            CircuitPlan circuit,
            Optional<Fault> fault,
            double size,
            long seed,
            Path folder) {
        this.diagnoser = diagnoser;
        this.proposer = proposer;
        this.car = car;
        this.circuit = circuit;
        this.fault = fault;
        this.wrong = fault.map(known -> known.changes(car.sheet(), size)).orElse(List.of());
        this.seed = seed;
        this.folder = folder;
        this.circuitFile = folder.resolve("circuit.json");
    }

    /**
     * Tells it.
     *
     * @throws IOException when a file cannot be written or read
     */
    public DemoStory tell(Progress progress) throws IOException {
        DriverStyle steady = DriverKind.STEADY.style();
        progress.step("two stints: as the driver came, and coached");
        CompletableFuture<DrivenStint> healthy =
                later(experiment(List.of(), steady.withScatter(DriverScatter.NONE), seed));
        CompletableFuture<DrivenStint> faulty = later(experiment(wrong, steady.withScatter(DriverScatter.NONE), seed));
        CompletableFuture<Outing> looseLaps = CompletableFuture.supplyAsync(this::loose);
        Experiment coachedLaps = experiment(wrong, steady, seed + 1);
        DemoStint coached = judged("coached", coachedLaps, simulation.drive(coachedLaps), true);
        DemoStint loose = judged(
                "as-he-came", looseLaps.join().experiment(), looseLaps.join().laps(), false);
        double cost = faulty.join().meanFlyingS() - healthy.join().meanFlyingS();
        Optional<Finding> problem = coached.answer().diagnosis().verdict() == Verdict.CHANGE_THE_CAR
                ? coached.answer().diagnosis().findings().stream().findFirst()
                : Optional.empty();
        if (problem.isEmpty()) {
            return story(
                    loose,
                    coached,
                    problem,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    cost);
        }
        TrialTarget target = TrialTarget.of(problem.get());
        progress.step("technique first");
        Optional<DemoStory.Tried> tried = tried(problem.get(), target, coached, steady);
        progress.step("replaying the laps with every change");
        Optional<Proposal> proposal = Optional.of(
                proposer.propose(coached.answer().diagnosis(), coached.answer().car()));
        if (proposal.get().chosen().isEmpty()) {
            return story(loose, coached, problem, tried, proposal, Optional.empty(), Optional.empty(), cost);
        }
        progress.step("back to back");
        List<SetupChange> change = proposal.get().chosen().get().prediction().changes();
        List<SetupChange> changedSetup = Stream.concat(
                        wrong.stream()
                                .filter(before -> change.stream()
                                        .noneMatch(after -> after.item().equals(before.item()))),
                        change.stream())
                .toList();
        Experiment second = experiment(changedSetup, steady, seed + 3);
        Experiment third = experiment(wrong, steady, seed + 4);
        CompletableFuture<DrivenStint> thirdLaps = later(third);
        DemoStint changed = judged("changed", second, simulation.drive(second), false);
        DemoStint again = judged("before-again", third, thirdLaps.join(), false);
        progress.step("the verdict");
        return story(loose, coached, problem, tried, proposal, Optional.of(changed), Optional.of(again), cost);
    }

    private DemoStory story(
            DemoStint loose,
            DemoStint coached,
            Optional<Finding> problem,
            Optional<DemoStory.Tried> tried,
            Optional<Proposal> proposal,
            Optional<DemoStint> changed,
            Optional<DemoStint> again,
            double cost) {
        Optional<Trial> trial = changed.flatMap(with -> again.map(after -> trial(coached, with, after)));
        return new DemoStory(
                car.sheet().description(),
                circuit.name(),
                fault,
                loose,
                coached,
                problem,
                tried,
                proposal,
                changed,
                again,
                trial,
                cost);
    }

    private static Trial trial(DemoStint before, DemoStint changed, DemoStint after) {
        Optional<TrialTarget> target = TrialTarget.of(before.answer().diagnosis());
        List<TrialRuns.Diagnosed> runs = List.of(before.run(false), changed.run(true), after.run(false));
        return TrialJudge.judge(TrialRuns.of(runs, target), target, Looks.once());
    }

    private Optional<DemoStory.Tried> tried(Finding finding, TrialTarget target, DemoStint before, DriverStyle style)
            throws IOException {
        Optional<Technique> technique = Technique.against(finding, style);
        if (technique.isEmpty()) {
            return Optional.empty();
        }
        Experiment experiment = experiment(wrong, technique.get().style(), seed + 2);
        DemoStint stint = judged("technique", experiment, simulation.drive(experiment), false);
        return Optional.of(new DemoStory.Tried(
                technique.get(),
                stint,
                Difference.of(DemoStint.balanceDeg(List.of(before, stint), target), -1.0, 1.0)
                        .times(target.wanted()),
                Difference.of(List.of(before.lapTimesS(), stint.lapTimesS()), -1.0, 1.0)));
    }

    private record Outing(Experiment experiment, DrivenStint laps) {}

    private Outing loose() {
        DriverStyle style = DriverKind.LOOSE.style();
        Outing outing = outing(style, 0);
        for (int again = 1; again < LOOSE_TRIES && outing.laps().lost().isPresent(); again++) {
            style = style.withEffort(CAREFUL * style.effort());
            outing = outing(style, again);
        }
        return outing;
    }

    private Outing outing(DriverStyle style, int again) {
        Experiment experiment = experiment(wrong, style, LOOSE_LAPS, seed + again * OTHER_DAY);
        return new Outing(experiment, simulation.drive(experiment));
    }

    private Experiment experiment(List<SetupChange> changes, DriverStyle style, long stintSeed) {
        return experiment(changes, style, LAPS, stintSeed);
    }

    private Experiment experiment(List<SetupChange> changes, DriverStyle style, int laps, long stintSeed) {
        return new Experiment(car, circuit, changes, style, laps, LoggerPlan.good(stintSeed, RATE_HZ), stintSeed);
    }

    private CompletableFuture<DrivenStint> later(Experiment experiment) {
        return CompletableFuture.supplyAsync(() -> simulation.drive(experiment));
    }

    private DemoStint judged(String name, Experiment experiment, DrivenStint stint, boolean first) throws IOException {
        Path recording = folder.resolve(name + ".csv");
        Path sheet = folder.resolve(name + "-car.yaml");
        Simulation.write(experiment, stint, Form.USUAL, recording, sheet);
        DiagnoseRequest request = new DiagnoseRequest(
                RecordingFiles.of(recording),
                Optional.of(sheet),
                Optional.empty(),
                first ? Optional.empty() : Optional.of(circuitFile),
                Optional.empty(),
                first ? Optional.of(circuitFile) : Optional.empty(),
                Optional.empty());
        return new DemoStint(name, diagnoser.diagnose(request, Progress.silent()));
    }
}
