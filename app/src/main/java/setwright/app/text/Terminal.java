package setwright.app.text;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import picocli.CommandLine.Help;

/**
 * What a stream can show.
 *
 * @param width  characters in a line
 * @param paint  whether colour is wanted
 */
public record Terminal(int width, Paint paint) {
    /** Where no terminal tells its width: fits a mail and half a screen. */
    public static final int USUAL_WIDTH = 80;

    private static final int NARROWEST = 40;
    /** Longer lines are hard to read. */
    private static final int WIDEST = 110;

    public Terminal {
        width = Math.max(NARROWEST, Math.min(WIDEST, width));
    }

    /**
     * Returns what standard output can show.
     *
     * @param environment    of the process: NO_COLOR (any text: no colour), TERM, COLUMNS
     * @param isTerminal     whether it is a terminal at all
     * @param measuredWidth  of the terminal, in characters
     */
    public static Terminal of(Map<String, String> environment, boolean isTerminal, int measuredWidth) {
        boolean colour = isTerminal
                && environment.getOrDefault("NO_COLOR", "").isEmpty()
                && !environment.getOrDefault("TERM", "").equals("dumb");
        String columns = environment.getOrDefault("COLUMNS", "");
        int width =
                columns.matches("[0-9]{1,4}") ? Integer.parseInt(columns) : isTerminal ? measuredWidth : USUAL_WIDTH;
        return new Terminal(width, colour ? Paint.COLOURED : Paint.PLAIN);
    }

    /** Tells whether the process's standard output (1) or error (2) is a terminal. */
    public static boolean isTerminal(int descriptor) {
        Path link = Path.of("/proc/self/fd/" + descriptor);
        if (Files.isSymbolicLink(link)) {
            try {
                String target = Files.readSymbolicLink(link).toString();
                return target.startsWith("/dev/pts/") || target.startsWith("/dev/tty") || target.equals("/dev/console");
            } catch (IOException e) {
                return false;
            }
        }
        return Help.Ansi.AUTO.enabled(); // elsewhere the best guess that does not depend on the Java version
    }
}
