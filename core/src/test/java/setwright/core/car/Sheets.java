package setwright.core.car;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Car sheets for tests: only what the balance reads differs from car to car. */
public final class Sheets {
    private Sheets() {}

    /** Returns a car without wings or setup items. */
    public static CarSheet plain(
            DrivenAxle driven, double massKg, double frontShare, double wheelbaseM, double ratio, double heightM) {
        return new CarSheet(
                "invented",
                driven,
                massKg,
                30.0,
                frontShare,
                wheelbaseM,
                1.5,
                1.5,
                heightM,
                ratio,
                0.3,
                List.of(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                1.0,
                1.0,
                Optional.empty(),
                Optional.empty(),
                Downforce.NONE,
                List.of(),
                List.of());
    }
}
