package setwright.app.server.day;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.javalin.http.ContentTooLargeResponse;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Files from the browser: their names and lengths are nobody's word of honour. */
final class UploadsTest {
    @ParameterizedTest
    @CsvSource({
        "laps.csv, laps.csv",
        "../../etc/passwd, passwd",
        "..\\..\\boot.ini, boot.ini",
        ".hidden, hidden",
        "'..', recording.csv",
        "'', recording.csv",
        "'a<script>.csv', a_script_.csv",
        "'Läufe am Mittag.csv.gz', Läufe am Mittag.csv.gz",
        "'走行.csv', 走行.csv",
        "C:laps.csv, C_laps.csv"
    })
    void onlyWhatIsHarmlessInANameIsKept(String given, String kept) {
        assertThat(Uploads.harmless(given)).isEqualTo(kept);
    }

    @RepeatedTest(200)
    void noNameLeavesItsFolder(RepetitionInfo repetition) throws IOException {
        Random random = new Random(repetition.getCurrentRepetition());
        String alphabet = "./\\ab\0\n :*?\"<>|%~é\uD83D\uDE00";
        StringBuilder name = new StringBuilder();
        for (int i = random.nextInt(200); i > 0; i--) {
            name.append(alphabet.charAt(random.nextInt(alphabet.length())));
        }
        try (Uploads uploads = new Uploads(10)) {
            Path file = uploads.file(uploads.take(name.toString(), new ByteArrayInputStream(new byte[] {1})))
                    .orElseThrow();
            assertThat(file.normalize()).isEqualTo(file);
            assertThat(file.getFileName().toString().length()).isBetween(1, 90);
            assertThat(Files.readAllBytes(file)).containsExactly(1);
        }
    }

    @Test
    void twoFilesOfOneNameAreTwoFiles() throws IOException {
        try (Uploads uploads = new Uploads(10)) {
            String one = uploads.take("a.csv", new ByteArrayInputStream(new byte[] {1}));
            String other = uploads.take("a.csv", new ByteArrayInputStream(new byte[] {2}));
            assertThat(Files.readAllBytes(uploads.file(one).orElseThrow())).containsExactly(1);
            assertThat(Files.readAllBytes(uploads.file(other).orElseThrow())).containsExactly(2);
            assertThat(uploads.file("../" + one)).isEmpty();
        }
    }

    @Test
    void aFileThatIsTooLongLeavesNothing() throws IOException {
        try (Uploads uploads = new Uploads(1_000)) {
            Path kept = uploads.file(uploads.take("a.csv", new ByteArrayInputStream(new byte[1_000])))
                    .orElseThrow();
            InputStream endless = new InputStream() {
                @Override
                public int read() {
                    return 1;
                }
            };
            assertThatThrownBy(() -> uploads.take("b.csv", endless)).isInstanceOf(ContentTooLargeResponse.class);
            try (Stream<Path> folders = Files.list(kept.getParent().getParent())) {
                assertThat(folders).hasSize(1);
            }
        }
    }

    @Test
    void nothingStaysBehind() throws IOException {
        Path file;
        Path dropped;
        try (Uploads uploads = new Uploads(10)) {
            String key = uploads.take("a.csv", new ByteArrayInputStream(new byte[] {1}));
            dropped = uploads.file(key).orElseThrow();
            uploads.drop(key);
            assertThat(dropped).doesNotExist();
            assertThat(uploads.file(key)).isEmpty();
            file = uploads.file(uploads.take("b.csv", new ByteArrayInputStream(new byte[] {1})))
                    .orElseThrow();
        }
        assertThat(file.getParent().getParent()).doesNotExist();
    }
}
