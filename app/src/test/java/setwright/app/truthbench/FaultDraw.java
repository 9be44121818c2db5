package setwright.app.truthbench;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupChange;
import setwright.core.car.model.CarAssembler;
import setwright.core.simulation.fault.Fault;
import setwright.core.simulation.fault.FaultCatalogue;

/*
 * Design note. One item turned over its range often moves the balance by less than laps can show. So a fault takes along others
 * of the same phase, speeds, sign and trigger until the steady state says that the axles' slip differs by a drawn amount: a
 * car that was set up wrong, not one with a wrong bar. What really comes of it is measured afterwards; faults that no steady
 * state shows, as of dampers, take along whatever there is.
 */

/** Draws how large a fault is. */
final class FaultDraw {
    static final double LEAST_RAD = Math.toRadians(0.4);
    static final double MOST_RAD = Math.toRadians(1.2);
    private static final double SMALLEST = 0.9;
    private static final double LARGEST = 1.7;
    private static final int MOST_FAULTS = 4;

    private final CarSheet sheet;
    private final CarAssembler assembler;
    private final double[] parameters;
    private final Fault main;
    private final SteadyShift shift;

    private FaultDraw(CarSheet sheet, double[] parameters, Fault main) {
        this.sheet = sheet;
        this.assembler = new CarAssembler(sheet);
        this.parameters = parameters;
        this.main = main;
        this.shift = new SteadyShift(assembler.build(parameters), main.speed(), main.phase());
    }

    /**
     * Returns what is changed on a balanced sheet.
     *
     * @param parameters  true values of the car
     */
    static List<SetupChange> changes(CarSheet sheet, double[] parameters, Fault main, Random random) {
        return new FaultDraw(sheet, parameters, main).changes(random);
    }

    private List<SetupChange> changes(Random random) {
        double target = DrawnDriver.between(random, LEAST_RAD, MOST_RAD);
        double size = DrawnDriver.between(random, SMALLEST, LARGEST);
        List<Fault> others = new ArrayList<>(FaultCatalogue.of(sheet).stream()
                .filter(fault -> fault.phase() == main.phase()
                        && fault.speed() == main.speed()
                        && fault.balance() == main.balance()
                        && fault.trigger() == main.trigger()
                        && !fault.name().equals(main.name()))
                .toList());
        Collections.shuffle(others, random);
        List<SetupChange> changes = new ArrayList<>(main.changes(sheet, size));
        int faults = 1;
        for (Fault other : others) {
            if (faults == MOST_FAULTS || Math.abs(shift(changes)) >= target) {
                break;
            }
            for (SetupChange change : other.changes(sheet, size)) {
                if (changes.stream().noneMatch(earlier -> earlier.item().equals(change.item()))) {
                    changes.add(change);
                }
            }
            faults++;
        }
        return List.copyOf(changes);
    }

    private double shift(List<SetupChange> changes) {
        return shift.to(assembler.build(sheet.with(changes), parameters)).orElse(MOST_RAD);
    }
}
