package setwright.app.logbook;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import setwright.app.logbook.Diary.Kind;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupItem;
import setwright.intake.car.CarSheetReader;
import setwright.intake.car.SheetText;
import setwright.intake.car.SheetText.Difference;
import setwright.logbook.Tables;
import setwright.logbook.problem.LogbookProblem;
import setwright.logbook.row.CarRow;
import setwright.logbook.row.FittingRow;
import setwright.logbook.row.SetupRow;

/** Versions of setups, and which one is on the car. A version is what it says: the same values again are the same version. */
final class Setups {
    private final Tables tables;

    Setups(Tables tables) {
        this.tables = tables;
    }

    /** Returns the car of that name, new or known. */
    CarRow car(String name) {
        return tables.cars()
                .named(name)
                .orElseGet(() -> tables.cars().get(tables.cars().add(new CarRow(0, name, Diary.now()))));
    }

    /** Returns what is on a car. */
    SetupRow fitted(CarRow car) {
        return fittedIfAny(car)
                .orElseThrow(() -> new LogbookProblem(
                        car.name() + " has no setup yet. Give its sheet: setwright setup new SHEET."));
    }

    Optional<SetupRow> fittedIfAny(CarRow car) {
        return tables.fittings().now(car.id()).map(now -> tables.setups().get(now.setupId()));
    }

    /** Returns a version by its number. */
    SetupRow numbered(CarRow car, int number) {
        return tables.setups()
                .numbered(car.id(), number)
                .orElseThrow(() -> new LogbookProblem(car.name()
                        + " has no setup " + number + ". It has "
                        + tables.setups().ofCar(car.id()).stream()
                                .map(setup -> String.valueOf(setup.number()))
                                .collect(Collectors.joining(", ", "", "."))));
    }

    /**
     * Puts a sheet onto its car: a version that is there already, or a new one.
     *
     * @param why       it is put on; empty when nobody said
     * @param together  why several items belong together; empty when they do not
     */
    SetupStep fit(CarRow car, SheetText sheet, String why, String together) {
        Optional<SetupRow> same = version(car, sheet);
        SetupRow setup = same.orElseGet(() -> make(car, sheet, why, together));
        return fit(car, setup, same.isEmpty(), false, why);
    }

    /** Puts a version onto its car. */
    SetupStep fit(CarRow car, SetupRow setup) {
        return fit(car, setup, false, false, "");
    }

    /** Returns the version that says the same as a sheet; of several the one that is on the car. */
    Optional<SetupRow> version(CarRow car, SheetText sheet) {
        return fittedIfAny(car)
                .filter(setup -> alike(setup, sheet))
                .or(() -> tables.setups().ofCar(car.id()).stream()
                        .filter(setup -> alike(setup, sheet))
                        .findFirst());
    }

    private SetupRow make(CarRow car, SheetText sheet, String why, String together) {
        Optional<SetupRow> before = fittedIfAny(car);
        return tables.setups()
                .get(tables.setups()
                        .add(new SetupRow(
                                0,
                                car.id(),
                                0,
                                before.map(SetupRow::id),
                                sheet.text(),
                                before.map(old -> words(new SheetText(old.sheet()), sheet))
                                        .orElse(""),
                                why,
                                together,
                                Diary.now())));
    }

    private SetupStep fit(CarRow car, SetupRow setup, boolean made, boolean undoes, String why) {
        boolean moved = fittedIfAny(car).map(old -> old.id() != setup.id()).orElse(true);
        SetupStep step = new SetupStep(car, setup, made, moved, why);
        if (moved) {
            tables.fittings().add(new FittingRow(0, setup.id(), undoes, why, Diary.now()));
            Diary.write(tables, Kind.SETUP, car.id(), Optional.empty(), step.words());
        }
        return step;
    }

    /** Returns what was on the car before the last change that was not undone. */
    SetupRow beforeTheLastChange(CarRow car) {
        Deque<Long> changes = new ArrayDeque<>();
        for (FittingRow fitting : tables.fittings().ofCar(car.id())) {
            if (fitting.undoes()) {
                changes.removeLast();
            } else {
                changes.addLast(fitting.setupId());
            }
        }
        SetupRow now = fitted(car);
        changes.removeLast();
        if (changes.isEmpty()) {
            throw new LogbookProblem("nothing was changed on " + car.name() + " that could be undone: setup "
                    + now.number() + " is on it, as it came.");
        }
        return tables.setups().get(changes.getLast());
    }

    /** Puts back what was on the car before the last change that was not undone. */
    SetupStep undo(CarRow car) {
        return fit(car, beforeTheLastChange(car), false, true, "");
    }

    /** Returns the sheet of a version, read. */
    static CarSheet sheet(SetupRow setup) {
        return CarSheetReader.parse("setup " + setup.number(), setup.sheet());
    }

    private static boolean alike(SetupRow setup, SheetText sheet) {
        return new SheetText(setup.sheet()).to(sheet).isEmpty();
    }

    /** Returns what two sheets do not have alike, in words: {@code front_bar 5 to 4 position}. */
    static String words(SheetText from, SheetText to) {
        CarSheet sheet = CarSheetReader.parse("setup", to.text());
        return from.to(to).stream().map(difference -> words(difference, sheet)).collect(Collectors.joining(", "));
    }

    private static String words(Difference difference, CarSheet sheet) {
        String unit = sheet.item(difference.key())
                .filter(item -> difference.set())
                .map(SetupItem::unit)
                .filter(text -> !text.isEmpty())
                .map(text -> " " + text)
                .orElse("");
        String from = difference.from().isEmpty() ? "nothing" : difference.from();
        String to = difference.to().isEmpty() ? "nothing" : difference.to();
        return difference.key() + " " + from + " to " + to + unit;
    }

    /** Returns the facts in which two sheets differ, whatever they are set to. */
    static List<Difference> facts(SheetText from, SheetText to) {
        return from.to(to).stream().filter(difference -> !difference.set()).toList();
    }
}
