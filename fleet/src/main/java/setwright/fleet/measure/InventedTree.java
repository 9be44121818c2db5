package setwright.fleet.measure;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import setwright.app.simulate.DriverKind;
import setwright.app.simulate.Experiment;
import setwright.app.simulate.Simulation;
import setwright.app.world.SheetCopy;
import setwright.app.world.World;
import setwright.app.world.WorldCar;
import setwright.core.car.SetupChange;
import setwright.core.simulation.fault.FaultCatalogue;
import setwright.core.simulation.logger.LoggedTable;
import setwright.core.simulation.logger.Logger;
import setwright.core.simulation.logger.LoggerPlan;

/**
 * A tree of recordings of drivers who each make two sessions a day: the first with a rear bar that is too soft, the second with one that suits the
 * car. Every second driver picks up the throttle early; the others coast for a while instead.
 *
 * @param recordings  in all, broken ones among them
 * @param laps        of each, after the out lap
 * @param rateHz      rows a second
 * @param every       which recordings are broken: one in so many
 * @param days        of each driver
 */
public record InventedTree(int recordings, int laps, double rateHz, int every, int days) {
    /** File of the tree that lists the recordings which are broken on purpose, one a line; written last. */
    private static final String BROKEN = "broken.txt";

    private static final String CIRCUIT = "skarnholt";
    private static final String CAR = "orvane";
    private static final String WRONG = "rear bar too soft";
    private static final int SESSIONS = 2;

    /** One drive, as a logger kept it, with the sheet that goes with it. */
    private record Drive(LoggedTable table, String sheet) {}

    /** Writes the tree. */
    public void write(Path root) throws IOException {
        Simulation simulation = new Simulation();
        Map<Integer, Drive> drives = new HashMap<>();
        List<String> broken = new ArrayList<>();
        for (int i = 0; i < recordings; i++) {
            int driver = i / (days * SESSIONS);
            int of = i % (days * SESSIONS);
            Drive drive = drives.computeIfAbsent(
                    of % SESSIONS + SESSIONS * (driver % 2), number -> drive(simulation, number));
            Path folder = root.resolve(String.format(
                    Locale.ROOT,
                    "circuit=%s/driver=D%04d/car=%s/date=2031-05-%02d/session=%d",
                    CIRCUIT,
                    driver + 1,
                    CAR,
                    1 + of / SESSIONS,
                    1 + of % SESSIONS));
            Files.createDirectories(folder);
            NoisyTable laps = new NoisyTable(drive.table(), i);
            boolean sheet = true;
            if (isBroken(i)) {
                Damage damage = Damage.ALL.get(i / every % Damage.ALL.size());
                Path file = folder.resolve(damage.file());
                damage.write(file, laps);
                broken.add(root.relativize(file).toString());
                sheet = damage != Damage.NO_SHEET;
            } else if ((i + driver) % 2 == 0) {
                laps.writeParquet(folder.resolve("laps.parquet"));
            } else {
                laps.writeCsv(folder.resolve("laps.csv"));
            }
            if (sheet) {
                Files.writeString(folder.resolve("car.yaml"), drive.sheet());
            }
        }
        Files.write(root.resolve(BROKEN), broken);
    }

    /** One step on after every other one, so that it does not always meet the same session. */
    private boolean isBroken(int i) {
        return (i + i / (2 * every)) % every == every - 1;
    }

    /** Returns which recordings of a tree were broken on purpose. */
    static Set<String> broken(Path root) throws IOException {
        return new TreeSet<>(Files.readAllLines(root.resolve(BROKEN)));
    }

    /** Driven when it is first wanted. */
    private Drive drive(Simulation simulation, int number) {
        WorldCar car = World.car(CAR).orElseThrow();
        List<SetupChange> changes = number % SESSIONS == 0
                ? FaultCatalogue.find(WRONG).orElseThrow().changes(car.sheet(), 1.0)
                : List.of();
        Experiment experiment = new Experiment(
                car,
                World.circuit(CIRCUIT).orElseThrow(),
                changes,
                (number < SESSIONS ? DriverKind.STEADY : DriverKind.EARLY_THROTTLE).style(),
                laps,
                LoggerPlan.good(number + 1L, rateHz),
                number + 1L);
        return new Drive(
                Logger.log(simulation.drive(experiment).history(), car.sheet(), experiment.logger()),
                SheetCopy.with(CAR, car.sheetText(), changes));
    }
}
