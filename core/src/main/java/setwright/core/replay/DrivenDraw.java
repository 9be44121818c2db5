package setwright.core.replay;

import java.util.Arrays;
import setwright.core.car.model.CarAssembler;
import setwright.core.car.model.CarModel;

/** One lap driven by one car that is believed in: all of a replay that does not depend on what is changed. */
final class DrivenDraw {
    private final double[] parameters;
    private final DrivenLap lap;
    private final LapRun run;
    private final TimeGain time;
    private final double[] scale;
    private final double[] balance;

    DrivenDraw(double[] parameters, CarAssembler assembler, DrivenLap lap, double leastLateral) {
        this.parameters = Arrays.copyOf(parameters, parameters.length);
        this.lap = lap;
        CarModel driven = assembler.build(parameters);
        this.run = LapRun.of(driven, lap, leastLateral).prepared();
        this.time = new TimeGain(lap, driven);
        this.scale = new double[lap.size()];
        this.balance = new double[lap.size()];
    }

    /** Replays a changed car and puts what it does into the samples; one at a time. */
    void replay(int draw, CarModel changed, EffectSamples samples, double lengthM) {
        double[] loads = run.loadsOf(changed);
        run.margins(changed, loads, scale);
        double[] faster = time.faster(scale, changed);
        run.balances(changed, loads, faster, balance);
        samples.put(draw, lap, balance, time.time(), lengthM);
    }

    /** Returns the parameters of the car that is believed in. */
    double[] parameters() {
        return parameters;
    }
}
