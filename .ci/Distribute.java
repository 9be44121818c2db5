import java.io.File;
import java.io.IOException;
import java.lang.module.ModuleFinder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.jar.JarFile;
import java.util.stream.Stream;

/**
 * Makes the program into an image with its own Java, for the platform that this runs on: {@code target/distribution}.
 *
 * <p>Run from the project's folder by ./distribute or distribute.cmd, as {@code java .ci/Distribute.java}. With --built it
 * takes what Maven has built with -Pdistribution. Needs jlink and jpackage, which the JDK that runs this has or has not.
 */
final class Distribute {
    /** As in ./setwright. */
    private static final List<String> JAVA_OPTIONS = List.of(
            "-Xlog:disable", "-Xshare:auto", "-XX:+UseSerialGC", "-XX:MaxRAMPercentage=50", "-Dfile.encoding=UTF-8",
            "-Duser.language=en");

    /** What else ./setwright sees to: names of files that are not plain ASCII, and the first compiler alone for a diagnosis. */
    private static final String LINUX_SCRIPT = """
            #!/bin/sh
            # Starts Setwright with the Java that lies beside it; may be started through a link.
            home=$(dirname "$(readlink -f "$0")")/..
            case ${LC_ALL:-${LC_CTYPE:-${LANG:-}}} in
                *UTF-8* | *utf8*) ;;
                *) export LC_ALL=C.UTF-8 ;;
            esac
            program=setwright
            [ "${1:-}" != diagnose ] || program=setwright-diagnose
            exec "$home/libexec/$program" "$@"
            """;

    /** The first Java whose archive of the program's classes still holds after the image was moved (JDK-8279366). */
    private static final int MOVABLE_ARCHIVE = 19;

    /** What is reached by name at run time, where jdeps cannot see it. */
    private static final List<String> MODULES_BY_NAME = List.of(
            "java.logging", // PDF writer, PostgreSQL's driver
            "jdk.crypto.ec", // a team's PostgreSQL over TLS
            "jdk.unsupported", // locks and buffers of libraries
            "jdk.zipfs"); // libraries that look into their own jars

    private final Path home = Path.of("").toAbsolutePath();
    private final Path jdk = Path.of(System.getProperty("java.home"));
    private final Path target = home.resolve("target/distribution");
    private final Path work = target.resolve("work");
    private final Platform platform = Platform.here();

    public static void main(String[] arguments) throws Exception {
        List<String> words = List.of(arguments);
        if (!List.of("--built").containsAll(words)) {
            System.err.println("Makes target/distribution/setwright-VERSION-PLATFORM, the program with its own Java.\n"
                    + "  --built  takes what Maven has built with -Pdistribution");
            System.exit(words.contains("--help") ? 0 : 2);
        }
        try {
            new Distribute().make(words.contains("--built"));
        } catch (Failed e) {
            System.err.println("distribute: " + e.getMessage());
            System.exit(1);
        }
    }

    private void make(boolean built) throws Exception {
        if (!Files.isRegularFile(home.resolve(".ci/Distribute.java"))) {
            throw new Failed("run it from the project's folder");
        }
        for (String tool : List.of("jdeps", "jlink", "jpackage")) {
            if (!Files.isExecutable(tool(tool))) {
                throw new Failed("this JDK has no " + tool + ": set JAVA_HOME to one that has");
            }
        }
        remove(target);
        Files.createDirectories(work);
        if (!built) {
            say("building");
            run(List.of(
                    platform.command("mvn"), "-B", "-q", "-ntp", "-Pdistribution", "-Dsetwright.program-only",
                    "-Dmaven.test.skip=true", "package"));
        }
        Path jar = home.resolve("app/target/setwright.jar");
        Path bill = home.resolve("app/target/bom.xml");
        if (!Files.exists(jar) || !Files.exists(bill)) {
            throw new Failed("there is no app/target/setwright.jar with its bill of materials: leave out --built");
        }
        String version = version(jar);
        Path libraries = home.resolve("app/target/lib");
        Path notices = work.resolve("THIRD-PARTY.md");
        say("checking licences");
        run(List.of(tool("java").toString(), ".ci/Notices.java", bill.toString(), libraries.toString(),
                notices.toString()));
        say("gathering what " + platform.name() + " needs");
        Path input = Files.createDirectories(work.resolve("input"));
        Files.copy(jar, input.resolve(jar.getFileName()));
        run(List.of(tool("java").toString(), ".ci/Slim.java", libraries.toString(), input.resolve("lib").toString()));
        Path runtime = runtime(jar, libraries);
        Path image = image(version, input, runtime);
        if (platform.isLinux()) {
            script(image);
        }
        furnish(image, bill, notices);
        if (Runtime.version().feature() >= MOVABLE_ARCHIVE) {
            keepClasses(image);
        }
        archive(image);
        say("done: " + home.relativize(image) + ", " + megabytes(image) + " MB unpacked");
    }

    /** A Java of the modules that the program uses, with its class data archive. */
    private Path runtime(Path jar, Path libraries) throws Exception {
        String classPath = String.join(File.pathSeparator, list(libraries).stream().map(Path::toString).toList());
        String found = run(List.of(
                tool("jdeps").toString(), "--ignore-missing-deps", "--print-module-deps", "--recursive",
                "--multi-release", String.valueOf(Runtime.version().feature()), "--class-path", classPath,
                jar.toString()));
        TreeSet<String> modules = new TreeSet<>(MODULES_BY_NAME);
        modules.addAll(List.of(found.lines().reduce("", (before, line) -> line).split(",")));
        modules.removeIf(name -> ModuleFinder.ofSystem().find(name).isEmpty());
        Path runtime = work.resolve("runtime");
        say("linking a Java of " + modules.size() + " modules");
        run(List.of(
                tool("jlink").toString(), "--add-modules", String.join(",", modules), "--strip-java-debug-attributes", "--no-man-pages",
                "--no-header-files", "--generate-cds-archive", "--output", runtime.toString()));
        return runtime;
    }

    private Path image(String version, Path input, Path runtime) throws Exception {
        say("making the image");
        List<String> words = new ArrayList<>(List.of(
                tool("jpackage").toString(), "--type", "app-image", "--name", "setwright", "--app-version",
                platform.acceptable(version), "--input", input.toString(), "--main-jar", "setwright.jar",
                "--runtime-image", runtime.toString(), "--dest", work.toString()));
        if (platform.isWindows()) {
            words.add("--win-console");
        }
        List<String> options = new ArrayList<>(JAVA_OPTIONS);
        if (Runtime.version().feature() >= 22) { // DuckDB, SQLite and the terminal are native
            options.add("--enable-native-access=ALL-UNNAMED");
        }
        for (String option : options) {
            words.addAll(List.of("--java-options", option));
        }
        run(words);
        Path image = target.resolve("setwright-" + version + "-" + platform.name());
        if (platform.isMac()) {
            Files.createDirectories(image);
            Files.move(work.resolve("setwright.app"), image.resolve("setwright.app"));
        } else {
            Files.move(work.resolve("setwright"), image);
        }
        return image;
    }

    private void script(Path image) throws IOException {
        Path programs = Files.createDirectories(image.resolve("libexec"));
        Path program = programs.resolve("setwright");
        Files.move(image.resolve("bin/setwright"), program);
        Files.copy(program, programs.resolve("setwright-diagnose"), StandardCopyOption.COPY_ATTRIBUTES);
        Path options = image.resolve(platform.options());
        Files.writeString(
                options.resolveSibling("setwright-diagnose.cfg"),
                Files.readString(options) + "java-options=-XX:TieredStopAtLevel=1\njava-options=-XX:Tier3BackEdgeThreshold=3000\n");
        Path script = Files.writeString(image.resolve("bin/setwright"), LINUX_SCRIPT);
        Files.setPosixFilePermissions(script, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    /** Writes down the classes of a diagnosis as they lie in memory, so that they need not be read one by one. */
    private void keepClasses(Path image) throws Exception {
        say("keeping loaded classes");
        Path options = image.resolve(platform.options());
        Path classes = options.resolveSibling("setwright.jsa");
        Path example = home.resolve("app/src/test/resources/demo");
        run(List.of(
                        image.resolve(platform.launcher()).toString(), "diagnose",
                        example.resolve("stint.csv.gz").toString(), "--car", example.resolve("car.yaml").toString()),
                target, Map.of("_JAVA_OPTIONS", "-XX:ArchiveClassesAtExit=" + classes));
        for (Path each : list(options.getParent())) {
            if (each.toString().endsWith(".cfg")) {
                Files.writeString(
                        each,
                        Files.readString(each) + "java-options=-XX:SharedArchiveFile=$APPDIR/setwright.jsa\n");
            }
        }
    }

    /** Adds licences, notices, the bill of materials, the manual and the completion script. */
    private void furnish(Path image, Path bill, Path notices) throws Exception {
        Files.copy(home.resolve("LICENSE"), image.resolve("LICENSE"));
        Files.copy(notices, image.resolve("THIRD-PARTY.md"));
        Path share = Files.createDirectories(image.resolve("share"));
        Files.copy(bill, share.resolve("bom.xml"));
        Files.copy(bill.resolveSibling("bom.json"), share.resolve("bom.json"));
        String program = image.resolve(platform.launcher()).toString();
        run(List.of(program, "manual", Files.createDirectories(share.resolve("man")).resolve("man1").toString()));
        Files.writeString(share.resolve("completion.bash"), run(List.of(program, "completion")));
    }

    private void archive(Path image) throws Exception {
        say("packing");
        String name = image.getFileName().toString();
        List<String> how = platform.isWindows() // its tar tells a zip by the name
                ? List.of("tar", "-a", "-cf", name + ".zip")
                : List.of("tar", "-czf", name + ".tar.gz");
        List<String> words = new ArrayList<>(how);
        words.add(name);
        run(words, target, Map.of());
        remove(work);
        say(how.get(2) + ", " + megabytes(target.resolve(how.get(2))) + " MB");
    }

    private static String version(Path jar) throws IOException {
        try (var open = new JarFile(jar.toFile())) {
            return open.getManifest().getMainAttributes().getValue("Implementation-Version");
        }
    }

    private static List<Path> list(Path folder) throws IOException {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.sorted().toList();
        }
    }

    private static void remove(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> walk = Files.walk(folder)) {
                for (Path path : walk.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
    }

    private static long megabytes(Path place) throws IOException {
        try (Stream<Path> walk = Files.walk(place)) {
            return walk.filter(Files::isRegularFile).mapToLong(file -> file.toFile().length()).sum() / 1_000_000;
        }
    }

    private Path tool(String name) {
        return jdk.resolve("bin").resolve(platform.isWindows() ? name + ".exe" : name);
    }

    private String run(List<String> words) throws Exception {
        return run(words, home, Map.of());
    }

    private String run(List<String> words, Path folder, Map<String, String> environment) throws Exception {
        Path messages = work.resolve("messages.txt");
        ProcessBuilder builder =
                new ProcessBuilder(words).directory(folder.toFile()).redirectError(messages.toFile());
        builder.environment().putAll(environment);
        Process process = builder.start();
        process.getOutputStream().close();
        String results = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        int code = process.waitFor();
        if (code != 0) {
            throw new Failed(results + Files.readString(messages) + "\n" + Path.of(words.get(0)).getFileName()
                    + " failed with " + code + ", see above");
        }
        return results;
    }

    private static void say(String words) {
        System.err.println("distribute: " + words);
    }

    /** What is called otherwise on each platform. */
    private record Platform(String system, String machine) {
        static Platform here() {
            String name = System.getProperty("os.name").toLowerCase(Locale.ROOT);
            String machine = System.getProperty("os.arch");
            return new Platform(
                    name.startsWith("windows") ? "windows" : name.startsWith("mac") ? "macos" : "linux",
                    List.of("amd64", "x86_64").contains(machine) ? "x64" : machine.equals("aarch64") ? "arm64" : machine);
        }

        String name() {
            return system + "-" + machine;
        }

        boolean isLinux() {
            return system.equals("linux");
        }

        boolean isWindows() {
            return system.equals("windows");
        }

        boolean isMac() {
            return system.equals("macos");
        }

        String command(String name) {
            return isWindows() ? name + ".cmd" : name;
        }

        String launcher() {
            return isWindows() ? "setwright.exe" : isMac() ? "setwright.app/Contents/MacOS/setwright" : "bin/setwright";
        }

        String options() {
            return (isWindows() ? "app" : isMac() ? "setwright.app/Contents/app" : "lib/app") + "/setwright.cfg";
        }

        /** macOS takes no version that begins with 0. */
        String acceptable(String version) {
            return isMac() && version.startsWith("0.") ? "1" + version.substring(1) : version;
        }
    }

    /** Told in one sentence. */
    private static final class Failed extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Failed(String message) {
            super(message);
        }
    }
}
