package setwright.core.circuit;

import java.util.List;

/**
 * Where a recording is cut.
 *
 * @param how        what the cuts come from, for people to read
 * @param marked     whether a start line was given by the logger; otherwise its place is our own choice
 * @param crossings  in time order; the stretches before the first and after the last are not whole laps
 */
record Cuts(String how, boolean marked, List<Crossing> crossings) {
    Cuts {
        crossings = List.copyOf(crossings);
    }

    int wholeLaps() {
        return Math.max(0, crossings.size() - 1);
    }

    double start(int lap) {
        return crossings.get(lap).sample();
    }

    double end(int lap) {
        return crossings.get(lap + 1).sample();
    }
}
