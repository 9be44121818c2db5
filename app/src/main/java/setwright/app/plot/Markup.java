package setwright.app.plot;

import gg.jte.Content;
import gg.jte.TemplateOutput;

/**
 * Finished markup, safe to be put into a page as it is.
 *
 * @param text  the markup
 */
public record Markup(String text) implements Content {
    @Override
    public void writeTo(TemplateOutput output) {
        output.writeContent(text);
    }

    @Override
    public boolean isEmptyContent() {
        return text.isEmpty();
    }
}
