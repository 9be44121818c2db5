package setwright.core.car.figures;

import java.util.OptionalDouble;
import setwright.core.car.CarSheet;

/** A model of the car that can tell how much it understeers at low lateral acceleration. */
@FunctionalInterface
public interface UndersteerModel {
    /** For want of a model. */
    UndersteerModel NONE = sheet -> OptionalDouble.empty();

    /**
     * Returns the understeer gradient (ISO 8855): change of the road wheel angle with lateral acceleration beyond the
     * geometric angle, rad/(m/s²), positive for understeer; empty when it cannot be told.
     */
    OptionalDouble gradient(CarSheet sheet);
}
