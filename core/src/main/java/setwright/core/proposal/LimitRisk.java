package setwright.core.proposal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import setwright.core.car.SetupChange;
import setwright.core.car.model.CarBelief;
import setwright.core.judgement.Yardstick;
import setwright.core.proposal.Refusal.Figure;
import setwright.core.proposal.Refusal.Kind;

/*
 * Design note. What a change does at the limit may hang on what laps below it cannot tell: more braking at the rear gains or loses by
 * which axle has the better tyres there, to a per cent. The middle of the belief then says a little of either. Only the change that would be
 * chosen is asked, and the next one when it is refused: each costs as many envelopes as cars are drawn.
 */

/** How likely it is that a change makes the car clearly slower at its limit, over what is believed of it. */
final class LimitRisk {
    /** Cars drawn: a share of one fifth is known to a tenth. */
    private static final int CARS = 16;

    private static final long SEED = 20_231L;
    /** As sure as of the cure, {@link Proposer}: not sure enough that it is no harm. */
    private static final double MOST = 0.2;

    private final List<LimitLap> cars;

    private LimitRisk(List<LimitLap> cars) {
        this.cars = cars;
    }

    /** Returns that over cars drawn from what is believed; those that get round no lap are left out. */
    static LimitRisk of(LimitLap middle, CarBelief car) {
        return new LimitRisk(Arrays.stream(car.draw(CARS, SEED))
                .parallel()
                .map(middle::drawn)
                .flatMap(Optional::stream)
                .toList());
    }

    /**
     * Returns candidates, the one that would be chosen refused while it is likely to be harm, and then the next.
     *
     * @param middle  the car as believed
     */
    static List<Candidate> judge(List<Candidate> candidates, LimitLap middle, CarBelief car) {
        List<Candidate> judged = new ArrayList<>(candidates);
        Optional<Candidate> chosen = chosen(judged);
        if (chosen.isEmpty()) {
            return judged;
        }
        LimitRisk risk = of(middle, car);
        Optional<Refusal> refusal = risk.against(chosen.get());
        while (refusal.isPresent()) {
            judged.set(judged.indexOf(chosen.get()), chosen.get().refusedToo(refusal.get()));
            chosen = chosen(judged);
            refusal = chosen.flatMap(risk::against);
        }
        return judged;
    }

    private static Optional<Candidate> chosen(List<Candidate> candidates) {
        return Ties.best(candidates.stream().filter(Candidate::worthMaking).toList()).stream()
                .findFirst();
    }

    private Optional<Refusal> against(Candidate candidate) {
        double probability = clearlySlower(candidate.turn().change());
        return probability <= MOST
                ? Optional.empty()
                : Optional.of(Refusal.of(
                        Kind.SLOWER_AT_LIMIT,
                        Refusal.text(
                                "at its limit the car may well lose a thousandth of the lap: probability %.2f by what is known of it, %.1f is taken",
                                probability, MOST),
                        new Figure("probability_slower_at_limit", probability),
                        new Figure("probability_slower_at_limit_most", MOST)));
    }

    /** Returns the probability that a change costs a thousandth of the lap or more, 0..1; 0 where no car gets round. */
    double clearlySlower(SetupChange change) {
        return cars.parallelStream()
                .flatMap(lap -> lap.slowerS(change).map(slower -> slower / lap.lapS()).stream())
                .mapToDouble(share -> share >= Yardstick.RUN_TIME_SHARE ? 1.0 : 0.0)
                .average()
                .orElse(0.0);
    }
}
