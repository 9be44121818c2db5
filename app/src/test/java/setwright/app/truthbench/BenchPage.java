package setwright.app.truthbench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import setwright.app.scoreboard.Home;
import setwright.app.scoreboard.Table;

/** The bench's part of the page about accuracy: between two marks, so that nothing else on the page is touched. */
final class BenchPage {
    private static final String BEGIN = "<!-- truth bench: begin -->\n";
    private static final String END = "<!-- truth bench: end -->\n";

    private static final String HEAD = """
            ## Truth bench

            Answers on %d random stints of the program's own simulation, seed %d (reporting; tuning uses seed %d and any other).
            %s, commit %s. %d stints in which the car was lost were driven again in another mood; %d cases in which it always
            was are left out. Run again with `./truthbench`; `./truthbench --record` writes this part of the page.

            """;

    private BenchPage() {}

    /** Returns all tables with their titles, in order. */
    static Map<String, Table> tables(List<Outcome> outcomes) {
        Map<String, Table> tables = new LinkedHashMap<>();
        tables.put("Totals", BenchTables.totals(outcomes));
        tables.put("By fault", BenchTables.byFault(outcomes));
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
        tables.put("Failures", BenchTables.failures(outcomes));
        tables.put("Excess of balanced cars, degrees", Calibration.healthy(outcomes));
        tables.put("Error of the balance angle, degrees", Calibration.angleError(outcomes));
        tables.put("True differences, degrees", Calibration.faults(outcomes));
        tables.put("Agreement, degrees", Calibration.agreement(outcomes));
        return tables;
    }

    /** Writes the page. */
    static Path record(BenchRun run, BenchOptions options) {
        StringBuilder text = new StringBuilder(HEAD.formatted(
                run.outcomes().size(),
                options.seed(),
                BenchOptions.TUNING_SEED,
                LocalDate.now(ZoneOffset.UTC),
                System.getProperty("setwright.commit", "unknown"),
                run.lost(),
                run.undriveable().size()));
        tables(run.outcomes())
                .forEach((title, table) -> text.append("### ")
                        .append(title)
                        .append("\n\n")
                        .append(table.markdown())
                        .append('\n'));
        try {
            Path page = Home.page();
            Files.writeString(page, with(Files.readString(page), text.toString()));
            return page;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns a page with the text between the marks replaced, or added at the end. */
    static String with(String page, String text) {
        int begin = page.indexOf(BEGIN);
        int end = page.indexOf(END);
        if (begin < 0 || end < begin) {
            return page + "\n" + BEGIN + "\n" + text + END;
        }
        return page.substring(0, begin) + BEGIN + "\n" + text + page.substring(end);
    }
}
