package setwright.app;

import static java.util.stream.Collectors.toCollection;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Rules that only the sources show, for all modules: the last module looks after the ones before it. */
final class SourceRulesTest {

    /** Tests run in the folder of their module. */
    private static final Path ROOT = Path.of("").toAbsolutePath().getParent();

    private static final List<String> MODULES = List.of("core", "intake", "logbook", "app", "fleet", "benchmarks");

    /** Twice the usual length of a file; beyond it, a file holds more than one concept. */
    private static final int LONGEST_FILE_LINES = 500;

    @Test
    void everyPackageSaysWhatItIsForAndIsCheckedForNulls() {
        assertThat(mainFolders().filter(SourceRulesTest::holdsJava).map(folder -> folder.resolve("package-info.java")))
                .isNotEmpty()
                .allSatisfy(file -> assertThat(file).exists().content().contains("/**", "@NullMarked"));
    }

    @Test
    void noTruthFileIsKnownToTheProgram() {
        assertThat(filesWithout(Pattern.compile("truth\\.json", Pattern.CASE_INSENSITIVE)
                        .asPredicate()))
                .as("answers to practice cases are for the scoreboard's eyes only")
                .isEmpty();
    }

    @Test
    void noSourceNamesTheMachineItWasWrittenOn() {
        assertThat(filesWithout(Pattern.compile("\"/(work|tmp|home|root)/").asPredicate()))
                .isEmpty();
    }

    @Test
    void filesStayShort() {
        assertThat(filesWithout(text -> text.lines().count() > LONGEST_FILE_LINES))
                .isEmpty();
    }

    private static TreeSet<Path> filesWithout(Predicate<String> fault) {
        return mainFolders()
                .flatMap(folder -> list(folder).filter(Files::isRegularFile))
                .filter(file -> isText(file) && fault.test(read(file)))
                .collect(toCollection(TreeSet::new));
    }

    private static Stream<Path> mainFolders() {
        return MODULES.stream()
                .map(module -> ROOT.resolve(module).resolve("src/main"))
                .filter(Files::isDirectory)
                .flatMap(SourceRulesTest::walk)
                .filter(Files::isDirectory);
    }

    private static boolean holdsJava(Path folder) {
        return list(folder).anyMatch(file -> file.toString().endsWith(".java"));
    }

    private static boolean isText(Path file) {
        return Pattern.compile("\\.(java|jte|xml|ya?ml|json|js|css|sql|properties|txt|md)$")
                .matcher(file.toString())
                .find();
    }

    private static Stream<Path> list(Path folder) {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Stream<Path> walk(Path folder) {
        try (Stream<Path> entries = Files.walk(folder)) {
            return entries.toList().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
