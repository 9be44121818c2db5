package setwright.app.scoreboard;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

/** The page that says how often the answers are right. What people wrote under its last heading is kept. */
final class AccuracyPage {
    private static final String READING = "## Reading";

    private static final String HEAD = """
            # Accuracy

            Setwright's answers on the practice cases, beside the truth of the simulation that made them. %s, commit %s.

            Run again with `./scoreboard`, or `./scoreboard FOLDER` for other cases; after a change of figures
            `./scoreboard --record` writes this page and `accuracy.json`, the floor that `ScoreboardTest` holds every change to.
            The cases are few and all from one simulation: a figure here says what works on them, not how often an answer will be
            right on a real car.

            What counts as right: kinds of laps by overlap in time; a column with its quantity, unit and direction; a zero or bias
            whose error moves the balance angle by less than 0.02 degrees; a corner with its number, direction and an
            apex within 15 m; a top problem whose balance, phase and speed class are all accepted by the truth. Cases marked weak
            and the verdicts on stints of a back-to-back test are not counted. Any finding on a balanced car is a false alarm, and
            so is a setup change called for where the car is not at fault.

            A predicted change of setup counts by its sign, where the true effect is clear of its noise: lap time beyond twice the
            noise that the case gives; balance, by speed class and phase, beyond twice the noise that follows from symmetry. An item
            turned up and turned down should do about the opposite; what both have in common is chance, curvature and the chance in
            the run they are compared with, and 1.71 times its median size over the items is taken for one standard deviation. A
            change that ended in a spin is left out. A sign is claimed when nine tenths of the draws agree on it.
            """;

    private AccuracyPage() {}

    static void write(Path file, Score score, Floor floor) {
        String text = HEAD.formatted(floor.date(), floor.commit())
                + section("Totals", Tables.totals(score).markdown())
                + section("By case", Tables.summary(score).markdown())
                + section("What is wrong", wrong(score))
                + section(
                        "Balance against the balanced car, degrees",
                        "Positive is understeer. The truth compares with the balanced car on the same circuit, the answer with"
                                + " the reference car.\n\n"
                                + Tables.balance(score).markdown() + "\n"
                                + Tables.agreement(score).markdown())
                + predicted(score.predictedChanges())
                + "\n" + READING + "\n" + reading(file);
        try {
            Files.writeString(file, text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String predicted(List<ChangeComparison> changes) {
        return changes.isEmpty()
                ? ""
                : section(
                        "Predicted changes of setup",
                        "Right signs, by item of the sheet and by speed class and phase:\n\n"
                                + ChangeTables.signs(changes).markdown()
                                + "\nRight signs by the probability that was given for them:\n\n"
                                + ChangeTables.calibration(changes).markdown()
                                + "\nSpearman's rank correlation over the changes of a case, and the items whose lap time has the true sign"
                                + " when the higher value is held against the lower one, which leaves the common run out:\n\n"
                                + ChangeTables.ranks(changes).markdown()
                                + "\nThe worst disagreements, in deg or s:\n\n"
                                + ChangeTables.worst(changes).markdown());
    }

    private static String section(String title, String text) {
        return "\n## " + title + "\n\n" + text;
    }

    /** Every answer that is not right, with its truth. */
    private static String wrong(Score score) {
        return score.stints().stream()
                .map(AccuracyPage::wrong)
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining("\n"));
    }

    private static String wrong(Score.OfStint stint) {
        String failure = stint.run().failure().isEmpty()
                ? ""
                : "- ended early at " + stint.run().failure() + "\n";
        String lines = failure
                + stint.rows().stream()
                        .filter(AccuracyPage::isWrong)
                        .map(row -> "- " + row.what().strip() + ": " + row.right() + "; truth: "
                                + orNothing(row.truth()) + "; answer: " + orNothing(row.answer()) + "\n")
                        .collect(Collectors.joining());
        return lines.isEmpty() ? "" : "**" + stint.run().name() + "**\n\n" + lines;
    }

    private static boolean isWrong(Row row) {
        return row.counts().entrySet().stream().anyMatch(entry -> {
            Count count = entry.getValue();
            return entry.getKey().aim() == Measure.Aim.FEW ? count.hit() > 0 : count.hit() < count.of();
        });
    }

    private static String orNothing(String words) {
        return words.isEmpty() ? "-" : words;
    }

    private static String reading(Path file) {
        try {
            String before = Files.exists(file) ? Files.readString(file) : "";
            int at = before.indexOf(READING + "\n");
            return at < 0 ? "\nNot written yet.\n" : before.substring(at + READING.length() + 1);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
