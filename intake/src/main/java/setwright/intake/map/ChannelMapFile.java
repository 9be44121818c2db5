package setwright.intake.map;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import setwright.core.recording.Quantity;
import setwright.intake.problem.InputProblem;
import setwright.intake.yaml.Spelling;
import setwright.intake.yaml.YamlFile;
import setwright.intake.yaml.YamlNode;

/**
 * A channel map as a YAML file that people read, edit and use again.
 *
 * <pre>
 * channels:
 *   speed:
 *     column: "v"
 *     unit: km/h
 *   yaw_rate: {column: "r", unit: deg/s, sign: -1}
 * </pre>
 */
public final class ChannelMapFile {
    private static final String HEAD = """
            # Channel map: which column of a recording holds which quantity.
            #
            # Each entry names a quantity and says how to read it:
            #   column  header of the column, exactly as in the file
            #   unit    of its readings
            #   sign    1, or -1 when the column counts the other way round. Steering, yaw rate and lateral
            #           acceleration are positive in a left turn, longitudinal acceleration forward (ISO 8855)
            #   offset  the reading that means zero, in the unit of the column; leave it out when it is 0
            # Quantities that were not recorded are left out. The map is tested against the data each time it is used.
            """;

    private ChannelMapFile() {}

    /** Returns the text of the file for a proposal, each entry with its reasons as comments. */
    public static String write(Proposal proposal) {
        StringBuilder text = new StringBuilder(HEAD);
        text.append("# Quantities: ").append(String.join(", ", names())).append('\n');
        for (String remark : proposal.remarks()) {
            text.append("# Note: ").append(oneLine(remark)).append('\n');
        }
        text.append("channels:\n");
        for (Proposal.Reason reason : proposal.reasons()) {
            MapEntry entry = reason.entry();
            text.append("  ").append(name(reason.quantity())).append(":\n");
            String why = reason.physics().isEmpty() ? reason.words() : reason.words() + "; " + reason.physics();
            text.append("    # ").append(oneLine(why)).append('\n');
            text.append("    column: ").append(quoted(entry.column())).append('\n');
            text.append("    unit: ").append(quoted(entry.unit().symbol())).append('\n');
            text.append("    sign: ").append(entry.sign()).append('\n');
            if (entry.offset() != 0.0) {
                text.append("    offset: ").append(entry.offset()).append('\n');
            }
        }
        return text.toString();
    }

    /** Writes the file whole or not at all. */
    public static void write(Path file, Proposal proposal) throws IOException {
        Path beside = file.resolveSibling(file.getFileName() + ".part");
        Files.writeString(beside, write(proposal), StandardCharsets.UTF_8);
        Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING);
    }

    /**
     * Reads a file.
     *
     * @throws InputProblem naming the line that is wrong
     */
    public static ChannelMap read(Path file) {
        return map(String.valueOf(file.getFileName()), YamlFile.read(file));
    }

    /** Reads text; {@code name} is what messages call it. */
    public static ChannelMap parse(String name, String text) {
        return map(name, YamlFile.parse(name, text));
    }

    private static ChannelMap map(String file, YamlNode.Mapping root) {
        allowOnly(file, root, "", List.of("channels"));
        YamlNode.Mapping channels = Optional.ofNullable(root.entries().get("channels"))
                .map(YamlNode.Entry::node)
                .filter(YamlNode.Mapping.class::isInstance)
                .map(YamlNode.Mapping.class::cast)
                .orElseThrow(() -> InputProblem.in(file)
                        .row(root.line())
                        .column("channels")
                        .expected("a group of quantities")
                        .found("none")
                        .problem());
        allowOnly(file, channels, "channels.", names());
        Map<Quantity, MapEntry> entries = new EnumMap<>(Quantity.class);
        channels.entries().forEach((name, item) -> {
            Quantity quantity = Quantity.valueOf(name.toUpperCase(Locale.ROOT));
            entries.put(quantity, entry(file, name, quantity, item));
        });
        return new ChannelMap(entries);
    }

    private static MapEntry entry(String file, String name, Quantity quantity, YamlNode.Entry item) {
        if (!(item.node() instanceof YamlNode.Mapping group)) {
            throw InputProblem.in(file)
                    .row(item.keyLine())
                    .column(name)
                    .expected("column, unit, sign and offset")
                    .found(item.node().kind())
                    .problem();
        }
        allowOnly(file, group, name + ".", List.of("column", "unit", "sign", "offset"));
        String column = scalar(file, group, name, "column").orElseThrow(() -> missing(file, item, name, "column"));
        String symbol = scalar(file, group, name, "unit").orElseGet(() -> defaultUnit(quantity));
        Unit unit = Units.spelled(symbol).stream()
                .filter(candidate -> Dimension.fits(quantity, candidate.dimension()))
                .findFirst()
                .orElseThrow(() -> InputProblem.in(file)
                        .row(item.keyLine())
                        .column(name + ".unit")
                        .value(symbol)
                        .expected("a unit of " + quantity.words() + ": " + String.join(", ", unitsOf(quantity)))
                        .problem());
        double sign = number(file, item, name, "sign", scalar(file, group, name, "sign"), 1.0);
        if (Math.abs(sign) != 1.0) {
            throw InputProblem.in(file)
                    .row(item.keyLine())
                    .column(name + ".sign")
                    .value(Double.toString(sign))
                    .expected("1 or -1")
                    .problem();
        }
        double offset = number(file, item, name, "offset", scalar(file, group, name, "offset"), 0.0);
        return new MapEntry(column, unit, (int) sign, offset);
    }

    private static String defaultUnit(Quantity quantity) {
        return Units.of(Dimension.of(quantity)).get(0).symbol();
    }

    private static List<String> unitsOf(Quantity quantity) {
        List<String> symbols = new ArrayList<>();
        for (Dimension dimension : Dimension.values()) {
            if (Dimension.fits(quantity, dimension)) {
                Units.of(dimension).forEach(unit -> symbols.add(unit.symbol()));
            }
        }
        return symbols;
    }

    private static InputProblem missing(String file, YamlNode.Entry item, String name, String key) {
        return InputProblem.in(file)
                .row(item.keyLine())
                .column(name + "." + key)
                .expected("the header of a column")
                .found("nothing")
                .advice("Add the key.")
                .problem();
    }

    private static Optional<String> scalar(String file, YamlNode.Mapping group, String name, String key) {
        YamlNode.Entry entry = group.entries().get(key);
        if (entry == null) {
            return Optional.empty();
        }
        if (entry.node() instanceof YamlNode.Scalar value) {
            return value.text().isEmpty() ? Optional.empty() : Optional.of(value.text());
        }
        throw InputProblem.in(file)
                .row(entry.keyLine())
                .column(name + "." + key)
                .expected("a single value")
                .found(entry.node().kind())
                .problem();
    }

    private static double number(
            String file, YamlNode.Entry item, String name, String key, Optional<String> text, double otherwise) {
        if (text.isEmpty()) {
            return otherwise;
        }
        try {
            double value = Double.parseDouble(text.get());
            if (Double.isFinite(value)) {
                return value;
            }
        } catch (NumberFormatException e) {
            throw notNumber(file, item, name, key, text.get()).causedBy(e);
        }
        throw notNumber(file, item, name, key, text.get()).problem();
    }

    private static InputProblem.Builder notNumber(
            String file, YamlNode.Entry item, String name, String key, String text) {
        return InputProblem.in(file)
                .row(item.keyLine())
                .column(name + "." + key)
                .value(text)
                .expected("a number");
    }

    private static void allowOnly(String file, YamlNode.Mapping group, String prefix, List<String> known) {
        group.entries().forEach((key, entry) -> {
            if (!known.contains(key)) {
                throw InputProblem.in(file)
                        .row(entry.keyLine())
                        .column(prefix + key)
                        .expected("a known key")
                        .found("one that is none")
                        .advice(Spelling.nearest(key, known)
                                .map(word -> "Did you mean '" + word + "'?")
                                .orElse("Known are: " + String.join(", ", known) + "."))
                        .problem();
            }
        });
    }

    private static List<String> names() {
        return Arrays.stream(Quantity.values()).map(ChannelMapFile::name).toList();
    }

    private static String name(Quantity quantity) {
        return quantity.name().toLowerCase(Locale.ROOT);
    }

    private static String oneLine(String text) {
        return text.replaceAll("\\p{Cntrl}+", " ");
    }

    private static String quoted(String text) {
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }
}
