package setwright.app.logbook;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import setwright.app.trial.TrialChanges;
import setwright.core.car.CarSheet;
import setwright.core.car.setup.SetupDifference;
import setwright.intake.car.CarSheetReader;
import setwright.intake.car.SheetText;
import setwright.logbook.Logbook;
import setwright.logbook.Tables;
import setwright.logbook.problem.LogbookProblem;
import setwright.logbook.row.CarRow;
import setwright.logbook.row.SetupRow;
import setwright.logbook.row.TrialRow;

/** Works on the setups of the cars in a logbook: each change is a version that can be gone back to. */
public final class SetupDesk {
    private final Logbook logbook;

    /** Makes one for a logbook. */
    public SetupDesk(Logbook logbook) {
        this.logbook = logbook;
    }

    /**
     * A setup of a car with the sheet as read.
     *
     * @param car     it belongs to
     * @param setup   the version
     * @param sheet   read
     * @param fitted  whether it is on the car now
     */
    public record Shown(CarRow car, SetupRow setup, CarSheet sheet, boolean fitted) {}

    /**
     * Two setups of a car.
     *
     * @param from   the one
     * @param to     the other
     * @param items  that they do not have alike
     * @param words  all that differs, facts of the car included
     */
    public record Compared(Shown from, Shown to, List<SetupDifference> items, String words) {
        public Compared {
            items = List.copyOf(items);
        }
    }

    /**
     * Enters a sheet: a new car, or a new version of a known one.
     *
     * @param name  of the car; without it the sheet's description
     * @throws IOException when the sheet cannot be read
     */
    public SetupStep enter(Path sheet, Optional<String> name, String why, String together) throws IOException {
        DrivenCar driven = DrivenCar.fromSheet(sheet, name);
        return logbook.with(tables -> {
            Setups setups = new Setups(tables);
            CarRow car = setups.car(driven.name());
            allowed(tables, car, driven.sheet());
            return setups.fit(car, driven.text(), why, together);
        });
    }

    /** Changes items of the setup that is on a car. */
    public SetupStep change(Optional<String> car, List<String> words, String why, String together) {
        return logbook.with(tables -> {
            Setups setups = new Setups(tables);
            CarRow row = DrivenCar.known(tables, car);
            SetupRow now = setups.fitted(row);
            SheetText changed = SetupEdit.of(new SheetText(now.sheet()), Setups.sheet(now), words);
            allowed(tables, row, CarSheetReader.parse("the changed setup", changed.text()));
            return setups.fit(row, changed, why, together);
        });
    }

    /** Puts a version back onto its car. */
    public SetupStep use(Optional<String> car, int number) {
        return logbook.with(tables -> {
            Setups setups = new Setups(tables);
            CarRow row = DrivenCar.known(tables, car);
            SetupRow wanted = setups.numbered(row, number);
            allowed(tables, row, Setups.sheet(wanted));
            return setups.fit(row, wanted);
        });
    }

    /** Undoes the last change. */
    public SetupStep undo(Optional<String> car) {
        return logbook.with(tables -> {
            Setups setups = new Setups(tables);
            CarRow row = DrivenCar.known(tables, car);
            allowed(tables, row, Setups.sheet(setups.beforeTheLastChange(row)));
            return setups.undo(row);
        });
    }

    /** Returns a version; without a number the one that is on the car. */
    public Shown show(Optional<String> car, OptionalInt number) {
        return logbook.look(tables -> shown(tables, DrivenCar.known(tables, car), number));
    }

    /** Returns all versions of a car, in order. */
    public List<Shown> all(Optional<String> car) {
        return logbook.look(tables -> {
            CarRow row = DrivenCar.known(tables, car);
            return tables.setups().ofCar(row.id()).stream()
                    .map(setup -> shown(tables, row, OptionalInt.of(setup.number())))
                    .toList();
        });
    }

    /** Returns what two versions do not have alike. */
    public Compared compare(Optional<String> car, int from, OptionalInt to) {
        return logbook.look(tables -> {
            CarRow row = DrivenCar.known(tables, car);
            Shown one = shown(tables, row, OptionalInt.of(from));
            Shown other = shown(tables, row, to);
            return new Compared(
                    one,
                    other,
                    SetupDifference.between(one.sheet(), other.sheet()),
                    Setups.words(
                            new SheetText(one.setup().sheet()),
                            new SheetText(other.setup().sheet())));
        });
    }

    private static Shown shown(Tables tables, CarRow car, OptionalInt number) {
        Setups setups = new Setups(tables);
        SetupRow fitted = setups.fitted(car);
        SetupRow setup = number.isPresent() ? setups.numbered(car, number.getAsInt()) : fitted;
        return new Shown(car, setup, Setups.sheet(setup), setup.id() == fitted.id());
    }

    /** While a trial is under way, the car has its first setup or the change that is tried; anything else would spoil it. */
    private static void allowed(Tables tables, CarRow car, CarSheet wanted) {
        Optional<TrialRow> open = tables.trials().open(car.id());
        if (open.isEmpty()) {
            return;
        }
        TrialRow trial = open.get();
        List<SetupDifference> changes =
                SetupDifference.between(Setups.sheet(tables.setups().get(trial.beforeId())), wanted);
        if (!changes.isEmpty() && !TriedChange.is(tables, trial, changes)) {
            throw new LogbookProblem("trial " + trial.id() + " (" + trial.changeWords() + ") of " + car.name()
                    + " is under way, and this would also change what it compares: "
                    + TrialChanges.words(changes)
                    + " against its first run. Judge it first (setwright trial judge), or give it"
                    + " up (setwright trial drop).");
        }
    }
}
