package setwright.app.server.day;

import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.ConcurrentHashMap;
import setwright.app.logbook.SetupDesk;
import setwright.app.logbook.StoryDesk;
import setwright.core.car.CarSheet;
import setwright.core.recording.Quantity;
import setwright.intake.car.CarSheetReader;
import setwright.intake.gather.Gatherer;
import setwright.intake.gather.RecordingFiles;
import setwright.intake.map.ChannelMap;
import setwright.intake.map.ChannelMapFile;
import setwright.intake.map.MapEntry;
import setwright.intake.map.MapProposer;
import setwright.intake.map.Proposal;
import setwright.intake.map.Unit;
import setwright.intake.map.Units;
import setwright.intake.table.Table;
import setwright.logbook.Logbook;

/** Says how a recording that was sent is understood, and takes corrections: they are put to the same tests. */
public final class MapRoutes {
    private final Logbook logbook;
    private final Uploads uploads;
    private final Map<String, Proposal> last = new ConcurrentHashMap<>();

    /** Makes them. */
    public MapRoutes(Logbook logbook, Uploads uploads) {
        this.logbook = logbook;
        this.uploads = uploads;
    }

    /**
     * What helps to understand it.
     *
     * @param beside keys of what other devices recorded in the same run
     * @param sheet  key of the car sheet's file; empty for a car of the logbook
     * @param car    name; empty when it is not known
     */
    record Wish(List<String> beside, String sheet, String car) {}

    /** The same with what the columns are said to be; a quantity that is not named was not recorded. */
    record Correction(List<String> beside, String sheet, String car, List<Said> entries) {}

    /** A column as somebody says it is. */
    record Said(Quantity quantity, String column, String unit, boolean otherWay) {}

    /** Adds them to a server. */
    public void addTo(RoutesConfig routes) {
        routes.post("/uploads/{key}/understand", this::understand);
        routes.post("/uploads/{key}/map", this::correct);
    }

    private void understand(Context context) {
        Wish wish = context.bodyAsClass(Wish.class);
        Table table = table(context.pathParam("key"), wish.beside());
        Proposal proposal = MapProposer.propose(table, car(wish.sheet(), wish.car()));
        last.put(context.pathParam("key"), proposal);
        context.json(Understood.of(table, proposal, ""));
    }

    private void correct(Context context) throws IOException {
        String key = context.pathParam("key");
        Correction correction = context.bodyAsClass(Correction.class);
        Table table = table(key, correction.beside());
        Map<Quantity, MapEntry> entries = new EnumMap<>(Quantity.class);
        for (Said said : correction.entries()) {
            entries.put(said.quantity(), entry(said, Optional.ofNullable(last.get(key))));
        }
        Proposal proposal =
                MapProposer.check(table, new ChannelMap(entries), car(correction.sheet(), correction.car()));
        byte[] text = ChannelMapFile.write(proposal).getBytes(StandardCharsets.UTF_8);
        context.json(Understood.of(table, proposal, uploads.take("channel-map.yaml", new ByteArrayInputStream(text))));
    }

    /** An entry that is left as it was keeps its offset and its own unit. */
    private static MapEntry entry(Said said, Optional<Proposal> before) {
        Optional<MapEntry> known = before.flatMap(proposal -> proposal.map().entry(said.quantity()))
                .filter(entry -> entry.column().equals(said.column())
                        && entry.unit().symbol().equals(said.unit()));
        Unit unit = known.map(MapEntry::unit)
                .or(() -> Units.spelled(said.unit(), said.quantity()))
                .orElseThrow(() -> new BadRequestResponse(
                        said.unit() + " is no unit of " + said.quantity().words() + ". Choose another."));
        return new MapEntry(
                said.column(),
                unit,
                said.otherWay() ? -1 : 1,
                known.map(MapEntry::offset).orElse(0.0));
    }

    private Optional<CarSheet> car(String sheet, String name) {
        if (!sheet.isEmpty()) {
            return Optional.of(CarSheetReader.read(file(sheet)));
        }
        String wanted = name.strip();
        return new StoryDesk(logbook)
                .cars().stream()
                        .filter(car -> car.name().equals(wanted))
                        .findFirst()
                        .map(car -> new SetupDesk(logbook)
                                .show(Optional.of(car.name()), OptionalInt.empty())
                                .sheet());
    }

    private Table table(String key, List<String> beside) {
        return Gatherer.read(
                new RecordingFiles(file(key), beside.stream().map(this::file).toList()));
    }

    private Path file(String key) {
        return uploads.file(key)
                .orElseThrow(
                        () -> new BadRequestResponse("The file that was sent is no longer here. Choose it again."));
    }
}
