package setwright.app.logbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import setwright.app.logbook.Diary.Kind;
import setwright.core.baseline.Baseline;
import setwright.logbook.Logbook;
import setwright.logbook.problem.LogbookProblem;
import setwright.logbook.row.DriverRow;
import setwright.logbook.row.SetupRow;
import setwright.logbook.row.StintRow;

/** Corrects what was said of stints. What was found in one with the wrong setup is forgotten; verdicts stand as they were given. */
public final class Amending {
    private final Logbook logbook;

    /** Makes one for a logbook. */
    public Amending(Logbook logbook) {
        this.logbook = logbook;
    }

    /** What is to be corrected; the rest stays. */
    public record Amendment(
            Optional<String> driver,
            Optional<Integer> setup,
            OptionalInt tyreAgeLaps,
            OptionalDouble trackCelsius,
            OptionalDouble fuelStartKg,
            Optional<Boolean> goodOrder) {
        /** Returns what says of the car's order, and nothing else. */
        public static Amendment order(boolean good) {
            return new Amendment(
                    Optional.empty(),
                    Optional.empty(),
                    OptionalInt.empty(),
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    Optional.of(good));
        }
    }

    /**
     * Corrects a stint.
     *
     * @return what was corrected, in a sentence
     */
    public String amend(long number, Amendment amendment) {
        return logbook.with(tables -> {
            KeptStint stint = KeptStint.find(tables, Optional.of(number));
            List<String> words = new ArrayList<>();
            DriverRow driver =
                    amendment.driver().map(tables.drivers()::knownOrNew).orElse(stint.driver());
            if (driver.id() != stint.driver().id()) {
                words.add("driver " + driver.name() + " (was " + stint.driver().name() + ")");
            }
            SetupRow setup = amendment
                    .setup()
                    .map(version -> new Setups(tables).numbered(stint.car(), version))
                    .orElse(stint.setup());
            if (setup.id() != stint.setup().id()) {
                words.add("setup " + setup.number() + " (was " + stint.setup().number() + ")");
                tables.diagnoses().remove(number);
                tables.proposals().remove(number);
            }
            amendment.tyreAgeLaps().ifPresent(laps -> words.add("tyres " + laps + " laps old"));
            amendment.trackCelsius().ifPresent(celsius -> words.add("track at " + celsius + " degrees Celsius"));
            amendment.fuelStartKg().ifPresent(kg -> words.add("fuel " + kg + " kg"));
            StintRow row = stint.stint();
            boolean good = amendment.goodOrder().orElse(row.goodOrder());
            if (good != row.goodOrder()) {
                words.add(good ? inGoodOrder(stint) : "the car no longer counts as in good order");
            }
            tables.stints()
                    .correct(new StintRow(
                            row.id(),
                            row.recordingId(),
                            row.carId(),
                            setup.id(),
                            driver.id(),
                            row.circuitId(),
                            row.laps(),
                            row.goodLaps(),
                            row.bestS(),
                            row.meanS(),
                            amendment.tyreAgeLaps().isPresent() ? amendment.tyreAgeLaps() : row.tyreAgeLaps(),
                            amendment.trackCelsius().isPresent() ? amendment.trackCelsius() : row.trackCelsius(),
                            amendment.fuelStartKg().isPresent() ? amendment.fuelStartKg() : row.fuelStartKg(),
                            good,
                            row.addedAt()));
            String sentence = "Stint " + number + " is corrected: "
                    + (words.isEmpty() ? "nothing differs" : String.join(", ", words)) + ".";
            Diary.write(tables, Kind.STINT, row.carId(), Optional.of(number), sentence);
            return sentence;
        });
    }

    private static String inGoodOrder(KeptStint stint) {
        if (!stint.canBeBaseline()) {
            throw new LogbookProblem(
                    stint.name() + " has " + stint.stint().goodLaps() + " laps that can be judged; at least "
                            + Baseline.FEWEST_LAPS + " are needed to hold others against.");
        }
        return "the car was in good order; other stints of " + stint.car().name() + " at "
                + stint.circuit().name() + " are held against it";
    }
}
