package setwright.app.json;

import static setwright.app.json.Numbers.degrees;
import static setwright.app.json.Numbers.digits;
import static setwright.app.json.Numbers.known;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import setwright.app.story.SweepStory;
import setwright.app.sweep.SweepAnswer;
import setwright.app.units.Figures;
import setwright.app.units.UnitSystem;
import setwright.core.simulation.sweep.SetupSweep;
import setwright.core.simulation.sweep.SweptLap;

/** Writes laps over setup items as JSON of version 1. */
public final class SweepJsonWriter {
    private static final int VERSION = 1;
    private static final double KMH_PER_MPS = 3.6;

    private SweepJsonWriter() {}

    /** Returns the JSON text, ending with a line break. */
    public static String write(SweepAnswer answer) {
        SetupSweep sweep = answer.sweep();
        return Numbers.text(new SweepJson(
                VERSION,
                answer.circuit().name(),
                answer.car().description(),
                answer.recording(),
                sweep.items().stream()
                        .map(item -> new SweepJson.Item(
                                item.item().name(),
                                item.item().unit(),
                                digits(item.item().value()),
                                item.values().stream().map(Numbers::digits).toList()))
                        .toList(),
                List.copyOf(sweep.slowCorners()),
                List.copyOf(sweep.fastCorners()),
                lap(sweep, sweep.present()),
                sweep.laps().stream().map(lap -> lap(sweep, lap)).toList(),
                new SweepStory(answer, Figures.forTerminal(UnitSystem.METRIC)).limits()));
    }

    private static SweepJson.Lap lap(SetupSweep sweep, SweptLap lap) {
        return new SweepJson.Lap(
                lap.values().stream().map(Numbers::digits).toList(),
                known(lap.timeS()),
                known(lap.timeS() - sweep.present().timeS()),
                known(KMH_PER_MPS * lap.lowestMps()),
                known(KMH_PER_MPS * lap.highestMps()),
                balance(lap, sweep.slowCorners()),
                balance(lap, sweep.fastCorners()),
                known(lap.frontShare()),
                known(lap.rearShare()),
                known(lap.engineShare()),
                lap.corners().stream()
                        .map(corner -> new SweepJson.Corner(
                                corner.number(),
                                known(KMH_PER_MPS * corner.lowestMps()),
                                known(corner.timeS()),
                                degrees(corner.balanceRad())))
                        .toList());
    }

    private static OptionalDouble balance(SweptLap lap, Set<Integer> corners) {
        OptionalDouble balance = lap.balanceRad(corners);
        return balance.isPresent() ? degrees(balance.getAsDouble()) : balance;
    }
}
