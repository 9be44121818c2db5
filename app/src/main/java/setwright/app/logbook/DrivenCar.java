package setwright.app.logbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import setwright.core.car.CarSheet;
import setwright.intake.car.CarSheetReader;
import setwright.intake.car.SheetText;
import setwright.intake.car.SheetText.Difference;
import setwright.intake.problem.InputProblem;
import setwright.logbook.Logbook;
import setwright.logbook.Tables;
import setwright.logbook.problem.LogbookProblem;
import setwright.logbook.row.CarRow;
import setwright.logbook.row.SetupRow;
import setwright.logbook.row.StintRow;

/**
 * Which car was driven, with which setup.
 *
 * @param name   of the car
 * @param text   of its sheet with the setup
 * @param sheet    the same, read
 * @param version  of the logbook that it is; empty when it came as a sheet
 */
record DrivenCar(String name, SheetText text, CarSheet sheet, Optional<SetupRow> version) {

    /** Reads a sheet from a file; without a name the car is called by its description, else by the file's name. */
    static DrivenCar fromSheet(Path file, Optional<String> name) throws IOException {
        CarSheet sheet = CarSheetReader.read(file);
        String text = Files.readString(file);
        String fileName = String.valueOf(file.getFileName()).replaceFirst("\\.[A-Za-z]+$", "");
        // Without a description the sheet describes the kind of car that is assumed, which is nobody's name.
        String own = text.lines().anyMatch(line -> line.startsWith("description:")) ? sheet.description() : fileName;
        return new DrivenCar(name.orElse(own), new SheetText(text), sheet, Optional.empty());
    }

    /**
     * Finds out which car is meant.
     *
     * @param sheet  a file; without it the car is one of the logbook
     * @param car    name of a car in the logbook; without it the car of the last stint
     * @param setup  number of the version that was on the car; without it the one that is on it now
     * @param name   of a car that comes with its sheet
     */
    static DrivenCar of(
            Logbook logbook, Optional<Path> sheet, Optional<String> car, OptionalInt setup, Optional<String> name)
            throws IOException {
        if (sheet.isPresent()) {
            if (setup.isPresent()) {
                throw new LogbookProblem(
                        "--setup names a version in the logbook, --car a sheet with a setup of its own. Give one of them.");
            }
            DrivenCar driven = fromSheet(sheet.get(), name);
            logbook.look(tables -> driven.checkFacts(tables, sheet.get()));
            return driven;
        }
        return logbook.look(tables -> {
            CarRow row = known(tables, car);
            Setups setups = new Setups(tables);
            SetupRow version = setup.isPresent() ? setups.numbered(row, setup.getAsInt()) : setups.fitted(row);
            return new DrivenCar(
                    row.name(), new SheetText(version.sheet()), Setups.sheet(version), Optional.of(version));
        });
    }

    /** Returns the car of that name; without a name that of the last stint, or the only one. */
    static CarRow known(Tables tables, Optional<String> name) {
        List<CarRow> all = tables.cars().all();
        if (name.isPresent()) {
            return tables.cars()
                    .named(name.get())
                    .orElseThrow(() -> new LogbookProblem("\"" + name.get()
                            + "\" is neither a car sheet nor a car of the logbook. "
                            + (all.isEmpty() ? "It has none yet: give --car SHEET." : "It has " + names(all) + ".")));
        }
        Optional<StintRow> last = tables.stints().last();
        if (last.isPresent()) {
            return tables.cars().get(last.get().carId());
        }
        if (all.size() != 1) {
            throw new LogbookProblem("Which car? Give --car SHEET"
                    + (all.isEmpty() ? "." : ", or --car with one of " + names(all) + "."));
        }
        return all.get(0);
    }

    private static String names(List<CarRow> cars) {
        return cars.stream().map(row -> "\"" + row.name() + "\"").collect(Collectors.joining(", "));
    }

    /** Two cars of one name would become one, with the effects of the one learnt for the other. */
    private boolean checkFacts(Tables tables, Path file) {
        Optional<SetupRow> before = tables.cars().named(name).flatMap(row -> new Setups(tables).fittedIfAny(row));
        List<Difference> facts = before.map(setup -> Setups.facts(new SheetText(setup.sheet()), text))
                .orElse(List.of());
        if (!facts.isEmpty()) {
            throw InputProblem.in(String.valueOf(file.getFileName()))
                    .expected("the facts of \"" + name + "\" as the logbook has them")
                    .found(facts.stream()
                            .limit(3)
                            .map(fact -> fact.key() + " " + fact.from() + " to " + fact.to())
                            .collect(Collectors.joining(", ")))
                    .advice(
                            "Is it another car? Give it a name with --name. Was the sheet corrected? Enter it with: setwright setup"
                                    + " new " + file.getFileName() + ".")
                    .problem();
        }
        return true;
    }
}
