package setwright.app.story;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import setwright.app.predict.PredictionAnswer;
import setwright.app.predict.PresentBalance;
import setwright.app.units.Figures;
import setwright.core.handling.Phase;
import setwright.core.handling.SpeedClass;
import setwright.core.replay.PhaseEffect;
import setwright.core.replay.Prediction;

/** Where a change moves the balance, in words that know what the balance is now. */
final class BalanceMoves {
    /** Smaller moves are not worth a word: a tenth of what one typical change does. */
    private static final double OF_YARDSTICK = 0.1;
    /** Nor are moves far below the change's own largest. */
    private static final double OF_LARGEST = 1.0 / 3.0;
    /** From half of what one typical change does, the balance now has a name. */
    private static final double NAMED = 0.5;

    private final PresentBalance now;

    private BalanceMoves(PresentBalance now) {
        this.now = now;
    }

    static BalanceMoves of(PredictionAnswer answer) {
        return new BalanceMoves(PresentBalance.of(answer));
    }

    /** Returns half a sentence: {@code takes understeer out of mid (low and medium speed)}. */
    String words(Prediction prediction) {
        double yardstick = now.table().yardstickRad();
        double largest = prediction.phases().stream()
                .mapToDouble(effect -> Math.abs(effect.balance().central()))
                .max()
                .orElse(0.0);
        if (largest < OF_YARDSTICK * yardstick) {
            return "hardly moves the balance";
        }
        double least = Math.max(OF_YARDSTICK * yardstick, OF_LARGEST * largest);
        Map<String, Map<Phase, Set<SpeedClass>>> groups = new LinkedHashMap<>();
        prediction.phases().stream()
                .filter(effect -> effect.speedClass().isPresent()
                        && effect.balance().signSure()
                        && Math.abs(effect.balance().central()) >= least)
                .sorted(Comparator.comparingDouble((PhaseEffect effect) ->
                                Math.abs(effect.balance().central()))
                        .reversed())
                .forEach(effect -> groups.computeIfAbsent(verb(effect, yardstick), key -> new EnumMap<>(Phase.class))
                        .computeIfAbsent(effect.phase(), key -> EnumSet.noneOf(SpeedClass.class))
                        .add(effect.speedClass().orElseThrow()));
        if (groups.isEmpty()) {
            return "what it does to the balance is not sure: " + PredictionWords.OPEN;
        }
        List<String> parts = new ArrayList<>();
        groups.forEach((verb, places) -> parts.add(verb + " " + places(places, prediction)));
        return String.join("; ", parts);
    }

    private String verb(PhaseEffect effect, double yardstickRad) {
        boolean push = effect.balance().central() > 0.0;
        double present = now.rad(effect.phase(), effect.speedClass()).orElse(0.0);
        if (Math.abs(present) < NAMED * yardstickRad) {
            return push ? "moves toward understeer in" : "moves toward oversteer in";
        }
        String word = present > 0.0 ? "understeer" : "oversteer";
        return push == present > 0.0 ? "adds to the " + word + " in" : "takes " + word + " out of";
    }

    private static String places(Map<Phase, Set<SpeedClass>> places, Prediction prediction) {
        Map<Set<SpeedClass>, List<String>> byClasses = new LinkedHashMap<>();
        places.forEach((phase, classes) -> byClasses
                .computeIfAbsent(said(phase, classes, prediction), key -> new ArrayList<>())
                .add(phase.words()));
        List<String> parts = new ArrayList<>();
        byClasses.forEach((classes, phases) -> parts.add(Figures.words(phases) + " ("
                + (classes.isEmpty()
                        ? "all speeds"
                        : Figures.words(classes.stream().map(SpeedClass::words).toList()) + " speed")
                + ")"));
        return Figures.words(parts);
    }

    /** Classes that need saying: none when these are all that the lap has in this phase. */
    private static Set<SpeedClass> said(Phase phase, Set<SpeedClass> classes, Prediction prediction) {
        boolean all = prediction.phases().stream()
                .filter(effect -> effect.phase() == phase)
                .flatMap(effect -> effect.speedClass().stream())
                .allMatch(classes::contains);
        return all ? Set.of() : classes;
    }
}
