package setwright.app.truthbench;

import setwright.core.handling.HandsEvent;

/**
 * Something that simulated hands really did.
 *
 * @param kind   what, in the words of the finder
 * @param fromS  begin, s since the start of the drive
 * @param toS    end, s
 */
record TrueGesture(HandsEvent.Kind kind, double fromS, double toS) {

    /** Tells whether another stretch of time, widened by so much before and after, meets this one. */
    boolean meets(double otherFromS, double otherToS, double beforeS, double afterS) {
        return otherToS >= fromS - beforeS && otherFromS <= toS + afterS;
    }
}
