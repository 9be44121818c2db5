package setwright.intake.csv;

import java.nio.file.Path;
import java.util.List;
import setwright.intake.table.Table;
import setwright.intake.table.TableFormat;

/** Text tables of any dialect, plain or gzip: all files that are nothing else. */
public final class TextFormat implements TableFormat {
    @Override
    public String words() {
        return "a text table";
    }

    @Override
    public boolean recognises(byte[] head) {
        return true;
    }

    @Override
    public List<Table> read(Path file) {
        return List.of(CsvReader.read(file));
    }
}
