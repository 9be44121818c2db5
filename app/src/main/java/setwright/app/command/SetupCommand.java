package setwright.app.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import setwright.app.json.SetupJsonWriter;
import setwright.app.logbook.SetupDesk;
import setwright.app.logbook.SetupStep;
import setwright.app.text.Sentence;
import setwright.app.text.SetupText;

/** The setups of the cars in the logbook. */
@Command(
        name = "setup",
        description = "Keeps every version of a car's setup: enters, changes, shows, compares and undoes.",
        mixinStandardHelpOptions = true,
        footerHeading = Examples.HEADING,
        footer = {"  setwright setup show", "  setwright setup change rear_bar=-1step --why \"loose at the exit\""})
public final class SetupCommand implements Runnable {
    private static final String CAR = "Name of the car in the logbook; else the car of the last stint.";
    private static final String TOGETHER =
            "Why several items are changed at once; a trial of them is refused without it.";

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(
                spec.commandLine(), "A command is missing: setup new, change, show, diff, use or undo.");
    }

    @Command(
            name = "new",
            description = "Enters a car sheet: a new car, or a new version of a known one.",
            mixinStandardHelpOptions = true,
            footerHeading = Examples.HEADING,
            footer = {
                "  setwright setup new car.yaml",
                "  setwright setup new car.yaml --name \"Car 7\" --why \"new dampers\""
            })
    int enter(
            @Parameters(paramLabel = "SHEET", description = "Car sheet (YAML).") Path sheet,
            @Option(
                            names = "--name",
                            paramLabel = "NAME",
                            description = "What to call the car; else its description on the sheet.")
                    Optional<String> name,
            @Option(names = "--why", paramLabel = "WHY", description = "Why this version is made.")
                    Optional<String> why,
            @Option(names = "--together", paramLabel = "WHY", description = TOGETHER) Optional<String> together,
            @Mixin LogbookOption place)
            throws Exception {
        InputFiles.existing(sheet);
        SetupDesk desk = new SetupDesk(place.place().begin());
        return said(desk.enter(sheet, name, why.orElse(""), together.orElse("")));
    }

    @Command(
            name = "change",
            description = "Changes items of the setup that is on the car, as a new version.",
            mixinStandardHelpOptions = true,
            footerHeading = Examples.HEADING,
            footer = {
                "  setwright setup change rear_bar=-1step --why \"loose at the exit\"",
                "  setwright setup change front_spring=120 rear_spring=110 --together \"one set\""
            })
    int change(
            @Parameters(
                            arity = "1..*",
                            paramLabel = "ITEM=VALUE",
                            description = "What to turn, by its name on the sheet: to a value, or by +1step, -2steps.")
                    List<String> changes,
            @Option(names = "--car", paramLabel = "NAME", description = CAR) Optional<String> car,
            @Option(names = "--why", paramLabel = "WHY", description = "Why it is changed.") Optional<String> why,
            @Option(names = "--together", paramLabel = "WHY", description = TOGETHER) Optional<String> together,
            @Mixin LogbookOption place) {
        SetupDesk desk = new SetupDesk(place.place().open());
        int code = said(desk.change(car, changes, why.orElse(""), together.orElse("")));
        if (changes.size() > 1 && together.isEmpty()) {
            Output.print(
                    spec,
                    "Of " + changes.size()
                            + " changes at once no trial can tell which one did it, unless --together says why they belong"
                            + " together.\n");
        }
        return code;
    }

    @Command(
            name = "use",
            description = "Puts a version back onto the car.",
            mixinStandardHelpOptions = true,
            footerHeading = Examples.HEADING,
            footer = {"  setwright setup use 3"})
    int use(
            @Parameters(paramLabel = "N", description = "Number of the version.") int number,
            @Option(names = "--car", paramLabel = "NAME", description = CAR) Optional<String> car,
            @Mixin LogbookOption place) {
        return said(new SetupDesk(place.place().open()).use(car, number));
    }

    @Command(
            name = "undo",
            description = "Undoes the last change: the version that it was made from is on the car again.",
            mixinStandardHelpOptions = true,
            footerHeading = Examples.HEADING,
            footer = {"  setwright setup undo"})
    int undo(
            @Option(names = "--car", paramLabel = "NAME", description = CAR) Optional<String> car,
            @Mixin LogbookOption place) {
        return said(new SetupDesk(place.place().open()).undo(car));
    }

    @Command(
            name = "show",
            description = "Shows a setup; with --all, all versions and what each changed.",
            mixinStandardHelpOptions = true,
            footerHeading = Examples.HEADING,
            footer = {
                "  setwright setup show",
                "  setwright setup show --all",
                "  setwright setup show 3 --sheet > car.yaml"
            })
    int show(
            @Parameters(
                            arity = "0..1",
                            paramLabel = "N",
                            description = "Number of the version; else the one on the car.")
                    Optional<Integer> number,
            @Option(names = "--all", description = "Lists all versions.") boolean all,
            @Option(names = "--sheet", description = "Prints the car sheet (YAML) with that setup.") boolean sheet,
            @Option(names = "--car", paramLabel = "NAME", description = CAR) Optional<String> car,
            @Option(names = "--json", description = "Prints JSON (docs/setup.schema.json) instead of text.")
                    boolean json,
            @Mixin LogbookOption place) {
        SetupDesk desk = new SetupDesk(place.place().open());
        OptionalInt version = number.stream().mapToInt(Integer::intValue).findFirst();
        if (sheet) {
            Output.print(spec, desk.show(car, version).setup().sheet());
            return ExitCode.DONE;
        }
        List<SetupDesk.Shown> shown = new ArrayList<>(all ? desk.all(car) : List.of(desk.show(car, version)));
        Output.print(
                spec,
                json
                        ? SetupJsonWriter.write(shown)
                        : all
                                ? SetupText.list(shown, Output.terminal(spec))
                                : SetupText.write(shown.get(0), Output.terminal(spec)));
        return ExitCode.DONE;
    }

    @Command(
            name = "diff",
            description = "Says what two versions of a setup do not have alike.",
            mixinStandardHelpOptions = true,
            footerHeading = Examples.HEADING,
            footer = {"  setwright setup diff 3", "  setwright setup diff 3 5 --json"})
    int diff(
            @Parameters(index = "0", paramLabel = "N", description = "Number of the one version.") int from,
            @Parameters(
                            index = "1",
                            arity = "0..1",
                            paramLabel = "M",
                            description = "Number of the other; else the one on the car.")
                    Optional<Integer> to,
            @Option(names = "--car", paramLabel = "NAME", description = CAR) Optional<String> car,
            @Option(names = "--json", description = "Prints JSON (docs/setup-diff.schema.json) instead of text.")
                    boolean json,
            @Mixin LogbookOption place) {
        SetupDesk.Compared compared = new SetupDesk(place.place().open())
                .compare(car, from, to.stream().mapToInt(Integer::intValue).findFirst());
        Output.print(spec, json ? SetupJsonWriter.write(compared) : SetupText.write(compared, Output.terminal(spec)));
        return ExitCode.DONE;
    }

    private int said(SetupStep step) {
        Output.print(spec, Sentence.write(step.words(), Output.terminal(spec)));
        return ExitCode.DONE;
    }
}
