package setwright.core.technique;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import setwright.core.car.DrivenAxle;
import setwright.core.handling.CornerPass;
import setwright.core.handling.Phase;
import setwright.core.handling.PhaseBalance;
import setwright.core.handling.Slide;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.Diagnosis;
import setwright.core.judgement.DrivingFault;
import setwright.core.judgement.Finding;
import setwright.core.numerics.FalseDiscovery;
import setwright.core.technique.Question.Problem;
import setwright.core.technique.TechniqueLever.Response;

/*
 * Design note. Each problem is asked about each lever that physics admits; all questions together are one family of tests, of which
 * no more than one named lever in twenty is false (Benjamini and Hochberg). A fault of the driving names its lever by itself: it is
 * given in any case, and marked weak where the laps do not prove what it does. A lever that is read off with error makes a slope look
 * flatter by the share of its variance that is error (W. A. Fuller, Measurement Error Models, 1987, chapter 1): that is given back in
 * the effect, and changes nothing in the test.
 */

/** Finds what the driver's own laps say about his technique. */
public final class TechniqueFinder {
    /** Expected share of false levers among those that are proved. */
    public static final double FALSE_SHARE = 0.05;

    private static final int FEWEST_LAPS = 3;

    private final Diagnosis diagnosis;
    private final DrivenAxle driven;

    private TechniqueFinder(Diagnosis diagnosis, DrivenAxle driven) {
        this.diagnosis = diagnosis;
        this.driven = driven;
    }

    /**
     * Returns the levers, proved ones first, the strongest first.
     *
     * @param driven  wheels that the engine drives: they decide what a throttle does to the balance
     */
    public static List<TechniqueLever> find(Diagnosis diagnosis, DrivenAxle driven) {
        if (diagnosis.stint().goodLaps().size() < FEWEST_LAPS
                || diagnosis.trace().steering().contradicts()) {
            return List.of();
        }
        return new TechniqueFinder(diagnosis, driven).find();
    }

    private List<TechniqueLever> find() {
        List<Question> questions = new ArrayList<>();
        if (diagnosis.repeatability().repeatable()) {
            for (int i = 0; i < diagnosis.findings().size(); i++) {
                aboutFinding(i + 1, diagnosis.findings().get(i)).forEach(questions::add);
            }
            // no problem of the car, but his feet may spare him the slide
            diagnosis.inOneCorner().forEach(seen -> aboutFinding(0, seen).forEach(questions::add));
        }
        diagnosis.faults().stream().flatMap(this::aboutFault).forEach(questions::add);
        double[] adjusted = FalseDiscovery.adjusted(
                questions.stream().mapToDouble(Question::pValue).toArray());
        List<TechniqueLever> levers = new ArrayList<>();
        Map<DrivingFault, List<TechniqueLever>> byFault = new LinkedHashMap<>();
        for (int i = 0; i < questions.size(); i++) {
            Question question = questions.get(i);
            Optional<TechniqueLever> lever = LeverBuilder.build(question, adjusted[i], FALSE_SHARE);
            if (question.fault().isPresent()) {
                List<TechniqueLever> all =
                        byFault.computeIfAbsent(question.fault().get(), fault -> new ArrayList<>());
                lever.ifPresent(all::add);
            } else {
                lever.filter(found -> !found.weak()).ifPresent(levers::add);
            }
        }
        byFault.values().forEach(all -> one(all).ifPresent(levers::add));
        return levers.stream()
                .sorted(Comparator.comparing(TechniqueLever::weak)
                        .thenComparing(Comparator.comparingDouble(TechniqueLever::strength)
                                .reversed()))
                .toList();
    }

    /** Of the levers of one fault the proved one, else the one asked about first. */
    private static Optional<TechniqueLever> one(List<TechniqueLever> levers) {
        return levers.stream()
                .filter(lever -> !lever.weak())
                .max(Comparator.comparingDouble(TechniqueLever::strength))
                .or(() -> levers.stream().findFirst());
    }

    private Stream<Question> aboutFinding(int rank, Finding finding) {
        boolean level = diagnosis.grounds().isLevel(finding);
        double direction = finding.balance().direction();
        Problem problem = new Problem(
                rank,
                Optional.of(finding),
                Optional.empty(),
                level ? Response.BALANCE : Response.SLIDE,
                Optional.empty(),
                finding.corners(),
                level ? pass -> direction * excess(pass, finding.phase()) : pass -> slide(pass, finding.phase()));
        return Stream.of(Lever.values()).flatMap(lever -> {
            Direction admitted = Admissible.of(finding.phase(), finding.balance(), lever, driven);
            return admitted == Direction.NONE ? Stream.empty() : Stream.of(ask(problem, lever, admitted));
        });
    }

    private Stream<Question> aboutFault(DrivingFault fault) {
        if (fault.byTheBrake()) {
            // a brake on for too long unloads the rear: oversteer on the way in
            Problem problem = problem(
                    fault, Response.BALANCE, pass -> BalanceSign.OVERSTEER.direction() * excess(pass, Phase.ENTRY));
            return Stream.of(
                    ask(problem, Lever.OVERLAP, Direction.LESS), ask(problem, Lever.BRAKE_AT_TURN_IN, Direction.LESS));
        }
        if (fault.byTheThrottle()) {
            Problem problem =
                    problem(fault, Response.LIFT, pass -> pass.habits().liftAfter());
            return Stream.of(ask(problem, Lever.PICK_UP, Direction.MORE), ask(problem, Lever.OPENING, Direction.LESS));
        }
        return fault.byTheSpeed()
                ? Stream.of(ask(problem(fault, Response.TIME, CornerPass::timeS), Lever.ENTRY_SPEED, Direction.LESS))
                : Stream.empty();
    }

    private Problem problem(DrivingFault fault, Response response, ToDoubleFunction<CornerPass> size) {
        return new Problem(
                0,
                Optional.empty(),
                Optional.of(fault),
                response,
                FirstStep.against(fault, diagnosis.passes()),
                fault.corners(),
                size);
    }

    private Question ask(Problem problem, Lever lever, Direction direction) {
        return Question.ask(problem, lever, direction, diagnosis.stint(), diagnosis.passes());
    }

    private static double excess(CornerPass pass, Phase phase) {
        return pass.phase(phase).map(PhaseBalance::excessRad).orElse(Double.NaN);
    }

    private static double slide(CornerPass pass, Phase phase) {
        return pass.phase(phase).isEmpty()
                ? Double.NaN
                : pass.slides().stream()
                        .filter(slide -> slide.axle() == Slide.Axle.REAR && slide.phase() == phase)
                        .mapToDouble(Slide::sizeRad)
                        .max()
                        .orElse(0.0);
    }
}
