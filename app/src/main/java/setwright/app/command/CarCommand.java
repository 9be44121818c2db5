package setwright.app.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import setwright.app.text.Paint;
import setwright.app.text.TextTable;
import setwright.app.units.Figures;
import setwright.core.car.CarSheet;
import setwright.intake.car.CarSheetReader;

/** What is known of a car. */
@Command(
        name = "car",
        description = "Works with car sheets.",
        mixinStandardHelpOptions = true,
        subcommands = CarCommand.Check.class)
public final class CarCommand implements Runnable {
    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(
                spec.commandLine(), "A command is missing: car check SHEET or car fit FILE --car SHEET.");
    }

    /** Says what a sheet gives and what is assumed. */
    @Command(
            name = "check",
            description = "Checks a car sheet and says what is given and what is assumed.",
            mixinStandardHelpOptions = true)
    static final class Check implements Callable<Integer> {
        private static final int WIDTH = 100;

        @Spec
        private CommandSpec spec;

        @Parameters(paramLabel = "SHEET", description = "Car sheet (YAML).")
        private Path sheet;

        @Override
        public Integer call() {
            CarSheet car = CarSheetReader.read(sheet);
            PrintWriter out = spec.commandLine().getOut();
            out.println(car.description());
            table(
                            List.of("value", "is", "unit"),
                            List.of(
                                    row("driven axle", car.drivenAxle().name().toLowerCase(Locale.ROOT), ""),
                                    row("mass with driver", car.massKg(), 0, "kg"),
                                    row("fuel at the start", car.fuelStartKg(), 1, "kg"),
                                    row("weight on the front axle", 100.0 * car.frontWeightShare(), 1, "%"),
                                    row("wheelbase", car.wheelbaseM(), 3, "m"),
                                    row("track, front", car.trackFrontM(), 3, "m"),
                                    row("track, rear", car.trackRearM(), 3, "m"),
                                    row("centre of mass height", car.centreOfMassHeightM(), 3, "m"),
                                    row("steering ratio", car.steeringRatio(), 2, ""),
                                    row("tyre radius", car.tyreRadiusM(), 3, "m"),
                                    row("downforce", car.downforce().name().toLowerCase(Locale.ROOT), "")))
                    .lines(WIDTH, Paint.PLAIN)
                    .forEach(out::println);
            if (!car.setup().isEmpty()) {
                out.println();
                table(
                                List.of("setup item", "now", "unit", "from", "to", "step"),
                                car.setup().stream()
                                        .map(item -> cells(
                                                item.name(),
                                                plain(item.value()),
                                                item.unit(),
                                                plain(item.min()),
                                                plain(item.max()),
                                                plain(item.step())))
                                        .toList())
                        .lines(WIDTH, Paint.PLAIN)
                        .forEach(out::println);
            }
            out.println();
            if (car.assumed().isEmpty()) {
                out.println("Nothing is assumed.");
            } else {
                out.println("Assumed, because the sheet does not give it:");
                car.assumed().forEach(line -> out.println("  " + Figures.sentence(line)));
            }
            out.flush();
            return ExitCode.DONE;
        }

        private static TextTable table(List<String> headings, List<List<TextTable.Cell>> rows) {
            return new TextTable(
                    headings.stream()
                            .map(heading -> new TextTable.Column(heading, isNumeric(heading), 1))
                            .toList(),
                    rows);
        }

        private static boolean isNumeric(String heading) {
            return List.of("is", "now", "from", "to", "step").contains(heading);
        }

        private static List<TextTable.Cell> row(String name, double value, int decimals, String unit) {
            return cells(name, String.format(Locale.ROOT, "%." + decimals + "f", value), unit);
        }

        private static List<TextTable.Cell> row(String name, String value, String unit) {
            return cells(name, value, unit);
        }

        private static List<TextTable.Cell> cells(String... texts) {
            return List.of(texts).stream().map(TextTable.Cell::of).toList();
        }

        private static String plain(double value) {
            return java.math.BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
        }
    }
}
