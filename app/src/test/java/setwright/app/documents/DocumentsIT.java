package setwright.app.documents;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;

/** Types the commands of the pages for newcomers, in order, in an empty folder, and looks for what the pages say they answer. */
@EnabledIfSystemProperty(
        named = "setwright.nightly",
        matches = "true",
        disabledReason = "takes minutes; -Dsetwright.nightly=true")
final class DocumentsIT {
    private static final Path PROGRAM =
            Path.of(System.getProperty("setwright.program")).toAbsolutePath().normalize();

    @TempDir
    private Path folder;

    @Test
    void everyCommandOfTheTutorialWorksAndAnswersAsItSays() throws Exception {
        type("tutorial.md");
    }

    @Test
    void everyCommandOfTheCarsPageWorksAndAnswersAsItSays() throws Exception {
        type("own-car.md");
    }

    private void type(String page) throws Exception {
        Path link = Files.createSymbolicLink(folder.resolve("setwright"), PROGRAM);
        try {
            for (Document.Step step : Document.read(page).steps()) {
                Path answer = folder.resolve("answer.txt");
                int exitCode = new ProcessBuilder("bash", "-e", "-c", step.commands())
                        .directory(folder.toFile())
                        .redirectErrorStream(true)
                        .redirectOutput(answer.toFile())
                        .start()
                        .waitFor();
                String words = Files.readString(answer);
                assertThat(exitCode).as(step.commands() + words).isZero();
                assertThat(oneLine(words))
                        .as(step.commands())
                        .contains(step.answers().stream()
                                .map(DocumentsIT::oneLine)
                                .toList());
            }
        } finally {
            Files.delete(link); // or clearing the temporary folder warns of a link that leads out of it
        }
    }

    /** Where the terminal breaks a line does not matter. */
    private static String oneLine(String words) {
        return words.strip().replaceAll("\\s+", " ");
    }
}
