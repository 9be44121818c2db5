package setwright.app.logbook;

import java.util.List;
import java.util.Optional;
import setwright.app.logbook.Diary.Kind;
import setwright.logbook.Logbook;
import setwright.logbook.Tables;
import setwright.logbook.problem.LogbookProblem;
import setwright.logbook.row.CarRow;
import setwright.logbook.row.TrialAsideRow;
import setwright.logbook.row.TrialRow;

/** The trial of a car that is under way; a car has one at the most. */
public final class OpenTrial {
    private final Logbook logbook;
    private final Optional<String> car;

    /**
     * Makes one for a logbook.
     *
     * @param car  by its name; without a name that of the last stint
     */
    public OpenTrial(Logbook logbook, Optional<String> car) {
        this.logbook = logbook;
        this.car = car;
    }

    /** Returns the trial of a car. */
    static TrialRow of(Tables tables, Optional<String> name) {
        CarRow car = DrivenCar.known(tables, name);
        return tables.trials()
                .open(car.id())
                .orElseThrow(() -> new LogbookProblem("no trial of " + car.name()
                        + " is under way. Plan one with: setwright trial plan; or judge files: setwright trial judge FILE FILE... --car"
                        + " SHEET --car SHEET."));
    }

    /** Refuses a car that has one. */
    static boolean none(Tables tables, CarRow car) {
        tables.trials().open(car.id()).ifPresent(trial -> {
            throw new LogbookProblem("trial " + trial.id() + " (" + trial.changeWords() + ") of " + car.name()
                    + " is under way. Judge it with: setwright trial judge; or give it up with: setwright trial drop.");
        });
        return true;
    }

    /**
     * Gives it up.
     *
     * @return what was given up
     */
    public TrialRow drop() {
        return logbook.with(tables -> {
            TrialRow trial = of(tables, car);
            tables.trials().end(trial.id());
            Diary.write(
                    tables,
                    Kind.TRIAL,
                    trial.carId(),
                    Optional.empty(),
                    "Trial " + trial.id() + " (" + trial.changeWords() + ") is given up.");
            return trial;
        });
    }

    /**
     * Leaves stints out of it.
     *
     * @param why  in words, such as red flag
     */
    public void leaveOut(List<Long> stints, String why) {
        logbook.with(tables -> {
            TrialRow trial = of(tables, car);
            for (long stint : stints) {
                KeptStint.find(tables, Optional.of(stint));
                tables.trials().leaveOut(new TrialAsideRow(trial.id(), stint, why));
                Diary.write(
                        tables,
                        Kind.TRIAL,
                        trial.carId(),
                        Optional.of(stint),
                        "Stint " + stint + " is left out of trial " + trial.id() + ": " + why + ".");
            }
            return trial;
        });
    }
}
