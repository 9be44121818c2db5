package setwright.app.command;

import picocli.CommandLine.Option;
import setwright.app.units.UnitSystem;

/** The units of speed and distance. */
final class UnitsOption {
    @Option(
            names = "--units",
            paramLabel = "UNITS",
            description = "metric (km/h, m; the default) or imperial (mph, ft). JSON is always metric.")
    private UnitSystem units = UnitSystem.METRIC;

    UnitSystem system() {
        return units;
    }
}
