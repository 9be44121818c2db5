package setwright.intake.mdf;

import java.nio.ByteBuffer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Turns the channels of a group into plans for columns.
 *
 * <p><b>Source:</b> ASAM MDF 4, CNBLOCK: links {@code cn_cn_next}, {@code cn_composition}, {@code cn_tx_name},
 * {@code cn_si_source}, {@code cn_cc_conversion}, {@code cn_data}, {@code cn_md_unit}, {@code cn_md_comment}; data
 * {@code cn_type}, {@code cn_sync_type}, {@code cn_data_type}, {@code cn_bit_offset} (UINT8 each), {@code cn_byte_offset},
 * {@code cn_bit_count}, {@code cn_flags}, {@code cn_inval_bit_pos} (UINT32 each).
 */
final class ChannelReader {
    private static final int FIELD_BYTES = 20;
    /** Structures inside of structures. */
    private static final int DEEPEST = 16;

    private static final int MASTER = 2;
    private static final int VIRTUAL_MASTER = 3;
    private static final int VIRTUAL_DATA = 6;
    private static final int TIME = 1;
    private static final long ALL_INVALID = 1;
    private static final long HAS_INVALID_BIT = 1 << 1;
    /** A part of a bus message; signals in it have a unit or a conversion, its frame has neither. */
    private static final long BUS_EVENT = 1 << 10;

    private final MdfFile file;
    private final Texts texts;
    private final ConversionReader conversions;
    private final LeftOut leftOut;

    /**
     * Makes a reader.
     *
     * @param leftOut  gets those that become no column
     */
    ChannelReader(MdfFile file, LeftOut leftOut) {
        this.file = file;
        this.leftOut = leftOut;
        this.texts = new Texts(file);
        this.conversions = new ConversionReader(file, texts);
    }

    Texts texts() {
        return texts;
    }

    /**
     * Reads a list of channels and those inside of them.
     *
     * @return the master first if there is one, then the others in the file's order
     */
    List<ChannelPlan> read(long first, RecordLayout layout) {
        List<ChannelPlan> plans = new ArrayList<>();
        walk(first, "", layout, plans, 0);
        List<ChannelPlan> ordered = new ArrayList<>();
        plans.stream()
                .filter(plan -> plan.master() != ChannelPlan.Master.NONE)
                .limit(1)
                .forEach(ordered::add);
        plans.stream().filter(plan -> !ordered.contains(plan)).forEach(ordered::add);
        return ordered;
    }

    private void walk(long first, String prefix, RecordLayout layout, List<ChannelPlan> plans, int depth) {
        if (depth > DEEPEST) {
            throw file.damaged(first, "structures inside each other at most " + DEEPEST + " deep", "more");
        }
        for (Block block : Block.chain(file, first, "a channel", "CN")) {
            String own = texts.at(block.link(2));
            String name = prefix + (own.isEmpty() ? "channel " + (plans.size() + 1) : own);
            long composition = block.link(1);
            if (composition == Block.NIL) {
                plan(block, name, layout, plans);
                continue;
            }
            Block inside = Block.at(file, composition, "a composition", "CN", "CA", "DS", "CL", "CV", "CU");
            if (inside.id().equals("CN")) {
                walk(composition, name + ".", layout, plans, depth + 1);
            } else {
                leftOut.add(name, "they are arrays or lists, not single numbers");
            }
        }
    }

    private void plan(Block block, String name, RecordLayout layout, List<ChannelPlan> plans) {
        ByteBuffer fields = block.data(FIELD_BYTES);
        int type = fields.get(0) & 0xFF;
        int dataType = fields.get(2) & 0xFF;
        long flags = fields.getInt(12) & 0xFFFF_FFFFL;
        boolean axis = type == MASTER || type == VIRTUAL_MASTER;
        boolean virtual = type == VIRTUAL_MASTER || type == VIRTUAL_DATA;
        if (type != 0 && !axis && !virtual) {
            leftOut.add(name, "they are texts or streams of changing length");
            return;
        }
        if (!axis && (flags & BUS_EVENT) != 0 && block.link(4) == Block.NIL && block.link(6) == Block.NIL) {
            leftOut.add(name, "they are frames of bus messages");
            return;
        }
        Conversion conversion = conversions.read(block.link(4), virtual || dataType < 4);
        String reason = conversion.reason().orElse("");
        RawValue raw = new RawValue.Index();
        if (!virtual) {
            long offset = fields.getInt(4) & 0xFFFF_FFFFL;
            long bits = fields.getInt(8) & 0xFFFF_FFFFL;
            int bitOffset = fields.get(3) & 0xFF;
            String odd = odd(dataType, bitOffset, bits);
            reason = reason.isEmpty() ? odd : reason;
            if (odd.isEmpty()) {
                require(
                        block,
                        offset + (bitOffset + bits + 7) / 8 <= layout.dataBytes(),
                        "values inside their records");
                raw = raw(dataType, (int) offset, bitOffset, (int) bits);
            }
        }
        if (!reason.isEmpty()) {
            leftOut.add(name, reason);
            return;
        }
        long position = fields.getInt(16) & 0xFFFF_FFFFL;
        boolean bit = (flags & HAS_INVALID_BIT) != 0;
        require(block, !bit || position < 8L * layout.invalidBytes(), "an invalidation bit inside its record");
        ChannelPlan.Master master = !axis || raw instanceof RawValue.Words
                ? ChannelPlan.Master.NONE
                : fields.get(1) == TIME ? ChannelPlan.Master.TIME : ChannelPlan.Master.OTHER;
        plans.add(new ChannelPlan(
                name,
                unit(block, master),
                raw,
                raw instanceof RawValue.Words ? new Conversion.Same() : conversion,
                bit ? (int) position : -1,
                (flags & ALL_INVALID) != 0,
                master));
    }

    /** Time is in seconds when nothing else is said: CNBLOCK, {@code cn_sync_type}. */
    private String unit(Block block, ChannelPlan.Master master) {
        String own = texts.at(block.link(6));
        String unit = own.isEmpty() ? conversions.unit(block.link(4)) : own;
        return unit.isEmpty() && master == ChannelPlan.Master.TIME ? "s" : unit;
    }

    /** Why values of this kind are not read; empty when they are. */
    private static String odd(int dataType, int bitOffset, long bits) {
        if (dataType > 9) {
            return "they are raw bytes, media, dates or complex numbers";
        }
        if (dataType < 4) {
            return bits >= 1 && bits <= 64 && bitOffset < 8 ? "" : "they are integers of no bit or of more than 64";
        }
        boolean whole = bitOffset == 0 && bits % 8 == 0;
        if (dataType < 6) {
            return whole && (bits == 16 || bits == 32 || bits == 64)
                    ? ""
                    : "they are floating-point numbers of an unknown length";
        }
        return whole && bits > 0 ? "" : "they are texts of an unknown length";
    }

    private static RawValue raw(int dataType, int offset, int bitOffset, int bits) {
        if (dataType < 4) {
            return new RawValue.Bits(offset, bitOffset, bits, dataType >= 2, dataType % 2 == 1);
        }
        if (dataType < 6) {
            return new RawValue.Real(offset, bits / 8, dataType == 5);
        }
        Charset charset = switch (dataType) {
            case 6 -> StandardCharsets.ISO_8859_1;
            case 7 -> StandardCharsets.UTF_8;
            case 8 -> StandardCharsets.UTF_16LE;
            default -> StandardCharsets.UTF_16BE;
        };
        return new RawValue.Words(offset, bits / 8, charset);
    }

    private void require(Block block, boolean holds, String expected) {
        if (!holds) {
            throw file.damaged(block.at(), expected, "some beyond its end");
        }
    }
}
