package setwright.app.story;

import java.util.List;
import setwright.core.technique.TechniqueLever;

/**
 * The answer in sentences.
 *
 * @param headline  the verdict in one sentence
 * @param reason    why
 * @param next      what to do next, most urgent first
 * @param laps      which laps can be read
 * @param driving   whether the driving repeats
 * @param balance   where the car does not follow
 * @param cause     which input sets it off
 * @param pattern   what repeats and what it costs
 * @param why       the chain of reasons of the first finding, or of a verdict without one
 * @param technique what the driver can do himself, the best proved first
 * @param besides   what evidence other than balance says
 * @param sensors   what sensors other than those of the motion tell
 */
public record Story(
        String headline,
        String reason,
        List<String> next,
        Link laps,
        Link driving,
        Link balance,
        Link cause,
        Link pattern,
        List<String> why,
        List<TechniqueLever> technique,
        Link besides,
        Link sensors) {
    /** Shown once wherever advice is given. */
    public static final String CAUTION =
            "Advice for a real car is a starting point, to be checked by a qualified person: brake"
                    + " balance, tyre pressures, ride height and suspension limits can hurt someone. Series rules, manufacturer"
                    + " limits and circuit rules come first.";

    public Story {
        next = List.copyOf(next);
        why = List.copyOf(why);
        technique = List.copyOf(technique);
    }

    /**
     * One link of the chain.
     *
     * @param question  that it answers
     * @param answer    in one or two sentences
     * @param details   further sentences, the most telling first
     */
    public record Link(String question, String answer, List<String> details) {
        public Link {
            details = List.copyOf(details);
        }
    }
}
