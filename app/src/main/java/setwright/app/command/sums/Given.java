package setwright.app.command.sums;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import setwright.app.command.BadOption;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;
import setwright.core.car.CarSheet;
import setwright.core.car.worked.Input;
import setwright.core.car.worked.Origin;
import setwright.core.car.worked.Unit;
import setwright.intake.car.CarSheetReader;
import setwright.intake.problem.InputProblem;

/** Finds each value of a sum: the option first, then the car sheet, then what is assumed. */
final class Given {
    private static final Figures FIGURES = Figures.forTerminal(UnitSystem.METRIC);

    private final String sheetName;
    private final Optional<CarSheet> sheet;
    private boolean usesOptions;

    Given(Optional<Path> sheet) {
        this.sheetName = sheet.map(file -> String.valueOf(file.getFileName())).orElse("");
        this.sheet = sheet.map(CarSheetReader::read);
    }

    boolean hasSheet() {
        return sheet.isPresent();
    }

    /** Tells whether any value so far came from an option. */
    boolean usesOptions() {
        return usesOptions;
    }

    /** Returns a value that must be given. */
    Input need(Ask ask, Optional<Double> option) {
        return maybe(ask, option).orElseThrow(() -> missing(ask, ""));
    }

    /** Returns a value that must be given or stand on the sheet. */
    Input need(Ask ask, Optional<Double> option, FromSheet from) {
        return maybe(ask, option, from)
                .orElseThrow(() -> missing(
                        ask,
                        sheet.isPresent()
                                ? "; " + sheetName + " has no '" + from.key() + "'"
                                : ", or a car sheet that says '" + from.key() + "' (--car SHEET)"));
    }

    /** Returns a value, or the assumed one, in the unit asked for. */
    Input need(Ask ask, Optional<Double> option, double assumed) {
        return maybe(ask, option).orElseGet(() -> assumed(ask, assumed));
    }

    /** Returns a value, or the sheet's, or the assumed one, in the unit asked for. */
    Input need(Ask ask, Optional<Double> option, FromSheet from, double assumed) {
        return maybe(ask, option, from).orElseGet(() -> assumed(ask, assumed));
    }

    /** Returns a value if it is given. */
    Optional<Input> maybe(Ask ask, Optional<Double> option) {
        return option.map(value -> {
            usesOptions = true;
            return input(ask, value, Origin.GIVEN);
        });
    }

    /** Returns a value if it is given or stands on the sheet. */
    Optional<Input> maybe(Ask ask, Optional<Double> option, FromSheet from) {
        return maybe(ask, option).or(() -> sheet.flatMap(car -> fromSheet(ask, car, from)));
    }

    private Optional<Input> fromSheet(Ask ask, CarSheet car, FromSheet from) {
        OptionalDouble si = from.si(car, sheetName);
        if (si.isEmpty()) {
            return Optional.empty();
        }
        double value = ask.unit().shown(si.getAsDouble());
        if (!isPossible(ask, value)) {
            throw InputProblem.in(sheetName)
                    .column(from.key())
                    .value(FIGURES.plain(value))
                    .expected(range(ask))
                    .advice("Correct the sheet, or give " + ask.option() + ".")
                    .problem();
        }
        Origin origin = car.assumes(from.key()) ? Origin.ASSUMED : Origin.SHEET;
        return Optional.of(new Input(ask.symbol(), ask.words(), tidy(value), ask.unit(), origin));
    }

    /** Returns the gears, first gear first: numbered letters. */
    List<Input> gears(List<Double> option) {
        List<Double> ratios = option.isEmpty() ? sheet.map(CarSheet::gearRatios).orElse(List.of()) : option;
        Origin origin = option.isEmpty() ? Origin.SHEET : Origin.GIVEN;
        usesOptions |= !option.isEmpty();
        List<Input> gears = new ArrayList<>();
        for (double ratio : ratios) {
            int number = gears.size() + 1;
            Ask ask = new Ask("i_" + number, "gear " + number, Unit.RATIO, 0.1, 20.0, "--gears");
            Input gear = input(ask, ratio, origin);
            if (number > 1 && !(ratio < gears.get(number - 2).value())) {
                throw new BadOption("--gears has " + FIGURES.plain(ratio) + " behind "
                        + FIGURES.plain(gears.get(number - 2).value())
                        + ": expected ratios that fall from first gear on, as in 2.6,1.9,1.5.");
            }
            gears.add(gear);
        }
        if (gears.isEmpty()) {
            throw new BadOption("--gears is missing: give the ratios, first gear first, as in 2.6,1.9,1.5"
                    + (sheet.isPresent()
                            ? "; " + sheetName + " has no 'gear_ratios'."
                            : ", or a car sheet that says 'gear_ratios' (--car SHEET)."));
        }
        return gears;
    }

    private static Input input(Ask ask, double value, Origin origin) {
        if (!isPossible(ask, value)) {
            throw new BadOption(ask.option() + " is " + shown(value) + ": expected " + range(ask) + ".");
        }
        return new Input(ask.symbol(), ask.words(), value, ask.unit(), origin);
    }

    private static Input assumed(Ask ask, double value) {
        return new Input(ask.symbol(), ask.words(), value, ask.unit(), Origin.ASSUMED);
    }

    private static BadOption missing(Ask ask, String alternative) {
        String unit = ask.unit().symbol();
        return new BadOption(ask.option() + " is missing: give the " + ask.words()
                + (unit.isEmpty() ? "" : " in " + unit) + alternative + ".");
    }

    private static boolean isPossible(Ask ask, double value) {
        return value >= ask.least() && value <= ask.most();
    }

    private static String range(Ask ask) {
        String unit = ask.unit().symbol();
        return ask.words() + " from " + FIGURES.plain(ask.least()) + " to " + FIGURES.plain(ask.most())
                + (unit.isEmpty() ? "" : " " + unit);
    }

    private static String shown(double value) {
        return Double.isFinite(value) ? FIGURES.plain(value) : String.valueOf(value);
    }

    /** Takes away what the way to SI units and back added to the last digits. */
    private static double tidy(double value) {
        double grain = 1.0e9;
        return Math.round(value * grain) / grain;
    }
}
