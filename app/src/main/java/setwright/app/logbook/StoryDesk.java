package setwright.app.logbook;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import setwright.app.logbook.Diary.Kind;
import setwright.app.units.Figures;
import setwright.logbook.Logbook;
import setwright.logbook.problem.LogbookProblem;
import setwright.logbook.row.CarRow;
import setwright.logbook.row.EntryRow;
import setwright.logbook.row.StintLineRow;
import setwright.logbook.row.TrialRow;
import setwright.logbook.row.TriedEffectRow;
import setwright.logbook.row.VerdictRow;

/** Reads the story of a logbook, and takes notes. */
public final class StoryDesk {
    /** A page of writing. */
    private static final int LONGEST_NOTE = 4000;

    private final Logbook logbook;

    /** Makes one for a logbook. */
    public StoryDesk(Logbook logbook) {
        this.logbook = logbook;
    }

    /** Returns what was written on a day, in order; without a day on the last one that has anything. */
    public List<EntryRow> day(Optional<LocalDate> day, ZoneId zone) {
        return logbook.look(tables -> {
            Optional<LocalDate> wanted =
                    day.or(() -> tables.entries().last().map(entry -> LocalDate.ofInstant(entry.writtenAt(), zone)));
            return wanted.map(date -> tables.entries()
                            .between(
                                    date.atStartOfDay(zone).toInstant(),
                                    date.plusDays(1).atStartOfDay(zone).toInstant()))
                    .orElse(List.of());
        });
    }

    /** Returns what was written about a stint, in order. */
    public List<EntryRow> about(long stint) {
        return logbook.look(tables -> tables.entries().ofStint(stint));
    }

    /** Returns all cars, in the order in which they came. */
    public List<CarRow> cars() {
        return logbook.look(tables -> tables.cars().all());
    }

    /** Returns all that was ever written, in order. */
    public List<EntryRow> all() {
        return logbook.look(tables -> tables.entries().all());
    }

    /** Returns the entries that hold all words of a text, in order. */
    public List<EntryRow> search(String text) {
        return logbook.look(tables -> tables.search(text));
    }

    /** Returns all stints, in order. */
    public List<StintLineRow> stints() {
        return logbook.look(tables -> tables.stints().lines());
    }

    /**
     * Takes a note.
     *
     * @param stint  that it is about; without one about the day
     */
    public void note(String words, Optional<Long> stint) {
        if (words.isBlank()) {
            throw new LogbookProblem("the note is empty.");
        }
        if (words.length() > LONGEST_NOTE) {
            throw new LogbookProblem(
                    "the note has " + words.length() + " letters; " + LONGEST_NOTE + " are the most. Make two of it.");
        }
        logbook.with(tables -> {
            Optional<KeptStint> about = stint.map(number -> KeptStint.find(tables, Optional.of(number)));
            Diary.write(
                    tables,
                    Kind.NOTE,
                    about.map(found -> found.car().id()),
                    stint,
                    about.map(found -> Figures.capital(found.name()) + ": ").orElse("") + words.strip());
            return words;
        });
    }

    /**
     * A change that was tried.
     *
     * @param trial    as planned
     * @param verdict  the last one; empty when it was never judged
     * @param effects  predicted and measured, the lap time first
     */
    public record Tried(CarRow car, TrialRow trial, Optional<VerdictRow> verdict, List<TriedEffectRow> effects) {
        public Tried {
            effects = List.copyOf(effects);
        }
    }

    /** Returns every change that was ever tried on a car; without a name on all cars. */
    public List<Tried> tried(Optional<String> car) {
        return logbook.look(tables -> {
            List<CarRow> cars = car.isPresent()
                    ? List.of(DrivenCar.known(tables, car))
                    : tables.cars().all();
            List<Tried> tried = new ArrayList<>();
            for (CarRow row : cars) {
                for (TrialRow trial : tables.trials().ofCar(row.id())) {
                    Optional<VerdictRow> verdict = tables.verdicts().last(trial.id());
                    tried.add(new Tried(
                            row,
                            trial,
                            verdict,
                            verdict.map(last -> tables.verdicts().effects(last.id()))
                                    .orElse(List.of())));
                }
            }
            return tried;
        });
    }
}
