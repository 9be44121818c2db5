package setwright.fleet.measure;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import setwright.app.world.World;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupItem;
import setwright.fleet.depot.TemporaryFolder;

/** Makes the tables of a large school, and measures what {@code fleet summary} takes for them in a fresh process. */
record SummaryBench(int drivers, int ofEach) {
    private static final long SEED = 1;
    /** As large as batches are. */
    private static final int BATCH = 32;

    /** As ./setwright does. */
    private static final List<String> AS_STARTED = List.of("-XX:TieredStopAtLevel=1");

    private static final List<String> CIRCUITS = List.of("hill", "lake", "moor", "quay", "vale");
    private static final List<String> FAULTS =
            List.of("coasting", "throttle too early", "brake too long", "lift in the corner");
    private static final double FAULT_SHARE = 0.2;
    private static final double PROBLEM_SHARE = 0.5;
    private static final int CORNERS = 12;

    void run() throws IOException, InterruptedException {
        try (TemporaryFolder folder = TemporaryFolder.make("setwright-fleetbench")) {
            Path tables = folder.path().resolve("tables");
            write(tables);
            Taken taken = Taken.by(AS_STARTED, "setwright.app.Main", "fleet", "summary", "--in", tables.toString());
            System.out.printf(
                    Locale.ROOT,
                    "%d drivers, %d recordings: summary %.1f s, processor time %.1f s, %.0f MB of memory at most%n",
                    drivers,
                    drivers * ofEach,
                    taken.wallS(),
                    taken.processorS(),
                    1.0e-6 * taken.mostBytes());
        }
    }

    private void write(Path root) throws IOException {
        CarSheet sheet = World.car("orvane").orElseThrow().sheet();
        SplittableRandom random = new SplittableRandom(SEED);
        for (int circuit = 0; circuit < CIRCUITS.size(); circuit++) {
            InventedTables batch = new InventedTables();
            int held = 0;
            int written = 0;
            for (int driver = circuit; driver < drivers; driver += CIRCUITS.size()) {
                for (int session = 1; session <= ofEach; session++) {
                    add(batch, driver, session, sheet, random);
                    if (++held == BATCH) {
                        batch.write(root, CIRCUITS.get(circuit), String.valueOf(written++));
                        batch = new InventedTables();
                        held = 0;
                    }
                }
            }
            if (held > 0) {
                batch.write(root, CIRCUITS.get(circuit), String.valueOf(written));
            }
        }
    }

    /** Every second session with another front bar. */
    private static void add(InventedTables batch, int number, int session, CarSheet sheet, SplittableRandom random) {
        String driver = String.format(Locale.ROOT, "D%05d", number);
        String name = driver + "/" + session;
        batch.recording(name, driver, session, "judged", 90.0 + random.nextGaussian());
        for (SetupItem item : sheet.setup()) {
            boolean turned = item.name().equals("front_bar") && session / 2 % 2 == 1;
            batch.item(name, driver, item.name(), item.value() + (turned ? 1.0 : 0.0));
        }
        if (random.nextDouble() < PROBLEM_SHARE) {
            batch.finding(name, driver, "car", corners(random), 0.01 * random.nextDouble(), random.nextDouble());
        }
        for (String fault : FAULTS) {
            if (random.nextDouble() < FAULT_SHARE) {
                batch.fault(name, driver, fault, corners(random));
            }
        }
    }

    private static String corners(SplittableRandom random) {
        int first = 1 + random.nextInt(CORNERS - 1);
        return first + " " + (first + 1);
    }
}
