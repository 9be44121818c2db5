package setwright.core.pooling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import setwright.core.pooling.NormalHierarchy.Estimate;
import setwright.core.pooling.ShareHierarchy.Count;

/** Laws of the two hierarchies. */
final class HierarchiesTest {
    @Test
    void groupsThatAgreeAreDrawnTogetherAndThoseThatDifferAreNot() {
        double[] errors = {0.1, 0.1};
        NormalHierarchy alike = NormalHierarchy.of(new double[] {0.5, 0.5}, errors, 0.3);
        NormalHierarchy unlike = NormalHierarchy.of(new double[] {0.0, 1.0}, errors, 0.3);
        assertThat(alike.spread()).isLessThan(unlike.spread());
        assertThat(alike.common().value()).isCloseTo(0.5, within(1.0e-9));
        assertThat(unlike.group(0).value()).isBetween(0.0, 0.15);
        assertThat(unlike.common().deviation()).isGreaterThan(alike.common().deviation());
    }

    /** Half of all differences that the hierarchy was made of lie within half of its probability: drawn and counted. */
    @Test
    void differencesAreAsSureAsTheySayTheyAre() {
        long seed = 20_261_126L;
        Random random = new Random(seed);
        double spread = 0.28;
        int inside = 0;
        int runs = 600;
        for (int run = 0; run < runs; run++) {
            double tau = Math.abs(spread * random.nextGaussian());
            double[] truth = {tau * random.nextGaussian(), tau * random.nextGaussian()};
            double[] errors = {0.05 + 0.1 * random.nextDouble(), 0.05 + 0.1 * random.nextDouble()};
            double[] means = {truth[0] + errors[0] * random.nextGaussian(), truth[1] + errors[1] * random.nextGaussian()
            };
            Estimate apart = NormalHierarchy.of(means, errors, spread).apart(0);
            if (Math.abs(truth[0] - truth[1] - apart.value()) < 1.96 * apart.deviation()) {
                inside++;
            }
        }
        // three standard deviations of 600 draws at 0.95; the mixture is not quite normal
        assertThat(inside / (double) runs).as("seed " + seed).isCloseTo(0.95, within(0.03));
    }

    @Test
    void aShareOfAllIsNotThatOfOne() {
        ShareHierarchy all = ShareHierarchy.of(List.of(new Count(8, 8), new Count(7, 8)));
        assertThat(all.allMostly()).isGreaterThan(0.9);
        assertThat(all.onlyMostly(0)).isLessThan(0.05);
        ShareHierarchy one = ShareHierarchy.of(List.of(new Count(8, 8), new Count(0, 8)));
        assertThat(one.onlyMostly(0)).isGreaterThan(0.9);
        assertThat(one.allMostly()).isLessThan(0.05);
        ShareHierarchy few = ShareHierarchy.of(List.of(new Count(2, 3), new Count(1, 3)));
        assertThat(few.allMostly()).isBetween(0.05, 0.6);
    }

    @Test
    void aGroupIsDrawnTowardTheOthers() {
        ShareHierarchy shares = ShareHierarchy.of(List.of(new Count(6, 8), new Count(1, 8), new Count(1, 8)));
        assertThat(shares.group(0)).isBetween(shares.mean(), 6.0 / 8.0);
    }

    /** Ten groups given one by one, and given as two counts with how many have each. */
    @Test
    void groupsThatAreAlikeMayBeGivenOnce() {
        Count often = new Count(20, 24);
        Count seldom = new Count(4, 24);
        List<Count> all = new java.util.ArrayList<>(java.util.Collections.nCopies(9, seldom));
        all.add(often);
        ShareHierarchy each = ShareHierarchy.of(all);
        ShareHierarchy counted = ShareHierarchy.of(List.of(seldom, often), List.of(9, 1));
        double roundOff = 1.0e-9;
        assertThat(counted.mean()).isCloseTo(each.mean(), within(roundOff));
        assertThat(counted.group(1)).isCloseTo(each.group(9), within(roundOff));
        assertThat(counted.aboveMean(1)).isCloseTo(each.aboveMean(9), within(roundOff));
        assertThat(counted.aboveMean(1)).isGreaterThan(0.95);
        assertThat(counted.aboveMean(0)).isLessThan(0.5);
    }
}
