package setwright.app.truthbench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import setwright.app.scoreboard.Count;
import setwright.app.scoreboard.Home;
import setwright.app.scoreboard.Table;
import setwright.app.truthbench.TriggerFit.Named;
import setwright.core.car.CarSheet;
import setwright.core.circuit.StintBuilder;
import setwright.core.judgement.Trigger;
import setwright.core.judgement.TriggerEvidence.Witness;
import setwright.core.judgement.TriggerStudy;
import setwright.core.simulation.truth.TrueTrigger;
import setwright.intake.RecordingReader;
import setwright.intake.car.CarSheetReader;

/**
 * Fits the weights of {@link setwright.core.judgement.TriggerEvidence} and writes how sure a stated probability is. Without
 * arguments: refits on the kept cases, prints the weights and writes the part of the page. With a seed and a folder that
 * {@code ./truthbench --seed S --keep FOLDER} filled: prints a line for each case, for {@code trigger-cases.csv}.
 */
public final class TriggerCalibration {
    private static final String BEGIN = "<!-- trigger: begin -->\n";
    private static final String END = "<!-- trigger: end -->\n";
    private static final double[] EDGES = {0.0, 0.4, 0.55, 0.7, 1.0};

    private TriggerCalibration() {}

    /** Runs it. */
    public static void main(String[] args) throws IOException {
        if (args.length == 2) {
            collect(Long.parseLong(args[0]), Path.of(args[1]));
            return;
        }
        List<TriggerCase> cases = TriggerCase.kept();
        for (Witness witness : List.of(Witness.SETUP, Witness.PHASE)) {
            List<TriggerCase> heard = TriggerFit.heard(cases, witness);
            System.out.printf(
                    Locale.ROOT, "%s: %.2f, %d cases%n", witness, TriggerFit.weight(heard, witness), heard.size());
        }
        Path page = Home.page();
        Files.writeString(page, with(Files.readString(page), text(cases)));
    }

    /** Returns the part of the page. */
    static String text(List<TriggerCase> cases) {
        StringBuilder text = new StringBuilder("""
                ## How sure a trigger is

                On the %d kept cases of the truth bench, seed 1 (for tuning), with a fault of setup or technique, weak ones included: the
                trigger of the largest level, by weights fitted on all other cases (leave one out); right when it is that of the
                mechanism, strictly. The bench's catalogue of faults and the program share the same common practice of what an item acts
                through, so that this is about being sure, not about the practice. Expected calibration error: the distance between
                stated and true share, weighted with the cases. `TriggerCalibration` in the truth bench refits the weights and writes
                this part; intervals are exact (Clopper and Pearson, 1934), 95 %%.

                """.formatted(cases.size()));
        text.append(section(
                "The setup tells (some item stands out)", TriggerFit.heard(cases, Witness.SETUP), Witness.SETUP));
        text.append(section(
                "As if the sheet said nothing (phases alone)", TriggerFit.heard(cases, Witness.PHASE), Witness.PHASE));
        return text.toString();
    }

    private static String section(String title, List<TriggerCase> cases, Witness witness) {
        List<Named> named = TriggerFit.crossValidated(cases, witness);
        return "### " + title + "\n\n" + reliability(named).markdown() + "\n"
                + String.format(Locale.ROOT, "Expected calibration error: %.2f.%n%n", error(named));
    }

    /** The reliability diagram as a table: one row for each range of stated probability. */
    static Table reliability(List<Named> named) {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i + 1 < EDGES.length; i++) {
            List<Named> here = within(named, i);
            if (!here.isEmpty()) {
                rows.add(row(String.format(Locale.ROOT, "%.2f to %.2f", EDGES[i], EDGES[i + 1]), here));
            }
        }
        rows.add(row("all", named));
        return new Table(
                List.of("stated", "mean stated %", "right", "right %", "95 % interval", "stated (-) and right (#)"),
                rows);
    }

    private static List<String> row(String name, List<Named> here) {
        Count count = new Count((int) here.stream().filter(Named::right).count(), here.size());
        double stated = stated(here);
        return List.of(
                name,
                String.format(Locale.ROOT, "%.0f", 100.0 * stated),
                count.toString(),
                String.format(Locale.ROOT, "%.0f", 100.0 * count.share()),
                Interval.of(count).toString(),
                "`" + bar('-', stated) + "` `" + bar('#', count.share()) + "`");
    }

    private static String bar(char mark, double share) {
        return String.valueOf(mark).repeat((int) Math.round(20.0 * share));
    }

    /** Expected calibration error: mean distance between what is stated and what is right, over the ranges. */
    static double error(List<Named> named) {
        double sum = 0.0;
        for (int i = 0; i + 1 < EDGES.length; i++) {
            List<Named> here = within(named, i);
            if (!here.isEmpty()) {
                double right = here.stream().filter(Named::right).count() / (double) here.size();
                sum += here.size() * Math.abs(stated(here) - right) / named.size();
            }
        }
        return sum;
    }

    private static List<Named> within(List<Named> named, int range) {
        return named.stream()
                .filter(each -> each.probability() > EDGES[range] && each.probability() <= EDGES[range + 1])
                .toList();
    }

    private static double stated(List<Named> here) {
        return here.stream().mapToDouble(Named::probability).average().orElse(0.0);
    }

    /** Returns a page with the text between the marks replaced, or added at the end. */
    static String with(String page, String text) {
        int begin = page.indexOf(BEGIN);
        int end = page.indexOf(END);
        return begin < 0 || end < begin
                ? page + "\n" + BEGIN + "\n" + text + END
                : page.substring(0, begin) + BEGIN + "\n" + text + page.substring(end);
    }

    private static void collect(long seed, Path folder) throws IOException {
        try (var folders = Files.list(folder)) {
            folders.sorted()
                    .map(each -> line(seed, each))
                    .flatMap(Optional::stream)
                    .forEach(System.out::println);
        }
    }

    private static Optional<String> line(long seed, Path folder) {
        int number = Integer.parseInt(folder.getFileName().toString().replace("case-", ""));
        BenchCase drawn = CaseDraw.draw(seed, number, Optional.empty());
        if (drawn.kind() != Kind.SETUP && drawn.kind() != Kind.TECHNIQUE) {
            return Optional.empty();
        }
        Path plain = folder.resolve("stint1.csv");
        Path recording = Files.exists(plain) ? plain : folder.resolve("stint1.csv.gz");
        CarSheet sheet = CarSheetReader.read(folder.resolve("car.yaml"));
        var intake = RecordingReader.read(recording, Optional.empty(), Optional.of(sheet));
        return TriggerStudy.ofLargestLevel(StintBuilder.build(intake.recording()), sheet)
                .map(evidence ->
                        new TriggerCase(seed, number, drawn.fault(), answer(drawn.trigger()), evidence).line());
    }

    /** The program's word for a true trigger. */
    private static Trigger answer(TrueTrigger trigger) {
        return switch (trigger) {
            case BRAKE -> Trigger.BRAKE_APPLICATION;
            case TRAIL_BRAKE -> Trigger.BRAKE_RELEASE;
            case ENTRY_SPEED -> Trigger.TURN_IN;
            case THROTTLE -> Trigger.THROTTLE_PICK_UP;
            case BUMP -> Trigger.BUMP;
            case STEADY, SPEED, NONE -> Trigger.NONE;
        };
    }
}
