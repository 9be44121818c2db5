package setwright.benchmarks.table;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;
import setwright.benchmarks.laps.TenLaps;
import setwright.core.car.CarSheet;
import setwright.core.circuit.StintBuilder;
import setwright.core.judgement.Diagnostician;
import setwright.core.recording.Recording;
import setwright.intake.LongRecording;
import setwright.intake.RecordingReader;
import setwright.intake.car.CarSheetReader;
import setwright.intake.columns.RecordingColumns;
import setwright.intake.csv.CsvReader;
import setwright.intake.gather.RecordingFiles;

/** Two things that are done in turn in one warm process: ours and what it is compared with. */
interface Pair {
    /** Does ours. */
    void ours() throws Exception;

    /** Does the reference. */
    void reference() throws Exception;

    /** Returns how many of ours one call does. */
    default int oursAtOnce() {
        return 1;
    }

    /** What is compared, as processes are told; in the words of the table. */
    enum Kind {
        READ("Reading a CSV file's numbers", "DuckDB, read_csv into a table in memory, same threads"),
        IMPORT(
                "Import: read, understand, calibrate, write columns",
                "DuckDB, COPY of read_csv to Parquet, zstd, same threads"),
        SCAN("Reading the channels kept in the logbook", "DuckDB, sum of every column of the same Parquet file"),
        DIAGNOSIS("Laps, line, corners and diagnosis", "reading the channels kept in the logbook, ours"),
        REPLAY("Replay of a candidate change, 200 draws (of 40)", "diagnosis of the same ten laps, cut already"),
        LAP("Lap simulated, quasi-steady, the car's limits known", "nothing like it");

        private final String words;
        private final String reference;

        Kind(String words, String reference) {
            this.words = words;
            this.reference = reference;
        }

        String words() {
            return words;
        }

        String reference() {
            return reference;
        }

        /**
         * Prepares it.
         *
         * @param file    CSV
         * @param folder  for what is written
         */
        Pair prepare(Path file, Path folder, int threads) throws Exception {
            Path kept = folder.resolve("kept.parquet");
            Path copied = folder.resolve("copied.parquet");
            CarSheet car = CarSheetReader.read(TenLaps.folder().resolve("car.yaml"));
            return switch (this) {
                case READ -> {
                    Duck duck = new Duck(threads);
                    yield of(() -> CsvReader.read(file), () -> duck.read(file));
                }
                case IMPORT -> {
                    Duck duck = new Duck(threads);
                    yield of(() -> keep(file, car, folder), () -> duck.copy(file, copied));
                }
                case SCAN -> {
                    RecordingColumns.write(kept, recording(file, car));
                    Duck duck = new Duck(threads);
                    yield of(() -> RecordingColumns.read(kept), () -> duck.scan(kept));
                }
                case DIAGNOSIS -> {
                    Recording recording = recording(file, car);
                    RecordingColumns.write(kept, recording);
                    yield of(
                            () -> Diagnostician.diagnose(StintBuilder.build(recording), car),
                            () -> RecordingColumns.read(kept));
                }
                case REPLAY -> new ReplayPair();
                case LAP -> new LapPair();
            };
        }

        /** As `add` does: part by part, when it lasts longer than a stint. */
        private static void keep(Path file, CarSheet car, Path folder) {
            LongRecording parts = LongRecording.open(RecordingFiles.of(file), Optional.empty(), Optional.of(car));
            parts.each(part -> {
                try {
                    RecordingColumns.write(
                            folder.resolve("kept-" + part + ".parquet"),
                            parts.read(part).recording());
                } catch (IOException e) {
                    throw new UncheckedIOException(e);
                }
                return part;
            });
        }

        private static Recording recording(Path file, CarSheet car) {
            return RecordingReader.read(file, Optional.empty(), Optional.of(car))
                    .recording();
        }

        private static Pair of(
                setwright.benchmarks.measure.Spent.Work ours, setwright.benchmarks.measure.Spent.Work reference) {
            return new Pair() {
                @Override
                public void ours() throws Exception {
                    ours.run();
                }

                @Override
                public void reference() throws Exception {
                    reference.run();
                }
            };
        }
    }
}
