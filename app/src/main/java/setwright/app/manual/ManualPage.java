package setwright.app.manual;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Help.ColorScheme;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.Model.UsageMessageSpec;

/**
 * The page of one command.
 *
 * @param name  of the page, as {@code man} is asked for it, such as {@code setwright-trial-judge}
 * @param text  in the macros of man(7)
 */
public record ManualPage(String name, String text) {
    private static final String EXAMPLE = "  ";

    /** Returns the pages of a program and of all its commands, the program's first. */
    public static List<ManualPage> of(CommandLine program) {
        List<ManualPage> pages = new ArrayList<>();
        add(program, pages);
        return List.copyOf(pages);
    }

    private static void add(CommandLine command, List<ManualPage> pages) {
        if (command.getCommandSpec().usageMessage().hidden()) {
            return;
        }
        pages.add(page(command.getCommandSpec()));
        command.getSubcommands().values().forEach(below -> add(below, pages));
    }

    private static ManualPage page(CommandSpec spec) {
        UsageMessageSpec usage = spec.usageMessage();
        String name = name(spec);
        List<String> description = Stream.of(usage.description())
                .filter(line -> !line.isBlank())
                .map(ManualPage::plain)
                .toList();
        Roff page = new Roff().title(name.toUpperCase(Locale.ROOT), version(spec));
        page.section("NAME").line(name + " - " + description.get(0));
        page.section("SYNOPSIS").line(synopsis(spec));
        page.section("DESCRIPTION");
        for (String paragraph : description) {
            page.paragraph().line(paragraph);
        }
        arguments(page, "PARAMETERS", spec.positionalParameters());
        arguments(page, "OPTIONS", spec.options());
        commands(page, spec);
        exitCodes(page, spec.root().usageMessage().exitCodeList());
        examples(page, usage.footer());
        related(page, spec);
        return new ManualPage(name, page.toString());
    }

    private static String name(CommandSpec spec) {
        return spec.qualifiedName("-");
    }

    private static String version(CommandSpec spec) {
        return String.join(" ", spec.root().version());
    }

    /** The same words as the usage help's, on one line that {@code man} breaks. */
    private static String synopsis(CommandSpec spec) {
        ColorScheme plain = CommandLine.Help.defaultColorScheme(Ansi.OFF);
        return new CommandLine.Help(spec, plain).synopsis(0).strip().replaceAll("\\s+", " ");
    }

    private static void arguments(Roff page, String heading, Collection<? extends ArgSpec> arguments) {
        List<? extends ArgSpec> shown =
                arguments.stream().filter(argument -> !argument.hidden()).toList();
        if (shown.isEmpty()) {
            return;
        }
        page.section(heading);
        for (ArgSpec argument : shown) {
            page.tagged(
                    tag(argument),
                    Arrays.stream(argument.description()).map(ManualPage::plain).toList());
        }
    }

    private static String tag(ArgSpec argument) {
        if (argument instanceof OptionSpec option) {
            String names = String.join(", ", option.names());
            return option.arity().max() == 0 ? names : names + " " + option.paramLabel();
        }
        return ((PositionalParamSpec) argument).paramLabel();
    }

    private static void commands(Roff page, CommandSpec spec) {
        if (spec.subcommands().isEmpty()) {
            return;
        }
        page.section("COMMANDS");
        for (CommandLine below : spec.subcommands().values()) {
            CommandSpec command = below.getCommandSpec();
            page.tagged(
                    name(command) + "(1)", List.of(plain(command.usageMessage().description()[0])));
        }
    }

    private static void exitCodes(Roff page, Map<String, String> codes) {
        page.section("EXIT STATUS");
        codes.forEach((code, meaning) -> page.tagged(code, List.of(meaning)));
    }

    /** Indented lines of the footer are examples; the others are sentences that stand below them. */
    private static void examples(Roff page, String[] footer) {
        page.section("EXAMPLES")
                .asTheyStand(Arrays.stream(footer)
                        .filter(line -> line.startsWith(EXAMPLE))
                        .map(String::strip)
                        .toList());
        List<String> sentences = Arrays.stream(footer)
                .filter(line -> !line.startsWith(EXAMPLE) && !line.isBlank())
                .toList();
        if (!sentences.isEmpty()) {
            page.section("CAUTION");
            sentences.forEach(page::line);
        }
    }

    private static void related(Roff page, CommandSpec spec) {
        CommandSpec above = spec.parent();
        if (above != null) {
            page.section("SEE ALSO").bold(name(above)).line("(1)");
        }
    }

    private static String plain(String words) {
        return Ansi.OFF.string(words).strip();
    }
}
