package setwright.core.replay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.core.car.CarSheet;
import setwright.core.car.DrivenAxle;
import setwright.core.car.SetupChange;
import setwright.core.car.SetupItem;
import setwright.core.car.Sheets;
import setwright.core.car.model.CarAssembler;
import setwright.core.car.model.CarPrior;

final class ChangeDoubtsTest {
    private static final CarSheet SHEET = Sheets.with(List.of(
            new SetupItem("front_ride_height", 60.0, "mm", 2.0, 80.0, 1.0),
            new SetupItem("final_drive", 3.8, "ratio", 3.0, 4.6, 0.1),
            new SetupItem("front_bump", 10.0, "clicks", 1.0, 20.0, 1.0)));

    @Test
    void aCarThatTouchesTheRoadIsNotPredictedInSilence() {
        assertThat(doubts("front_ride_height", 60.0, 3.0)).anyMatch(text -> text.contains("touches"));
        assertThat(doubts("front_ride_height", 60.0, 55.0)).noneMatch(text -> text.contains("touches"));
    }

    @Test
    void gearsThatAreNotOnTheSheetAreSaidToBeAssumed() {
        CarSheet gearless = Sheets.plain(DrivenAxle.REAR, 1200, 0.48, 2.6, 14.0, 0.45);
        assertThat(doubts(gearless, "final_drive", 3.8, 3.9)).anyMatch(text -> text.contains("gear ratios"));
        assertThat(doubts(gearless, "front_bump", 10.0, 11.0)).noneMatch(text -> text.contains("gear ratios"));
        assertThat(doubts("final_drive", 3.8, 3.9)).noneMatch(text -> text.contains("gear ratios"));
    }

    @Test
    void paddockLoreOnDampersIsLeftToTheTrack() {
        assertThat(doubts("front_bump", 10.0, 11.0)).anyMatch(text -> text.contains("the track decides"));
    }

    private static List<String> doubts(String item, double from, double to) {
        return doubts(SHEET, item, from, to);
    }

    private static List<String> doubts(CarSheet sheet, String item, double from, double to) {
        List<SetupChange> changes = List.of(new SetupChange(item, from, to));
        CarSheet setup = sheet.with(changes);
        return ChangeDoubts.of(
                setup,
                changes,
                new CarAssembler(sheet).build(setup, CarPrior.of(sheet).middle()),
                60.0);
    }
}
