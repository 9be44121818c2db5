package setwright.core.advice;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.hipparchus.distribution.discrete.BinomialDistribution;
import setwright.core.advice.Advice.Move;
import setwright.core.advice.AdviceReview.Silent;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupItem;
import setwright.core.car.setup.ItemRange;
import setwright.core.judgement.Diagnosis;
import setwright.core.slip.WheelEvent;
import setwright.core.slip.WheelEvidence;

/** Holds the locks of the front against those of the rear. */
final class BrakeAdviser {
    /** Six to none has a probability of one in thirty-two when both axles are as likely: fewer say nothing at the 5 % level. */
    private static final double LEVEL = 0.05;

    /** A lock in one lap is a slip of the foot. */
    private static final int FEWEST_LAPS = 2;

    private BrakeAdviser() {}

    static void look(Diagnosis diagnosis, CarSheet sheet, List<Advice> advice, List<Silent> silent) {
        Optional<WheelEvidence> wheels =
                diagnosis.axles().map(axles -> axles.wheels()).filter(WheelEvidence::locksSeen);
        if (wheels.isEmpty()) {
            silent.add(new Silent(Topic.BRAKE_BALANCE, false, "it takes a speed of every wheel"));
            return;
        }
        List<WheelEvent> front = of(wheels.get(), WheelEvent.Kind.FRONT_LOCK);
        List<WheelEvent> rear = of(wheels.get(), WheelEvent.Kind.REAR_LOCK);
        boolean isFront = front.size() >= rear.size();
        List<WheelEvent> more = isFront ? front : rear;
        int less = isFront ? rear.size() : front.size();
        double p = pValue(more.size(), less);
        List<Integer> laps =
                more.stream().map(WheelEvent::lap).distinct().sorted().toList();
        if (p > LEVEL || laps.size() < FEWEST_LAPS) {
            silent.add(new Silent(
                    Topic.BRAKE_BALANCE,
                    true,
                    front.size() + " locks of the front and " + rear.size() + " of the rear: no axle stands out"));
            return;
        }
        advice.add(new BrakeAdvice(
                isFront,
                more.size(),
                less,
                more.stream().mapToDouble(WheelEvent::durationS).max().orElse(0.0),
                p,
                laps,
                more.stream()
                        .flatMap(event -> event.corner().stream().boxed())
                        .distinct()
                        .sorted()
                        .toList(),
                sheet.item("brake_bias_front").flatMap(item -> move(item, isFront))));
    }

    private static List<WheelEvent> of(WheelEvidence wheels, WheelEvent.Kind kind) {
        return wheels.events().stream().filter(event -> event.kind() == kind).toList();
    }

    /** Returns the two-sided probability of so many on one axle when each lock is as likely on either (sign test). */
    static double pValue(int more, int less) {
        int all = more + less;
        if (all == 0) {
            return 1.0;
        }
        return Math.min(1.0, 2.0 * new BinomialDistribution(all, 0.5).cumulativeProbability(less));
    }

    /** A front that locks wants less of the brake force, and the other way round. */
    private static Optional<Move> move(SetupItem item, boolean front) {
        OptionalDouble to = new ItemRange(item).stepsAway(front ? -1 : 1);
        return to.isPresent()
                ? Optional.of(new Move(item.name(), item.value(), to.getAsDouble(), item.unit()))
                : Optional.empty();
    }
}
