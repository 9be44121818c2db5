package setwright.intake.mdf;

import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Reads conversions, each once.
 *
 * <p><b>Source:</b> ASAM MDF 4, CCBLOCK: links {@code cc_tx_name}, {@code cc_md_unit}, {@code cc_md_comment},
 * {@code cc_cc_inverse}, {@code cc_ref...}; data {@code cc_type} (UINT8), {@code cc_precision} (UINT8), {@code cc_flags},
 * {@code cc_ref_count}, {@code cc_val_count} (UINT16 each), {@code cc_phy_range_min}, {@code cc_phy_range_max} (REAL each),
 * {@code cc_val...} (REAL).
 */
final class ConversionReader {
    private static final int FIRST_REFERENCE = 4;
    private static final int FIRST_VALUE_BYTE = 24;
    /** Scales inside of scales; real files have one or two. */
    private static final int DEEPEST = 8;

    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,3})?");

    private final MdfFile file;
    private final Texts texts;
    private final Map<Key, Conversion> known = new HashMap<>();

    /** A conversion may be shared; ranges end otherwise for integers. */
    private record Key(long link, boolean integer) {}

    ConversionReader(MdfFile file, Texts texts) {
        this.file = file;
        this.texts = texts;
    }

    /**
     * Reads the conversion behind a link.
     *
     * @param integer  tells whether the raw numbers are integers
     */
    Conversion read(long link, boolean integer) {
        return read(link, integer, 0);
    }

    /** Returns the unit that a conversion names; empty when it names none. */
    String unit(long link) {
        return link == Block.NIL
                ? ""
                : texts.at(Block.at(file, link, "a conversion", "CC").linkOrNil(1));
    }

    private Conversion read(long link, boolean integer, int depth) {
        if (link == Block.NIL) {
            return new Conversion.Same();
        }
        Key key = new Key(link, integer);
        Conversion conversion = known.get(key);
        if (conversion == null) {
            if (depth > DEEPEST) {
                throw file.damaged(link, "conversions inside each other at most " + DEEPEST + " deep", "more");
            }
            conversion = make(Block.at(file, link, "a conversion", "CC"), integer, depth);
            known.put(key, conversion);
        }
        return conversion;
    }

    private Conversion make(Block block, boolean integer, int depth) {
        ByteBuffer head = block.data(FIRST_VALUE_BYTE);
        int type = head.get(0) & 0xFF;
        int references = head.getShort(4) & 0xFFFF;
        double[] values = new double[head.getShort(6) & 0xFFFF];
        block.data(FIRST_VALUE_BYTE + 8L * values.length)
                .position(FIRST_VALUE_BYTE)
                .slice()
                .order(head.order())
                .asDoubleBuffer()
                .get(values);
        return switch (type) {
            case 0 -> new Conversion.Same();
            case 1 -> {
                require(block, values.length == 2);
                yield new Conversion.Linear(values[0], values[1]);
            }
            case 2 -> {
                require(block, values.length == 6);
                yield new Conversion.Rational(values[0], values[1], values[2], values[3], values[4], values[5]);
            }
            case 3 -> new Conversion.Unread("their values follow from formulas, which are not worked out");
            case 4, 5 -> keyTable(block, values, type == 4);
            case 6 -> {
                require(block, values.length % 3 == 1);
                int count = values.length / 3;
                Ranges ranges = new Ranges(every(values, 0, 3, count), every(values, 1, 3, count), integer);
                yield new RangeTable(ranges, every(values, 2, 3, count), values[values.length - 1]);
            }
            case 7 -> scaleTable(block, new Ranges(values, values, true), values.length, references, integer, depth);
            case 8 -> {
                require(block, values.length % 2 == 0);
                int count = values.length / 2;
                Ranges ranges = new Ranges(every(values, 0, 2, count), every(values, 1, 2, count), integer);
                yield scaleTable(block, ranges, count, references, integer, depth);
            }
            default -> new Conversion.Unread("their conversions are for words, not for numbers");
        };
    }

    private Conversion keyTable(Block block, double[] values, boolean interpolates) {
        require(block, values.length >= 2 && values.length % 2 == 0);
        int count = values.length / 2;
        double[] keys = every(values, 0, 2, count);
        for (int i = 1; i < count; i++) {
            require(block, keys[i] > keys[i - 1]);
        }
        return new KeyTable(keys, every(values, 1, 2, count), interpolates);
    }

    private Conversion scaleTable(Block block, Ranges ranges, int count, int references, boolean integer, int depth) {
        require(block, references == count || references == count + 1);
        List<Conversion> scales = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            scales.add(scale(block.link(FIRST_REFERENCE + i), integer, depth));
        }
        Conversion otherwise = references > count
                ? scale(block.link(FIRST_REFERENCE + count), integer, depth)
                : new Conversion.Words("");
        return new ScaleTable(ranges, scales, otherwise);
    }

    private Conversion scale(long link, boolean integer, int depth) {
        if (link == Block.NIL) {
            return new Conversion.Words("");
        }
        if (Block.at(file, link, "a text or conversion", "TX", "MD", "CC").id().equals("CC")) {
            return read(link, integer, depth + 1);
        }
        String text = texts.at(link);
        return isNumber(text) ? new Conversion.Linear(Double.parseDouble(text), 0.0) : new Conversion.Words(text);
    }

    /** Tells whether a text is itself a number. */
    static boolean isNumber(String text) {
        return NUMBER.matcher(text).matches();
    }

    private static double[] every(double[] values, int first, int step, int count) {
        double[] picked = new double[count];
        for (int i = 0; i < count; i++) {
            picked[i] = values[first + step * i];
        }
        return picked;
    }

    private void require(Block block, boolean holds) {
        if (!holds) {
            throw file.damaged(block.at(), "a conversion with the parameters of its type", "others");
        }
    }
}
