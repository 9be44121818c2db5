package setwright.app;

import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import setwright.app.command.AddCommand;
import setwright.app.command.AmendCommand;
import setwright.app.command.BriefCommand;
import setwright.app.command.CarCommand;
import setwright.app.command.CarFitCommand;
import setwright.app.command.DemoCommand;
import setwright.app.command.DeskOpener;
import setwright.app.command.DiagnoseCommand;
import setwright.app.command.Examples;
import setwright.app.command.ExportCommand;
import setwright.app.command.Failures;
import setwright.app.command.LogCommand;
import setwright.app.command.ManualCommand;
import setwright.app.command.MapCommand;
import setwright.app.command.Memory;
import setwright.app.command.PredictCommand;
import setwright.app.command.ProposeCommand;
import setwright.app.command.ServeCommand;
import setwright.app.command.SetupCommand;
import setwright.app.command.SimulateCommand;
import setwright.app.command.SweepCommand;
import setwright.app.command.TrialCommand;
import setwright.app.command.TrialDropCommand;
import setwright.app.command.TrialJudgeCommand;
import setwright.app.command.TrialPlanCommand;
import setwright.app.command.TrialTriedCommand;
import setwright.app.command.fleet.FleetCommand;
import setwright.app.command.sums.SumsCommand;
import setwright.app.diagnose.Diagnoser;
import setwright.app.diagnose.FileDiagnoser;
import setwright.app.fleet.FleetEngine;
import setwright.app.logbook.StintDesk;
import setwright.app.predict.LapReplay;
import setwright.core.car.CarSheet;
import setwright.core.car.model.CarBelief;
import setwright.core.car.model.CarPrior;
import setwright.core.circuit.Circuit;
import setwright.core.identification.CarFit;
import setwright.core.identification.Identifier;
import setwright.core.identification.TracedStint;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Diagnostician;
import setwright.core.proposal.Proposer;
import setwright.core.simulation.sweep.SetupSweep;
import setwright.core.simulation.sweep.SweepItem;
import setwright.core.simulation.sweep.Sweeper;

/** The entry point: hands the arguments to the command that they name. */
@Command(
        name = "setwright",
        description = "Leads from a driver's recorded laps to the next right decision about driver and car.",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {"0:done", "2:wrong usage", "3:bad input", "4:not enough evidence"},
        footerHeading = Examples.HEADING,
        footer = {
            "  setwright demo",
            "  setwright diagnose laps.csv --car car.yaml",
            "  setwright serve",
            "",
            "Advice for a real car is a starting point, to be checked by a qualified person.",
            "Series rules, manufacturer limits and circuit rules come first."
        })
public final class Main implements Runnable {

    /** Commands that describe all of them. */
    private static final Set<String> ABOUT_OTHERS = Set.of("completion", "manual");

    @Spec
    private CommandSpec spec;

    private Main() {}

    /** Runs the program and ends the process with its exit code (0 done, 2 wrong usage, 3 bad input, 4 not enough evidence). */
    public static void main(String[] arguments) {
        System.exit(Memory.watched(() -> commandLineFor(arguments).execute(arguments)));
    }

    /** The command line with all its commands, ready to execute. */
    static CommandLine commandLine() {
        return commandLine(commands().values());
    }

    /** The same with no more commands than arguments name: to describe all of them takes longer than many a command. */
    static CommandLine commandLineFor(String... arguments) {
        Map<String, Supplier<Object>> all = commands();
        Optional<Supplier<Object>> named = Arrays.stream(arguments)
                .findFirst()
                .filter(name -> !ABOUT_OTHERS.contains(name))
                .map(all::get);
        return commandLine(named.map(List::of).orElseGet(() -> List.copyOf(all.values())));
    }

    private static CommandLine commandLine(Collection<Supplier<Object>> commands) {
        CommandLine program = new CommandLine(new Main());
        commands.forEach(command -> program.addSubcommand(command.get()));
        return program.setCaseInsensitiveEnumValuesAllowed(true)
                .setExecutionExceptionHandler(new Failures(System.getenv()));
    }

    /** The commands by their names. */
    private static Map<String, Supplier<Object>> commands() {
        Diagnoser diagnoser = new FileDiagnoser(Diagnostician::diagnose);
        DeskOpener desk = logbook -> new StintDesk(logbook, Diagnostician::diagnose);
        Map<String, Supplier<Object>> commands = new LinkedHashMap<>();
        commands.put("demo", () -> new DemoCommand(diagnoser, Proposer::propose, desk, LapReplay::predict));
        commands.put("diagnose", () -> new DiagnoseCommand(diagnoser, desk, Proposer::propose));
        commands.put("map", MapCommand::new);
        commands.put("predict", () -> new PredictCommand(diagnoser, desk, LapReplay::predict));
        commands.put("propose", () -> new ProposeCommand(diagnoser, desk, Proposer::propose));
        commands.put(
                "car", () -> new CommandLine(new CarCommand()).addSubcommand(new CarFitCommand(diagnoser, Main::fit)));
        commands.put(
                "trial",
                () -> new CommandLine(new TrialCommand())
                        .addSubcommand(new TrialPlanCommand(diagnoser, desk, Proposer::propose, LapReplay::predict))
                        .addSubcommand(new TrialJudgeCommand(diagnoser, desk, LapReplay::predict))
                        .addSubcommand(new TrialDropCommand())
                        .addSubcommand(new TrialTriedCommand()));
        commands.put("add", () -> new AddCommand(desk));
        commands.put("amend", AmendCommand::new);
        commands.put("setup", SetupCommand::new);
        commands.put("log", LogCommand::new);
        commands.put("export", () -> new ExportCommand(diagnoser, desk, Proposer::propose));
        commands.put("brief", () -> new BriefCommand(diagnoser, desk, Proposer::propose));
        commands.put("serve", () -> new ServeCommand(desk, Proposer::propose, LapReplay::predict));
        commands.put("sweep", () -> new SweepCommand(diagnoser, Main::sweep));
        commands.put("sums", SumsCommand::new);
        commands.put("simulate", SimulateCommand::new);
        commands.put("fleet", () -> FleetCommand.with(FleetEngine::find));
        commands.put("completion", Completion::new);
        commands.put("manual", ManualCommand::new);
        return commands;
    }

    private static CarFit fit(List<Diagnosis> diagnoses, CarSheet car) {
        return Identifier.identify(diagnoses.stream().map(Main::laps).toList(), car)
                .fit();
    }

    private static SetupSweep sweep(
            CarSheet car, Optional<Diagnosis> laps, Circuit circuit, List<SweepItem> items, Runnable onLap) {
        double[] parameters = laps.map(diagnosis ->
                        Identifier.identify(List.of(laps(diagnosis)), car).belief())
                .orElseGet(() -> CarBelief.of(CarPrior.of(car)))
                .middle();
        return new Sweeper(car, parameters, circuit).sweep(items, onLap);
    }

    private static TracedStint laps(Diagnosis diagnosis) {
        return new TracedStint(diagnosis.stint(), diagnosis.trace(), diagnosis.passes());
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "A command is missing.");
    }

    /** The version, as the build wrote it into the jar. */
    static final class Version implements IVersionProvider {
        @Override
        public String[] getVersion() {
            String version = Main.class.getPackage().getImplementationVersion();
            return new String[] {"setwright " + Objects.requireNonNullElse(version, "(not packaged)")};
        }
    }

    /** Prints a script that completes commands and options in bash and zsh. */
    @Command(
            name = "completion",
            description = "Prints a script that completes commands and options in bash and zsh.",
            mixinStandardHelpOptions = true,
            footerHeading = Examples.HEADING,
            footer = {"  source <(setwright completion)", "  setwright completion > setwright.bash"})
    static final class Completion implements Runnable {

        @Spec
        private CommandSpec spec;

        @Override
        public void run() {
            CommandLine program = spec.root().commandLine();
            program.getOut().print(AutoComplete.bash("setwright", program));
            program.getOut().flush();
        }
    }
}
