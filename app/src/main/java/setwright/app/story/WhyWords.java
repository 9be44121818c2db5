package setwright.app.story;

import java.util.List;
import java.util.Optional;
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

/** Why does it say so? The chain of the first finding, or of a verdict without one, as short as it can be told. */
final class WhyWords {
    /** What the other links have said already. */
    private static final Set<Reason.Kind> SAID = Set.of(Reason.Kind.TRIGGER);

    private WhyWords() {}

    static List<String> tell(Diagnosis diagnosis, Figures figures) {
        Optional<Finding> first = diagnosis.findings().stream().findFirst();
        List<Reason> verdict = VerdictExplainer.explain(diagnosis);
        if (!verdict.isEmpty() || first.isEmpty()) {
            return verdict.stream().map(Reason::sentence).toList();
        }
        Explanation explanation = Explainer.explain(diagnosis, first.get());
        return Stream.concat(
                        explanation.reasons().stream()
                                .filter(reason -> !SAID.contains(reason.kind()))
                                .map(Reason::sentence),
                        others(explanation.alternatives(), figures).stream())
                .toList();
    }

    private static Optional<String> others(List<Alternative> alternatives, Figures figures) {
        return alternatives.isEmpty()
                ? Optional.empty()
                : Optional.of("What else it could be, or be as well: "
                        + alternatives.stream()
                                .map(other -> other.what() + probability(other, figures))
                                .collect(Collectors.joining("; "))
                        + ".");
    }

    private static String probability(Alternative other, Figures figures) {
        return other.probability().isPresent()
                ? " (" + figures.probability(other.probability().getAsDouble()) + ")"
                : "";
    }
}
