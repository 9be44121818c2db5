package setwright.app.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import setwright.app.docs.KeptText;

/**
 * What docs say of the tables is what the definitions say. After a change of a table, {@code mvn -pl app -am test
 * -Dtest=ExportDocsTest -Dsurefire.failIfNoSpecifiedTests=false -Dsetwright.docs=write} writes them anew.
 */
final class ExportDocsTest {
    private static final Path PAGE = Path.of("../docs/export.md");
    private static final Path SCHEMA = Path.of("../docs/export.schema.json");

    @Test
    void thePageTellsEveryColumn() throws IOException {
        String page = Files.readString(PAGE);
        int mark = page.indexOf(ExportPage.MARK);
        assertThat(mark).as("the mark in " + PAGE).isPositive();
        KeptText.assertHolds(PAGE, page.substring(0, mark) + ExportPage.MARK + ExportPage.tables());
    }

    @Test
    void theSchemaHoldsEveryColumn() throws IOException {
        KeptText.assertHolds(SCHEMA, ExportPage.schema());
    }

    /** Engines do not tell large letters from small in names of columns. */
    @Test
    void namesAreUniqueAndSentencesWhole() {
        Set<String> tables = new HashSet<>();
        for (Table<?> table : ExportTables.ALL) {
            assertThat(tables.add(table.name())).as(table.name()).isTrue();
            assertThat(table.words()).endsWith(".");
            Set<String> columns = new HashSet<>();
            for (Column<?> column : table.columns()) {
                String where = table.name() + ": " + column.name();
                assertThat(columns.add(column.key().toLowerCase(Locale.ROOT)))
                        .as(where)
                        .isTrue();
                assertThat(column.key()).as(where).matches("[a-z][a-z0-9_]*[a-z0-9]|[a-z]");
                assertThat(column.words())
                        .as(where)
                        .isNotBlank()
                        .doesNotEndWith(".")
                        .doesNotContain("|");
            }
        }
    }
}
