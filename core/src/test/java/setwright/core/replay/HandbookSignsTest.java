package setwright.core.replay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.car.Sheets;
import setwright.core.car.setup.SetupCatalogue;
import setwright.core.handling.Phase;
import setwright.core.recording.Channel;

final class HandbookSignsTest {
    private static final CarSheet SHEET = Sheets.adjustable();

    private static Prediction prediction(SetupChange change, double entryRad, double midRad) {
        Channel none = Channel.of(new double[] {0.0});
        return new Prediction(
                List.of(change),
                List.of(),
                List.of(phase(Phase.ENTRY, entryRad), phase(Phase.MID, midRad)),
                new Effect(0.0, 0.0, 0.0, 0.5),
                List.of(0.5, 0.5),
                new LapEffect(none, none, none, none, none, none),
                List.of(),
                List.of());
    }

    private static PhaseEffect phase(Phase phase, double rad) {
        double half = 0.2 * Math.abs(rad);
        return new PhaseEffect(phase, Optional.empty(), new Effect(rad, rad - half, rad + half, rad > 0.0 ? 1.0 : 0.0));
    }

    @Test
    void aStifferFrontBarThatLoosensTheEntryIsNamed() {
        SetupChange stiffer = new SetupChange("front_bar", 4.0, 5.0);
        assertThat(HandbookSigns.disagreements(SHEET, prediction(stiffer, 0.002, 0.003)))
                .isEmpty();
        assertThat(HandbookSigns.disagreements(SHEET, prediction(stiffer, -0.002, 0.003)))
                .singleElement()
                .asString()
                .contains("front_bar turned up", "toward understeer", "by 0.11 deg", "The track decides");
        SetupChange softer = new SetupChange("front_bar", 5.0, 4.0);
        assertThat(HandbookSigns.disagreements(SHEET, prediction(softer, -0.002, 0.003)))
                .singleElement()
                .asString()
                .contains("front_bar turned down", "toward oversteer");
    }

    @Test
    void nextToNothingIsNoDisagreement() {
        assertThat(HandbookSigns.disagreements(
                        SHEET, prediction(new SetupChange("front_bar", 4.0, 5.0), -0.0001, 0.003)))
                .isEmpty();
    }

    @Test
    void whereHandbooksAreNotAtOneNothingIsCompared() {
        assertThat(HandbookSigns.up(SHEET, SetupCatalogue.find("front_bump").orElseThrow()))
                .isEmpty();
    }
}
