package setwright.fleet.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.app.export.Column;
import setwright.fleet.ledger.LedgerTable;

/** {@code docs/fleet.md} tells every column that export.md does not. */
final class FleetPageTest {
    @Test
    void everyColumnIsTold() throws IOException {
        String page = Files.readString(Path.of("../docs/fleet.md"));
        List<Column<?>> columns = new ArrayList<>(LedgerTable.columns());
        columns.addAll(SetupRow.columns());
        assertThat(columns)
                .hasSizeGreaterThan(15)
                .allSatisfy(column -> assertThat(page)
                        .containsPattern("\\Q| " + column.name() + "\\E( \\([^|]*\\))? \\| [a-z ]+ \\| \\Q"
                                + column.words() + " |"));
    }
}
