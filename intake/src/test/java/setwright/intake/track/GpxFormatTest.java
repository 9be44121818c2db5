package setwright.intake.track;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.intake.problem.InputProblem;
import setwright.intake.source.Formats;
import setwright.intake.table.Table;
import setwright.intake.table.TableColumn;

/** Tracks as the GPX 1.1 schema has them. */
class GpxFormatTest {
    private static final String POINTS = """
            <trkpt lat="47.10" lon="8.20"><ele>431.5</ele><time>2031-05-04T09:30:00Z</time></trkpt>
            <trkpt lat="47.11" lon="8.21"><time>2031-05-04T11:30:00.250+02:00</time>
              <extensions><a:speed xmlns:a="urn:a">31.5</a:speed></extensions></trkpt>
            <trkpt lat="47.12" lon="8.22"/>
            """;

    @TempDir
    private Path folder;

    private static String gpx(String inside) {
        return "<?xml version=\"1.0\"?>\n<gpx version=\"1.1\" creator=\"nobody\" xmlns=\"http://www.topografix.com/GPX/1/1\"><trk><trkseg>\n"
                + inside
                + "</trkseg></trk></gpx>";
    }

    private Table read(String text) throws IOException {
        return read(text, StandardCharsets.UTF_8);
    }

    private Table read(String text, Charset charset) throws IOException {
        return Formats.read(Files.write(folder.resolve("run.gpx"), text.getBytes(charset)))
                .get(0);
    }

    private static double[] values(Table table, String header) {
        return table.column(header).orElseThrow().toArray();
    }

    @Test
    void pointsWithATimeAreRead() throws IOException {
        Table table = read(gpx(POINTS));
        assertThat(table.columns())
                .extracting(TableColumn::header)
                .containsExactly("time", "latitude", "longitude", "speed", "altitude");
        assertThat(values(table, "latitude")).containsExactly(47.10, 47.11);
        assertThat(values(table, "time")[1] - values(table, "time")[0]).isEqualTo(0.25, within(1e-6));
        assertThat(values(table, "speed")[1]).isEqualTo(31.5);
        assertThat(values(table, "altitude")[0]).isEqualTo(431.5);
    }

    @Test
    void otherEncodingsAreRead() throws IOException {
        String text = gpx(POINTS).replace("version=\"1.0\"?", "version=\"1.0\" encoding=\"UTF-16\"?");
        assertThat(read(text, StandardCharsets.UTF_16).rowCount()).isEqualTo(2);
    }

    @Test
    void aTrackWithoutTimesIsRefused() {
        assertThatThrownBy(() -> read(gpx("<trkpt lat=\"47\" lon=\"8\"/>")))
                .isInstanceOf(InputProblem.class)
                .hasMessageContaining("expected positions with their times, found none in its track points");
    }

    @Test
    void badCellsAreNamedWithTheirLine() {
        assertThatThrownBy(() -> read(gpx("<trkpt lat=\"97\" lon=\"8\"/>")))
                .hasMessageContaining("line 3, 'lat'")
                .hasMessageContaining("found \"97\"");
        assertThatThrownBy(() -> read(gpx("<trkpt lat=\"47\" lon=\"8\"><time>noon</time></trkpt>")))
                .hasMessageContaining("'time'")
                .hasMessageContaining("found \"noon\"");
    }

    @Test
    void aTrackThatBreaksOffIsRefused() {
        assertThatThrownBy(() -> read(gpx(POINTS).substring(0, 300)))
                .isInstanceOf(InputProblem.class)
                .hasMessageContaining("XML that breaks off");
    }

    /** Neither files of this machine nor a flood of text can be brought in through entities. */
    @Test
    void documentTypesDoNothing() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret.txt"), "47.3");
        String outside = gpx("<trkpt lat=\"47\" lon=\"8\"><time>2031-05-04T09:30:00Z</time><ele>&x;</ele></trkpt>")
                .replace("<gpx", "<!DOCTYPE gpx [<!ENTITY x SYSTEM \"" + secret.toUri() + "\">]><gpx");
        assertThatThrownBy(() -> read(outside)).isInstanceOf(InputProblem.class);
        StringBuilder bomb = new StringBuilder("<!DOCTYPE gpx [<!ENTITY a0 \"9999999999\">");
        for (int i = 1; i < 12; i++) {
            bomb.append("<!ENTITY a")
                    .append(i)
                    .append(" \"")
                    .append(("&a" + (i - 1) + ";").repeat(10))
                    .append("\">");
        }
        String flood = gpx("<trkpt lat=\"47\" lon=\"8\"><time>2031-05-04T09:30:00Z</time><ele>&a11;</ele></trkpt>")
                .replace("<gpx", bomb + "]><gpx");
        assertThatThrownBy(() -> read(flood)).isInstanceOf(InputProblem.class);
    }
}
