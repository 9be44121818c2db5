package setwright.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import setwright.app.diagnose.DiagnoseRequest;
import setwright.app.diagnose.FileDiagnoser;
import setwright.app.diagnose.Progress;
import setwright.app.evidence.Answer;
import setwright.app.export.ExportTables;
import setwright.app.export.Format;
import setwright.app.export.Material;
import setwright.app.export.TableWriter;
import setwright.app.failure.Trouble;
import setwright.app.units.UnitSystem;
import setwright.core.judgement.Diagnostician;
import setwright.core.judgement.Verdict;

/** What the command line says of the recordings of an invented tree, one after the other and without Spark. */
final class OneMachine {
    static final List<String> EXPORTED = List.of("laps", "passes", "phases", "findings", "faults");
    /** Recording, driver, car, date, session. */
    private static final int IN_FRONT = 5;
    /** As car sheets write it, read here by other means than the program's. */
    private static final Pattern ITEM =
            Pattern.compile("^  ([a-z_]+): \\{value: ([^,}]+), unit: ([^,}]+)[,}].*$", Pattern.MULTILINE);

    private final Path tree;
    private final Map<String, Answer> answers = new TreeMap<>();
    private final Map<String, String> troubles = new TreeMap<>();

    /**
     * Judges all that have a sheet.
     *
     * @param circuit  that the tables keep
     */
    OneMachine(Path tree, Path circuit) throws IOException {
        this.tree = tree;
        for (Path recording : recordings(tree)) {
            Path sheet = recording.resolveSibling("car.yaml");
            if (Files.exists(sheet)) {
                String name = tree.relativize(recording).toString();
                try {
                    answers.put(
                            name,
                            new FileDiagnoser(Diagnostician::diagnose)
                                    .diagnose(
                                            DiagnoseRequest.of(
                                                    recording,
                                                    Optional.of(sheet),
                                                    Optional.empty(),
                                                    Optional.of(circuit)),
                                            Progress.silent()));
                } catch (IOException | RuntimeException e) {
                    troubles.put(name, Trouble.of(e).message());
                }
            }
        }
    }

    static List<Path> recordings(Path tree) throws IOException {
        try (Stream<Path> all = Files.walk(tree)) {
            return all.filter(file -> file.toString().matches(".*\\.(csv|parquet)"))
                    .sorted()
                    .toList();
        }
    }

    /** Returns how many have a verdict. */
    int judged() {
        return (int) answers.values().stream()
                .filter(answer -> answer.diagnosis().verdict() != Verdict.NOT_ENOUGH_EVIDENCE)
                .count();
    }

    /** Returns why a recording has its verdict or none. */
    String reason(String recording) {
        Answer answer = answers.get(recording);
        return answer != null ? answer.diagnosis().reason() : troubles.getOrDefault(recording, "");
    }

    /** Holds tables to the same answers: bit for bit, none of them empty, and no row of anything else. */
    void isEqualledBy(Path out, Path folder) throws IOException {
        for (String table : EXPORTED) {
            List<Path> files = Rows.files(out.resolve(table));
            List<List<Object>> all = new ArrayList<>();
            for (Map.Entry<String, Answer> one : answers.entrySet()) {
                Path alone = folder.resolve("alone.parquet");
                new TableWriter(
                                ExportTables.named(table).orElseThrow(),
                                Material.of(List.of(new Material.Laps(
                                        one.getKey().replaceFirst(".*/", ""), one.getValue(), Optional.empty()))),
                                Format.PARQUET,
                                UnitSystem.METRIC)
                        .write(alone);
                List<String> columns = Rows.columns(files.get(0));
                assertThat(columns.subList(IN_FRONT, columns.size())).isEqualTo(Rows.columns(alone));
                List<List<Object>> expected = Rows.of(List.of(alone), "");
                assertThat(written(files, one.getKey()))
                        .as(table + " of " + one.getKey())
                        .isEqualTo(expected);
                all.addAll(expected);
                Files.delete(alone);
            }
            assertThat(all).as(table).isNotEmpty();
            assertThat(Rows.of(files, "")).as("no row of anything else").hasSize(all.size());
        }
        List<Path> setups = Rows.files(out.resolve("setups"));
        int items = 0;
        for (String recording : answers.keySet()) {
            List<List<@Nullable Object>> expected =
                    setup(Files.readString(tree.resolve(recording).resolveSibling("car.yaml")));
            assertThat(expected).hasSizeGreaterThan(10);
            assertThat(written(setups, recording))
                    .as("setup of " + recording)
                    .map(row -> new ArrayList<>(row))
                    .isEqualTo(expected);
            items += expected.size();
        }
        assertThat(Rows.of(setups, "")).hasSize(items);
    }

    private static List<List<Object>> written(List<Path> files, String recording) {
        return Rows.without(IN_FRONT, Rows.of(files, "WHERE recording = '" + recording + "'"));
    }

    /** Item, value as its 64 bits, unit, no word. */
    private static List<List<@Nullable Object>> setup(String sheet) {
        List<List<@Nullable Object>> rows = new ArrayList<>();
        for (Matcher item = ITEM.matcher(sheet.substring(sheet.indexOf("\nsetup:"))); item.find(); ) {
            List<@Nullable Object> row = new ArrayList<>();
            row.add(item.group(1));
            row.add(Double.doubleToRawLongBits(Double.parseDouble(item.group(2))));
            row.add(item.group(3));
            row.add(null);
            rows.add(row);
        }
        return rows;
    }
}
