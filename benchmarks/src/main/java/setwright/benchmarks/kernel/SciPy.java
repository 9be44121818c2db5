package setwright.benchmarks.kernel;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import setwright.benchmarks.measure.Spent;

/**
 * SciPy in a Python beside us, on one core.
 *
 * @param python    the command that has it
 * @param script    our kernels in its language
 * @param versions  in words
 */
record SciPy(String python, Path script, String versions) {
    /** Another Python than the first one on the path. */
    static final String PYTHON = "SETWRIGHT_PYTHON";

    private static final String SCRIPT = "kernels.py";

    /** A result and how long a call took. */
    record Answer(List<Double> result, Spent spent) {
        Answer {
            result = List.copyOf(result);
        }
    }

    /** Looks for a Python with SciPy: that of the environment, the one on the path, the system's. */
    static Optional<SciPy> find(Path folder) throws IOException {
        Path script = folder.resolve(SCRIPT);
        try (InputStream in = Objects.requireNonNull(SciPy.class.getResourceAsStream(SCRIPT), SCRIPT)) {
            Files.write(script, in.readAllBytes());
        }
        List<String> candidates = new ArrayList<>();
        Optional.ofNullable(System.getenv(PYTHON)).ifPresent(candidates::add);
        candidates.add("python3");
        candidates.add("/usr/bin/python3");
        for (String candidate : candidates) {
            Optional<String> versions = said(List.of(candidate, script.toString()));
            if (versions.isPresent()) {
                return Optional.of(new SciPy(candidate, script, versions.get()));
            }
        }
        return Optional.empty();
    }

    /** Calculates a kernel again and again for some seconds. */
    Answer run(String name, Kernel kernel, double seconds) throws IOException {
        Path folder = Objects.requireNonNull(script.getParent());
        Path in = folder.resolve(name + ".in");
        Path out = folder.resolve(name + ".out");
        write(in, kernel.inputs());
        String said = said(List.of(
                        python, script.toString(), name, in.toString(), out.toString(), String.valueOf(seconds)))
                .orElseThrow(() -> new IOException("SciPy's kernel " + name + " failed, see above"));
        String[] times = said.split(" ", 2);
        ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(out)).order(ByteOrder.LITTLE_ENDIAN);
        List<Double> result = new ArrayList<>();
        while (bytes.hasRemaining()) {
            result.add(bytes.getDouble());
        }
        return new Answer(result, new Spent(Double.parseDouble(times[0]), Double.parseDouble(times[1]), Double.NaN));
    }

    private static void write(Path file, List<double[]> arrays) throws IOException {
        int bytes = Integer.BYTES;
        for (double[] array : arrays) {
            bytes += Integer.BYTES + Double.BYTES * array.length;
        }
        ByteBuffer buffer = ByteBuffer.allocate(bytes).order(ByteOrder.LITTLE_ENDIAN);
        buffer.putInt(arrays.size());
        for (double[] array : arrays) {
            buffer.putInt(array.length);
            for (double value : array) {
                buffer.putDouble(value);
            }
        }
        Files.write(file, buffer.array());
    }

    /** What a command says on its standard output; empty when it cannot be started or fails. */
    private static Optional<String> said(List<String> command) throws IOException {
        ProcessBuilder builder = new ProcessBuilder(command);
        for (String library : List.of("OMP", "OPENBLAS", "MKL")) {
            builder.environment().put(library + "_NUM_THREADS", "1");
        }
        builder.redirectError(command.size() > 2 ? ProcessBuilder.Redirect.INHERIT : ProcessBuilder.Redirect.DISCARD);
        Process process;
        try {
            process = builder.start();
        } catch (IOException e) {
            return Optional.empty();
        }
        String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
        try {
            return process.waitFor() == 0 ? Optional.of(text) : Optional.empty();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        }
    }
}
