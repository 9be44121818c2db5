package setwright.core.simulation.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import setwright.core.car.CarSheet;
import setwright.core.car.DrivenAxle;
import setwright.core.car.SetupChange;
import setwright.core.car.SetupItem;
import setwright.core.car.Sheets;
import setwright.core.car.setup.SetupCatalogue;
import setwright.core.handling.Phase;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.SpeedRange;

final class FaultCatalogueTest {
    private static final SetupItem BAR = new SetupItem("front_bar", 4.0, "position", 1.0, 9.0, 1.0);
    private static final SetupItem PRESSURE = new SetupItem("rear_tyre_pressure", 1.7, "bar", 1.4, 2.0, 0.02);

    @Test
    void namesAreUniqueAndItemsKnown() {
        Set<String> names = new HashSet<>();
        FaultCatalogue.all()
                .forEach(fault ->
                        assertThat(names.add(fault.name())).as(fault.name()).isTrue());
        FaultCatalogue.all()
                .forEach(fault -> assertThat(fault.moves()).isNotEmpty().allSatisfy(move -> {
                    assertThat(SetupCatalogue.find(move.item())).as(move.item()).isPresent();
                    assertThat(Math.abs(move.share())).isBetween(0.1, 1.0);
                }));
    }

    @Test
    void everyPhaseSignAndSpeedThatAnEngineerNamesIsCovered() {
        assertThat(covered(Phase.BRAKING, BalanceSign.OVERSTEER, SpeedRange.ALL))
                .isTrue();
        for (BalanceSign sign : BalanceSign.values()) {
            assertThat(covered(Phase.ENTRY, sign, SpeedRange.LOW)).isTrue();
            assertThat(covered(Phase.MID, sign, SpeedRange.ALL)).isTrue();
            assertThat(covered(Phase.MID, sign, SpeedRange.HIGH)).isTrue();
            assertThat(covered(Phase.EXIT, sign, SpeedRange.LOW)).isTrue();
        }
    }

    private static boolean covered(Phase phase, BalanceSign sign, SpeedRange speed) {
        return FaultCatalogue.all().stream()
                .anyMatch(fault -> fault.phase() == phase && fault.balance() == sign && fault.speed() == speed);
    }

    @Test
    void changesAreWholeStepsWithinTheRange() {
        CarSheet sheet = Sheets.with(List.of(BAR, PRESSURE));
        Fault stiff = FaultCatalogue.find("front bar too stiff").orElseThrow();
        assertThat(stiff.changes(sheet, 1.0)).containsExactly(new SetupChange("front_bar", 4.0, 7.0));
        assertThat(stiff.changes(sheet, 10.0)).containsExactly(new SetupChange("front_bar", 4.0, 9.0));
        assertThat(stiff.changes(sheet, 0.2)).isEmpty();
        Fault hard = FaultCatalogue.find("rear tyre pressure too high").orElseThrow();
        assertThat(hard.changes(sheet, 1.0)).containsExactly(new SetupChange("rear_tyre_pressure", 1.7, 1.94));
        assertThatThrownBy(() -> stiff.changes(sheet, 0.0)).hasMessageContaining("above 0");
    }

    @Test
    void aCarHasTheFaultsOfItsItemsAndLayout() {
        CarSheet sheet = Sheets.with(List.of(BAR, PRESSURE));
        assertThat(FaultCatalogue.of(sheet))
                .extracting(Fault::name)
                .containsExactlyInAnyOrder(
                        "front bar too stiff",
                        "front bar too soft",
                        "rear tyre pressure too high",
                        "rear tyre pressure too low");
        SetupItem lock = new SetupItem("diff_power_lock", 40.0, "%", 10.0, 80.0, 5.0);
        assertThat(Sheets.with(List.of(lock)).drivenAxle()).isEqualTo(DrivenAxle.REAR);
        assertThat(FaultCatalogue.of(Sheets.with(List.of(lock))))
                .extracting(Fault::name)
                .containsExactly("too much power locking");
        SetupItem stuck = new SetupItem("front_bar", 9.0, "position", 1.0, 9.0, 1.0);
        assertThat(FaultCatalogue.of(Sheets.with(List.of(stuck))))
                .extracting(Fault::name)
                .containsExactly("front bar too soft");
    }
}
