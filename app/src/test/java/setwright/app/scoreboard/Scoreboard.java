package setwright.app.scoreboard;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;

/** Runs the practice cases and prints truth against answer; started by {@code ./scoreboard}. */
public final class Scoreboard {
    private static final String USAGE = "usage: ./scoreboard [--changes] [CASES_FOLDER] | ./scoreboard --record";

    private Scoreboard() {}

    /**
     * Prints the scoreboard.
     *
     * @param args  nothing, a folder of cases, {@code --changes} for every predicted change in full instead, or {@code --record}
     *     for the packaged cases
     */
    public static void main(String[] args) {
        List<String> words = new ArrayList<>(List.of(args));
        boolean record = words.remove("--record");
        boolean changes = words.remove("--changes");
        boolean understood = words.size() <= (record ? 0 : 1)
                && !(record && changes)
                && words.stream().noneMatch(word -> word.startsWith("-"));
        Path folder = words.isEmpty() ? Home.cases() : Path.of(words.get(0));
        if (!understood || !Files.isDirectory(folder)) {
            System.err.println(understood ? "scoreboard: no folder " + folder : USAGE);
            System.exit(2);
        }
        Score score = Score.of(PracticeCase.in(folder), name -> System.err.println("scoreboard: " + name));
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        if (changes) {
            printChanges(score, out);
        } else {
            print(score, out);
        }
        if (record) {
            record(score);
        }
    }

    private static void print(Score score, PrintStream out) {
        for (Score.OfStint stint : score.stints()) {
            Truth truth = stint.run().practice().truth();
            out.println(stint.run().name() + ": " + truth.label().kind().replace('_', ' ') + ", "
                    + truth.label().fault());
            if (!stint.run().failure().isEmpty()) {
                out.println("ended early at " + stint.run().failure());
            }
            out.println(Tables.details(stint).text());
        }
        out.println("Balance against the balanced car, degrees, positive is understeer\n");
        out.println(Tables.balance(score).text());
        out.println(Tables.agreement(score).text());
        List<ChangeComparison> changes = score.predictedChanges();
        if (!changes.isEmpty()) {
            out.println("Predicted changes\n");
            printSums(changes, out);
        }
        out.println(Tables.summary(score).text());
        out.println(Tables.totals(score).text());
    }

    private static void printChanges(Score score, PrintStream out) {
        out.println(
                "Each cell: true effect, * where it is clear of its noise; predicted effect (probability of its sign, %),"
                        + " X where a clear effect got the wrong sign or none. Balance in deg, understeer positive.\n");
        for (Score.OfStint stint : score.stints()) {
            if (!stint.changes().lapTime().isEmpty()) {
                out.println(stint.run().name() + ", " + stint.changes().spun() + " changes with a spin left out"
                        + (stint.run().failure().isEmpty()
                                ? ""
                                : ", ended early at " + stint.run().failure()));
                out.println(ChangeTables.full(stint.changes()).text());
            }
        }
        List<ChangeComparison> changes = score.predictedChanges();
        if (changes.isEmpty()) {
            out.println("Nothing is predicted: there is no predictor yet.");
        } else {
            printSums(changes, out);
        }
    }

    private static void printSums(List<ChangeComparison> changes, PrintStream out) {
        out.println(ChangeTables.ranks(changes).text());
        out.println(ChangeTables.signs(changes).text());
        out.println(ChangeTables.calibration(changes).text());
        out.println(ChangeTables.worst(changes).text());
    }

    private static void record(Score score) {
        Floor floor = new Floor(
                LocalDate.now(ZoneOffset.UTC).toString(),
                System.getProperty("setwright.commit", "unknown"),
                score.totals());
        floor.write(Home.floor());
        AccuracyPage.write(Home.page(), score, floor);
        System.err.println("scoreboard: wrote " + Home.page().getFileName() + " and "
                + Home.floor().getFileName() + "; read the section Reading again and put it right");
    }
}
