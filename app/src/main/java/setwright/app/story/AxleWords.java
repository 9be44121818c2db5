package setwright.app.story;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import setwright.app.units.Figures;
import setwright.core.slip.AxleEvidence;
import setwright.core.slip.GripCurve;
import setwright.core.slip.HandsReading;
import setwright.core.slip.WheelEvent;

/** How hard each axle works, in a few sentences. */
final class AxleWords {
    /** Half a per cent: less is not shown. */
    private static final double LEAST_TOLD = 0.005;

    private AxleWords() {}

    /** Returns a link of the chain with what is known of the axles behind its own details. */
    static Story.Link added(Story.Link link, Optional<AxleEvidence> axles, Figures figures) {
        List<String> details = new ArrayList<>(link.details());
        axles.filter(found -> Double.isFinite(found.front().limitShare()))
                .ifPresent(found -> details.add(paragraph(found, figures)));
        return new Story.Link(link.question(), link.answer(), details);
    }

    private static String paragraph(AxleEvidence axles, Figures figures) {
        String peaks = Arrays.asList(axles.front(), axles.rear()).stream()
                .filter(GripCurve::isKnown)
                .map(curve -> String.format(
                        Locale.ROOT,
                        "%s %s times its load (%s to %s)",
                        curve.axle().words(),
                        figures.number(curve.grip(), 2),
                        figures.number(curve.gripLow(), 2),
                        figures.number(curve.gripHigh(), 2)))
                .reduce((one, other) -> one + ", " + other)
                .map(words -> " Grip at the peak: " + words + ", from lap to lap" + loads(axles, figures) + ".")
                .orElse(" No axle came near enough to its peak to tell its grip.");
        return "The axles: of the cornering time the front spends "
                + figures.percent(axles.front().limitShare())
                + " above 0.95 of its peak force, the rear "
                + figures.percent(axles.rear().limitShare()) + "." + peaks + wheels(axles)
                + hands(axles);
    }

    /** A car without downforce has loads that are known. */
    private static String loads(AxleEvidence axles, Figures figures) {
        double doubt = Math.max(axles.front().loadDoubt(), axles.rear().loadDoubt());
        return doubt >= LEAST_TOLD
                ? "; the loads, and with them both, may be off by " + figures.percent(doubt)
                        + ", as the downforce is not known better"
                : "";
    }

    private static String wheels(AxleEvidence axles) {
        List<String> seen = new ArrayList<>();
        for (WheelEvent.Kind kind : WheelEvent.Kind.values()) {
            long count = axles.wheels().events().stream()
                    .filter(event -> event.kind() == kind)
                    .count();
            if (count > 0) {
                seen.add(kind.words() + " " + count + (count == 1 ? " time" : " times"));
            }
        }
        boolean all = axles.wheels().locksSeen() && axles.wheels().spinSeen();
        String notSeen = all
                ? ""
                : axles.wheels().spinSeen()
                        ? " Locking is not seen: it takes wheel speeds."
                        : " Locking and wheelspin are not seen: they take wheel speeds.";
        String none = axles.wheels().locksSeen() ? " No wheel locked or spun." : "";
        return (seen.isEmpty() ? none : " Wheels: " + String.join(", ", seen) + ".") + notSeen;
    }

    private static String hands(AxleEvidence axles) {
        long rear = count(axles, HandsReading.Cause.REAR);
        long front = count(axles, HandsReading.Cause.FRONT);
        long own = count(axles, HandsReading.Cause.DRIVER);
        return rear + front + own == 0
                ? ""
                : " Of the gestures of the hands " + rear + " answer a rear near its peak, " + front
                        + " a front near its peak; with " + own
                        + " the axle that they would answer was not near it.";
    }

    private static long count(AxleEvidence axles, HandsReading.Cause cause) {
        return axles.borneOut().stream()
                .filter(reading -> reading.cause() == cause)
                .count();
    }
}
