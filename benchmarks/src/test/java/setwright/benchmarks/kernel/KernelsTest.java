package setwright.benchmarks.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** That both sides of each kernel give the same; it times nothing. */
final class KernelsTest {
    private static Optional<SciPy> scipy = Optional.empty();

    @BeforeAll
    static void lookForSciPy(@TempDir Path folder) throws IOException {
        scipy = SciPy.find(folder);
    }

    static java.util.List<String> names() {
        return Kernels.names();
    }

    @ParameterizedTest
    @MethodSource("names")
    void hipparchusGivesTheSame(String name) {
        Kernel kernel = Kernels.of(name);
        double[] ours = kernel.ours();
        assertThat(ours).isNotEmpty().doesNotContain(Double.NaN);
        kernel.hipparchus().ifPresent(library -> KernelCheck.same(kernel, ours, library.result(), "Hipparchus"));
    }

    @ParameterizedTest
    @MethodSource("names")
    void sciPyGivesTheSameWhereThereIsOne(String name) throws IOException {
        Kernel kernel = Kernels.of(name);
        // reported as skipped, so that nobody takes it for checked; core's filters are held to figures of SciPy anyway
        assumeTrue(scipy.isPresent(), "no Python with SciPy");
        assumeFalse(kernel.inputs().isEmpty(), "SciPy has no such kernel");
        SciPy.Answer answer = scipy.get().run(name, kernel, 0.0);
        double[] theirs =
                answer.result().stream().mapToDouble(Double::doubleValue).toArray();
        KernelCheck.same(kernel, kernel.ours(), theirs, "SciPy");
        assertThat(answer.spent().wallS()).isPositive();
    }

    @Test
    void anotherResultIsRefused() {
        Kernel kernel = Kernels.of("quantiles");
        double[] theirs = kernel.ours();
        theirs[1] += 1.0e-6;
        assertThatThrownBy(() -> KernelCheck.same(kernel, kernel.ours(), theirs, "a library"))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("a library");
        theirs[1] = Double.NaN;
        assertThatThrownBy(() -> KernelCheck.same(kernel, kernel.ours(), theirs, "a library"))
                .isInstanceOf(IllegalStateException.class);
    }
}
