package setwright.core.advice;

import java.util.List;

/**
 * What evidence other than balance says.
 *
 * @param advice  where something shows
 * @param silent  what was looked at, or could not be, without advice
 */
public record AdviceReview(List<Advice> advice, List<Silent> silent) {
    public AdviceReview {
        advice = List.copyOf(advice);
        silent = List.copyOf(silent);
    }

    /**
     * No advice.
     *
     * @param topic     looked at
     * @param recorded  whether the channels for it were recorded
     * @param why       in a few words
     */
    public record Silent(Topic topic, boolean recorded, String why) {}
}
