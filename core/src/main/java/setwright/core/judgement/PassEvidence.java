package setwright.core.judgement;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import setwright.core.handling.CornerPass;
import setwright.core.handling.PhaseBalance;
import setwright.core.handling.Slide;

/**
 * What one pass has to say for or against a finding.
 *
 * @param pass     lap and corner
 * @param shows    whether it shows there
 * @param sizeRad  how large, rad, counted in the finding's direction: the excess over the reference, or the size of the slide
 * @param slides   the moments when the axle let go, largest first; none for a level of balance
 */
public record PassEvidence(CornerPass pass, boolean shows, double sizeRad, List<Slide> slides) {
    public PassEvidence {
        slides = List.copyOf(slides);
    }

    /** Returns one entry for each judged pass through the finding's corners that has its phase, in driving order. */
    public static List<PassEvidence> of(Diagnosis diagnosis, Finding finding) {
        boolean level = diagnosis.grounds().isLevel(finding);
        return diagnosis.passes().stream()
                .filter(pass -> finding.corners().contains(pass.corner()))
                .flatMap(pass -> level ? level(pass, finding) : slides(pass, finding))
                .toList();
    }

    private static Stream<PassEvidence> level(CornerPass pass, Finding finding) {
        double direction = finding.balance().direction();
        return pass
                .phase(finding.phase())
                .map(PhaseBalance::excessRad)
                .filter(Double::isFinite)
                .map(excess -> new PassEvidence(pass, direction * excess > 0.0, direction * excess, List.of()))
                .stream();
    }

    private static Stream<PassEvidence> slides(CornerPass pass, Finding finding) {
        if (pass.phase(finding.phase()).isEmpty()) {
            return Stream.empty();
        }
        boolean shows = SlidePattern.shows(pass, finding.phase());
        List<Slide> slides = SlidePattern.rearSlides(pass, finding.phase())
                .sorted(Comparator.comparingDouble(Slide::sizeRad).reversed())
                .toList();
        double size = slides.stream().mapToDouble(Slide::sizeRad).findFirst().orElse(0.0);
        return Stream.of(new PassEvidence(pass, shows, size, slides));
    }
}
