package setwright.app.server.trial;

import java.util.List;
import setwright.app.server.view.Frame;

/**
 * Everything the page of tried changes shows.
 *
 * @param frame   around it
 * @param trials  the newest first
 */
public record TriedView(Frame frame, List<TrialView> trials) {
    public TriedView {
        trials = List.copyOf(trials);
    }

    /**
     * A change that was tried.
     *
     * @param number   of the trial
     * @param car      name
     * @param change   in words
     * @param picture  whether it was judged, so that its laps can be shown
     * @param verdict  in words
     * @param reason   in a sentence; empty when it was never judged
     * @param effects  predicted beside measured
     */
    public record TrialView(
            long number,
            String car,
            String change,
            boolean picture,
            String verdict,
            String reason,
            List<EffectView> effects) {
        public TrialView {
            effects = List.copyOf(effects);
        }
    }

    /**
     * One figure.
     *
     * @param place      lap time, or phase and speed
     * @param predicted  with its interval
     * @param measured   with its interval
     */
    public record EffectView(String place, String predicted, String measured) {}
}
