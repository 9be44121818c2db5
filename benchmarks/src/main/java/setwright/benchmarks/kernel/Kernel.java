package setwright.benchmarks.kernel;

import java.util.List;
import java.util.Optional;

/** One calculation, ours and by others. Each call does all of the work and gives the same result. */
interface Kernel {
    /** Returns what is calculated, and of how many numbers. */
    String words();

    /** Returns the arrays it works on, numbers as arrays of one: what SciPy is handed. */
    List<double[]> inputs();

    /** Calculates with our code. */
    double[] ours();

    /** Calculates with Hipparchus, where that has what it takes; our result is not looked at. */
    default Optional<Library> hipparchus() {
        return Optional.empty();
    }

    /** Returns the greatest difference from ours that a library may have, of the greatest value; rounding unless said otherwise. */
    default double tolerance() {
        return 1.0e-9;
    }

    /** The same calculation by a library. */
    interface Library {
        /** Returns what of the library is used. */
        String words();

        /** Calculates. */
        double[] result();
    }

    /** Returns a library's way. */
    static Library library(String words, java.util.function.Supplier<double[]> work) {
        return new Library() {
            @Override
            public String words() {
                return words;
            }

            @Override
            public double[] result() {
                return work.get();
            }
        };
    }
}
