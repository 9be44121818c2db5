package setwright.app.json;

import static setwright.app.json.Numbers.degrees;
import static setwright.app.json.Numbers.known;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import setwright.app.evidence.Answer;
import setwright.app.story.AdviceWords;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;
import setwright.core.advice.Advice;
import setwright.core.advice.AdviceReview;
import setwright.core.advice.Adviser;
import setwright.core.advice.BrakeAdvice;
import setwright.core.advice.DriftAdvice;
import setwright.core.advice.GearingAdvice;
import setwright.core.advice.TemperatureAdvice;
import setwright.core.advice.TravelAdvice;

/** Advice from evidence other than balance as JSON; units stand in the names of the figures. */
final class AdviceJsonWriter {
    private static final Figures METRIC = Figures.forTerminal(UnitSystem.METRIC);

    private AdviceJsonWriter() {}

    static AdviceJson of(Answer answer) {
        AdviceReview review = Adviser.review(answer.diagnosis(), answer.car());
        return new AdviceJson(
                review.advice().stream().map(AdviceJsonWriter::given).toList(),
                review.silent().stream()
                        .map(found -> new AdviceJson.Silent(found.topic().words(), found.recorded(), found.why()))
                        .toList());
    }

    private static AdviceJson.Given given(Advice advice) {
        return new AdviceJson.Given(
                advice.topic().words(),
                plain(AdviceWords.what(advice, METRIC)),
                AdviceWords.evidence(advice, METRIC).stream()
                        .map(AdviceJsonWriter::plain)
                        .toList(),
                List.copyOf(AdviceWords.cautions(advice)),
                advice.laps(),
                advice.corners(),
                advice.move().map(move -> new AdviceJson.Move(move.item(), move.from(), move.to(), move.unit())),
                figures(advice));
    }

    private static String plain(String sentence) {
        return sentence.replace(Figures.KEPT_TOGETHER, ' ');
    }

    private static Map<String, OptionalDouble> figures(Advice advice) {
        Map<String, OptionalDouble> figures = new LinkedHashMap<>();
        if (advice instanceof GearingAdvice gearing) {
            figures.put("top_gear", known(gearing.topGear()));
            figures.put("highest_share", known(gearing.highestShare()));
            figures.put("limiter_kmh", known(3.6 * gearing.limitMps()));
            figures.put("limiter_kmh_after", known(3.6 * gearing.newLimitMps().orElse(Double.NaN)));
            gearing.places()
                    .forEach(place -> figures.put("before_corner_" + place.corner() + "_s", known(place.seconds())));
        } else if (advice instanceof BrakeAdvice brake) {
            figures.put("locks", known(brake.locks()));
            figures.put("locks_other_axle", known(brake.others()));
            figures.put("longest_s", known(brake.seconds()));
            figures.put("p_value", known(brake.pValue()));
        } else if (advice instanceof TravelAdvice travel) {
            figures.put("most_mm", known(1000.0 * travel.mostM()));
            figures.put("room_mm", known(1000.0 * travel.roomM()));
            figures.put("s_per_lap", known(travel.secondsLap()));
        } else if (advice instanceof TemperatureAdvice temperature) {
            figures.put("front_over_rear_k", known(temperature.frontOverRear()));
            figures.put("left_over_right_k", known(temperature.leftOverRight()));
            figures.put("drift_k_per_lap", known(temperature.drift().slope()));
        } else if (advice instanceof DriftAdvice drift) {
            figures.put("balance_deg_per_lap", degrees(drift.balance().slope()));
            figures.put("balance_deg_per_lap_low", degrees(drift.balance().low()));
            figures.put("balance_deg_per_lap_high", degrees(drift.balance().high()));
            figures.put("balance_tau", known(drift.balanceTau()));
            figures.put("time_s_per_lap", known(drift.time().slope()));
            figures.put("time_s_per_lap_low", known(drift.time().low()));
            figures.put("time_s_per_lap_high", known(drift.time().high()));
            figures.put("fuel_kg", known(drift.fuelKg()));
        }
        return figures;
    }
}
