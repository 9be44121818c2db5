package setwright.app.story;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import setwright.app.sweep.SweepAnswer;
import setwright.app.units.Figures;
import setwright.core.simulation.sweep.SetupSweep;
import setwright.core.simulation.sweep.SweepItem;
import setwright.core.simulation.sweep.SweptLap;

/** What laps over setup items say, in sentences. */
public final class SweepStory {
    /** What the calculation can tell apart, s: see docs/simulation.md. */
    private static final double TELLABLE_S = 0.02;

    private static final int OUT_OF_SIGHT = 12;

    private final SweepAnswer answer;
    private final SetupSweep sweep;
    private final Figures figures;

    /** Makes the words of an answer. */
    public SweepStory(SweepAnswer answer, Figures figures) {
        this.answer = answer;
        this.sweep = answer.sweep();
        this.figures = figures;
    }

    /** Returns the answer in a sentence. */
    public String headline() {
        double spread = sweep.laps().stream().mapToDouble(SweptLap::timeS).max().orElseThrow()
                - sweep.quickest().timeS();
        String items = Figures.words(
                sweep.items().stream().map(item -> item.item().name()).toList());
        if (spread < TELLABLE_S) {
            return items + " " + (sweep.items().size() == 1 ? "makes" : "make") + " no difference to lap time that this"
                    + " calculation can tell (under " + figures.seconds(TELLABLE_S, 2) + ").";
        }
        double gain = sweep.present().timeS() - sweep.quickest().timeS();
        if (gain < TELLABLE_S) {
            return items + ": the present setup is as quick as any" + inRange() + ".";
        }
        return "Quickest with " + setting(sweep.quickest()) + ": " + figures.seconds(gain, 2)
                + " a lap under the present " + values(sweep.present()) + ".";
    }

    private String inRange() {
        return ", to " + figures.seconds(TELLABLE_S, 2) + " of lap time";
    }

    /** Returns the values of a lap with their units. */
    public String setting(SweptLap lap) {
        return Figures.words(IntStream.range(0, sweep.items().size())
                .mapToObj(i -> sweep.items().get(i).item().name() + " "
                        + value(i, lap.values().get(i)))
                .toList());
    }

    private String values(SweptLap lap) {
        return Figures.words(IntStream.range(0, sweep.items().size())
                .mapToObj(i -> value(i, lap.values().get(i)))
                .toList());
    }

    /** Returns a value of an item with its unit. */
    public String value(int item, double value) {
        String unit = sweep.items().get(item).item().unit();
        return figures.plain(value) + (unit.isEmpty() ? "" : Figures.KEPT_TOGETHER + unit);
    }

    /** Returns remarks on the answer: ends of ranges, what balance does. */
    public List<String> remarks() {
        List<String> remarks = new ArrayList<>();
        double gain = sweep.present().timeS() - sweep.quickest().timeS();
        for (int i = 0; gain >= TELLABLE_S && i < sweep.items().size(); i++) {
            SweepItem item = sweep.items().get(i);
            double best = sweep.quickest().values().get(i);
            if (best == item.values().get(0)
                    || best == item.values().get(item.values().size() - 1)) {
                remarks.add("The quickest " + item.item().name()
                        + " is at the end of what was tried: the best may lie beyond,"
                        + " or something else decides first.");
            }
        }
        if (sweep.items().size() == 1) {
            balance().ifPresent(remarks::add);
        }
        return remarks;
    }

    private java.util.Optional<String> balance() {
        SweptLap first = sweep.laps().get(0);
        SweptLap last = sweep.laps().get(sweep.laps().size() - 1);
        OptionalDouble slow = change(first, last, sweep.slowCorners());
        OptionalDouble fast = change(first, last, sweep.fastCorners());
        if (slow.isEmpty()) {
            return java.util.Optional.empty();
        }
        String range = value(0, first.values().get(0)) + " to "
                + value(0, last.values().get(0));
        return java.util.Optional.of("From " + range + " the balance moves by " + figures.degrees(slow.getAsDouble())
                + " in slow corners"
                + (fast.isPresent() ? " and " + figures.degrees(fast.getAsDouble()) + " in fast ones" : "")
                + "; + is toward understeer.");
    }

    private static OptionalDouble change(SweptLap first, SweptLap last, java.util.Set<Integer> corners) {
        OptionalDouble from = first.balanceRad(corners);
        OptionalDouble to = last.balanceRad(corners);
        return from.isPresent() && to.isPresent()
                ? OptionalDouble.of(to.getAsDouble() - from.getAsDouble())
                : OptionalDouble.empty();
    }

    /** Returns where, with which car, and how many laps. */
    public List<String> facts() {
        return List.of(
                answer.circuit().name(),
                answer.car().description(),
                answer.recording()
                        .map(name -> "car fitted to the laps of " + name)
                        .orElse("car as on its sheet"),
                sweep.laps().size() + " setups");
    }

    /** Returns which corners are called slow and fast; empty without corners. */
    public String corners() {
        if (sweep.slowCorners().isEmpty()) {
            return "The circuit has no corners kept with it, so that balance is not shown.";
        }
        String slow = Figures.corners(List.copyOf(sweep.slowCorners()));
        String fast = sweep.fastCorners().isEmpty()
                ? ""
                : "; fast corners: " + Figures.corners(List.copyOf(sweep.fastCorners()));
        return sweep.present().corners().size() > OUT_OF_SIGHT
                ? "Slow corners are the slower half, fast ones the faster half (" + slow + fast + ")."
                : "Slow corners: " + slow + fast + ".";
    }

    /** Returns what such a lap cannot know. */
    public List<String> limits() {
        List<String> limits = new ArrayList<>();
        limits.add(
                "A quasi-steady lap takes the car as always at rest within its own axes: it sees no dampers, no transients and no"
                        + " driver, and a car too nervous to drive looks as good as a calm one.");
        limits.add(
                "The line stays as it is; a driver would adapt it, so that real gains tend to be larger than shown.");
        limits.add("Differences between setups are what to look at; the lap time itself is that of a faultless lap"
                + (answer.recording().isPresent() ? "." : " of a car of which the sheet leaves much to be assumed."));
        limits.add(
                "Where front and rear give out almost together, a car with a locking differential has two limits, and neighbouring"
                        + " settings may differ by a tenth of a second or two for that alone: trust the trend, not a single step.");
        if (!answer.car().assumed().isEmpty() && answer.recording().isEmpty()) {
            limits.add(answer.car().assumed().size()
                    + " values are not on the sheet and assumed (car check lists them). With --recording"
                    + " the car is fitted to laps first.");
        }
        return limits;
    }
}
