package setwright.intake.map;

import java.util.List;
import java.util.Optional;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupItem;
import setwright.core.numerics.Lag;
import setwright.core.recording.Quantity;
import setwright.intake.map.Search.Candidate;
import setwright.intake.map.Search.Standing;

/** Finds channels that answers do without, and leaves out those that show what cannot be. */
final class OptionalSearch {
    /** Pressure of the air, Pa: International Standard Atmosphere, sea level. */
    private static final double ATMOSPHERE_PA = 101_325.0;
    /** Tyres of karts to lorries, above the air's pressure (common practice: 0.6 to 3 bar on circuits). */
    private static final double LEAST_TYRE_PA = 0.2e5;

    private static final double MOST_TYRE_PA = 6.0e5;
    private static final double USUAL_TYRE_PA = 1.7e5;
    /** Racing tyres are run between 0.8 and 2.6 bar above the air (common practice); what fits one reading only settles it. */
    private static final double LEAST_RUN_PA = 0.8e5;

    private static final double MOST_RUN_PA = 2.6e5;
    private static final List<String> ABSOLUTE =
            List.of("abs", "absolute", "absolut", "absolue", "absolu", "assoluta", "bara", "psia", "kpaa");
    private static final List<String> GAUGE = List.of("gauge", "relative", "relativ", "barg", "psig", "kpag");
    private static final List<String> PRESSURE_UNITS = List.of("bar", "psi", "kPa", "Pa");
    /** A body stands above the road by less than this, m; by more than a millimetre in the middle of a run. */
    private static final double MOST_HEIGHT_M = 0.5;

    private static final double LEAST_HEIGHT_M = 1.0e-3;
    private static final double TELLING_CORRELATION = 0.3;

    private OptionalSearch() {}

    /** Looks for one quantity; does nothing for those that are found elsewhere. */
    static void find(Search search, Quantity quantity) {
        String name = quantity.name();
        if (name.startsWith("TYRE_PRESSURE")) {
            search.named(quantity).stream().findFirst().ifPresent(found -> tyrePressure(search, quantity, found));
        } else if (name.startsWith("RIDE_HEIGHT")) {
            search.named(quantity).stream().findFirst().ifPresent(found -> rideHeight(search, quantity, found));
        } else if (quantity == Quantity.STEERING_TORQUE) {
            search.named(quantity).stream().findFirst().ifPresent(found -> torque(search, found));
        } else if (name.startsWith("TYRE_TEMPERATURE_") && OptionalSearch.isThird(name)) {
            search.named(quantity).stream()
                    .findFirst()
                    .ifPresent(found -> temperature(search, quantity, found, 250, 500));
        } else if (quantity == Quantity.TRACK_TEMPERATURE || quantity == Quantity.AIR_TEMPERATURE) {
            // Roads in the sun come to 70 degC, air to 50 (common practice).
            search.namedOrConstant(quantity).ifPresent(found -> temperature(search, quantity, found, 240, 350));
        }
    }

    private static boolean isThird(String name) {
        return name.contains("INNER") || name.contains("MIDDLE") || name.contains("OUTER");
    }

    private static void tyrePressure(Search search, Quantity quantity, Candidate candidate) {
        int column = candidate.column();
        double middle = search.signals.quantile(column, 0.5);
        Unit unit = search.unit(column, quantity)
                .orElseGet(() -> PullSearch.nearest(
                        middle / USUAL_TYRE_PA,
                        PRESSURE_UNITS.stream()
                                .map(symbol -> Units.get(Dimension.PRESSURE, symbol))
                                .toList()));
        double read = unit.toSi(middle);
        if (!(read > LEAST_TYRE_PA && read < MOST_TYRE_PA + ATMOSPHERE_PA)) {
            leaveOut(search, quantity, candidate, Search.text("its median is %.3g %s", middle, unit));
            return;
        }
        boolean given = search.givenEntry(quantity).isPresent();
        boolean absolute = !given && isAbsolute(search, quantity, column, read);
        double offset = given
                ? search.givenEntry(quantity).orElseThrow().offset()
                : absolute ? ATMOSPHERE_PA / unit.factor() : 0.0;
        search.accept(
                quantity,
                column,
                unit,
                1,
                offset,
                Standing.SILENT,
                Search.text("its median is %.3g %s%s", middle, unit, absolute ? ", absolute" : ""));
    }

    private static boolean isAbsolute(Search search, Quantity quantity, int column, double read) {
        String header = search.header(column);
        List<String> words = search.headers.get(column).words();
        List<String> spelled = search.headers.get(column).unitSpellings().stream()
                .map(text -> text.toLowerCase(java.util.Locale.ROOT))
                .toList();
        if (ABSOLUTE.stream().anyMatch(word -> words.contains(word) || spelled.contains(word))) {
            return true;
        }
        if (GAUGE.stream().anyMatch(word -> words.contains(word) || spelled.contains(word))) {
            return false;
        }
        Optional<Double> sheet = sheetPa(search, quantity);
        boolean absolute;
        String why;
        if (sheet.isPresent()) {
            absolute = Math.abs(read - ATMOSPHERE_PA - sheet.get()) < Math.abs(read - sheet.get());
            why = "by the pressure on the sheet";
        } else {
            absolute = read > MOST_RUN_PA && read - ATMOSPHERE_PA >= LEAST_RUN_PA;
            why = "by its size alone; say so in the channel map if that is wrong";
        }
        search.remark(
                "Column '%s' does not say whether its pressure counts from the air's (gauge) or from nothing (absolute): it is"
                        + " taken as %s, %s.",
                header, absolute ? "absolute" : "gauge", why);
        return absolute;
    }

    /** Pressure of the tyre on the sheet, above the air's, Pa. */
    private static Optional<Double> sheetPa(Search search, Quantity quantity) {
        String item = quantity.name().contains("FRONT") ? "front_tyre_pressure" : "rear_tyre_pressure";
        return search.car.flatMap((CarSheet sheet) -> sheet.item(item)).flatMap(OptionalSearch::pascal);
    }

    private static Optional<Double> pascal(SetupItem item) {
        return Units.spelled(item.unit(), Dimension.PRESSURE).map(unit -> unit.toSi(item.value()));
    }

    private static void rideHeight(Search search, Quantity quantity, Candidate candidate) {
        int column = candidate.column();
        double middle = search.signals.quantile(column, 0.5);
        Unit unit = search.unit(column, quantity).orElse(Units.get(Dimension.LENGTH, middle > 1.0 ? "mm" : "m"));
        double height = unit.toSi(middle);
        if (!(height > LEAST_HEIGHT_M && height < MOST_HEIGHT_M)) {
            leaveOut(search, quantity, candidate, Search.text("its median is %.3g %s", middle, unit));
            return;
        }
        search.accept(
                quantity,
                column,
                unit,
                search.givenEntry(quantity).map(MapEntry::sign).orElse(1),
                search.givenEntry(quantity).map(MapEntry::offset).orElse(0.0),
                Standing.SILENT,
                Search.text("its median is %.3g %s", middle, unit));
    }

    private static void temperature(
            Search search, Quantity quantity, Candidate candidate, double leastK, double mostK) {
        double middle = search.signals.quantile(candidate.column(), 0.5);
        Unit unit = search.unit(candidate.column(), quantity)
                .orElse(Units.get(Dimension.TEMPERATURE, middle > 230.0 ? "K" : "degC"));
        if (!(unit.toSi(middle) > leastK && unit.toSi(middle) < mostK)) {
            leaveOut(search, quantity, candidate, Search.text("its median is %.3g %s", middle, unit));
            return;
        }
        search.accept(
                quantity,
                candidate.column(),
                unit,
                1,
                0.0,
                Standing.SILENT,
                Search.text("its median is %.4g %s", middle, unit));
    }

    /** The hands turn the way they push: the torque follows the angle, and the angle's direction is known by now. */
    private static void torque(Search search, Candidate candidate) {
        Optional<Search.Found> hands =
                search.get(Quantity.STEERING_WHEEL_ANGLE).or(() -> search.get(Quantity.ROAD_WHEEL_ANGLE));
        if (hands.isEmpty()) {
            return;
        }
        int column = candidate.column();
        double follows = hands.get().entry().sign()
                * Lag.correlation(
                        search.signals.column(column),
                        search.signals.column(hands.get().column()));
        if (!(Math.abs(follows) > TELLING_CORRELATION)) {
            leaveOut(
                    search,
                    Quantity.STEERING_TORQUE,
                    candidate,
                    Search.text("it does not follow the steering angle (correlation %.2f)", follows));
            return;
        }
        Unit unit = search.unit(column, Quantity.STEERING_TORQUE).orElse(Units.get(Dimension.TORQUE, "N m"));
        search.accept(
                Quantity.STEERING_TORQUE,
                column,
                unit,
                search.givenEntry(Quantity.STEERING_TORQUE).map(MapEntry::sign).orElse(follows < 0.0 ? -1 : 1),
                0.0,
                Standing.CONFIRMED,
                Search.text("it follows the steering angle (correlation %.2f)", Math.abs(follows)));
    }

    private static void leaveOut(Search search, Quantity quantity, Candidate candidate, String why) {
        search.remark(
                "Column '%s' is named like the %s but cannot be it: %s; it is not used.",
                search.header(candidate.column()), quantity.words(), why);
        search.claimed.add(candidate.column());
    }
}
