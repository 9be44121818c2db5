package setwright.app.text;

/** One sentence as lines of text, without what a name could do to a terminal. */
public final class Sentence {
    private Sentence() {}

    /** Returns the text, ending with a line break. */
    public static String write(String words, Terminal terminal) {
        TextLines lines = new TextLines(terminal);
        Wrap.lines(words, terminal.width()).forEach(line -> lines.plain(line));
        return lines.text();
    }
}
