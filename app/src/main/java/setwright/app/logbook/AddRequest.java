package setwright.app.logbook;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import setwright.intake.gather.RecordingFiles;

/**
 * A recording that is to come in.
 *
 * @param files   the recording, and what was recorded beside it
 * @param sheet   of the car, with its setup; without it the car is one of the logbook
 * @param car     name of a car in the logbook, when no sheet is given; without it the car of the last stint
 * @param setup   number of the version that was on the car; without it the one that is on it now
 * @param name    of a car that comes with its sheet; without it the sheet's description
 * @param driver  who drove; without it whoever drove last
 * @param at      name of the circuit; without it the known one that the laps fit on, else a new one
 * @param map     channel map; without it one is proposed
 * @param tyreAgeLaps   laps that the tyres had done before
 * @param trackCelsius  temperature of the track
 * @param fuelStartKg   fuel when the run began, kg
 */
public record AddRequest(
        RecordingFiles files,
        Optional<Path> sheet,
        Optional<String> car,
        OptionalInt setup,
        Optional<String> name,
        Optional<String> driver,
        Optional<String> at,
        Optional<Path> map,
        OptionalInt tyreAgeLaps,
        OptionalDouble trackCelsius,
        OptionalDouble fuelStartKg) {
    /** Returns a recording of the car, with the setup on it, and the driver of the last. */
    public static AddRequest asBefore(RecordingFiles files) {
        return new AddRequest(
                files,
                Optional.empty(),
                Optional.empty(),
                OptionalInt.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalInt.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    /** Returns a recording of which nothing but the file, its car's sheet and three names are known. */
    public static AddRequest of(Path file, Path sheet, String name, String driver, String at) {
        return new AddRequest(
                RecordingFiles.of(file),
                Optional.of(sheet),
                Optional.empty(),
                OptionalInt.empty(),
                Optional.of(name),
                Optional.of(driver),
                Optional.of(at),
                Optional.empty(),
                OptionalInt.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }
}
