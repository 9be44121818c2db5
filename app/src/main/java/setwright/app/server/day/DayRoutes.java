package setwright.app.server.day;

import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import java.io.IOException;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import setwright.app.logbook.AddRequest;
import setwright.app.logbook.Adding;
import setwright.app.logbook.StoryDesk;
import setwright.app.report.Page;
import setwright.app.server.day.DayView.StintRow;
import setwright.app.server.job.Job;
import setwright.app.server.job.JobProgress;
import setwright.app.server.job.Jobs;
import setwright.app.server.view.Frame;
import setwright.app.units.Figures;
import setwright.intake.gather.RecordingFiles;
import setwright.logbook.Logbook;
import setwright.logbook.row.CarRow;
import setwright.logbook.row.StintLineRow;

/** Answers for the first page: the stints that there are, and recordings that come in. */
public final class DayRoutes {
    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("d MMM HH:mm", Locale.ENGLISH);

    private final Logbook logbook;
    private final Uploads uploads;
    private final Jobs jobs;
    private final String token;
    private final Optional<Path> watched;

    /**
     * Makes them for a logbook.
     *
     * @param watched  folder of which files are read in by themselves
     */
    public DayRoutes(Logbook logbook, Uploads uploads, Jobs jobs, String token, Optional<Path> watched) {
        this.watched = watched;
        this.logbook = logbook;
        this.uploads = uploads;
        this.jobs = jobs;
        this.token = token;
    }

    /** What a file is asked for by. */
    record Taken(String key) {}

    /**
     * A recording that is to come in.
     *
     * @param recording  key of its file
     * @param beside     keys of what other devices recorded in the same run
     * @param sheet      key of the car sheet's file; empty for a car of the logbook
     * @param map        key of the channel map's file; empty when one is to be proposed
     * @param car        name; empty for the last one, or as the sheet says
     * @param driver     name; empty for the last one
     * @param circuit    name; empty to find it by its shape
     */
    record Wish(
            String recording,
            List<String> beside,
            String sheet,
            String map,
            String car,
            String driver,
            String circuit) {}

    /** Adds them to a server. */
    public void addTo(RoutesConfig routes) {
        routes.get("/", this::page);
        routes.post(
                "/uploads",
                context -> context.json(new Taken(uploads.take(
                        Objects.requireNonNullElse(context.queryParam("name"), ""), context.bodyInputStream()))));
        routes.post("/recordings", this::add);
    }

    private void page(Context context) {
        StoryDesk desk = new StoryDesk(logbook);
        List<StintLineRow> lines = new ArrayList<>(desk.stints());
        Collections.reverse(lines);
        Figures figures = Frame.figures(context);
        List<String> drivers = new ArrayList<>(
                new LinkedHashSet<>(lines.stream().map(StintLineRow::driver).toList()));
        context.html(Page.render(
                "live/day.jte",
                new DayView(
                        Frame.of(context, token, "Stints", "stints", List.of()),
                        lines.stream().map(line -> row(line, figures)).toList(),
                        desk.cars().stream().map(CarRow::name).toList(),
                        drivers,
                        watched.map(Path::toString).orElse(""))));
    }

    private static StintRow row(StintLineRow line, Figures figures) {
        return new StintRow(
                line.id(),
                WHEN.format(line.addedAt().atZone(ZoneId.systemDefault())),
                line.driver(),
                line.circuit(),
                line.car() + ", setup " + line.setup(),
                line.goodLaps() + " of " + line.laps(),
                line.bestS().isPresent() ? figures.lapTime(line.bestS().getAsDouble()) : "",
                line.goodOrder() ? "in good order" : "",
                line.recording());
    }

    private void add(Context context) {
        Wish wish = context.bodyAsClass(Wish.class);
        Path recording = file(wish.recording());
        AddRequest request = new AddRequest(
                new RecordingFiles(
                        recording, wish.beside().stream().map(this::file).toList()),
                given(wish.sheet()).map(this::file),
                wish.sheet().isEmpty() ? given(wish.car()) : Optional.empty(),
                OptionalInt.empty(),
                wish.sheet().isEmpty() ? Optional.empty() : given(wish.car()),
                given(wish.driver()),
                given(wish.circuit()),
                given(wish.map()).map(this::file),
                OptionalInt.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
        Job job = jobs.start(
                "recording " + wish.recording(),
                "Reading in " + recording.getFileName(),
                Adding.STEPS,
                progress -> add(request, wish, progress));
        context.json(job);
    }

    private void add(AddRequest request, Wish wish, JobProgress progress) throws IOException {
        try {
            BringIn.into(logbook, request, progress);
        } finally {
            Stream.concat(Stream.of(wish.recording(), wish.sheet(), wish.map()), wish.beside().stream())
                    .forEach(uploads::drop);
        }
    }

    private Path file(String key) {
        return uploads.file(key)
                .orElseThrow(
                        () -> new BadRequestResponse("The file that was sent is no longer here. Choose it again."));
    }

    private static Optional<String> given(String text) {
        return Optional.of(text.strip()).filter(words -> !words.isEmpty());
    }
}
