package setwright.benchmarks.table;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import setwright.benchmarks.laps.TenLaps;
import setwright.benchmarks.measure.JavaCommand;
import setwright.benchmarks.measure.PairedTimes;
import setwright.benchmarks.measure.Spent;
import setwright.core.car.SetupItem;

/**
 * The page's answers to "what if": how long a browser waits after it has asked. Rough ones are asked for while an item is being
 * dragged, full ones when it stays.
 */
final class PageLatency implements AutoCloseable {
    private static final double NS = 1.0e9;
    private static final long LOOK_MS = 200;
    private static final double LONGEST_S = 300.0;
    private static final int OK = 200;

    private final Process server;
    private final HttpClient browser =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    private final String address;
    private final String item;
    private final List<Double> settings;

    /** Starts the page of a logbook and has its stint read. */
    PageLatency(Path logbook, int threads) throws IOException, InterruptedException {
        SetupItem turned = TenLaps.read().sheet().setup().get(0);
        item = turned.name();
        List<Double> places = new ArrayList<>();
        for (double at = turned.min(); at <= turned.max() + 0.5 * turned.step(); at += turned.step()) {
            if (Math.abs(at - turned.value()) > 0.5 * turned.step()) {
                places.add(at);
            }
        }
        settings = List.copyOf(places);
        ProcessBuilder builder = new ProcessBuilder(
                        Path.of(TenLaps.home(), "setwright").toString(),
                        "serve",
                        "--no-browser",
                        "--port",
                        "0",
                        "--logbook",
                        logbook.toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD);
        builder.environment().put("SETWRIGHT_JAVA_OPTS", JavaCommand.cores(threads));
        server = builder.start();
        BufferedReader said = server.inputReader(StandardCharsets.UTF_8);
        String line = said.readLine();
        if (line == null || !line.startsWith("http")) {
            server.destroy();
            throw new IOException("the page did not start: " + line);
        }
        address = line.strip();
        awaitStint();
    }

    /** The stint's own page starts the reading; a question is answered once it is over. */
    private void awaitStint() throws IOException, InterruptedException {
        long begun = System.nanoTime();
        ask("stints/1");
        while (ask(question(0, false)) != OK || ask("jobs") != OK || working()) {
            if ((System.nanoTime() - begun) / NS > LONGEST_S) {
                throw new IOException("the page has not read its stint after " + LONGEST_S + " s");
            }
            Thread.sleep(LOOK_MS);
        }
    }

    private boolean working() throws IOException, InterruptedException {
        String jobs = browser.send(request("jobs"), HttpResponse.BodyHandlers.ofString())
                .body()
                .toUpperCase(Locale.ROOT);
        return jobs.contains("RUNNING") || jobs.contains("WAITING");
    }

    /** Asks so many times, in turn with a request that calculates nothing. */
    PairedTimes measure(int times, boolean rough) throws IOException, InterruptedException {
        List<Spent> ours = new ArrayList<>();
        List<Spent> plain = new ArrayList<>();
        for (int i = 0; i < times; i++) {
            ours.add(timed(question(i, rough)));
            plain.add(timed("jobs"));
        }
        return new PairedTimes(ours, plain);
    }

    /** Returns the time that all but a twentieth of the answers stay below, s. */
    static double slowTwentieth(List<Spent> answers) {
        double[] sorted = answers.stream().mapToDouble(Spent::wallS).sorted().toArray();
        return sorted[(int) Math.min(sorted.length - 1L, Math.round(0.95 * sorted.length))];
    }

    private Spent timed(String path) throws IOException, InterruptedException {
        long begun = System.nanoTime();
        int status = ask(path);
        double wall = (System.nanoTime() - begun) / NS;
        if (status != OK) {
            throw new IOException("the page answered " + path + " with " + status);
        }
        return new Spent(wall, Double.NaN, Double.NaN);
    }

    /** Up and down the item's range, as a hand drags it. */
    private String question(int i, boolean rough) {
        int round = 2 * settings.size();
        int at = i % round < settings.size() ? i % round : round - 1 - i % round;
        return String.format(Locale.ROOT, "stints/1/what-if?turn=%s=%s", item, settings.get(at))
                + (rough ? "&rough" : "");
    }

    private int ask(String path) throws IOException, InterruptedException {
        return browser.send(request(path), HttpResponse.BodyHandlers.ofByteArray())
                .statusCode();
    }

    private HttpRequest request(String path) {
        return HttpRequest.newBuilder(URI.create(address + path))
                .timeout(Duration.ofMinutes(1))
                .build();
    }

    @Override
    public void close() throws IOException {
        server.destroy();
        try {
            if (!server.waitFor(10, TimeUnit.SECONDS)) {
                server.destroyForcibly();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
