package setwright.app.world;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import setwright.core.simulation.layout.Bump;
import setwright.core.simulation.layout.CircuitElement;
import setwright.core.simulation.layout.CircuitElement.Bend;
import setwright.core.simulation.layout.CircuitElement.Straight;
import setwright.core.simulation.layout.CircuitPlan;
import setwright.intake.problem.InputProblem;
import setwright.intake.yaml.YamlFile;

/** Reads a drawn circuit, see docs/world.md. */
public final class CircuitReader {
    private static final double MM = 1.0e-3;

    private CircuitReader() {}

    /**
     * Reads text.
     *
     * @param name  of the circuit
     * @param file  what messages call the text
     * @throws InputProblem when it is none, or cannot be closed
     */
    public static CircuitPlan parse(String name, String file, String text) {
        Keys keys = new Keys(file, YamlFile.parse(file, text));
        keys.allowOnly(List.of("description", "line", "bumps"));
        List<CircuitElement> elements = new ArrayList<>();
        for (Keys part : keys.groups("line")) {
            elements.add(element(part));
        }
        List<Bump> bumps = new ArrayList<>();
        if (keys.has("bumps")) {
            for (Keys part : keys.groups("bumps")) {
                bumps.add(bump(part));
            }
        }
        try {
            return CircuitPlan.of(name, elements, bumps);
        } catch (IllegalArgumentException e) {
            throw refused(keys, "a line that closes, with its bumps on it", e);
        }
    }

    private static CircuitElement element(Keys part) {
        try {
            if (part.has("straight_m")) {
                part.allowOnly(List.of("straight_m"));
                return new Straight(part.number("straight_m"));
            }
            part.allowOnly(List.of("bend", "radius_m", "angle_deg", "in_m", "out_m"));
            double side = side(part);
            return new Bend(
                    part.number("radius_m"),
                    side * Math.toRadians(Math.abs(part.number("angle_deg"))),
                    part.number("in_m"),
                    part.number("out_m"));
        } catch (IllegalArgumentException e) {
            throw refused(part, "a straight or a bend that can be driven", e);
        }
    }

    private static double side(Keys part) {
        return switch (part.text("bend")) {
            case "left" -> 1.0;
            case "right" -> -1.0;
            default -> throw part.wrong("bend", "left or right");
        };
    }

    private static Bump bump(Keys part) {
        part.allowOnly(List.of("at_m", "length_m", "height_mm", "wheels"));
        try {
            return new Bump(
                    part.number("at_m"),
                    part.number("length_m"),
                    part.number("height_mm") * MM,
                    Bump.Wheels.valueOf(part.text("wheels").toUpperCase(Locale.ROOT)));
        } catch (IllegalArgumentException e) {
            throw refused(part, "a bump with at_m, length_m, height_mm, and wheels left, right or both", e);
        }
    }

    private static InputProblem refused(Keys keys, String expected, IllegalArgumentException cause) {
        return InputProblem.in(keys.file())
                .row(keys.group().line())
                .expected(expected)
                .found("something else (" + cause.getMessage() + ")")
                .causedBy(cause);
    }
}
