package setwright.app.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class WholeFileTest {
    @TempDir
    private Path folder;

    @Test
    void writesReplacesAndLeavesNothingBeside() throws IOException {
        Path file = folder.resolve("a.html");
        WholeFile.write(file, "one");
        WholeFile.write(file, "zwölf");
        assertThat(file).hasContent("zwölf");
        try (Stream<Path> entries = Files.list(folder)) {
            assertThat(entries).containsExactly(file);
        }
    }

    @Test
    void aMissingFolderIsSaidAndMadeByNobody() {
        Path file = folder.resolve("no/such/folder/a.html");
        assertThatThrownBy(() -> WholeFile.write(file, "x"))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("folder does not exist");
        assertThat(folder.resolve("no")).doesNotExist();
    }

    @Test
    void aFolderIsNotOverwritten() {
        assertThatThrownBy(() -> WholeFile.write(folder, "x"))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("it is a folder");
    }

    @Test
    void aLinkIsNotReplacedByAFile() throws IOException {
        Path real = Files.writeString(folder.resolve("real.txt"), "kept");
        Path link = Files.createSymbolicLink(folder.resolve("link.html"), real);
        assertThatThrownBy(() -> WholeFile.write(link, "x"))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("a link");
        assertThat(link).isSymbolicLink();
        assertThat(real).hasContent("kept");
    }

    @Test
    void aDeviceIsNotReplacedByAFile() {
        Path device = Path.of("/dev/null");
        assumeTrue(Files.exists(device) && !Files.isRegularFile(device));
        assertThatThrownBy(() -> WholeFile.check(device))
                .isInstanceOf(IOException.class)
                .hasMessageContaining("device");
    }
}
