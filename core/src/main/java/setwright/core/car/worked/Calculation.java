package setwright.core.car.worked;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A sum, ready to be shown.
 *
 * @param name      short, as on the command line
 * @param title     what is worked out
 * @param inputs    what went in
 * @param results   what came out, each worked out from the inputs and the results before it
 * @param findings  what the results mean, a sentence each
 * @param notes     what is assumed or left out, a sentence each
 * @param source    where the formulas come from
 * @param caution   where a wrong value can hurt someone
 */
public record Calculation(
        String name,
        String title,
        List<Input> inputs,
        List<Result> results,
        List<String> findings,
        List<String> notes,
        String source,
        Optional<String> caution) {
    private static final Pattern LETTER = Pattern.compile("\\{([^}]+)}");

    public Calculation {
        inputs = List.copyOf(inputs);
        results = List.copyOf(results);
        findings = List.copyOf(findings);
        notes = List.copyOf(notes);
        Map<String, Quantity> known = new LinkedHashMap<>();
        Stream.concat(inputs.stream(), results.stream()).forEach(quantity -> {
            if (known.put(quantity.symbol(), quantity) != null) {
                throw new IllegalArgumentException("two quantities are called " + quantity.symbol());
            }
        });
        for (Result result : results) {
            LETTER.matcher(result.formula()).results().forEach(letter -> {
                if (!known.containsKey(letter.group(1))) {
                    throw new IllegalArgumentException(result.symbol() + " uses an unknown letter " + letter.group(1));
                }
            });
        }
    }

    /** Starts a sum. */
    static Steps named(String name, String title) {
        return new Steps(name, title);
    }

    /** Returns the formula of one of the results in letters. */
    public String inLetters(Result result) {
        return with(result, Quantity::symbol);
    }

    /** Returns the formula of one of the results with each letter replaced. */
    public String with(Result result, Function<Quantity, String> replacement) {
        Matcher letters = LETTER.matcher(result.formula());
        return letters.replaceAll(letter -> Matcher.quoteReplacement(replacement.apply(quantity(letter.group(1)))));
    }

    private Quantity quantity(String symbol) {
        return Stream.concat(inputs.stream(), results.stream())
                .filter(quantity -> quantity.symbol().equals(symbol))
                .findFirst()
                .orElseThrow();
    }

    /** Returns the result with this letter. */
    public Optional<Result> result(String symbol) {
        return results.stream().filter(result -> result.symbol().equals(symbol)).findFirst();
    }

    /** Collects a sum step by step. */
    static final class Steps {
        private final String name;
        private final String title;
        private final List<Input> inputs = new ArrayList<>();
        private final List<Result> results = new ArrayList<>();
        private final List<String> findings = new ArrayList<>();
        private final List<String> notes = new ArrayList<>();
        private Optional<String> caution = Optional.empty();

        private Steps(String name, String title) {
            this.name = name;
            this.title = title;
        }

        Steps from(Input... given) {
            inputs.addAll(List.of(given));
            return this;
        }

        Steps from(List<Input> given) {
            inputs.addAll(given);
            return this;
        }

        Steps from(Optional<Input> given) {
            given.ifPresent(inputs::add);
            return this;
        }

        /** Adds a result given in SI units and returns it. */
        Result result(String symbol, String words, double si, Unit unit, String formula) {
            Result result = new Result(symbol, words, unit.shown(si), unit, formula);
            results.add(result);
            return result;
        }

        Steps finding(String sentence) {
            findings.add(sentence);
            return this;
        }

        Steps note(String sentence) {
            notes.add(sentence);
            return this;
        }

        Steps caution(String sentence) {
            caution = Optional.of(sentence);
            return this;
        }

        Calculation source(String source) {
            return new Calculation(name, title, inputs, results, findings, notes, source, caution);
        }
    }
}
