package setwright.fleet.work;

import java.util.List;
import java.util.stream.Stream;
import setwright.app.export.Column;
import setwright.app.export.Measure;
import setwright.core.car.CarSheet;

/**
 * One item of the setup that a recording was made with.
 *
 * @param item   as on the sheet
 * @param value  NaN for an item that is a word
 * @param word   empty for an item that is a number
 * @param unit   of the number; empty where it has none
 */
record SetupRow(String item, double value, String word, String unit) {
    static Stream<SetupRow> of(CarSheet sheet) {
        return Stream.concat(
                sheet.setup().stream().map(item -> new SetupRow(item.name(), item.value(), "", item.unit())),
                sheet.labels().stream().map(label -> new SetupRow(label.name(), Double.NaN, label.value(), "")));
    }

    static List<Column<SetupRow>> columns() {
        return List.of(
                Column.text("item", "name on the car sheet", SetupRow::item),
                Column.number("value", Measure.BESIDE, "value; empty for an item that is a word", SetupRow::value),
                Column.text("unit", "unit of the value; empty where it has none", SetupRow::unit),
                Column.text("word", "what is fitted; empty for an item that is a number", SetupRow::word));
    }
}
