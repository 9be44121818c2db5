package setwright.core.car.worked;

import java.math.BigDecimal;
import java.math.MathContext;

/** Figures inside the sentences of a sum. */
final class SumWords {
    private static final MathContext SIX_DIGITS = new MathContext(6);

    static final String SUSPENSION_CAUTION =
            "Suspension that fails or runs out of travel can hurt someone. Have a qualified person check a real car.";

    static final String SHEET_MASS =
            "The mass off a car sheet, half of the axle's, still holds wheel and hub: give the sprung mass alone where it is known.";

    private SumWords() {}

    /** Returns the value as it was given, with its unit. */
    static String plain(Quantity quantity) {
        String number = new BigDecimal(quantity.value(), SIX_DIGITS)
                .stripTrailingZeros()
                .toPlainString();
        String unit = quantity.unit().symbol();
        return unit.isEmpty() ? number : number + " " + unit;
    }
}
