package setwright.app.example;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import setwright.app.demo.DemoStint;
import setwright.app.demo.DemoStory;
import setwright.app.demo.Difference;
import setwright.app.demo.Technique;
import setwright.core.judgement.Finding;
import setwright.core.simulation.driver.DriverStyle;
import setwright.core.trial.Looks;
import setwright.core.trial.Trial;
import setwright.core.trial.TrialJudge;
import setwright.core.trial.TrialLap;
import setwright.core.trial.TrialRun;
import setwright.core.trial.TrialTarget;

/** A demo story out of the other examples. */
public final class ExampleDemo {
    private ExampleDemo() {}

    /** Returns a story with every act. */
    public static DemoStory whole() {
        DemoStint stint = new DemoStint("coached", Example.answer());
        Finding problem = Example.answer().diagnosis().findings().get(0);
        Difference better = new Difference(0.3, 0.1, 0.5);
        return new DemoStory(
                "an invented car",
                "an invented circuit",
                Optional.empty(),
                new DemoStint("as-he-came", Example.answer()),
                stint,
                Optional.of(problem),
                Optional.of(new DemoStory.Tried(
                        new Technique("come off the brake earlier", DriverStyle.good()),
                        new DemoStint("technique", Example.answer()),
                        better,
                        better.times(-1.0))),
                Optional.of(ExampleProposal.proposal()),
                Optional.of(new DemoStint("changed", Example.answer())),
                Optional.of(new DemoStint("before-again", Example.answer())),
                Optional.of(trial()),
                0.4);
    }

    /** Three invented runs, the middle one quicker and with less of the problem. */
    private static Trial trial() {
        Optional<TrialTarget> target = TrialTarget.of(Example.answer().diagnosis());
        double better = target.map(TrialTarget::wanted).orElse(1.0) * Math.toRadians(0.3);
        List<TrialRun> runs = List.of(
                run("coached", false, 92.0, 0.0),
                run("changed", true, 91.4, better),
                run("before-again", false, 92.1, 0.0));
        return TrialJudge.judge(runs, target, Looks.once());
    }

    private static TrialRun run(String name, boolean changed, double timeS, double balanceRad) {
        double[] scatter = {-1.0, 0.4, 0.9, -0.6, 0.3};
        List<TrialLap> laps = new ArrayList<>();
        for (int i = 0; i < scatter.length; i++) {
            laps.add(new TrialLap(
                    i + 2,
                    timeS + 0.1 * scatter[i],
                    Map.of(),
                    OptionalDouble.of(balanceRad + Math.toRadians(0.05) * scatter[i])));
        }
        return new TrialRun(name, changed, laps);
    }
}
