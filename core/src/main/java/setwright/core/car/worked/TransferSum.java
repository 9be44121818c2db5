package setwright.core.car.worked;

import setwright.core.car.sums.LateralTransfer;
import setwright.core.car.sums.LoadTransfer;

/**
 * Wheel loads under lateral and longitudinal acceleration.
 *
 * @param mass          {@code m}
 * @param frontWeight   share of the weight on the front axle, {@code w_f}
 * @param wheelbase     {@code L}
 * @param height        of the centre of gravity, {@code h}
 * @param front         axle, letters ending in {@code f}
 * @param rear          axle, letters ending in {@code r}
 * @param hubHeight     height of the unsprung masses, {@code h_u}
 * @param lateral       towards the inside of the corner, {@code a_y}, at least 0
 * @param longitudinal  {@code a_x}, positive forward
 */
public record TransferSum(
        Input mass,
        Input frontWeight,
        Input wheelbase,
        Input height,
        AxleInputs front,
        AxleInputs rear,
        Input hubHeight,
        Input lateral,
        Input longitudinal) {

    /**
     * What an axle gives to the transfer.
     *
     * @param rollStiffness  {@code K_f}
     * @param rollCentre     {@code z_f}
     * @param track          {@code t_f}
     * @param unsprung       mass of the axle, {@code m_uf}
     */
    public record AxleInputs(Input rollStiffness, Input rollCentre, Input track, Input unsprung) {
        private LateralTransfer.Axle axle(double hubHeightM) {
            return new LateralTransfer.Axle(rollStiffness.si(), rollCentre.si(), track.si(), unsprung.si(), hubHeightM);
        }
    }

    /**
     * Works it out.
     *
     * @throws ImpossibleSum when the body would fall over on its springs, or the axles outweigh the car
     */
    public Calculation calculation() {
        Calculation.Steps steps = Calculation.named("transfer", "Load transfer")
                .from(mass, frontWeight, wheelbase, height)
                .from(front.rollStiffness(), front.rollCentre(), front.track(), front.unsprung())
                .from(rear.rollStiffness(), rear.rollCentre(), rear.track(), rear.unsprung())
                .from(hubHeight, lateral, longitudinal);
        lateral(steps);
        double toRear = LoadTransfer.toRearAxle(mass.si(), longitudinal.si(), height.si(), wheelbase.si());
        steps.result("dW", "from the front to the rear axle", toRear, Unit.NEWTON, "{m} * 9.80665 * {a_x} * {h} / {L}");
        wheels(steps, toRear);
        return steps.note("Steady state without downforce, drag and banking. Small roll angles. Roll centres on the"
                        + " road and no unsprung mass are assumed where they are not given.")
                .source("moments about the road; Milliken, Milliken, Race Car Vehicle Dynamics, ch. 18 (from memory)");
    }

    private LateralTransfer transfer() {
        LateralTransfer.Axle frontAxle = front.axle(hubHeight.si());
        LateralTransfer.Axle rearAxle = rear.axle(hubHeight.si());
        double toRear = wheelbase.si() * frontWeight.si();
        try {
            return new LateralTransfer(
                    LateralTransfer.Body.of(
                            mass.si(), height.si(), wheelbase.si() - toRear, toRear, frontAxle, rearAxle),
                    frontAxle,
                    rearAxle);
        } catch (IllegalArgumentException e) {
            throw new ImpossibleSum(e);
        }
    }

    private void lateral(Calculation.Steps steps) {
        LateralTransfer transfer = transfer();
        LateralTransfer.Body body = transfer.body();
        double left = lateral.si();
        steps.result("m_s", "sprung mass", body.massKg(), Unit.MASS, "{m} - {m_uf} - {m_ur}");
        steps.result(
                "h_s", "its height", body.heightM(), Unit.METRE, "({m} * {h} - ({m_uf} + {m_ur}) * {h_u}) / {m_s}");
        steps.result(
                "w_s",
                "its share on the front axle",
                body.toRearAxleM() / (body.toFrontAxleM() + body.toRearAxleM()),
                Unit.PERCENT,
                "({m} * {w_f} - 100 * {m_uf}) / {m_s}");
        steps.result(
                "d",
                "its height above the roll axis",
                transfer.armM(),
                Unit.METRE,
                "{h_s} - {z_f} - ({z_r} - {z_f}) * (1 - {w_s} / 100)");
        steps.result(
                "phi",
                "roll angle",
                transfer.rollRad(left),
                Unit.DEGREE,
                "{m_s} * 9.80665 * {a_y} * {d} / (({K_f} + {K_r}) - {m_s} * 9.80665 * {d} * pi / 180)");
        steps.result(
                "dF_f",
                "from the inner to the outer front wheel",
                transfer.frontN(left),
                Unit.NEWTON,
                "({K_f} * {phi} + 9.80665 * {a_y} * ({m_s} * {w_s} / 100 * {z_f} + {m_uf} * {h_u})) / {t_f}");
        steps.result(
                "dF_r",
                "from the inner to the outer rear wheel",
                transfer.rearN(left),
                Unit.NEWTON,
                "({K_r} * {phi} + 9.80665 * {a_y} * ({m_s} * (1 - {w_s} / 100) * {z_r} + {m_ur} * {h_u})) / {t_r}");
        if (left > 0.0) {
            steps.result(
                    "q",
                    "front share of the lateral transfer",
                    transfer.frontShare(),
                    Unit.PERCENT,
                    "100 * {dF_f} / ({dF_f} + {dF_r})");
        }
    }

    private void wheels(Calculation.Steps steps, double toRear) {
        double weight = LoadTransfer.staticFrontN(mass.si(), 1.0, 1.0);
        double frontWheel = (weight * frontWeight.si() - toRear) / 2.0;
        double rearWheel = (weight * (1.0 - frontWeight.si()) + toRear) / 2.0;
        LateralTransfer transfer = transfer();
        double frontMove = transfer.frontN(lateral.si());
        double rearMove = transfer.rearN(lateral.si());
        String frontBase = "({m} * 9.80665 * {w_f} / 100 - {dW}) / 2";
        String rearBase = "({m} * 9.80665 * (1 - {w_f} / 100) + {dW}) / 2";
        wheel(steps, "F_fo", "outer front wheel", frontWheel + frontMove, frontBase + " + {dF_f}");
        wheel(steps, "F_fi", "inner front wheel", frontWheel - frontMove, frontBase + " - {dF_f}");
        wheel(steps, "F_ro", "outer rear wheel", rearWheel + rearMove, rearBase + " + {dF_r}");
        wheel(steps, "F_ri", "inner rear wheel", rearWheel - rearMove, rearBase + " - {dF_r}");
    }

    private static void wheel(Calculation.Steps steps, String symbol, String words, double load, String formula) {
        steps.result(symbol, "load on the " + words, load, Unit.NEWTON, formula);
        if (load < 0.0) {
            steps.finding("The " + words + " would leave the road; the sum does not hold beyond that.");
        }
    }
}
