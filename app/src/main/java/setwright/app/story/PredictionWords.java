package setwright.app.story;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import setwright.app.predict.PredictionAnswer;
import setwright.app.units.Figures;
import setwright.core.car.SetupChange;
import setwright.core.car.SetupItem;
import setwright.core.judgement.Diagnosis;
import setwright.core.replay.Effect;
import setwright.core.replay.PhaseEffect;
import setwright.core.replay.Prediction;

/** What a predicted change does, in sentences. */
public final class PredictionWords {
    /** Said wherever the draws do not agree on a sign. */
    public static final String OPEN = "the track decides";

    private static final String NO_TIME = "no change of lap time that shows";

    /** Units that only repeat the item's name. */
    private static final Set<String> UNSAID = Set.of("position", "step", "ratio", "");
    /** Below it a lap time cannot be told from none: the clocks of most recordings show hundredths. */
    private static final double LEAST_TIME_S = 0.005;
    /** Where all is smaller than this, hundredths of a second say too little. */
    private static final double SMALL_TIME_S = 0.1;
    /** Share of the whole effect from which a change counts as one for that phase: more than all others together. */
    private static final double MOSTLY = 0.5;

    private final PredictionAnswer answer;
    private final Figures figures;
    private final BalanceMoves moves;

    /** Makes sentences about an answer's predictions. */
    public PredictionWords(PredictionAnswer answer, Figures figures) {
        this.answer = answer;
        this.figures = figures;
        this.moves = BalanceMoves.of(answer);
    }

    /** Returns the answer in one sentence. */
    public String headline(Prediction prediction) {
        return change(prediction) + ": " + time(prediction.lapTimeS()) + "; " + moves.words(prediction) + ".";
    }

    /** Returns what is turned and what the lap time does, short enough for a heading. */
    public String heading(Prediction prediction) {
        Effect time = prediction.lapTimeS();
        String text = change(prediction) + ": ";
        if (!shows(time)) {
            return text + NO_TIME;
        }
        String size = (time.central() < 0.0 ? "quicker" : "slower") + " by " + seconds(time.central(), time) + " a lap";
        return text + (time.signSure() ? size : "perhaps " + size + ", " + OPEN);
    }

    /** Returns what the heading leaves out: how sure it is, and the balance. */
    public String rest(Prediction prediction) {
        Effect time = prediction.lapTimeS();
        String sureness = figures.sureness(time.probabilityOfSign()) + " sure. ";
        String sure = !shows(time)
                ? ""
                : time.signSure()
                        ? sizes(time) + (time.central() < 0.0 ? " quicker, " : " slower, ") + sureness
                        : "From " + signed(time.low(), time) + " to " + signed(time.high(), time) + ", " + sureness;
        return sure + Figures.sentence("It " + moves.words(prediction));
    }

    /** Returns what is turned: {@code front_bar 4 -> 3}. */
    public String change(Prediction prediction) {
        List<String> parts = prediction.changes().stream().map(this::change).toList();
        return Figures.words(parts) + (parts.size() > 1 ? " together, as one change" : "");
    }

    private String change(SetupChange change) {
        String unit =
                answer.answer().car().item(change.item()).map(SetupItem::unit).orElse("");
        return change.item() + " " + plain(change.from()) + " " + figures.arrow() + " " + plain(change.to())
                + (UNSAID.contains(unit) ? "" : Figures.KEPT_TOGETHER + unit);
    }

    private String plain(double value) {
        String text = BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
        return text.replace("-", figures.minus());
    }

    /** Returns a change of lap time in words, with interval and sureness. */
    public String time(Effect effect) {
        if (!shows(effect)) {
            return NO_TIME;
        }
        String word = effect.central() < 0.0 ? "quicker" : "slower";
        String size = seconds(effect.central(), effect) + " a lap";
        return effect.signSure()
                ? word + " by " + size + " (" + sizes(effect) + ", " + figures.sureness(effect.probabilityOfSign())
                        + " sure)"
                : "perhaps " + word + " by " + size + " (" + signed(effect.low(), effect) + " to "
                        + signed(effect.high(), effect) + ", " + figures.sureness(effect.probabilityOfSign())
                        + " sure: " + OPEN + ")";
    }

    private static boolean shows(Effect effect) {
        return Math.abs(effect.central()) >= LEAST_TIME_S;
    }

    private String sizes(Effect effect) {
        double near = Math.min(Math.abs(effect.low()), Math.abs(effect.high()));
        double far = Math.max(Math.abs(effect.low()), Math.abs(effect.high()));
        return figures.number(near, decimals(effect)) + " to " + seconds(far, effect);
    }

    private String signed(double value, Effect effect) {
        return seconds(value, effect) + (value < 0.0 ? " quicker" : " slower");
    }

    private String seconds(double value, Effect effect) {
        return figures.seconds(Math.abs(value), decimals(effect));
    }

    private static int decimals(Effect effect) {
        return Math.max(Math.abs(effect.low()), Math.abs(effect.high())) < SMALL_TIME_S ? 3 : 2;
    }

    /** Returns whether the change is one for the whole corner or for a phase, as measured; empty without an effect. */
    public Optional<String> selectivity(Prediction prediction) {
        List<PhaseEffect> phases = new ArrayList<>();
        List<Double> shares = new ArrayList<>();
        double sum = 0.0;
        for (int i = 0;
                i < prediction.phases().size() && i < prediction.selectivity().size();
                i++) {
            if (prediction.phases().get(i).speedClass().isEmpty()) {
                phases.add(prediction.phases().get(i));
                shares.add(prediction.selectivity().get(i));
                sum += prediction.selectivity().get(i);
            }
        }
        if (phases.size() < 2 || !(sum > 0.0)) {
            return Optional.empty();
        }
        List<String> parts = new ArrayList<>();
        int most = 0;
        for (int i = 0; i < phases.size(); i++) {
            parts.add(phases.get(i).phase().words() + " " + figures.percent(shares.get(i) / sum));
            most = shares.get(i) > shares.get(most) ? i : most;
        }
        String where = shares.get(most) / sum > MOSTLY
                ? "It acts mostly on " + phases.get(most).phase().words()
                : "It acts on several phases";
        return Optional.of(where + "; of its effect on the balance: " + Figures.words(parts) + ".");
    }

    /** Returns what the prediction rests on that may be wrong, the driving first. */
    public List<String> doubts(Prediction prediction) {
        List<String> doubts = new ArrayList<>(driving());
        prediction.doubts().stream().map(figures::told).forEach(doubts::add);
        return doubts;
    }

    /** Returns a warning when the driving does not repeat: no effect of a change would show then. */
    public List<String> driving() {
        Diagnosis diagnosis = answer.answer().diagnosis();
        return diagnosis.repeatability().repeatable()
                ? List.of()
                : List.of(
                        "The driving does not repeat from lap to lap: coach it first, no change of the car would show."
                                + " What stands here is the change on the laps as driven.");
    }

    /** Returns what a table of single steps comes to. */
    public String summary() {
        List<Prediction> all = answer.predictions();
        long quicker = all.stream()
                .map(Prediction::lapTimeS)
                .filter(effect -> effect.signSure() && effect.central() < 0.0 && shows(effect))
                .count();
        return (quicker == 0 ? "None" : String.valueOf(quicker)) + " of " + all.size() + " changes by one step "
                + (quicker < 2 ? "is" : "are") + " surely quicker on these laps.";
    }

    /** Returns the first of the single steps in a sentence. */
    public String first() {
        return "First: " + headline(answer.predictions().get(0));
    }
}
