package setwright.app.truthbench;

import setwright.core.simulation.driver.RoadBumps;
import setwright.core.simulation.layout.CircuitPlan;

/** The bumps of a circuit, looked up quickly. */
final class Road implements RoadBumps {
    private static final double STEP_M = 0.1;

    private final double[] height;
    private final double lengthM;

    private Road(CircuitPlan plan) {
        lengthM = plan.lengthM();
        height = new double[(int) Math.ceil(lengthM / STEP_M) + 2];
        for (int i = 0; i < height.length; i++) {
            height[i] = plan.axleHeight((i * STEP_M) % lengthM);
        }
    }

    static RoadBumps of(CircuitPlan plan) {
        return plan.bumps().isEmpty() ? RoadBumps.NONE : new Road(plan);
    }

    @Override
    public double heightM(double stationM) {
        double place = (stationM - lengthM * Math.floor(stationM / lengthM)) / STEP_M;
        int i = (int) place;
        double rest = place - i;
        return height[i] + rest * (height[i + 1] - height[i]);
    }
}
