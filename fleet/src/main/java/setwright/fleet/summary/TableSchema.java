package setwright.fleet.summary;

import org.apache.spark.sql.types.DataType;
import org.apache.spark.sql.types.DataTypes;
import org.apache.spark.sql.types.StructType;
import setwright.app.export.Column;
import setwright.fleet.work.OutTables;
import setwright.intake.columns.ParquetTable.Kind;

/*
 * Design note. Spark would take the columns of one file for those of all. But a tree grows over years, and tables of an older version may
 * lack a column, in some files or in all: told what to expect, Spark reads such a column as empty, and opens no file to find out.
 */

/** What Spark is told of a table. */
final class TableSchema {
    private TableSchema() {}

    /** Returns the columns of this version, and the circuit that folders are named after. */
    static StructType of(String table) {
        StructType schema = new StructType();
        for (Column<?> column : OutTables.columns(table)) {
            schema = schema.add(column.siHeader(), type(column.kind()));
        }
        return schema.add("circuit", DataTypes.StringType);
    }

    private static DataType type(Kind kind) {
        return switch (kind) {
            case TEXT -> DataTypes.StringType;
            case WHOLE -> DataTypes.LongType;
            case NUMBER -> DataTypes.DoubleType;
            case TRUTH -> DataTypes.BooleanType;
        };
    }
}
