package setwright.intake.mdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import setwright.intake.problem.InputProblem;
import setwright.intake.source.Formats;
import setwright.intake.table.Table;
import setwright.intake.table.TableColumn;
import tools.jackson.databind.JsonNode;

/** Files by another writer than ours, against the numbers that it stored (see SOURCE.md beside them). */
class FixturesTest {
    /** The same formulas, worked out by two languages in another order. */
    private static final double ROUND_OFF = 1.0e-12;

    static List<String> names() throws IOException {
        return Fixtures.names();
    }

    @Test
    void noneIsForgotten() throws IOException {
        assertThat(names()).hasSizeGreaterThanOrEqualTo(24);
    }

    @ParameterizedTest
    @MethodSource("names")
    void holdsWhatWasStored(String name) throws IOException {
        JsonNode expected = Fixtures.expected(name);
        if (expected.has("problem")) {
            InputProblem problem = catchThrowableOfType(InputProblem.class, () -> Formats.read(Fixtures.file(name)));
            assertThat(problem).as("%s must be refused", name).isNotNull();
            expected.get("problem").forEach(part -> assertThat(problem).hasMessageContaining(part.asString()));
            assertThat(problem.advice()).isNotEmpty();
            return;
        }
        List<Table> tables = Formats.read(Fixtures.file(name));
        assertThat(tables).hasSize(expected.get("tables").size());
        for (int i = 0; i < tables.size(); i++) {
            check(tables.get(i), expected.get("tables").get(i).get("columns"));
        }
        List<String> remarks = tables.get(0).remarks();
        assertThat(remarks).hasSize(expected.get("remarks").size());
        expected.get("remarks")
                .forEach(part -> assertThat(remarks).anyMatch(remark -> remark.contains(part.asString())));
    }

    private static void check(Table table, JsonNode columns) {
        assertThat(table.columns()).extracting(TableColumn::header).hasSize(columns.size());
        for (int k = 0; k < columns.size(); k++) {
            JsonNode expected = columns.get(k);
            TableColumn column = table.columns().get(k);
            String name = expected.get("name").asString();
            assertThat(column.header()).isEqualTo(name);
            assertThat(column.unitRow()).as(name).isEqualTo(expected.get("unit").asString());
            JsonNode values = expected.get("values");
            assertThat(column.size()).as(name).isEqualTo(values.size());
            for (int i = 0; i < values.size(); i++) {
                if (values.get(i).isNull()) {
                    assertThat(column.get(i)).as("%s, record %d", name, i).isNaN();
                } else {
                    double value = values.get(i).asDouble();
                    assertThat(column.get(i))
                            .as("%s, record %d", name, i)
                            .isCloseTo(value, within(ROUND_OFF * Math.abs(value)));
                }
            }
            assertThat(column.badCount()).as(name).isEqualTo(expected.get("bad").asLong());
            assertThat(column.firstBad().map(TableColumn.BadCell::text).orElse(""))
                    .as(name)
                    .isEqualTo(
                            expected.get("first").isNull()
                                    ? ""
                                    : expected.get("first").asString());
        }
    }
}
