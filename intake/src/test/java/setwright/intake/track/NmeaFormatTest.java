package setwright.intake.track;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.intake.problem.InputProblem;
import setwright.intake.source.Formats;
import setwright.intake.table.Table;

/** Sentences of a receiver. */
class NmeaFormatTest {
    @TempDir
    private Path folder;

    private Table read(String text) throws IOException {
        return Formats.read(Files.writeString(folder.resolve("run.nmea"), text, StandardCharsets.ISO_8859_1))
                .get(0);
    }

    private static double[] values(Table table, String header) {
        return table.column(header).orElseThrow().toArray();
    }

    /** Puts the check sum behind: all characters between dollar and star, exclusive or (NMEA 0183). */
    static String sentence(String body) {
        int sum = 0;
        for (char c : body.toCharArray()) {
            sum ^= c;
        }
        return String.format(Locale.ROOT, "$%s*%02X%n", body, sum);
    }

    private static String rmc(String time, String latitude, String date) {
        return sentence("GPRMC," + time + ",A," + latitude + ",N,01131.000,E,022.4,084.4," + date + ",,,A");
    }

    /** The two sentences that nearly every description of the format prints, check sums included (value from memory). */
    @Test
    void theWellKnownSentencesAreRead() throws IOException {
        Table table = read("$GPRMC,123519,A,4807.038,N,01131.000,E,022.4,084.4,230394,003.1,W*6A\r\n"
                + "$GPGGA,123519,4807.038,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,*47\r\n"
                + rmc("123520", "4807.048", "230394"));
        assertThat(table.rowCount()).isEqualTo(2);
        assertThat(values(table, "latitude")[0]).isEqualTo(48.0 + 7.038 / 60.0, within(1e-9));
        assertThat(values(table, "longitude")[0]).isEqualTo(11.0 + 31.0 / 60.0, within(1e-9));
        // A knot is 1852 m an hour by definition.
        assertThat(values(table, "speed")[0]).isEqualTo(22.4 * 1852.0 / 3600.0, within(1e-9));
        assertThat(values(table, "altitude")[0]).isEqualTo(545.4);
        assertThat(values(table, "time")[1] - values(table, "time")[0]).isEqualTo(1.0);
    }

    @Test
    void timeGoesOnOverMidnight() throws IOException {
        Table table = read(rmc("235959.00", "4807.038", "311230")
                + sentence("GPGGA,235959.50,4807.039,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,")
                + sentence("GPGGA,000000.00,4807.040,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,")
                + rmc("000000.50", "4807.041", "010131"));
        double[] time = values(table, "time");
        assertThat(time).hasSize(4);
        assertThat(time[3] - time[0]).isEqualTo(1.5);
    }

    @Test
    void whatCameBeforeTheDateIsPutOnThatDay() throws IOException {
        Table table = read(sentence("GPGGA,101500.00,4807.039,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,")
                + sentence("GPGGA,101500.10,4807.039,N,01131.000,E,1,08,0.9,545.4,M,46.9,M,,")
                + rmc("101500.20", "4807.041", "010131"));
        assertThat(values(table, "time")[2] - values(table, "time")[0]).isEqualTo(0.2, within(1e-6));
    }

    @Test
    void noFixIsAGapAndTornSentencesAreLeftOut() throws IOException {
        Table table = read(rmc("101500.00", "4807.038", "010131")
                + sentence("GPRMC,101500.10,V,,,,,,,010131,,,N")
                + rmc("101500.20", "4807.040", "010131").replace("4807", "4907")
                + rmc("101500.30", "4807.041", "010131")
                + sentence("GPGSV,3,1,11,03,03,111,00,04,15,270,00,06,01,010,00,13,06,292,00")
                + "$GPRMC,1015"
                + "\n");
        assertThat(values(table, "latitude")).hasSize(3);
        assertThat(values(table, "latitude")[1]).isNaN();
    }

    @Test
    void mostlyTornSentencesAreRefused() {
        String torn = rmc("101500.00", "4807.038", "010131").replace("084.4", "085.4");
        assertThatThrownBy(() -> read(torn.repeat(5) + rmc("101501.00", "4807.038", "010131")))
                .isInstanceOf(InputProblem.class)
                .hasMessageContaining("found 5 of 6 that are torn");
    }

    @Test
    void aReceiverUnderARoofIsRefused() {
        assertThatThrownBy(() ->
                        read(sentence("GPRMC,101500.10,V,,,,,,,010131,,,N").repeat(3)))
                .isInstanceOf(InputProblem.class)
                .hasMessageContaining("found none in its sentences");
    }
}
