package setwright.app.server.view;

import io.javalin.http.Context;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;

/**
 * What surrounds a live page.
 *
 * @param title   of the document
 * @param place   where in the program it is: {@code stints}, {@code story} or {@code tried}
 * @param facts   what it is about
 * @param token   that its changes bring along
 * @param units   chosen
 * @param light   "day", "night" or "device": as the device has it
 */
public record Frame(String title, String place, List<String> facts, String token, UnitSystem units, String light) {
    /** Names of the cookies that keep a choice. */
    public static final String UNITS = "units";

    public static final String LIGHT = "light";

    public Frame {
        facts = List.copyOf(facts);
    }

    /** Makes the frame of a request. */
    public static Frame of(Context request, String token, String title, String place, List<String> facts) {
        String light = Objects.requireNonNullElse(request.cookie(LIGHT), "device");
        return new Frame(
                title + " \u2013 Setwright",
                place,
                facts,
                token,
                units(request),
                List.of("day", "night").contains(light) ? light : "device");
    }

    /** Returns the units that a request asks for. */
    public static UnitSystem units(Context request) {
        return UnitSystem.IMPERIAL.name().equalsIgnoreCase(request.cookie(UNITS))
                ? UnitSystem.IMPERIAL
                : UnitSystem.METRIC;
    }

    /** Returns how figures are written for a request. */
    public static Figures figures(Context request) {
        return Figures.forPage(units(request));
    }

    /** Returns the name of the units, as cookies and scripts have it. */
    public String unitsName() {
        return units.name().toLowerCase(Locale.ROOT);
    }
}
