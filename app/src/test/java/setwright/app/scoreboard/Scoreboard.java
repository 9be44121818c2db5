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
    private static final String USAGE = "usage: ./scoreboard [CASES_FOLDER] | ./scoreboard --record";

    private Scoreboard() {}

    /**
     * Prints the scoreboard.
     *
     * @param args  nothing, a folder of cases, or {@code --record} for the packaged ones
     */
    public static void main(String[] args) {
        List<String> words = new ArrayList<>(List.of(args));
        boolean record = words.remove("--record");
        boolean understood = words.size() <= (record ? 0 : 1) && words.stream().noneMatch(word -> word.startsWith("-"));
        Path folder = words.isEmpty() ? Home.cases() : Path.of(words.get(0));
        if (!understood || !Files.isDirectory(folder)) {
            System.err.println(understood ? "scoreboard: no folder " + folder : USAGE);
            System.exit(2);
        }
        Score score = Score.of(PracticeCase.in(folder), name -> System.err.println("scoreboard: " + name));
        PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        print(score, out);
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
        out.println(Tables.summary(score).text());
        out.println(Tables.totals(score).text());
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
