package setwright.app.world;

import setwright.core.car.CarSheet;
import setwright.core.car.model.CarAssembler;
import setwright.core.car.model.CarModel;

/** A car of the invented world: what its user knows, and what is true. Immutable. */
public final class WorldCar {
    private final String name;
    private final String sheetText;
    private final CarSheet sheet;
    private final double[] trueParameters;

    WorldCar(String name, String sheetText, CarSheet sheet, double[] trueParameters) {
        this.name = name;
        this.sheetText = sheetText;
        this.sheet = sheet;
        this.trueParameters = trueParameters.clone();
    }

    /** Returns the short name. */
    public String name() {
        return name;
    }

    /** Returns the sheet as a user would have it, in YAML. */
    public String sheetText() {
        return sheetText;
    }

    /** Returns the sheet, in the balanced setup. */
    public CarSheet sheet() {
        return sheet;
    }

    /** Returns a copy of the true values, by index of {@link setwright.core.car.model.Parameter}. */
    public double[] trueParameters() {
        return trueParameters.clone();
    }

    /**
     * Returns the true car in a setup.
     *
     * @param setup  this car's sheet, items changed or not
     */
    public CarModel trueCar(CarSheet setup) {
        return new CarAssembler(sheet).build(setup, trueParameters);
    }
}
