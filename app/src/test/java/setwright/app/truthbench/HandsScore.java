package setwright.app.truthbench;

import setwright.app.scoreboard.Count;

/**
 * How well gestures of one kind are found.
 *
 * @param real    gestures that were made
 * @param caught  of them found
 * @param found   gestures that were found
 * @param right   of them made
 */
record HandsScore(int real, int caught, int found, int right) {
    static final HandsScore NONE = new HandsScore(0, 0, 0, 0);

    HandsScore plus(HandsScore other) {
        return new HandsScore(real + other.real, caught + other.caught, found + other.found, right + other.right);
    }

    Count precision() {
        return new Count(right, found);
    }

    Count recall() {
        return new Count(caught, real);
    }
}
