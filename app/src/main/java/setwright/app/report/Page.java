package setwright.app.report;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import setwright.app.plot.Markup;

/** What every page of the program is made with. */
public final class Page {
    private static final TemplateEngine ENGINE = TemplateEngine.createPrecompiled(ContentType.Html);

    private Page() {}

    /** Returns the document that a template makes of its view. */
    public static String render(String template, Object view) {
        StringOutput output = new StringOutput();
        ENGINE.render(template, view, output);
        return output.toString();
    }

    /** Returns the style sheet. */
    public static Markup style() {
        return resource("report.css");
    }

    /** Returns the script that shows one corner everywhere and opens what is folded for paper; pages work without it. */
    public static Markup script() {
        return resource("report.js");
    }

    /** Returns a file that lies beside this class. */
    public static Markup resource(String name) {
        try (InputStream in = Page.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its file " + name);
            }
            return new Markup(new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
