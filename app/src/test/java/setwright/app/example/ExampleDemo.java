package setwright.app.example;

import java.util.Optional;
import setwright.app.demo.BackToBack;
import setwright.app.demo.DemoStint;
import setwright.app.demo.DemoStory;
import setwright.app.demo.Difference;
import setwright.app.demo.Technique;
import setwright.core.judgement.Finding;
import setwright.core.simulation.driver.DriverStyle;

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
                Optional.of(new BackToBack(better.times(-1.0), better, new Difference(0.0, -0.1, 0.1))),
                0.4);
    }
}
