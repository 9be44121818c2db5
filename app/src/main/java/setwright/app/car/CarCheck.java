package setwright.app.car;

import java.util.List;
import setwright.app.units.Figures;
import setwright.core.car.CarSheet;
import setwright.core.car.figures.CarFigures;
import setwright.core.car.figures.UndersteerModel;

/**
 * A car sheet that has been read, with what follows from it.
 *
 * @param sheet    as read
 * @param figures  worked out from it
 */
public record CarCheck(CarSheet sheet, CarFigures figures) {

    /** Works out what follows from a sheet. */
    public static CarCheck of(CarSheet sheet, UndersteerModel understeer) {
        return new CarCheck(sheet, CarFigures.of(sheet, understeer));
    }

    /** Returns what to look at twice, a sentence each. */
    public List<String> remarks(Figures shown) {
        return Remarks.of(sheet, figures, shown);
    }
}
