package setwright.app.world;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import setwright.core.car.CarSheet;
import setwright.core.simulation.layout.CircuitPlan;
import setwright.intake.car.CarSheetReader;

/**
 * The invented world that the program brings along. Its series names the cars and circuits; each lies in a resource of its
 * name.
 */
public final class World {
    private static final String FOLDER = "/world/";

    private World() {}

    /** Returns the series and its rules. */
    public static Series series() {
        return SeriesReader.parse("series.yaml", text("series.yaml"));
    }

    /** Returns the short names of all cars, in the order of the series. */
    public static List<String> cars() {
        return series().classes().values().stream()
                .flatMap(carClass -> carClass.cars().stream())
                .toList();
    }

    /** Returns the short names of all circuits, in the order of the series. */
    public static List<String> circuits() {
        return series().circuits();
    }

    /** Returns the car of a short name; empty when there is none. */
    public static Optional<WorldCar> car(String name) {
        return cars().stream().filter(name::equals).findFirst().map(World::readCar);
    }

    /** Returns the circuit of a short name; empty when there is none. */
    public static Optional<CircuitPlan> circuit(String name) {
        return circuits().stream()
                .filter(name::equals)
                .findFirst()
                .map(known -> CircuitReader.parse(known, known + ".yaml", text("circuits/" + known + ".yaml")));
    }

    private static WorldCar readCar(String name) {
        String sheetText = text("cars/" + name + ".yaml");
        CarSheet sheet = CarSheetReader.parse(name + ".yaml", sheetText);
        String trueFile = name + ".true.yaml";
        return new WorldCar(name, sheetText, sheet, TrueValues.parse(trueFile, text("cars/" + trueFile), sheet));
    }

    private static String text(String name) {
        try (InputStream in = World.class.getResourceAsStream(FOLDER + name)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its resource " + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("the program's resource " + name + " cannot be read", e);
        }
    }
}
