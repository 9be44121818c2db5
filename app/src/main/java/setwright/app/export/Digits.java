package setwright.app.export;

import java.math.BigDecimal;
import java.math.MathContext;

/** How many digits texts carry. */
final class Digits {
    /** A latitude in deg to about a centimetre; far more than any other figure deserves. */
    static final int COUNT = 10;

    private static final MathContext ROUNDING = new MathContext(COUNT);

    private Digits() {}

    /** Returns a finite number to so many significant digits. */
    static BigDecimal of(double number) {
        return BigDecimal.valueOf(number).round(ROUNDING).stripTrailingZeros();
    }
}
