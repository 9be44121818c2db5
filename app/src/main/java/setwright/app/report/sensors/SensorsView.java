package setwright.app.report.sensors;

import java.util.List;
import java.util.Optional;
import setwright.app.plot.Markup;
import setwright.app.story.Story;
import setwright.app.units.Figures;
import setwright.core.chassis.ChassisEvidence;

/**
 * What the sensors' link shows.
 *
 * @param link     the argument
 * @param dampers  a histogram for each wheel; empty where dampers could not be read
 * @param heights  ride heights against the speed
 * @param speeds   unit of the speeds there
 */
public record SensorsView(Story.Link link, List<Drawing> dampers, Optional<Drawing> heights, String speeds) {
    public SensorsView {
        dampers = List.copyOf(dampers);
    }

    /**
     * A drawing.
     *
     * @param title  above it
     * @param label  what it shows, in words
     * @param plot   the drawing
     */
    public record Drawing(String title, String label, Markup plot) {}

    /** Returns the view. */
    public static SensorsView of(ChassisEvidence evidence, Story.Link link, Figures figures) {
        return new SensorsView(
                link,
                evidence.dampers().map(found -> DamperPlot.draw(found, figures)).orElse(List.of()),
                evidence.rideHeights().flatMap(found -> HeightPlot.draw(found, figures)),
                figures.units().speedUnit());
    }
}
