package setwright.logbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.logbook.problem.LogbookProblem;
import setwright.logbook.row.CarRow;
import setwright.logbook.row.CircuitRow;
import setwright.logbook.row.DiagnosisRow;
import setwright.logbook.row.EntryRow;
import setwright.logbook.row.FindingRow;
import setwright.logbook.row.FittingRow;
import setwright.logbook.row.ProposalRow;
import setwright.logbook.row.RecordingRow;
import setwright.logbook.row.SetupRow;
import setwright.logbook.row.StintLineRow;
import setwright.logbook.row.StintRow;
import setwright.logbook.row.TrialItemRow;
import setwright.logbook.row.TrialRow;
import setwright.logbook.row.TriedEffectRow;
import setwright.logbook.row.VerdictRow;

/** What every logbook does, wherever it is kept. */
abstract class LogbookContract {
    static final Instant NOON = Instant.parse("2026-03-01T12:00:00.250Z");

    @TempDir
    Path folder;

    private Logbook logbook;

    /** Returns the place of a logbook that nobody has written to. */
    abstract String place() throws Exception;

    private String opened;

    @BeforeEach
    void open() throws Exception {
        opened = place();
        logbook = again();
    }

    private Logbook again() {
        return Logbook.open(opened, Optional.of(folder.resolve("recordings")), true);
    }

    private static SetupRow setup(long car, Optional<Long> parent, String sheet) {
        return new SetupRow(0, car, 0, parent, sheet, "front_bar 4 to 5", "pushes", "", NOON);
    }

    private long car(Tables tables) {
        return tables.cars().add(new CarRow(0, "Heron", NOON));
    }

    long stint(Tables tables) {
        long car = car(tables);
        long setup = tables.setups().add(setup(car, Optional.empty(), "{}"));
        long recording = tables.recordings()
                .add(new RecordingRow(0, "run.csv", "ab", "ab.parquet", "cd", 100.0, 12, "[]", "", NOON));
        long circuit = tables.circuits().add(new CircuitRow(0, "Lakeside", "{}", 3120.5, NOON));
        long driver = tables.drivers().add("Ines");
        return tables.stints()
                .add(new StintRow(
                        0,
                        recording,
                        car,
                        setup,
                        driver,
                        circuit,
                        9,
                        7,
                        OptionalDouble.of(91.25),
                        OptionalDouble.empty(),
                        OptionalInt.of(12),
                        OptionalDouble.empty(),
                        OptionalDouble.of(41.5),
                        false,
                        NOON));
    }

    @Test
    void keepsWhatWasWritten() {
        long id = logbook.with(this::stint);

        StintRow read = again().with(tables -> tables.stints().last()).orElseThrow();

        assertThat(read.id()).isEqualTo(id);
        assertThat(read.bestS()).hasValue(91.25);
        assertThat(read.meanS()).isEmpty();
        assertThat(read.tyreAgeLaps()).hasValue(12);
        assertThat(read.trackCelsius()).isEmpty();
        assertThat(read.fuelStartKg()).hasValue(41.5);
        assertThat(read.addedAt()).isEqualTo(NOON);
        assertThat(logbook.with(tables -> tables.circuits().get(read.circuitId()))
                        .lengthM())
                .isEqualTo(3120.5);
        assertThat(logbook.with(tables -> tables.drivers().get(read.driverId())).name())
                .isEqualTo("Ines");
    }

    @Test
    void numbersTheSetupsOfEachCarAndKnowsWhichIsFitted() {
        logbook.with(tables -> {
            long heron = car(tables);
            long other = tables.cars().add(new CarRow(0, "Bittern", NOON));
            long first = tables.setups().add(setup(heron, Optional.empty(), "a"));
            long second = tables.setups().add(setup(heron, Optional.of(first), "b"));
            long strange = tables.setups().add(setup(other, Optional.empty(), "c"));
            assertThat(tables.fittings().now(heron)).isEmpty();
            tables.fittings().add(new FittingRow(0, first, false, "", NOON));
            tables.fittings().add(new FittingRow(0, second, false, "more grip", NOON));
            tables.fittings().add(new FittingRow(0, strange, true, "", NOON));
            return heron;
        });

        logbook.with(tables -> {
            CarRow heron = tables.cars().named("Heron").orElseThrow();
            assertThat(tables.setups().ofCar(heron.id()))
                    .extracting(SetupRow::number)
                    .containsExactly(1, 2);
            SetupRow now = tables.setups()
                    .get(tables.fittings().now(heron.id()).orElseThrow().setupId());
            assertThat(now.number()).isEqualTo(2);
            assertThat(now.sheet()).isEqualTo("b");
            assertThat(tables.setups().numbered(heron.id(), 1).orElseThrow().parentId())
                    .isEmpty();
            return now;
        });
    }

    @Test
    void aSecondDiagnosisReplacesTheFirstWithItsFindings() {
        long stint = logbook.with(this::stint);

        for (int findings : new int[] {3, 1}) {
            logbook.with(tables -> {
                tables.diagnoses().remove(stint);
                long id = tables.diagnoses().add(new DiagnosisRow(0, stint, "change the car", true, NOON));
                tables.diagnoses()
                        .add(IntStream.rangeClosed(1, findings)
                                .mapToObj(place -> finding(id, place))
                                .toList());
                tables.proposals().remove(stint);
                return tables.proposals()
                        .add(new ProposalRow(0, stint, "front_bar", "5", "4", "position", "it pushes", NOON));
            });
        }

        logbook.with(tables -> {
            DiagnosisRow diagnosis = tables.diagnoses().ofStint(stint).orElseThrow();
            assertThat(diagnosis.repeatable()).isTrue();
            assertThat(tables.diagnoses().findings(diagnosis.id()))
                    .usingRecursiveFieldByFieldElementComparatorIgnoringFields("id")
                    .containsExactly(finding(diagnosis.id(), 1));
            assertThat(tables.proposals().ofStint(stint).orElseThrow().toValue())
                    .isEqualTo("4");
            return diagnosis;
        });
    }

    private static FindingRow finding(long diagnosis, int place) {
        return new FindingRow(
                0,
                diagnosis,
                place,
                "entry",
                "low",
                "understeer",
                "turn-in",
                "car",
                "1, 4",
                0.75,
                true,
                0.9,
                0.31,
                0.1,
                0.5);
    }

    @Test
    void keepsTrialsWithWhatWasPredictedAndMeasured() {
        long stint = logbook.with(this::stint);
        logbook.with(tables -> {
            StintRow run = tables.stints().find(stint).orElseThrow();
            long trial = tables.trials()
                    .add(new TrialRow(
                            0,
                            run.carId(),
                            run.driverId(),
                            run.circuitId(),
                            stint,
                            run.setupId(),
                            "front_bar 5 to 4",
                            "",
                            "ABA",
                            6,
                            TrialRow.OPEN,
                            NOON));
            tables.trials().add(List.of(new TrialItemRow(trial, "front_bar", "5", "4", "position")));
            long verdict = tables.verdicts().add(new VerdictRow(0, trial, "1,2,3", 1.0, "keep", "it is quicker", NOON));
            tables.verdicts()
                    .add(List.of(
                            new TriedEffectRow(
                                    verdict,
                                    "entry",
                                    "low",
                                    "rad",
                                    OptionalDouble.empty(),
                                    OptionalDouble.empty(),
                                    OptionalDouble.empty(),
                                    -0.004,
                                    -0.006,
                                    -0.002,
                                    0.001),
                            new TriedEffectRow(
                                    verdict,
                                    "",
                                    "",
                                    "s",
                                    OptionalDouble.of(-0.2),
                                    OptionalDouble.of(-0.4),
                                    OptionalDouble.of(0.0),
                                    -0.3,
                                    -0.5,
                                    -0.1,
                                    0.1)));
            return trial;
        });

        logbook.with(tables -> {
            TrialRow trial = tables.trials().open(1).orElseThrow();
            assertThat(tables.trials().items(trial.id()))
                    .extracting(TrialItemRow::toValue)
                    .containsExactly("4");
            VerdictRow verdict = tables.verdicts().after(trial.id(), "1,2,3").orElseThrow();
            assertThat(tables.verdicts().last(trial.id())).contains(verdict);
            assertThat(tables.verdicts().effects(verdict.id()))
                    .extracting(TriedEffectRow::predicted)
                    .containsExactly(OptionalDouble.of(-0.2), OptionalDouble.empty());
            tables.trials().end(trial.id());
            assertThat(tables.trials().open(1)).isEmpty();
            return trial;
        });
    }

    @Test
    void findsWordsInTheStory() {
        logbook.with(tables -> {
            for (String words : List.of(
                    "front_bar 5 to 4: pushes at turn-in",
                    "Ines: très loose on exit; 100% 'sure'",
                    "x",
                    "run_2.csv at 4.5 deg")) {
                tables.entries().add(new EntryRow(0, NOON, "note", Optional.empty(), Optional.empty(), words));
            }
            return words(tables, "x");
        });

        assertThat(logbook.<List<String>>with(tables -> words(tables, "push turn")))
                .hasSize(1);
        assertThat(logbook.<List<String>>with(tables -> words(tables, "TRÈS exit")))
                .hasSize(1);
        assertThat(logbook.<List<String>>with(tables -> words(tables, "push exit")))
                .isEmpty();
        assertThat(logbook.<List<String>>with(tables -> words(tables, "'; DROP \" * & | ! ()")))
                .isEmpty();
        assertThat(logbook.<List<EntryRow>>with(tables -> tables.entries().between(NOON, NOON.plusMillis(1))))
                .hasSize(4);
        assertThat(logbook.<List<EntryRow>>with(tables -> tables.entries().between(NOON.plusMillis(1), Instant.now())))
                .isEmpty();
    }

    private static List<String> words(Tables tables, String search) {
        return tables.search(search).stream().map(EntryRow::words).toList();
    }

    @Test
    void oneTrialOfACarIsOpenAtATime() {
        long stint = logbook.with(this::stint);
        logbook.with(tables -> tables.trials().add(trial(tables, stint)));

        assertThatThrownBy(() -> logbook.with(tables -> tables.trials().add(trial(tables, stint))))
                .isInstanceOf(LogbookProblem.class);
        logbook.with(tables -> {
            tables.trials().end(1);
            return tables.trials().add(trial(tables, stint));
        });
    }

    private static TrialRow trial(Tables tables, long stint) {
        StintRow run = tables.stints().find(stint).orElseThrow();
        return new TrialRow(
                0,
                run.carId(),
                run.driverId(),
                run.circuitId(),
                stint,
                run.setupId(),
                "x",
                "",
                "ABA",
                6,
                TrialRow.OPEN,
                NOON);
    }

    @Test
    void everyTableCanBeWrittenOut() {
        logbook.with(this::stint);
        logbook.with(tables ->
                tables.entries().add(new EntryRow(0, NOON, "note", Optional.empty(), Optional.empty(), "a note")));
        for (String name : Tables.NAMES) {
            List<Map<String, Object>> rows = logbook.look(tables -> tables.rows(name));
            assertThat(rows).as(name).isNotNull();
        }
        assertThat(logbook.look(tables -> tables.rows("stint")).get(0))
                .containsEntry("best_s", 91.25)
                .containsEntry("mean_s", null)
                .containsEntry("added_at", "2026-03-01T12:00:00.250Z");
        assertThat(logbook.look(tables -> tables.rows("entry")).get(0).keySet())
                .containsExactlyInAnyOrder("id", "written_at", "kind", "car_id", "stint_id", "words");
        assertThatThrownBy(() -> logbook.look(tables -> tables.rows("car; DROP TABLE car")))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void tellsWhichStintsOfACarOnACircuitWereInGoodOrder() {
        long id = logbook.with(this::stint);
        StintRow stint = logbook.look(tables -> tables.stints().find(id)).orElseThrow();
        assertThat(stint.goodOrder()).isFalse();
        assertThat(inGoodOrder(stint.carId(), stint.circuitId())).isEmpty();

        logbook.with(tables -> {
            tables.stints().correct(inGoodOrder(stint));
            return id;
        });

        assertThat(inGoodOrder(stint.carId(), stint.circuitId()))
                .extracting(StintRow::id)
                .containsExactly(id);
        assertThat(inGoodOrder(stint.carId(), stint.circuitId() + 1)).isEmpty();
        assertThat(inGoodOrder(stint.carId() + 1, stint.circuitId())).isEmpty();
        assertThat(logbook.look(tables -> tables.stints().lines()).get(0).goodOrder())
                .isTrue();
    }

    private static StintRow inGoodOrder(StintRow stint) {
        return new StintRow(
                stint.id(),
                stint.recordingId(),
                stint.carId(),
                stint.setupId(),
                stint.driverId(),
                stint.circuitId(),
                stint.laps(),
                stint.goodLaps(),
                stint.bestS(),
                stint.meanS(),
                stint.tyreAgeLaps(),
                stint.trackCelsius(),
                stint.fuelStartKg(),
                true,
                stint.addedAt());
    }

    private List<StintRow> inGoodOrder(long car, long circuit) {
        return again().look(tables -> tables.stints().inGoodOrder(car, circuit));
    }

    @Test
    void listsStintsInOneLook() {
        logbook.with(this::stint);
        StintLineRow line = logbook.look(tables -> tables.stints().lines()).get(0);
        assertThat(line.driver()).isEqualTo("Ines");
        assertThat(line.circuit()).isEqualTo("Lakeside");
        assertThat(line.bestS()).hasValue(91.25);
    }

    @Test
    void keepsAllOfAPieceOfWorkOrNothing() {
        assertThatThrownBy(() -> logbook.with(tables -> {
                    car(tables);
                    return tables.stints()
                            .add(new StintRow(
                                    0,
                                    7,
                                    7,
                                    7,
                                    7,
                                    7,
                                    1,
                                    1,
                                    OptionalDouble.empty(),
                                    OptionalDouble.empty(),
                                    OptionalInt.empty(),
                                    OptionalDouble.empty(),
                                    OptionalDouble.empty(),
                                    false,
                                    NOON));
                }))
                .isInstanceOf(LogbookProblem.class)
                .hasMessageContaining("could not be used");

        assertThat(logbook.<List<CarRow>>with(tables -> tables.cars().all())).isEmpty();
    }

    @Test
    void manyMayWriteAtOnce() throws Exception {
        long car = logbook.with(this::car);
        ExecutorService pool = Executors.newFixedThreadPool(4);
        Callable<Boolean> work = () -> {
            Logbook mine = again();
            for (int i = 0; i < 25; i++) {
                mine.with(tables -> tables.setups().add(setup(car, Optional.empty(), "{}")));
            }
            return true;
        };
        for (Future<Boolean> done : pool.invokeAll(List.of(work, work, work, work))) {
            assertThat(done.get()).isTrue();
        }
        pool.shutdown();

        assertThat(logbook.<List<SetupRow>>with(tables -> tables.setups().ofCar(car)))
                .extracting(SetupRow::number)
                .containsExactlyElementsOf(IntStream.rangeClosed(1, 100).boxed().toList());
    }
}
