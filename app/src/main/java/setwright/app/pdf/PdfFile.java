package setwright.app.pdf;

import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Objects;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Turns pages into PDF files. */
public final class PdfFile {
    /** The family that pages name in their style. */
    public static final String FONT = "Sheet";

    private static final String FONT_FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

    private PdfFile() {}

    /**
     * Returns the PDF of a page.
     *
     * @param page  well-formed XHTML
     * @throws IOException when the page cannot be laid out
     */
    public static byte[] of(String page) throws IOException {
        XRLog.setLoggingEnabled(false);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.useSVGDrawer(new BatikSVGDrawer());
        builder.useFont(PdfFile::font, FONT);
        builder.withHtmlContent(page, null);
        builder.toStream(out);
        builder.run();
        return out.toByteArray();
    }

    /** Holds Latin, Greek and Cyrillic letters; the fonts that every PDF reader has hold less. */
    private static InputStream font() {
        return Objects.requireNonNull(
                PDDocument.class.getResourceAsStream(FONT_FILE), "the PDF library comes with a font");
    }
}
