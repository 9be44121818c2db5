package setwright.app.truthbench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import setwright.app.scoreboard.Home;
import setwright.app.scoreboard.Table;

/** The bench's parts of the page about accuracy: each between two marks, so that nothing else on the page is touched. */
final class BenchPage {
    /** Name of the part without a baseline, and of that with one. */
    static final String ALONE = "truth bench";

    static final String HELD = "truth bench with a baseline";

    private static final String HEAD = """
            ## Truth bench

            Answers on %d random stints of the program's own simulation, seed %d (for reporting; tuning uses seed %d or any other).
            %s, commit %s. %d stints in which the car was lost were driven again in another mood; %d cases in which it always
            was are left out. Run again with `./truthbench`; `./truthbench --record` writes this part of the page and leaves the
            rest alone, as `./scoreboard --record` leaves this part. `truthbench.json` holds a few fixed cases that
            `BenchFloorTest` holds every change to; `./truthbench --floor` writes it.

            **How a case is drawn.** One of the four cars of the invented world; every parameter that its sheet does not settle drawn
            from its prior, cut at 1.5 deviations, then moved until the car is balanced in steady state. A new circuit, or one
            in four times one of the world's. 15 %% balanced cars, 15 %% inconsistent drivers (scatter five to nine times
            that of a steady one), 10 %% faults of technique, the rest faults of the setup: one of the catalogue, with others of the same
            phase, sign, speeds and trigger until the steady state says that the axles' slip differs by 0.4 to 1.2 degrees (or four of
            them are in). A driver with a style of his own, six to twelve flying laps, fuel burnt, bumps; a logger of 50 to
            250 Hz with noise, zero errors, gaps, units, signs and headers of its own. Recording and car sheet are
            written as files and go the way of any user's file. A driver who loses the car tries again in another mood, with 2 %% less
            effort, and every second time with one change less.

            **What is true.** The same driver drives the same car without the fault, learning it anew, with the same random numbers.
            Balance is slip angle front less rear, weighted with lateral acceleration, in the phases of the recorded stint, both
            cars over the same stretches of road; mean over flying laps without a mistake, median over the corners: one corner proves nothing. The phase and speed class (below 94,
            above 144 km/h) with the largest difference name the problem; phases with half of it and speeds with 70 %% are right
            too, and so is "all" where neither end of the speeds goes the other way. A problem is weak, and not counted, below twice the standard error
            over the laps or below 0.19 degrees (a third of what a tenth of roll stiffness share does). The trigger is that of the
            mechanism, and counts where the histories bear it out: in half of the affected corners the difference has half its size
            while that input acts; a steady fault, where it lasts into the middle. What wings do is to be found in the fast corners, and
            counts as steady where the truth's name is all corners or the slow ones. The price is the mean difference of lap
            time. A driver is steady below 0.8 %% of scatter over the laps; as drawn, he scatters 0.6 to 1.3 times as much as a steady
            one, or 5 to 9 times. Any finding on a steady driver's balanced car is a false
            alarm. The judge who knows the car is told its true parameters and the balanced setup, replays both on the recorded laps
            and names the largest difference: where he is wrong, the label lies in how the driver answers the fault.
            Intervals are exact (Clopper and Pearson, 1934), 95 %%.

            """;

    private static final String HABITS = "By age of the habit";

    private static final String STRENGTH = "By strength of what is wrong";
    private static final String SURE_FINDING = "How sure a finding is: of its axle";
    private static final String SURE_TRIGGER = "How sure a trigger is, of findings of the right axle";

    private static final Set<String> CHANGED_BY_A_BASELINE = Set.of(
            "Totals",
            "By fault",
            STRENGTH,
            HABITS,
            "By car",
            "By channels",
            "Misses by kind",
            SURE_FINDING,
            SURE_TRIGGER,
            "Agreement, degrees");

    private static final String HELD_HEAD = """
            ## Truth bench with a baseline

            The same draw, %d stints of seed %d (tuning: %d or any other), each held against another day of the same driver in the car
            without its fault: another mood, the same logger. %s, commit %s. %d stints in which the car was lost were driven again in
            another mood; %d cases in which it always was are left out. Run again with `./truthbench --baseline`; with `--record` it writes
            this part of the page. A fault of technique of a case with an odd number is in the baseline as well; in the others it came since.

            """;

    private BenchPage() {}

    /** Returns all tables with their titles, in order. */
    static Map<String, Table> tables(List<Outcome> outcomes) {
        Map<String, Table> tables = new LinkedHashMap<>();
        tables.put("Totals", BenchTables.totals(outcomes));
        tables.put("By fault", BenchTables.byFault(outcomes));
        tables.put(STRENGTH, BenchTables.byStrength(outcomes));
        tables.put(
                HABITS,
                BenchTables.by(
                        "fault of technique",
                        outcomes.stream()
                                .filter(outcome -> outcome.benchCase().kind() == Kind.TECHNIQUE)
                                .toList(),
                        outcome -> outcome.benchCase().habitInBaseline() ? "in the baseline as well" : "came since"));
        tables.put(
                "By car",
                BenchTables.by(
                        "car", outcomes, outcome -> outcome.benchCase().car().name()));
        tables.put(
                "By channels",
                BenchTables.by(
                        "channels",
                        outcomes,
                        outcome ->
                                outcome.benchCase().logger().channels().name().toLowerCase(java.util.Locale.ROOT)));
        tables.put(
                "By rate",
                BenchTables.by(
                        "rate",
                        outcomes,
                        outcome -> String.format(
                                java.util.Locale.ROOT,
                                "%3.0f Hz",
                                outcome.benchCase().logger().rateHz())));
        tables.put("Misses by kind", BenchTables.misses(outcomes));
        tables.put(
                "Phase, true and answered",
                BenchTables.confusion(
                        "phase",
                        outcomes,
                        outcome -> outcome.problem().orElseThrow().phase().words(),
                        outcome -> outcome.top()
                                .map(finding -> finding.phase().words())
                                .orElse("none")));
        tables.put(
                "Balance, true and answered",
                BenchTables.confusion(
                        "balance",
                        outcomes,
                        outcome -> outcome.problem().orElseThrow().sign().words(),
                        outcome -> outcome.top()
                                .map(finding -> finding.balance().words())
                                .orElse("none")));
        tables.put(
                "Trigger, true and answered",
                BenchTables.confusion(
                        "trigger",
                        outcomes.stream().filter(Outcome::triggerSeen).toList(),
                        outcome -> outcome.benchCase().trigger().word(),
                        outcome -> outcome.top()
                                .map(finding -> finding.trigger().words())
                                .orElse("no finding")));
        tables.put(SURE_FINDING, HowSure.findings(outcomes).table());
        tables.put(SURE_TRIGGER, HowSure.triggers(outcomes).table());
        tables.put("Failures", BenchTables.failures(outcomes));
        tables.put("Excess of balanced cars, degrees", Calibration.healthy(outcomes));
        tables.put("Error of the balance angle, degrees", Calibration.angleError(outcomes));
        tables.put("True differences, degrees", Calibration.faults(outcomes));
        tables.put("Agreement, degrees", Calibration.agreement(outcomes));
        return tables;
    }

    /** Returns the tables that a baseline makes others of. */
    private static Map<String, Table> heldTables(List<Outcome> outcomes) {
        Map<String, Table> held = new LinkedHashMap<>();
        tables(outcomes).forEach((title, table) -> {
            if (CHANGED_BY_A_BASELINE.contains(title)) {
                held.put("With a baseline: " + title.toLowerCase(Locale.ROOT), table);
            }
        });
        return held;
    }

    private static Map<String, Table> aloneTables(List<Outcome> outcomes) {
        Map<String, Table> alone = tables(outcomes);
        alone.remove(HABITS);
        return alone;
    }

    /** Writes the page. */
    static Path record(BenchRun run, BenchOptions options) {
        boolean held = options.baseline();
        StringBuilder text = new StringBuilder((held ? HELD_HEAD : HEAD)
                .formatted(
                        run.outcomes().size(),
                        options.seed(),
                        BenchOptions.TUNING_SEED,
                        LocalDate.now(ZoneOffset.UTC),
                        System.getProperty("setwright.commit", "unknown"),
                        run.lost(),
                        run.undriveable().size()));
        (held ? heldTables(run.outcomes()) : aloneTables(run.outcomes()))
                .forEach((title, table) -> text.append("### ")
                        .append(title)
                        .append("\n\n")
                        .append(table.markdown())
                        .append('\n'));
        try {
            Path page = Home.page();
            Files.writeString(page, with(Files.readString(page), held ? HELD : ALONE, text.toString()));
            return page;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns a page with the text between the marks of a part replaced, or added at the end. */
    static String with(String page, String part, String text) {
        String first = "<!-- " + part + ": begin -->\n";
        String last = "<!-- " + part + ": end -->\n";
        int begin = page.indexOf(first);
        int end = page.indexOf(last);
        if (begin < 0 || end < begin) {
            return page + "\n" + first + "\n" + text + last;
        }
        return page.substring(0, begin) + first + "\n" + text + page.substring(end);
    }
}
