package setwright.app.scoreboard;

import java.nio.file.Path;

/** Where things lie in the project's folder. Tests run in the folder of their module, {@code ./scoreboard} says where. */
public final class Home {
    private Home() {}

    /** The folder of the project. */
    public static Path folder() {
        String given = System.getProperty("setwright.home");
        return given != null ? Path.of(given) : Path.of("").toAbsolutePath().getParent();
    }

    /** The packaged practice cases. */
    public static Path cases() {
        return folder().resolve("intake/src/test/resources/cases");
    }

    static Path floor() {
        return folder().resolve("docs/accuracy.json");
    }

    /** The page about accuracy. */
    public static Path page() {
        return folder().resolve("docs/accuracy.md");
    }
}
