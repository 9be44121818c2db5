package setwright.app.truthbench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import setwright.app.scoreboard.Home;
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
    static final double[] EDGES = {0.0, 0.4, 0.55, 0.7, 1.0};

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
        Reliability reliability = new Reliability(TriggerFit.crossValidated(cases, witness), EDGES);
        return "### " + title + "\n\n" + reliability.table().markdown() + "\n"
                + String.format(Locale.ROOT, "Expected calibration error: %.2f.%n%n", reliability.error());
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
