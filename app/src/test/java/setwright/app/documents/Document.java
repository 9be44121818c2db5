package setwright.app.documents;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A page of {@code docs} with commands to type and, below them, words of their answers.
 *
 * @param steps  in the order of the page
 */
public record Document(List<Step> steps) {
    private static final Pattern BLOCK = Pattern.compile("(?ms)^```(sh|text)\\n(.*?)^```$");

    /**
     * A block of commands.
     *
     * @param commands  as the page shows them
     * @param answers   lines of the blocks of text that follow, each to be found in the answer
     */
    public record Step(String commands, List<String> answers) {}

    /** Reads a page, such as {@code tutorial.md}; tests run in the folder of their module. */
    public static Document read(String name) throws IOException {
        Matcher block = BLOCK.matcher(Files.readString(Path.of("..", "docs", name)));
        List<Step> steps = new ArrayList<>();
        while (block.find()) {
            if (block.group(1).equals("sh")) {
                steps.add(new Step(block.group(2), new ArrayList<>()));
            } else {
                steps.get(steps.size() - 1)
                        .answers()
                        .addAll(block.group(2).lines().toList());
            }
        }
        return new Document(List.copyOf(steps));
    }
}
