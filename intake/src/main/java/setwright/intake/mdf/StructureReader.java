package setwright.intake.mdf;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Reads which groups a file has, and what their records hold.
 *
 * <p><b>Source:</b> ASAM MDF 4. HDBLOCK at byte 64: first link {@code hd_dg_first}. DGBLOCK: links {@code dg_dg_next},
 * {@code dg_cg_first}, {@code dg_data}, {@code dg_md_comment}; data {@code dg_rec_id_size} (UINT8). CGBLOCK: links
 * {@code cg_cg_next}, {@code cg_cn_first}, {@code cg_tx_acq_name}, {@code cg_si_acq_source}, {@code cg_sr_first},
 * {@code cg_md_comment}, and {@code cg_cg_master} since 4.20; data {@code cg_record_id}, {@code cg_cycle_count} (UINT64 each),
 * {@code cg_flags}, {@code cg_path_separator} (UINT16 each), four reserved bytes, {@code cg_data_bytes}, {@code cg_inval_bytes}
 * (UINT32 each).
 */
final class StructureReader {
    private static final int GROUP_BYTES = 32;
    /** Bits of {@code cg_flags}. */
    private static final int VARIABLE = 1;

    private static final int PLAIN_BUS = 1 << 2;
    private static final int REMOTE_MASTER = 1 << 3;

    private final MdfFile file;
    private final LeftOut leftOut;
    private final ChannelReader channels;

    private StructureReader(MdfFile file, LeftOut leftOut) {
        this.file = file;
        this.leftOut = leftOut;
        this.channels = new ChannelReader(file, leftOut);
    }

    /**
     * Reads the structure.
     *
     * @param leftOut  gets the channels that are not read
     */
    static List<DataGroupPlan> read(MdfFile file, LeftOut leftOut) {
        return new StructureReader(file, leftOut).dataGroups();
    }

    private List<DataGroupPlan> dataGroups() {
        List<DataGroupPlan> plans = new ArrayList<>();
        Block header = Block.at(file, Identification.BYTES, "the header", "HD");
        for (Block block : Block.chain(file, header.link(0), "a data group", "DG")) {
            int idBytes = block.data(1).get(0) & 0xFF;
            if (idBytes > 8 || Integer.bitCount(idBytes) > 1) {
                throw file.damaged(block.at(), "a record id of 0, 1, 2, 4 or 8 bytes", idBytes + " bytes");
            }
            List<GroupPlan> groups = new ArrayList<>();
            Set<Long> ids = new HashSet<>();
            for (Block group : Block.chain(file, block.link(1), "a channel group", "CG")) {
                GroupPlan plan = group(group);
                if (!ids.add(plan.recordId()) && idBytes > 0) {
                    throw file.damaged(group.at(), "a record id of its own", "that of another group");
                }
                groups.add(plan);
            }
            if (idBytes == 0 && groups.size() > 1) {
                throw file.damaged(block.at(), "record ids, as several groups share their data", "none");
            }
            plans.add(new DataGroupPlan(block.at(), idBytes, block.link(2), groups));
        }
        return plans;
    }

    private GroupPlan group(Block block) {
        ByteBuffer fields = block.data(GROUP_BYTES);
        int flags = fields.getShort(16) & 0xFFFF;
        boolean variable = (flags & VARIABLE) != 0;
        // For texts of changing length the two lengths are one number: the bytes of all texts.
        RecordLayout layout = variable
                ? new RecordLayout(0, 0)
                : RecordLayout.of(file, block.at(), fields.getInt(24) & 0xFFFF_FFFFL, fields.getInt(28) & 0xFFFF_FFFFL);
        List<ChannelPlan> plans = List.of();
        if ((flags & PLAIN_BUS) != 0) {
            String name = channels.texts().at(block.link(2));
            leftOut.add(
                    name.isEmpty() ? "bus" : name,
                    "they are raw bus messages; have the logger's program decode them into channels");
        } else if (!variable) {
            plans = channels.read(block.link(1), layout);
        }
        return new GroupPlan(
                block.at(),
                fields.getLong(0),
                fields.getLong(8),
                layout,
                plans,
                variable,
                (flags & REMOTE_MASTER) != 0 ? block.link(6) : Block.NIL);
    }
}
