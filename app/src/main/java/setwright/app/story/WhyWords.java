package setwright.app.story;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import setwright.app.units.Figures;
import setwright.core.explanation.Alternative;
import setwright.core.explanation.Explainer;
import setwright.core.explanation.Explanation;
import setwright.core.explanation.Reason;
import setwright.core.explanation.VerdictExplainer;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Finding;

/** Why does it say so? The chain of each finding, or of a verdict without one, as short as it can be told. */
final class WhyWords {
    /** What the other links have said already. */
    private static final Set<Reason.Kind> SAID = Set.of(Reason.Kind.TRIGGER);

    private WhyWords() {}

    /** Returns one paragraph for each reason of the first finding and for each thing that it could be else, and one for each further finding. */
    static List<String> tell(Diagnosis diagnosis, Figures figures) {
        List<Finding> findings = diagnosis.findings();
        List<Reason> verdict = VerdictExplainer.explain(diagnosis);
        if (!verdict.isEmpty() || findings.isEmpty()) {
            return Stream.concat(
                            verdict.stream().map(Reason::sentence),
                            findings.stream().map(finding -> inShort(diagnosis, finding, figures)))
                    .toList();
        }
        Explanation first = Explainer.explain(diagnosis, findings.get(0));
        return Stream.of(
                        reasons(first),
                        first.alternatives().stream().map(other -> told(other, figures)),
                        findings.stream().skip(1).map(finding -> inShort(diagnosis, finding, figures)))
                .flatMap(paragraphs -> paragraphs)
                .toList();
    }

    private static Stream<String> reasons(Explanation explanation) {
        return explanation.reasons().stream()
                .filter(reason -> !SAID.contains(reason.kind()))
                .map(Reason::sentence);
    }

    private static String inShort(Diagnosis diagnosis, Finding finding, Figures figures) {
        Explanation explanation = Explainer.explain(diagnosis, finding);
        return Figures.capital(FindingWords.name(finding)) + ": "
                + reasons(explanation).collect(Collectors.joining(" "))
                + explanation.alternatives().stream()
                        .map(other -> " " + told(other, figures))
                        .collect(Collectors.joining());
    }

    /** What else it could be, or be as well, with how probable that is, and why the finding is the better answer. */
    private static String told(Alternative other, Figures figures) {
        return "Perhaps " + other.what()
                + (other.probability().isPresent()
                        ? " (" + figures.probability(other.probability().getAsDouble()) + ")"
                        : "")
                + ": " + Figures.uncapital(other.why());
    }
}
