package setwright.core.car.model;

import java.util.function.ToDoubleBiFunction;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupItem;
import setwright.core.car.setup.SetupCatalogue;
import setwright.core.car.setup.SetupItemKind;

/** Reads a setup in SI units (counts stay counts) with what to take when an item is missing. */
record Values(CarSheet sheet) {

    boolean has(String item) {
        return sheet.item(item).isPresent();
    }

    /** The value in SI units. */
    double of(String item, double otherwise) {
        return read(item, otherwise, (kind, found) -> kind.toSi(found));
    }

    /** Middle of the allowed range, SI. */
    double middle(String item, double otherwise) {
        return read(item, otherwise, (kind, found) -> kind.toSi(found, found.middle()));
    }

    /** Where the value lies in its range: -0.5 at its least, 0.5 at its greatest, 0 when missing. */
    double place(String item) {
        return read(item, 0.0, (kind, found) -> found.place());
    }

    private double read(String item, double otherwise, ToDoubleBiFunction<SetupItemKind, SetupItem> reader) {
        return SetupCatalogue.find(item)
                .flatMap(kind -> sheet.item(item).map(found -> reader.applyAsDouble(kind, found)))
                .orElse(otherwise);
    }
}
