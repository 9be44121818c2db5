package setwright.intake.track;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import setwright.intake.problem.InputProblem;
import setwright.intake.table.Table;
import setwright.intake.table.TableFormat;

/**
 * Tracks in GPX 1.0 and 1.1: all points that tell their time, of all tracks, in the file's order.
 *
 * <p>Read as a stream, so that a long track needs no tree in memory, and without document types, which no track needs.
 */
public final class GpxFormat implements TableFormat {
    private static final int LONGEST_TEXT = 64;
    private static final Pattern ENCODING =
            Pattern.compile("^[^<]{0,3}<\\?xml[^>]*encoding=[\"']([A-Za-z0-9._-]+)[\"']");

    @Override
    public String words() {
        return "a GPX track";
    }

    @Override
    public boolean recognises(byte[] head) {
        // Latin 1 shows the element also in UTF-16, with zeros between.
        String text = new String(head, StandardCharsets.ISO_8859_1).replace("\0", "");
        return text.contains("<") && text.matches("(?s)[^<]{0,8}<.*") && text.matches("(?s).*<(\\w+:)?gpx[\\s>].*");
    }

    @Override
    public List<Table> read(Path file) {
        String name = String.valueOf(file.getFileName());
        Fixes fixes = new Fixes(name, "track points");
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        try (InputStream in = new BufferedInputStream(Files.newInputStream(file), 1 << 16)) {
            XMLStreamReader reader = factory.createXMLStreamReader(new InputStreamReader(in, charset(in)));
            while (reader.hasNext()) {
                if (reader.next() == XMLStreamConstants.START_ELEMENT
                        && reader.getLocalName().equals("trkpt")) {
                    point(name, reader, fixes);
                }
            }
            return List.of(fixes.table());
        } catch (XMLStreamException e) {
            throw InputProblem.in(name)
                    .row(e.getLocation() == null ? 0 : e.getLocation().getLineNumber())
                    .expected("a whole GPX track")
                    .found("XML that breaks off or is not well formed")
                    .advice("Export the track again.")
                    .causedBy(e);
        } catch (IOException e) {
            throw InputProblem.in(name)
                    .expected("a file that can be read")
                    .found(e.getClass().getSimpleName())
                    .advice("Check the disk.")
                    .causedBy(e);
        }
    }

    /** Decoded here, where a letter that is none is no end of the file; the parser would print it and give up. */
    private static Charset charset(InputStream in) throws IOException {
        in.mark(HEAD_BYTES);
        byte[] head = in.readNBytes(HEAD_BYTES);
        in.reset();
        String latin = new String(head, StandardCharsets.ISO_8859_1);
        if (latin.startsWith("\u00EF\u00BB\u00BF")) {
            in.skipNBytes(3);
            return StandardCharsets.UTF_8;
        }
        if (latin.startsWith("\u00FE\u00FF") || latin.startsWith("\u00FF\u00FE")) {
            return StandardCharsets.UTF_16;
        }
        if (latin.startsWith("\0<") || latin.startsWith("<\0")) {
            return latin.startsWith("<") ? StandardCharsets.UTF_16LE : StandardCharsets.UTF_16BE;
        }
        Matcher declared = ENCODING.matcher(latin);
        return declared.find() && Charset.isSupported(declared.group(1))
                ? Charset.forName(declared.group(1))
                : StandardCharsets.UTF_8;
    }

    private static void point(String name, XMLStreamReader reader, Fixes fixes) throws XMLStreamException {
        double latitude = degrees(name, reader, "lat", 90.0);
        double longitude = degrees(name, reader, "lon", 180.0);
        Fix fix = Fix.at(Double.NaN).in(latitude, longitude);
        int depth = 1;
        while (depth > 0) {
            int event = reader.next();
            if (event == XMLStreamConstants.END_ELEMENT) {
                depth--;
            } else if (event == XMLStreamConstants.START_ELEMENT) {
                String element = reader.getLocalName();
                switch (element) {
                    case "time" -> {
                        double at = seconds(name, reader);
                        fix = new Fix(at, fix.latitudeDeg(), fix.longitudeDeg(), fix.speedMps(), fix.altitudeM());
                    }
                    case "ele" -> fix = fix.above(number(name, reader, element));
                    case "speed" -> fix = fix.going(number(name, reader, element));
                    default -> depth++;
                }
            }
        }
        if (Double.isFinite(fix.timeS())) {
            fixes.add(fix);
        }
    }

    private static double degrees(String name, XMLStreamReader reader, String attribute, double most) {
        String text = reader.getAttributeValue(null, attribute);
        try {
            double value = Double.parseDouble(String.valueOf(text));
            if (Math.abs(value) <= most) {
                return value;
            }
        } catch (NumberFormatException e) {
            // told below, with the same words
        }
        throw bad(name, reader, attribute, String.valueOf(text), "degrees between -" + most + " and " + most);
    }

    private static double number(String name, XMLStreamReader reader, String element) throws XMLStreamException {
        String text = text(reader);
        try {
            double value = Double.parseDouble(text);
            if (Double.isFinite(value)) {
                return value;
            }
        } catch (NumberFormatException e) {
            // told below, with the same words
        }
        throw bad(name, reader, element, text, "a number");
    }

    private static double seconds(String name, XMLStreamReader reader) throws XMLStreamException {
        String text = text(reader);
        try {
            // A time without a zone is UTC (GPX 1.1 schema, element time).
            boolean zoned = text.matches(".*(Z|z|[+-]\\d\\d:?\\d\\d)$");
            OffsetDateTime at = OffsetDateTime.parse(zoned ? text : text + "Z");
            return at.toEpochSecond() + at.getNano() * 1.0e-9;
        } catch (DateTimeException e) {
            throw bad(name, reader, "time", text, "a moment such as 2031-05-04T09:30:00.25Z");
        }
    }

    /** Returns the text of the element that was just begun, and goes to its end; what is too long to be a figure is cut. */
    private static String text(XMLStreamReader reader) throws XMLStreamException {
        StringBuilder text = new StringBuilder();
        int depth = 1;
        while (depth > 0) {
            switch (reader.next()) {
                case XMLStreamConstants.START_ELEMENT -> depth++;
                case XMLStreamConstants.END_ELEMENT -> depth--;
                case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA -> {
                    if (text.length() < LONGEST_TEXT) {
                        text.append(reader.getText());
                    }
                }
                default -> {
                    // comments and the like say nothing
                }
            }
        }
        return text.toString().strip();
    }

    private static InputProblem bad(String name, XMLStreamReader reader, String where, String value, String expected) {
        return InputProblem.in(name)
                .row(reader.getLocation().getLineNumber())
                .column(where)
                .value(value)
                .expected(expected)
                .advice("Export the track again.")
                .problem();
    }
}
