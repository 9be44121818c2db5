package setwright.app.command.sums;

import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import setwright.app.command.BadOption;
import setwright.app.command.ExitCode;
import setwright.app.command.Output;
import setwright.app.json.SumsJsonWriter;
import setwright.app.text.SumsText;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;
import setwright.core.car.worked.Calculation;
import setwright.core.car.worked.ImpossibleSum;
import setwright.intake.problem.InputProblem;

/** What every sum does alike: find the values, work out, show. */
@Command(mixinStandardHelpOptions = true)
abstract class SumCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Option(names = "--json", description = "Prints JSON instead of text.")
    private boolean json;

    /** Returns the car sheet to take values from; none for a sum that needs no car. */
    Optional<Path> car() {
        return Optional.empty();
    }

    /** Returns what is to be shown. */
    abstract List<Calculation> calculations(Given given);

    @Override
    public final Integer call() throws Exception {
        Optional<Path> car = car();
        if (car.isPresent() && !Files.exists(car.get())) {
            throw new NoSuchFileException(car.get().toString());
        }
        Given given = new Given(car);
        List<Calculation> calculations = workedOut(given, car);
        String text = json
                ? SumsJsonWriter.write(calculations)
                : SumsText.write(calculations, Figures.forTerminal(UnitSystem.METRIC), Output.terminal(spec));
        spec.commandLine().getOut().print(text);
        spec.commandLine().getOut().flush();
        return ExitCode.DONE;
    }

    private List<Calculation> workedOut(Given given, Optional<Path> car) {
        try {
            return calculations(given);
        } catch (ImpossibleSum e) {
            if (car.isPresent() && !given.usesOptions()) {
                throw InputProblem.in(String.valueOf(car.get().getFileName()))
                        .expected("values that go together")
                        .found("that " + e.why())
                        .causedBy(e);
            }
            throw new BadOption(Figures.sentence(e.why()));
        }
    }
}
