package setwright.core.car.model;

import setwright.core.car.CarSheet;
import setwright.core.car.SetupItem;

/** Reads a setup with what to take when an item is missing. */
record Values(CarSheet sheet) {

    double of(String item, double otherwise) {
        return sheet.item(item).map(SetupItem::value).orElse(otherwise);
    }

    boolean has(String item) {
        return sheet.item(item).isPresent();
    }

    /** Middle of the allowed range. */
    double middle(String item, double otherwise) {
        return sheet.item(item).map(found -> 0.5 * (found.min() + found.max())).orElse(otherwise);
    }

    /** Where the value lies in its range: -0.5 at its least, 0.5 at its greatest, 0 when missing. */
    double place(String item) {
        return sheet.item(item)
                .filter(found -> found.max() > found.min())
                .map(found -> (found.value() - 0.5 * (found.min() + found.max())) / (found.max() - found.min()))
                .orElse(0.0);
    }
}
