package setwright.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;
import setwright.intake.map.MapProposer;
import setwright.intake.mdf.MdfWriter;
import setwright.intake.source.Formats;
import setwright.intake.table.Table;
import setwright.intake.table.TableColumn;

/** A practice case as a measurement file is the same table, and the same recording, as its text. */
class MdfPracticeCasesTest {
    private static final int PIECE_BYTES = 1 << 20;

    @TempDir
    private Path folder;

    @Test
    void isTheSameAsItsText() throws IOException {
        compare("practice-02");
    }

    @ParameterizedTest
    @ValueSource(strings = {"practice-01", "practice-03", "practice-06"})
    @EnabledIfSystemProperty(named = "setwright.nightly", matches = "true", disabledReason = "one is enough by day")
    void soAreOthers(String name) throws IOException {
        compare(name);
    }

    private void compare(String name) throws IOException {
        Table text = Formats.read(PracticeCasesTest.resource(name + "/stint1.csv.gz"))
                .get(0);
        Path file = Files.write(folder.resolve("laps.mf4"), written(text));
        List<Table> tables = Formats.read(file);
        assertThat(tables).hasSize(1);
        Table table = tables.get(0);
        assertThat(table.columns()).hasSameSizeAs(text.columns());
        for (TableColumn column : text.columns()) {
            TableColumn same = table.column(column.header()).orElseThrow();
            // A measurement file's time is in seconds, even where the text does not say so.
            assertThat(same.unitRow()).isIn(column.unitRow(), "s");
            assertThat(same.toArray()).as(column.header()).containsExactly(column.toArray());
        }
        Recording fromText = recording(text);
        Recording fromFile = recording(table);
        assertThat(fromFile.sampleRateHz()).isEqualTo(fromText.sampleRateHz());
        assertThat(fromFile.quantities()).isEqualTo(fromText.quantities());
        for (Quantity quantity : fromText.quantities()) {
            assertThat(fromFile.channel(quantity).toArray())
                    .as(quantity.words())
                    .containsExactly(fromText.channel(quantity).toArray());
        }
    }

    private static Recording recording(Table table) {
        return RecordingReader.read(table, MapProposer.propose(table, Optional.empty()), Optional.empty())
                .recording();
    }

    private static byte[] written(Table text) {
        String time = MapProposer.propose(text, Optional.empty())
                .map()
                .entry(Quantity.TIME)
                .orElseThrow()
                .column();
        int row = 8 * text.columns().size();
        ByteBuffer data = ByteBuffer.allocate(row * text.rowCount()).order(ByteOrder.LITTLE_ENDIAN);
        for (int i = 0; i < text.rowCount(); i++) {
            for (TableColumn column : text.columns()) {
                data.putDouble(column.get(i));
            }
        }
        MdfWriter writer = new MdfWriter();
        long list = writer.list(data.array(), PIECE_BYTES, MdfWriter.Packing.TRANSPOSED, row);
        long channel = 0;
        for (int k = text.columns().size() - 1; k >= 0; k--) {
            TableColumn column = text.columns().get(k);
            int master = column.header().equals(time) ? 1 : 0;
            channel = writer.channel(
                    channel,
                    new MdfWriter.Channel(column.header(), column.unitRow(), 2 * master, master, 4, 8 * k, 0, 64, 0, 0),
                    0,
                    0);
        }
        long group = writer.group(0, channel, 0, text.rowCount(), row, 0);
        return writer.finish(writer.dataGroup(0, group, list, 0));
    }
}
