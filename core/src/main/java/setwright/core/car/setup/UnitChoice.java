package setwright.core.car.setup;

import java.util.List;

/** Which units an item may be given in; ranges and steps of the catalogue are written in the first. */
enum UnitChoice {
    NONE,
    SPRINGS,
    COUNTS,
    CLICKS_FIRST,
    WINGS,
    LENGTHS,
    PLACES,
    SHARES,
    TORQUES,
    PRESSURES,
    ANGLES,
    RATIOS,
    MASSES;

    List<SetupUnit> units() {
        return switch (this) {
            case NONE -> List.of();
            case SPRINGS ->
                List.of(SetupUnit.NEWTON_PER_MM, SetupUnit.NEWTON_PER_M, SetupUnit.KGF_PER_MM, SetupUnit.LBF_PER_INCH);
            case COUNTS -> List.of(SetupUnit.POSITION, SetupUnit.CLICKS, SetupUnit.STEP, SetupUnit.TURNS);
            case CLICKS_FIRST -> List.of(SetupUnit.CLICKS, SetupUnit.POSITION, SetupUnit.STEP, SetupUnit.TURNS);
            case WINGS -> List.of(SetupUnit.STEP, SetupUnit.POSITION, SetupUnit.CLICKS, SetupUnit.DEG);
            case LENGTHS -> List.of(SetupUnit.MM, SetupUnit.CM, SetupUnit.INCH);
            case PLACES -> List.of(SetupUnit.M, SetupUnit.CM, SetupUnit.MM, SetupUnit.INCH);
            case SHARES -> List.of(SetupUnit.PERCENT, SetupUnit.SHARE);
            case TORQUES -> List.of(SetupUnit.NM, SetupUnit.LBF_FT);
            case PRESSURES -> List.of(SetupUnit.BAR, SetupUnit.KPA, SetupUnit.PSI);
            case ANGLES -> List.of(SetupUnit.DEG, SetupUnit.ARCMIN);
            case RATIOS -> List.of(SetupUnit.RATIO);
            case MASSES -> List.of(SetupUnit.KG, SetupUnit.LB);
        };
    }
}
