package setwright.app.report.drawings;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import setwright.app.report.Page;

/**
 * The style sheet of stand-alone drawings: what the report's sheet says of drawings, on white paper, without variables, which
 * programs other than browsers do not know.
 */
final class PlotStyle {
    /** Classes and elements that drawings have. */
    private static final Set<String> DRAWN = Set.of(
            ("path text rect circle line svg g plot grid zero tick middle end dot hollow beyond map track start arrow halo stretch out"
                            + " panel band typical best own fill push slide phase braking entry mid exit gesture let-go even pale slide1"
                            + " slide2 slide3 push1 push2 push3 bar notch lets-go front rear interval axle-curve axle-point last"
                            + " corner-number points1 points2 points3 curve1 curve2 curve3")
                    .split(" ", -1));

    /** Properties that SVG knows. */
    private static final Pattern PROPERTY = Pattern.compile(
            "(fill|stroke|stroke-[a-z]+|opacity|fill-opacity|font-size|font-weight|text-anchor|vector-effect|paint-order|overflow)");

    private static final Pattern RULE = Pattern.compile("([^{}]+)\\{([^{}]*)}");
    private static final Pattern VARIABLE = Pattern.compile("(--[a-z0-9-]+):\\s*([^;]+);");
    private static final Pattern USE = Pattern.compile("var\\((--[a-z0-9-]+)\\)");
    private static final Pattern REM = Pattern.compile("([0-9]*\\.?[0-9]+)rem");
    private static final Pattern BLOCK = Pattern.compile("@[^{};]+\\{(?:[^{}]*\\{[^{}]*}\\s*)*[^{}]*}");
    private static final Pattern COMMENT = Pattern.compile("/\\*.*?\\*/", Pattern.DOTALL);
    private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9-]*");
    /** The report's own, px. */
    private static final double LETTER = 16.0;

    private static final String OWN = """
            svg { font-family: system-ui, "Liberation Sans", Arial, sans-serif; font-size: 16px; color: var(--ink); }
            .paper { fill: var(--page); }
            .heading { font-size: 18px; font-weight: 600; fill: var(--ink); }
            .note, .caption { font-size: 13px; fill: var(--muted); }
            .strong { font-size: 13px; font-weight: 600; fill: var(--ink); }
            .box { fill: none; stroke: var(--line); }
            .label { font-size: 13px; font-weight: 600; }
            .key { stroke-width: 3; }
            .bar path { fill: var(--ink); }
            """;

    private static final String SHEET = of(Page.style().text());

    private PlotStyle() {}

    /** Returns the style sheet. */
    static String sheet() {
        return SHEET;
    }

    private static String of(String report) {
        Map<String, String> colours = new LinkedHashMap<>();
        String bare = BLOCK.matcher(COMMENT.matcher(report).replaceAll("")).replaceAll("");
        Matcher variables = VARIABLE.matcher(bare);
        while (variables.find()) {
            colours.putIfAbsent(variables.group(1), variables.group(2).strip());
        }
        colours.put("--page", "#ffffff");
        StringBuilder sheet = new StringBuilder();
        Matcher rules = RULE.matcher(bare);
        while (rules.find()) {
            List<String> selectors = drawn(rules.group(1));
            if (!selectors.isEmpty()) {
                rule(sheet, selectors, rules.group(2));
            }
        }
        return plain("\n" + OWN + sheet, colours);
    }

    private static List<String> drawn(String selectors) {
        List<String> kept = new ArrayList<>();
        for (String selector : selectors.strip().split("\\s*,\\s*", -1)) {
            boolean simple = selector.matches("[a-z0-9. >-]+") && selector.contains(".");
            if (simple && NAME.matcher(selector).results().allMatch(name -> DRAWN.contains(name.group()))) {
                kept.add(selector);
            }
        }
        return kept;
    }

    private static void rule(StringBuilder sheet, List<String> selectors, String declarations) {
        List<String> kept = new ArrayList<>();
        for (String declaration : declarations.split(";", -1)) {
            int colon = declaration.indexOf(':');
            if (colon < 0) {
                continue;
            }
            String property = declaration.substring(0, colon).strip();
            String value = declaration.substring(colon + 1).strip();
            if (property.equals("background") && !value.contains("gradient")) {
                kept.add("fill: " + value);
            } else if (property.equals("color")) {
                sheet.append("text").append(String.join(", text", selectors));
                sheet.append(" { fill: ").append(value).append("; stroke: none; }\n");
            } else if (PROPERTY.matcher(property).matches()) {
                kept.add(property + ": " + value);
            }
        }
        if (!kept.isEmpty()) {
            sheet.append(String.join(", ", selectors)).append(" { ");
            sheet.append(String.join("; ", kept)).append("; }\n");
        }
    }

    private static String plain(String sheet, Map<String, String> colours) {
        String coloured = USE.matcher(sheet).replaceAll(use -> {
            String colour = colours.get(use.group(1));
            if (colour == null) {
                throw new IllegalStateException("the report's style sheet has no " + use.group(1));
            }
            return Matcher.quoteReplacement(colour);
        });
        return REM.matcher(coloured)
                .replaceAll(rem -> String.format(Locale.ROOT, "%.1fpx", LETTER * Double.parseDouble(rem.group(1))))
                .replace("transparent", "none");
    }
}
