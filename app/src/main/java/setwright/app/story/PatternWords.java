package setwright.app.story;

import java.util.ArrayList;
import java.util.List;
import setwright.app.units.Figures;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.Finding;

/** What repeats, and what does it cost? */
final class PatternWords {
    private PatternWords() {}

    static Story.Link tell(Diagnosis diagnosis, Figures figures) {
        List<Finding> findings = diagnosis.findings();
        List<String> details = new ArrayList<>();
        for (int i = 1; i < findings.size(); i++) {
            details.add((i + 1) + ". " + sentence(findings.get(i), figures));
        }
        return new Story.Link(
                "What repeats, and what does it cost?",
                findings.isEmpty() ? nothing(diagnosis) : sentence(findings.get(0), figures),
                details);
    }

    private static String nothing(Diagnosis diagnosis) {
        List<Integer> alone = diagnosis.inOneCorner().stream()
                .flatMap(seen -> seen.corners().stream())
                .distinct()
                .sorted()
                .toList();
        return alone.isEmpty()
                ? "No problem repeats beyond chance in these laps."
                : "No problem repeats round the lap; the rear lets go in " + Figures.corners(alone)
                        + (alone.size() == 1 ? " alone." : ", in each by itself.");
    }

    private static String sentence(Finding finding, Figures figures) {
        String sentence = Figures.sentence(FindingWords.name(finding) + ": " + Figures.corners(finding.corners()) + ", "
                + figures.percent(finding.lapShare()) + " of the laps, " + FindingWords.costsAbout(finding, figures)
                + ", probability " + figures.probability(finding.probability()));
        return finding.lapWide()
                ? sentence
                : sentence + " It does not hold round the lap: alone, no reason to change the car.";
    }
}
