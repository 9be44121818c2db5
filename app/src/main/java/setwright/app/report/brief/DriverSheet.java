package setwright.app.report.brief;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import setwright.app.propose.ProposalAnswer;
import setwright.app.report.brief.BriefView.Driver;
import setwright.app.report.brief.BriefView.Place;
import setwright.app.story.CoachWords;
import setwright.app.story.ProposalWords;
import setwright.app.story.TechniqueWords;
import setwright.app.units.Figures;
import setwright.core.circuit.Corner;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.DrivingFault;
import setwright.core.judgement.driving.DrivingReview;
import setwright.core.judgement.driving.DrivingReviewer;
import setwright.core.judgement.driving.MovingEvent;
import setwright.core.proposal.Candidate;
import setwright.core.technique.TechniqueFinder;
import setwright.core.technique.TechniqueLever;

/** Says to the driver, in plain words, where to work and how. */
final class DriverSheet {
    private final ProposalAnswer proposed;
    private final Diagnosis diagnosis;
    private final List<TechniqueLever> levers;
    private final Figures figures;

    private DriverSheet(ProposalAnswer proposed, Figures figures) {
        this.proposed = proposed;
        this.diagnosis = proposed.answer().diagnosis();
        this.levers = TechniqueFinder.find(diagnosis, proposed.answer().car().drivenAxle());
        this.figures = figures;
    }

    static Driver of(ProposalAnswer proposed, Figures figures) {
        return new DriverSheet(proposed, figures).sheet();
    }

    private Driver sheet() {
        List<DrivingReview.Place> first = DrivingReviewer.review(diagnosis).first();
        List<Place> places = IntStream.range(0, first.size())
                .mapToObj(i -> place(i + 1, first.get(i)))
                .toList();
        List<Corner> corners = diagnosis.stint().circuit().corners();
        return new Driver(
                headline(places.size()),
                places,
                steady(first),
                car(),
                SheetMap.of(
                        diagnosis.stint().circuit().line(),
                        corners,
                        first.stream().map(DrivingReview.Place::corner).toList()));
    }

    private String headline(int places) {
        return switch (places) {
            case 0 -> "Nothing stands out in your driving on these laps.";
            case 1 -> "One place to work on.";
            case 2 -> "Two places to work on.";
            default -> "Three places to work on.";
        };
    }

    private Place place(int mark, DrivingReview.Place place) {
        return new Place(
                mark,
                "Corner " + place.corner(),
                "about " + figures.seconds(place.cost().seconds(), 2) + " a lap, between "
                        + figures.number(Math.max(0.0, place.cost().low()), 2) + " and "
                        + figures.seconds(place.cost().high(), 2),
                what(place),
                how(place));
    }

    private String what(DrivingReview.Place place) {
        Optional<String> event = place.event()
                .filter(MovingEvent::clear)
                .map(moving -> "Your " + moving.measure().words() + " moves more here than elsewhere: "
                        + CoachWords.event(moving, figures) + ".");
        Optional<String> fault =
                place.faults().stream().findFirst().map(DrivingFault::kind).map(kind -> Figures.capital(kind) + ".");
        return event.or(() -> fault)
                .orElse("You are quicker here on some laps than on others: find out what those have in common.");
    }

    /** What the laps prove first; then the faults that show there. */
    private List<String> how(DrivingReview.Place place) {
        List<String> how = new ArrayList<>();
        levers.stream()
                .filter(lever -> TechniqueWords.corners(lever).contains(place.corner()))
                .forEach(lever -> how.add(TechniqueWords.move(lever, figures)
                        + (lever.laps().isEmpty() ? "." : ", as on " + Figures.laps(lever.laps()) + ".")
                        + (lever.weak()
                                ? TechniqueWords.firstStep(lever, figures)
                                        .map(step -> " " + step)
                                        .orElse("")
                                : "")));
        place.event()
                .filter(MovingEvent::clear)
                .ifPresent(event -> how.add("Look at lap " + event.lapLow() + " beside lap " + event.lapHigh()
                        + ", then do it the same way every lap."));
        place.faults()
                .forEach(fault -> fault.proofs().stream()
                        .filter(proof -> proof.corner() == place.corner())
                        .findFirst()
                        .ifPresent(proof -> how.add(Figures.capital(fault.kind()) + " on "
                                + proof.laps().size() + " of "
                                + diagnosis.stint().goodLaps().size() + " laps, most on lap " + proof.worstLap()
                                + ".")));
        return how;
    }

    private List<String> steady(List<DrivingReview.Place> first) {
        List<Integer> steady = diagnosis.repeatability().corners().stream()
                .filter(corner -> corner.repeatable())
                .map(corner -> corner.corner())
                .filter(corner -> first.stream().noneMatch(place -> place.corner() == corner))
                .toList();
        List<String> words = new ArrayList<>();
        if (!steady.isEmpty()) {
            words.add(Figures.capital(Figures.corners(steady)) + ": you do the same every lap. Leave "
                    + (steady.size() == 1 ? "it" : "them") + " as " + (steady.size() == 1 ? "it is." : "they are."));
        }
        return words;
    }

    private List<String> car() {
        Optional<Candidate> chosen = proposed.proposal().chosen();
        if (chosen.isEmpty()) {
            return List.of("The car stays as it is for the next run.");
        }
        return List.of(
                "For the next run one thing is changed on the car: "
                        + ProposalWords.brief(chosen.get()).replace('_', ' ') + ".",
                "Drive as you do now. Say at once what is different, and where; first impressions count.");
    }
}
