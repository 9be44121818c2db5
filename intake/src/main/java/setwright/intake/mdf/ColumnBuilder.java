package setwright.intake.mdf;

import java.util.Optional;
import setwright.intake.table.TableColumn;

/** Collects the converted values of one channel. */
final class ColumnBuilder {
    private final ChannelPlan plan;
    private final double[] values;
    private int count;
    private long bad;
    private Optional<TableColumn.BadCell> firstBad = Optional.empty();

    ColumnBuilder(ChannelPlan plan, int rows) {
        this.plan = plan;
        this.values = new double[rows];
    }

    /** Takes the next records. */
    void add(RecordRun run) {
        RawValue raw = plan.raw();
        if (raw instanceof RawValue.Index) {
            for (int row = count; row < count + run.count(); row++) {
                values[row] = row;
            }
        } else if (raw instanceof RawValue.Bits bits) {
            RawReader.bits(bits, run, values, count);
        } else if (raw instanceof RawValue.Real real) {
            RawReader.real(real, run, values, count);
        } else if (raw instanceof RawValue.Words words) {
            words(words, run);
            count += run.count();
            return;
        }
        Conversion conversion = plan.conversion();
        for (int i = 0; i < run.count(); i++) {
            int row = count + i;
            if (isInvalid(run, i)) {
                values[row] = Double.NaN;
                continue;
            }
            double rawNumber = values[row];
            double value = conversion.of(rawNumber);
            values[row] = Double.isInfinite(value) ? Double.NaN : value;
            if (Double.isNaN(value)) {
                conversion.words(rawNumber).ifPresent(text -> note(row, text));
            }
        }
        count += run.count();
    }

    private void words(RawValue.Words words, RecordRun run) {
        for (int i = 0; i < run.count(); i++) {
            int row = count + i;
            values[row] = Double.NaN;
            if (isInvalid(run, i)) {
                continue;
            }
            int from = run.at(i) + words.byteOffset();
            String text = new String(run.values(), from, words.bytes(), words.charset());
            int end = text.indexOf('\0');
            text = (end < 0 ? text : text.substring(0, end)).strip();
            if (ConversionReader.isNumber(text)) {
                values[row] = Double.parseDouble(text);
            } else if (!text.isEmpty()) {
                note(row, text);
            }
        }
    }

    private boolean isInvalid(RecordRun run, int record) {
        return plan.allInvalid() || (plan.invalidBit() >= 0 && run.isSet(record, plan.invalidBit()));
    }

    private void note(int row, String text) {
        bad++;
        if (firstBad.isEmpty()) {
            firstBad = Optional.of(new TableColumn.BadCell(row + 1L, text));
        }
    }

    /** Returns the column, after the last record. */
    TableColumn column() {
        return new TableColumn(plan.header(), plan.unit(), values, firstBad, bad);
    }
}
