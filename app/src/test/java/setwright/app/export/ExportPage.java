package setwright.app.export;

import java.util.stream.Collectors;
import setwright.app.units.UnitSystem;
import setwright.intake.columns.ParquetTable.Kind;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What docs say of the tables, from their definitions. */
final class ExportPage {
    /** Behind it the page is written by the definitions, before it by people. */
    static final String MARK = "<!-- From here on written by ExportDocsTest from the definitions of the tables. -->\n";

    private static final JsonMapper MAPPER =
            JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    private ExportPage() {}

    /** Returns the part of docs/export.md that tells of each table. */
    static String tables() {
        return ExportTables.ALL.stream().map(ExportPage::table).collect(Collectors.joining());
    }

    private static String table(Table<?> table) {
        return "\n## " + table.name() + "\n\n" + table.words() + "\n\n"
                + "| column | key in JSON | type | SI | metric | imperial | what it is |\n|---|---|---|---|---|---|---|\n"
                + table.columns().stream().map(ExportPage::row).collect(Collectors.joining());
    }

    private static String row(Column<?> column) {
        return "| " + column.name() + " | `" + column.key() + "` | " + JsonForm.words(column) + " | "
                + column.siUnit() + " | " + shown(column, UnitSystem.METRIC) + " | "
                + shown(column, UnitSystem.IMPERIAL)
                + " | " + column.words() + " |\n";
    }

    private static String shown(Column<?> column, UnitSystem units) {
        return column.kind() == Kind.NUMBER ? column.measure().unit(units) : "";
    }

    /** Returns docs/export.schema.json. */
    static String schema() {
        ObjectNode root = MAPPER.createObjectNode();
        root.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        root.put("title", "setwright export TABLE --as json, version 1");
        root.put(
                "description",
                "Fields are only ever added to a version. SI units, which stand in columns; null where there is nothing. Written"
                        + " by ExportDocsTest from the definitions of the tables.");
        root.put("type", "object");
        names(root.putArray("required"), "version", "table", "columns", "rows");
        root.put("additionalProperties", false);
        ObjectNode properties = root.putObject("properties");
        properties.putObject("version").put("const", JsonForm.VERSION);
        ArrayNode tables = properties.putObject("table").putArray("enum");
        ExportTables.names().forEach(tables::add);
        properties.putObject("columns").put("type", "array").putObject("items").put("$ref", "#/$defs/column");
        properties.putObject("rows").put("type", "array");
        ArrayNode each = root.putArray("allOf");
        ObjectNode kinds = root.putObject("$defs");
        column(kinds.putObject("column"));
        for (Table<?> table : ExportTables.ALL) {
            ObjectNode rule = each.addObject();
            rule.putObject("if").putObject("properties").putObject("table").put("const", table.name());
            rule.putObject("then")
                    .putObject("properties")
                    .putObject("rows")
                    .putObject("items")
                    .put("$ref", "#/$defs/" + table.name());
            row(kinds.putObject(table.name()), table);
        }
        return MAPPER.writeValueAsString(root) + "\n";
    }

    private static void column(ObjectNode column) {
        column.put("type", "object");
        names(column.putArray("required"), "key", "name", "type");
        column.put("additionalProperties", false);
        ObjectNode properties = column.putObject("properties");
        properties.putObject("key").put("type", "string");
        properties.putObject("name").put("type", "string");
        names(properties.putObject("type").putArray("enum"), "string", "integer", "number", "boolean");
        properties.putObject("unit").put("type", "string");
    }

    private static void row(ObjectNode row, Table<?> table) {
        row.put("description", table.words());
        row.put("type", "object");
        row.put("additionalProperties", false);
        ArrayNode required = row.putArray("required");
        ObjectNode properties = row.putObject("properties");
        for (Column<?> column : table.columns()) {
            if (!(table instanceof ChannelsTable) || column.key().equals("time")) {
                required.add(column.key());
            }
            ObjectNode property = properties.putObject(column.key());
            names(property.putArray("type"), JsonForm.type(column), "null");
            property.put(
                    "description", column.words() + (column.siUnit().isEmpty() ? "" : " (" + column.siUnit() + ")"));
        }
    }

    private static void names(ArrayNode array, String... names) {
        for (String name : names) {
            array.add(name);
        }
    }
}
