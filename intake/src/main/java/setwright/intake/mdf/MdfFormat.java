package setwright.intake.mdf;

import java.nio.file.Path;
import java.util.List;
import setwright.intake.table.Table;
import setwright.intake.table.TableFormat;

/**
 * Measurement files by ASAM MDF 4; those of earlier versions are recognised, to be refused with advice.
 *
 * <p>Columns are converted values, with the unit that the file names; the time stands first. Rows are counted as records.
 */
public final class MdfFormat implements TableFormat {
    @Override
    public String words() {
        return "an MDF measurement file";
    }

    @Override
    public boolean recognises(byte[] head) {
        return Identification.begins(head);
    }

    @Override
    public List<Table> read(Path file) {
        return MdfReader.read(file);
    }
}
