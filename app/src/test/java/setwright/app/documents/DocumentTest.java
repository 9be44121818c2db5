package setwright.app.documents;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** That {@link DocumentsIT} finds something to run. */
final class DocumentTest {
    @ParameterizedTest
    @ValueSource(strings = {"tutorial.md", "own-car.md"})
    void aPageForNewcomersHasCommandsWithTheirAnswers(String page) throws Exception {
        Document document = Document.read(page);
        assertThat(document.steps()).hasSizeGreaterThan(5).allSatisfy(step -> {
            assertThat(step.commands()).contains("./setwright ");
            assertThat(step.answers()).isNotEmpty();
        });
    }
}
