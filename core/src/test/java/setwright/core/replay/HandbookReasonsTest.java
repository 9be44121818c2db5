package setwright.core.replay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.car.Sheets;
import setwright.core.car.model.CarAssembler;
import setwright.core.car.model.CarModel;
import setwright.core.car.model.CarPrior;
import setwright.core.car.setup.SetupCatalogue;

/**
 * The reasons in words against the handbooks' table of setup effects: which axle, and which way. Milliken and Milliken, Race Car Vehicle
 * Dynamics (SAE 1995), ch. 12, 16 to 18, 22; C. Smith, Tune to Win (1978); J. Dixon, Tires, Suspension and Handling (1996); A.
 * Staniforth, Competition Car Suspension; all from memory, and common practice. U toward understeer, O toward oversteer.
 *
 * <p>Where the words disagree, or where there is nothing to compare:
 *
 * <ul>
 *   <li>toe of the front wheels: the words speak of an angle and have it the other way, see {@link #frontToeIsTheOneDisagreement};
 *   <li>front bump: handbooks are not at one on entry, so the words give rolling in and braking each for itself and the doubts say so;
 *   <li>tyre pressure and camber: handbooks give a side of the best; turned toward the best the sign is the other one. Both sides are rows;
 *   <li>power lock: toward understeer until both wheels slide together, then toward oversteer; the words say both;
 *   <li>fast dampers, compounds: no item of the model, so no words; gears and fuel are not turned for the balance;
 *   <li>ballast itself: its sign is that of where it lies; its position has rows;
 *   <li>wheel load across, caster: not in the model.
 * </ul>
 */
final class HandbookReasonsTest {
    private static final CarSheet SHEET = Sheets.adjustable().with(List.of(new SetupChange("ballast", 0.0, 40.0)));

    private static CarModel model(String item, double value) {
        CarSheet sheet = SHEET.with(
                List.of(new SetupChange(item, SHEET.item(item).orElseThrow().value(), value)));
        return new CarAssembler(SHEET).build(sheet, CarPrior.of(SHEET).middle());
    }

    private static List<String> reasons(String item, double from, double to) {
        return ChangeReasons.of(model(item, from), model(item, to));
    }

    /** Each turned from, to and back: the sign turns with it. */
    @ParameterizedTest
    @CsvSource({
        // handbook row,                  item, from, to, axle that the reason names, sign
        "1 front bar stiffer,             front_bar,            4,    6,    front axle, U",
        "2 rear bar stiffer,              rear_bar,             4,    6,    rear axle,  O",
        "3 front springs stiffer,         front_spring,         120,  150,  front axle, U",
        "4 rear springs stiffer,          rear_spring,          140,  170,  rear axle,  O",
        "6 front rebound up,              front_rebound,        14,   20,   front slow damping, U",
        "7 rear bump up,                  rear_bump_low,        14,   20,   rear slow damping,  O",
        "8 rear rebound up,               rear_rebound_low,     14,   20,   rear slow damping,  O",
        "10 front lower,                  front_ride_height,    50,   45,   the front's share,  O",
        "11 rear higher,                  rear_ride_height,     60,   70,   the front's share,  O",
        "13 front wing up,                front_wing,           5,    8,    the front's share,  O",
        "14 rear wing up,                 rear_wing,            6,    9,    the front's share,  U",
        "15 brake bias forward,           brake_bias_front,     60,   65,   front axle, U",
        "17 preload up,                   diff_preload,         40,   80,   the differential,   U",
        "17 coast locking up,             diff_coast_lock,      40,   60,   the differential,   U",
        "18 power locking up,             diff_power_lock,      35,   60,   the differential,   U",
        "20 front pressure above best up, front_tyre_pressure,  1.9,  2.1,  front tyres, U",
        "20 front pressure below best up, front_tyre_pressure,  1.5,  1.7,  front tyres, O",
        "21 rear pressure above best up,  rear_tyre_pressure,   1.9,  2.1,  rear tyres,  O",
        "21 rear pressure below best up,  rear_tyre_pressure,   1.5,  1.7,  rear tyres,  U",
        "22 front camber from too little, front_camber,         -1.0, -2.0, front tyres, O",
        "22 front camber from too much,   front_camber,         -3.5, -4.5, front tyres, U",
        "23 rear camber from too little,  rear_camber,          0.0,  -1.0, rear tyres,  U",
        "23 rear camber from too much,    rear_camber,          -2.5, -3.5, rear tyres,  O",
        "25 rear toe-in up,               rear_toe,             0.1,  0.3,  outer rear wheel, U",
        "28 weight rearward,              ballast_position,     0.0,  2.0,  front axle's share, O",
        "37 front bump stops engaged,     front_bump_stop_gap,  20,   10,   front axle,  U",
        "37 rear bump stops engaged,      rear_bump_stop_gap,   20,   10,   rear axle,   O",
    })
    void theReasonNamesTheHandbooksAxleAndDirection(
            String row, String item, double from, double to, String axle, String sign) {
        assertSays(row, reasons(item, from, to), axle, sign.equals("U"));
        assertSays(row + ", back", reasons(item, to, from), back(axle, item), sign.equals("O"));
    }

    /** What the softer end gives up the other takes: then that one is named. */
    private static String back(String axle, String item) {
        return item.endsWith("_bar") || item.endsWith("_spring") || item.equals("brake_bias_front")
                ? axle.startsWith("front") ? "rear axle" : "front axle"
                : axle;
    }

    private static void assertSays(String row, List<String> reasons, String axle, boolean understeer) {
        List<String> directed =
                reasons.stream().filter(reason -> reason.contains("toward ")).toList();
        assertThat(directed)
                .as(row + ": " + reasons)
                .isNotEmpty()
                .anySatisfy(reason -> assertThat(reason).containsIgnoringCase(axle))
                .allSatisfy(reason -> assertThat(reason)
                        .contains(understeer ? "toward understeer" : "toward oversteer")
                        .doesNotContain(understeer ? "toward oversteer" : "toward understeer"));
    }

    /** Slow dampers act while the body moves, and never in the middle; front bump works both ways on entry, and the doubts say so. */
    @ParameterizedTest
    @CsvSource({"front_bump", "front_rebound", "rear_bump_low", "rear_rebound_low"})
    void slowDampersActInTransientsOnly(String item) {
        assertThat(reasons(item, 14, 20))
                .singleElement()
                .asString()
                .contains(
                        "only while the body moves",
                        "on entry",
                        "the other way as it rolls back out",
                        "nothing in the middle",
                        "Load along the car comes to its wheels sooner");
        assertThat(reasons(item, 20, 14)).singleElement().asString().contains("takes less", "wheels later");
        SetupChange stiffer = new SetupChange(item, 14, 20);
        CarModel car = model(item, 20);
        assertThat(ChangeDoubts.of(SHEET.with(List.of(stiffer)), List.of(stiffer), car, 50.0))
                .anyMatch(doubt -> doubt.contains("Handbooks disagree on what slow damping does on entry and exit"));
    }

    @Test
    void powerLockSaysWhereItsSignTurns() {
        assertThat(reasons("diff_power_lock", 35, 60))
                .singleElement()
                .asString()
                .contains("no change on the overrun", "until both rear wheels slide together, then the other way");
    }

    /**
     * Handbooks have toe-out in front quicken the turn-in. The balance here is an angle: a toed-out outer wheel needs more of it. The
     * words say "as an angle", and the doubt that goes with the prediction says that the handbooks differ and why.
     */
    @Test
    void frontToeIsTheOneDisagreement() {
        assertSays("24 front toe-out up", reasons("front_toe", 0.0, -0.2), "outer front wheel", true);
        assertThat(reasons("front_toe", 0.0, -0.2)).singleElement().asString().contains("as an angle");
        assertThat(HandbookSigns.up(SHEET, SetupCatalogue.find("front_toe").orElseThrow()))
                .singleElement()
                .satisfies(sign -> {
                    assertThat(sign.understeer()).as("toe-in up").isTrue();
                    assertThat(sign.why()).contains("an angle", "is not modelled");
                });
    }
}
