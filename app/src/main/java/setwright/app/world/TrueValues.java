package setwright.app.world;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import setwright.core.car.CarSheet;
import setwright.core.car.model.CarPrior;
import setwright.core.car.model.Parameter;
import setwright.intake.yaml.YamlFile;

/** Reads what is true of a car and not on its sheet: values of {@link Parameter} by their names in words. */
final class TrueValues {
    private TrueValues() {}

    /** Returns the name of a parameter in a file, such as {@code grip split}. */
    static String words(Parameter parameter) {
        return parameter.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Reads text; what is left out has the middle of the prior. */
    static double[] parse(String file, String text, CarSheet sheet) {
        Keys keys = new Keys(file, YamlFile.parse(file, text));
        List<String> known =
                Arrays.stream(Parameter.values()).map(TrueValues::words).toList();
        keys.allowOnly(known);
        double[] values = CarPrior.of(sheet).middle();
        for (Parameter parameter : Parameter.values()) {
            if (keys.has(words(parameter))) {
                values[parameter.index()] = keys.number(words(parameter));
            }
        }
        return values;
    }
}
