package setwright.app.text;

import java.util.List;
import setwright.app.demo.DemoStory;
import setwright.app.story.DemoWords;
import setwright.app.units.Figures;

/** The demo's story as lines of text. */
public final class DemoText {
    private DemoText() {}

    /** Returns the text, ending with a line break. */
    public static String write(DemoStory story, Figures figures, Terminal terminal) {
        TextLines lines = new TextLines(terminal);
        lines.faint(story.car() + ", at " + story.circuit() + "; an invented car at an invented circuit");
        List<DemoWords.Act> acts = DemoWords.acts(story, figures);
        for (int i = 0; i < acts.size(); i++) {
            lines.gap();
            lines.wide((i + 1) + "  " + acts.get(i).title());
            acts.get(i).sentences().forEach(sentence -> lines.paragraph("", sentence));
        }
        return lines.text();
    }
}
