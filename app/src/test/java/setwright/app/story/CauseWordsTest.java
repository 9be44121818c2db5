package setwright.app.story;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.app.example.Example;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;
import setwright.core.judgement.SpeedDependence;

final class CauseWordsTest {
    private static final Figures FIGURES = Figures.forPage(UnitSystem.METRIC);

    @ParameterizedTest
    @CsvSource({
        "0.9, grows with speed as aerodynamic loads do (probability 0.90): wings and ride heights first",
        "0.1, is mechanical",
        "0.5, the corners do not tell (probability of aerodynamic 0.50)"
    })
    void whatToLookAtFirstFollowsFromTheSpeeds(double probability, String words) {
        // between 10 m/s and this speed lie 3000 m²/s²: 0.003 rad
        SpeedDependence found = new SpeedDependence(1.0e-6, -1.0e-6, 3.0e-6, probability);
        String said = plain(CauseWords.overSpeed(found, 10.0, Math.sqrt(3100.0), FIGURES));
        assertThat(said)
                .contains(words, "From 36 km/h to 200 km/h its size changes by +0.17 deg (\u22120.17 to +0.52).");
    }

    @Test
    void standsWithTheCause() {
        assertThat(Storyteller.tell(Example.answer(), FIGURES).cause().details())
                .anyMatch(sentence -> sentence.contains("the corners do not tell"));
    }

    private static String plain(String words) {
        return words.replace(Figures.KEPT_TOGETHER, ' ');
    }
}
