package setwright.app.scoreboard;

import java.util.Arrays;
import java.util.List;
import setwright.core.handling.Phase;
import setwright.core.handling.SpeedClass;

/**
 * A part of the lap in which a change of balance is compared.
 *
 * @param speed  class of the corners
 * @param phase  of the corner
 */
record ChangeCell(SpeedClass speed, Phase phase) {
    static final List<ChangeCell> ALL = Arrays.stream(SpeedClass.values())
            .flatMap(speed -> Arrays.stream(Phase.values()).map(phase -> new ChangeCell(speed, phase)))
            .toList();

    String words() {
        return speed.words() + " " + phase.words();
    }
}
