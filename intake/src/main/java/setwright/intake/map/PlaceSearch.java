package setwright.intake.map;

import java.util.List;
import java.util.Optional;
import setwright.core.numerics.Robust;
import setwright.core.recording.Quantity;
import setwright.intake.calibrate.PathMotion;
import setwright.intake.map.Search.Candidate;
import setwright.intake.map.Search.Standing;

/** Finds latitude and longitude or a local plane, and with it the path: speed along it and how fast it turns. */
final class PlaceSearch {
    /** Mean earth radius, m (IUGG); good enough to compare speeds, the recording itself is projected on the ellipsoid. */
    private static final double EARTH_RADIUS_M = 6_371_008.8;

    private PlaceSearch() {}

    static void run(Search search) {
        Optional<Candidate> latitude = search.named(Quantity.LATITUDE).stream().findFirst();
        Optional<Candidate> longitude =
                search.named(Quantity.LONGITUDE).stream().findFirst();
        if (latitude.isPresent() && longitude.isPresent()) {
            geographic(search, latitude.get().column(), longitude.get().column());
        }
        Optional<Candidate> x = search.named(Quantity.POSITION_X).stream().findFirst();
        Optional<Candidate> y = search.named(Quantity.POSITION_Y).stream().findFirst();
        if (x.isPresent() && y.isPresent() && x.get().column() != y.get().column()) {
            plane(search, x.get().column(), y.get().column());
        }
    }

    private static void geographic(Search search, int latitude, int longitude) {
        Signals signals = search.signals;
        double most = Math.max(Math.abs(signals.quantile(latitude, 0.0)), Math.abs(signals.quantile(latitude, 1.0)));
        double span = signals.quantile(latitude, 0.99) - signals.quantile(latitude, 0.01);
        Optional<Unit> given = search.givenEntry(Quantity.LATITUDE).map(MapEntry::unit);
        Unit degree = Units.get(Dimension.ANGLE, "deg");
        Unit radian = Units.get(Dimension.ANGLE, "rad");
        // A circuit spans kilometres, 0.01 to 0.1 degrees; the same figures in radians would span hundreds of
        // kilometres.
        Unit unit = given.or(() -> search.declaredUnit(latitude, Quantity.LATITUDE))
                .orElse(most > Math.PI / 2.0 || span > 2.0e-3 ? degree : radian);
        if (most * unit.factor() > Math.PI / 2.0) {
            search.remark(
                    "Columns '%s' and '%s' are not used as latitude and longitude: %.4g %s is beyond a pole.",
                    search.header(latitude), search.header(longitude), most, unit);
            return;
        }
        double middle = Robust.median(signals.raw(latitude)) * unit.factor();
        double scale = EARTH_RADIUS_M * unit.factor();
        Unit across = search.unit(longitude, Quantity.LONGITUDE).orElse(unit);
        double acrossScale = EARTH_RADIUS_M * across.factor() * Math.cos(middle);
        double[] unwrapped = DateLine.unwrapped(signals.raw(longitude), 2.0 * Math.PI / across.factor());
        double[] east = Signals.scaled(signals.slow(unwrapped), acrossScale);
        double[] north = Signals.scaled(signals.column(latitude), scale);
        path(search, east, north);
        String physics = Search.text("it spans %.0f m", span * scale);
        search.accept(Quantity.LATITUDE, latitude, unit, 1, 0.0, Standing.SILENT, physics);
        double width = Robust.quantile(unwrapped, 0.99) - Robust.quantile(unwrapped, 0.01);
        search.accept(
                Quantity.LONGITUDE,
                longitude,
                across,
                1,
                0.0,
                Standing.SILENT,
                Search.text("it spans %.0f m", width * acrossScale));
    }

    private static void plane(Search search, int x, int y) {
        Unit unit = search.unit(x, Quantity.POSITION_X).orElse(Units.get(Dimension.LENGTH, "m"));
        int signX = search.givenEntry(Quantity.POSITION_X).map(MapEntry::sign).orElse(1);
        int signY = search.givenEntry(Quantity.POSITION_Y).map(MapEntry::sign).orElse(1);
        if (search.courseRate.isEmpty()) {
            path(
                    search,
                    Signals.scaled(search.signals.column(x), signX * unit.factor()),
                    Signals.scaled(search.signals.column(y), signY * unit.factor()));
        }
        for (Quantity quantity : List.of(Quantity.POSITION_X, Quantity.POSITION_Y)) {
            int column = quantity == Quantity.POSITION_X ? x : y;
            int sign = quantity == Quantity.POSITION_X ? signX : signY;
            double span = search.signals.quantile(column, 0.99) - search.signals.quantile(column, 0.01);
            search.accept(
                    quantity,
                    column,
                    unit,
                    sign,
                    0.0,
                    Standing.SILENT,
                    Search.text("it spans %.0f m", span * unit.factor()));
        }
    }

    private static void path(Search search, double[] east, double[] north) {
        PathMotion motion = PathMotion.of(east, north, Signals.STEP_S);
        search.pathSpeed = Optional.of(motion.speedMps());
        search.courseRate = Optional.of(motion.turnRadPerS());
    }
}
