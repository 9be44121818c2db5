package setwright.core.car.worked;

import java.util.Optional;
import setwright.core.car.sums.Ride;
import setwright.core.car.sums.RollStiffness;

/**
 * Roll stiffness of both axles and the front axle's share.
 *
 * @param front        axle, letters ending in {@code f}
 * @param rear         axle, letters ending in {@code r}
 * @param wantedShare  front share to find a front bar for, {@code q}
 */
public record RollSum(AxleInputs front, AxleInputs rear, Optional<Input> wantedShare) {

    /**
     * What an axle is sprung by.
     *
     * @param spring       rate, {@code k_sf}
     * @param motionRatio  {@code MR_f}
     * @param bar          wheel rate of the bar, {@code k_bf}
     * @param track        {@code t_f}
     */
    public record AxleInputs(Input spring, Input motionRatio, Input bar, Input track) {
        /** Returns the rate of the spring at the wheel, N/m. */
        public double wheelRate() {
            return Ride.wheelRate(spring.si(), motionRatio.si());
        }

        /** Returns the roll stiffness, N m/rad. */
        public double rollStiffness() {
            return RollStiffness.axle(wheelRate(), bar.si(), track.si());
        }
    }

    /** Works it out. */
    public Calculation calculation() {
        Calculation.Steps steps = Calculation.named("roll", "Roll stiffness")
                .from(front.spring(), front.motionRatio(), front.bar(), front.track())
                .from(rear.spring(), rear.motionRatio(), rear.bar(), rear.track())
                .from(wantedShare);
        axle(steps, front, "front", "f");
        axle(steps, rear, "rear", "r");
        double ofFront = front.rollStiffness();
        double ofRear = rear.rollStiffness();
        steps.result("K", "roll stiffness, both axles", ofFront + ofRear, Unit.NM_PER_DEG, "{K_f} + {K_r}");
        steps.result(
                "q_f",
                "front share of the roll stiffness",
                RollStiffness.frontShare(ofFront, ofRear),
                Unit.PERCENT,
                "100 * {K_f} / ({K_f} + {K_r})");
        wantedShare.ifPresent(share -> {
            double needed = ofRear * share.si() / (1.0 - share.si());
            steps.result(
                    "K_F",
                    "front roll stiffness for " + SumWords.plain(share),
                    needed,
                    Unit.NM_PER_DEG,
                    "{K_r} * {q} / (100 - {q})");
            Result bar = steps.result(
                    "k_BF",
                    "wheel rate of the front bar for it",
                    RollStiffness.barFor(
                            needed, front.wheelRate(), front.track().si()),
                    Unit.N_PER_MM,
                    "2 * {K_F} * 180 / pi / (1000 * {t_f}^2) - {k_wf}");
            if (bar.value() < 0.0) {
                steps.finding("The front springs alone give more than this share: no front bar is soft enough.");
            }
        });
        return steps.note(
                        "A bar's wheel rate is the force at each wheel per travel of that wheel, the other moving as far the other"
                                + " way. Tyres and frame are taken as rigid.")
                .source(
                        "virtual work, K = (k_w + k_b) t^2 / 2; Milliken, Milliken, Race Car Vehicle Dynamics, ch. 16 (from"
                                + " memory)");
    }

    private static void axle(Calculation.Steps steps, AxleInputs axle, String name, String end) {
        steps.result(
                "k_w" + end,
                name + " wheel rate",
                axle.wheelRate(),
                Unit.N_PER_MM,
                "{k_s" + end + "} * {MR_" + end + "}^2");
        steps.result(
                "K_" + end,
                name + " roll stiffness",
                axle.rollStiffness(),
                Unit.NM_PER_DEG,
                "({k_w" + end + "} + {k_b" + end + "}) * 1000 * {t_" + end + "}^2 / 2 * pi / 180");
    }
}
