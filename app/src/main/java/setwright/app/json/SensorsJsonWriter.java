package setwright.app.json;

import static setwright.app.json.Numbers.known;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import setwright.app.evidence.Answer;
import setwright.app.story.SensorWords;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;
import setwright.core.chassis.ChassisEvidence;
import setwright.core.chassis.LapInterval;
import setwright.core.chassis.Subject;

/** What the other sensors tell as JSON; units stand in the names of the figures. */
final class SensorsJsonWriter {
    private static final Figures METRIC = Figures.forTerminal(UnitSystem.METRIC);
    private static final double PERCENT = 100.0;
    private static final double MM = 1000.0;
    private static final double PER_BAR = 1.0e-5;
    private static final double KMH = 3.6;
    private static final double ZERO_C_K = 273.15;

    private final Map<String, OptionalDouble> figures = new LinkedHashMap<>();

    private SensorsJsonWriter() {}

    static SensorsJson of(Answer answer) {
        ChassisEvidence evidence = ChassisEvidence.of(answer.diagnosis(), answer.car());
        return new SensorsJson(
                SensorWords.told(evidence, METRIC).stream()
                        .map(told -> told(told, evidence))
                        .toList(),
                evidence.missing().stream()
                        .map(found -> new SensorsJson.Missing(found.subject().words(), found.recorded(), found.why()))
                        .toList(),
                histograms(evidence),
                heights(evidence));
    }

    private static SensorsJson.Told told(SensorWords.Told told, ChassisEvidence evidence) {
        return new SensorsJson.Told(
                told.subject().words(),
                told.standsOut().map(SensorsJsonWriter::plain),
                told.sentences().stream().map(SensorsJsonWriter::plain).toList(),
                told.caution(),
                new SensorsJsonWriter().figures(told.subject(), evidence));
    }

    private static String plain(String sentence) {
        return sentence.replace(Figures.KEPT_TOGETHER, ' ');
    }

    private static List<SensorsJson.Histogram> histograms(ChassisEvidence evidence) {
        return evidence.dampers().stream()
                .flatMap(found -> found.wheels().stream()
                        .map(wheel -> new SensorsJson.Histogram(
                                wheel.wheel().words(),
                                found.edgesMps().stream()
                                        .map(edge -> known(MM * edge))
                                        .toList(),
                                wheel.shares().stream().map(Numbers::known).toList())))
                .toList();
    }

    private static List<SensorsJson.Height> heights(ChassisEvidence evidence) {
        return evidence.rideHeights().stream()
                .flatMap(found -> found.points().stream())
                .map(point -> new SensorsJson.Height(
                        known(KMH * point.speedMps()),
                        known(MM * point.frontM().mean()),
                        known(MM * point.rearM().mean()),
                        known(MM * point.rakeM().mean()),
                        known(MM * point.rakeM().low()),
                        known(MM * point.rakeM().high()),
                        point.rakeM().laps()))
                .toList();
    }

    private Map<String, OptionalDouble> figures(Subject subject, ChassisEvidence evidence) {
        switch (subject) {
            case DAMPERS ->
                evidence.dampers().ifPresent(found -> {
                    figures.put("rate_hz", known(found.rateHz()));
                    figures.put("band_hz", known(found.bandHz()));
                    found.wheels().forEach(wheel -> {
                        String name = wheel.wheel().words().replace(' ', '_');
                        put(name + "_low_bump_percent", wheel.lowBump(), PERCENT);
                        put(name + "_low_rebound_percent", wheel.lowRebound(), PERCENT);
                        put(name + "_high_bump_percent", wheel.highBump(), PERCENT);
                        put(name + "_high_rebound_percent", wheel.highRebound(), PERCENT);
                        put(name + "_rms_mm_per_s", wheel.rmsMps(), MM);
                    });
                });
            case RIDE_HEIGHT ->
                evidence.rideHeights().ifPresent(found -> {
                    put("front_fall_at_180_kmh_mm", found.frontFallM(), MM);
                    put("rear_fall_at_180_kmh_mm", found.rearFallM(), MM);
                    put("rake_gain_at_180_kmh_mm", found.rakeGainM(), MM);
                    put("front_least_mm", found.frontLeastM(), MM);
                    put("rear_least_mm", found.rearLeastM(), MM);
                });
            case BRAKE_PRESSURE ->
                evidence.brakePressures().ifPresent(found -> {
                    put("front_pressure_share_percent", found.share(), PERCENT);
                    put("growth_light_to_hard_points", found.growth(), PERCENT);
                    found.force().ifPresent(force -> put("front_force_share_percent", force.share(), PERCENT));
                    found.releases()
                            .forEach(release -> put(
                                    "corner_" + release.corner() + "_release_percent_per_tenth",
                                    release.perTenth(),
                                    PERCENT));
                });
            case WARM_UP ->
                evidence.warmUp().ifPresent(found -> {
                    figures.put("end_degc", known(found.endK() - ZERO_C_K));
                    figures.put("tau_s", known(found.tauS()));
                    figures.put("tau_s_low", known(found.tauLowS()));
                    figures.put("tau_s_high", known(found.tauHighS()));
                    figures.put("steady_from_lap", known(found.steadyLap()));
                });
            case TREAD ->
                evidence.tread()
                        .ifPresent(found -> found.wheels().forEach(wheel -> {
                            String name = wheel.wheel().words().replace(' ', '_');
                            put(name + "_inner_over_outer_k", wheel.innerOver(), 1.0);
                            put(name + "_middle_over_both_k", wheel.middleOver(), 1.0);
                        }));
            case TYRE_PRESSURE ->
                evidence.tyrePressures()
                        .ifPresent(found -> found.wheels().forEach(wheel -> {
                            String name = wheel.wheel().words().replace(' ', '_');
                            figures.put(name + "_start_bar", known(PER_BAR * wheel.startPa()));
                            put(name + "_warm_bar", wheel.warmPa(), PER_BAR);
                            figures.put(
                                    name + "_drift_bar_per_lap",
                                    known(PER_BAR * wheel.drift().slope()));
                        }));
            case STEERING_TORQUE ->
                evidence.steeringTorque().ifPresent(found -> {
                    put("kept_near_peak_percent", found.kept(), PERCENT);
                });
            case DAY ->
                evidence.day().ifPresent(found -> {
                    figures.put("track_degc_first", known(found.trackFromK().orElse(Double.NaN) - ZERO_C_K));
                    figures.put("track_degc_last", known(found.trackToK().orElse(Double.NaN) - ZERO_C_K));
                    figures.put("air_degc_first", known(found.airFromK().orElse(Double.NaN) - ZERO_C_K));
                    figures.put("air_degc_last", known(found.airToK().orElse(Double.NaN) - ZERO_C_K));
                });
        }
        return figures;
    }

    private void put(String name, LapInterval interval, double factor) {
        figures.put(name, known(factor * interval.mean()));
        figures.put(name + "_low", known(factor * interval.low()));
        figures.put(name + "_high", known(factor * interval.high()));
    }
}
