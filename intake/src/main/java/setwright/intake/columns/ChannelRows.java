package setwright.intake.columns;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.duckdb.DuckDBColumnType;
import org.duckdb.DuckDBDataChunkWriter;
import org.duckdb.DuckDBTableFunction;
import org.duckdb.DuckDBTableFunctionBindInfo;
import org.duckdb.DuckDBTableFunctionCallInfo;
import org.duckdb.DuckDBTableFunctionInitInfo;
import org.duckdb.DuckDBWritableVector;
import setwright.core.recording.Channel;

/** Hands channels to the SQL engine vector by vector, as it asks for them; nothing is copied twice. */
final class ChannelRows implements DuckDBTableFunction<Object, AtomicInteger, Object> {
    private final List<String> headers;
    private final List<Channel> channels;

    /**
     * Makes one.
     *
     * @param headers   names of the columns
     * @param channels  equally long, one per column
     */
    ChannelRows(List<String> headers, List<Channel> channels) {
        this.headers = headers;
        this.channels = channels;
    }

    @Override
    public Object bind(DuckDBTableFunctionBindInfo info) {
        headers.forEach(header -> info.addResultColumn(header, DuckDBColumnType.DOUBLE));
        info.setCardinality(size(), true);
        return this;
    }

    @Override
    public AtomicInteger init(DuckDBTableFunctionInitInfo info) {
        info.setMaxThreads(1); // rows come in their order
        return new AtomicInteger();
    }

    @Override
    public long apply(DuckDBTableFunctionCallInfo info, DuckDBDataChunkWriter out) {
        AtomicInteger next = info.getInitData();
        int from = next.get();
        int count = (int) Math.min(out.capacity(), size() - from);
        for (int c = 0; c < headers.size(); c++) {
            DuckDBWritableVector vector = out.vector(c);
            Channel channel = channels.get(c);
            for (int i = 0; i < count; i++) {
                vector.setDouble(i, channel.get(from + i));
            }
        }
        next.set(from + count);
        return count;
    }

    private int size() {
        return channels.get(0).size();
    }
}
