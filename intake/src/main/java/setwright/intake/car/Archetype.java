package setwright.intake.car;

import setwright.core.car.Downforce;
import setwright.core.car.DrivenAxle;

/**
 * A kind of car, told by its driven axle and its downforce, with middling values for what a user does not know. All values are
 * common practice for racing cars of the kind, with a spread of about a tenth to a fifth.
 *
 * @param words  what to call it in a sentence
 */
record Archetype(
        String words,
        double massKg,
        double fuelStartKg,
        double frontWeightShare,
        double wheelbaseM,
        double trackM,
        double centreOfMassHeightM,
        double steeringRatio,
        double tyreRadiusM,
        double motionRatio) {

    private static final Archetype OPEN_WITH_WINGS =
            new Archetype("a rear-drive car with strong downforce", 750, 35, 0.45, 2.75, 1.58, 0.31, 11.0, 0.31, 0.9);
    private static final Archetype CLOSED_REAR = new Archetype(
            "a rear-drive closed car with moderate downforce", 1250, 50, 0.48, 2.60, 1.60, 0.44, 14.0, 0.33, 0.75);
    private static final Archetype ROAD_REAR =
            new Archetype("a rear-drive car without downforce", 1200, 40, 0.51, 2.55, 1.50, 0.46, 15.0, 0.31, 0.8);
    private static final Archetype FRONT =
            new Archetype("a front-drive car", 1150, 35, 0.61, 2.62, 1.54, 0.47, 15.0, 0.31, 0.85);
    private static final Archetype ALL =
            new Archetype("a four-wheel-drive car", 1350, 45, 0.54, 2.62, 1.56, 0.47, 14.5, 0.32, 0.8);

    static Archetype of(DrivenAxle axle, Downforce downforce) {
        return switch (axle) {
            case FRONT -> FRONT;
            case ALL -> ALL;
            case REAR ->
                switch (downforce) {
                    case STRONG -> OPEN_WITH_WINGS;
                    case MODERATE -> CLOSED_REAR;
                    case NONE -> ROAD_REAR;
                };
        };
    }
}
