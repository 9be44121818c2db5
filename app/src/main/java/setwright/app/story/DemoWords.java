package setwright.app.story;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import setwright.app.demo.DemoStint;
import setwright.app.demo.DemoStory;
import setwright.app.demo.Difference;
import setwright.app.units.Figures;
import setwright.core.car.SetupChange;
import setwright.core.judgement.BalanceSign;
import setwright.core.judgement.Finding;
import setwright.core.judgement.SpeedRange;
import setwright.core.judgement.Trigger;
import setwright.core.judgement.Verdict;
import setwright.core.proposal.Candidate;
import setwright.core.proposal.Proposal;
import setwright.core.proposal.StandingOut;
import setwright.core.trial.Trial;
import setwright.core.trial.TrialTarget;

/** The demo's story in sentences, each with its figures. */
public final class DemoWords {
    private static final int SHOWN = 4;
    private static final int PLACES = 3;

    private final DemoStory story;
    private final Figures figures;

    private DemoWords(DemoStory story, Figures figures) {
        this.story = story;
        this.figures = figures;
    }

    /**
     * One act.
     *
     * @param title      of it
     * @param sentences  in order
     */
    public record Act(String title, List<String> sentences) {
        public Act {
            sentences = List.copyOf(sentences);
        }
    }

    /** Returns the acts in order. */
    public static List<Act> acts(DemoStory story, Figures figures) {
        return new DemoWords(story, figures).all();
    }

    private List<Act> all() {
        List<Act> acts = new ArrayList<>();
        acts.add(new Act("As the driver came", stint(story.loose())));
        acts.add(new Act("The same driver, coached", stint(story.coached())));
        if (story.problem().isEmpty()) {
            acts.add(new Act("What is true", truth()));
            return acts;
        }
        Finding problem = story.problem().get();
        List<String> found = new ArrayList<>();
        found.add("First to cure: " + problem(problem) + ".");
        problem.why().stream().limit(SHOWN).forEach(found::add);
        acts.add(new Act("What repeats", found));
        acts.add(new Act("Technique first, it is free", technique()));
        acts.add(new Act("The one change", change()));
        story.trial().ifPresent(trial -> {
            acts.add(new Act("Back to back", trial(trial)));
            acts.add(new Act("Verdict", verdict(trial)));
        });
        acts.add(new Act("The brief for the driver", brief(problem)));
        acts.add(new Act("What is true", truth()));
        return acts;
    }

    private List<String> stint(DemoStint stint) {
        Story told = Storyteller.tell(stint.answer(), figures);
        List<String> sentences =
                new ArrayList<>(List.of(told.laps().answer(), told.driving().answer()));
        told.driving().details().stream().limit(PLACES).forEach(sentences::add);
        sentences.add(told.headline());
        return sentences;
    }

    private static String problem(Finding finding) {
        String where = finding.speed() == SpeedRange.ALL
                ? "at all speeds"
                : "at " + finding.speed().words() + " speed";
        return finding.phase().words() + " " + finding.balance().words() + " " + where + ", corners "
                + numbers(finding.corners());
    }

    private List<String> technique() {
        if (story.technique().isEmpty()) {
            return List.of(
                    "The problem is there in steady cornering, with neither pedal in play: there is no technique to try.");
        }
        DemoStory.Tried tried = story.technique().get();
        List<String> sentences = new ArrayList<>();
        sentences.add("Asked of the driver: " + tried.technique().words() + ".");
        sentences.add("It moved the balance there by " + degrees(tried.balanceDeg())
                + " the way that was wanted, and the lap time by " + seconds(tried.lapTimeS()) + ".");
        boolean cured = tried.stint().answer().diagnosis().verdict() != Verdict.CHANGE_THE_CAR;
        sentences.add(
                cured
                        ? "With it the laps no longer call for a change of the car; the change below is compared with the driver's own way all the same."
                        : "The problem is still there, so the car is looked at next.");
        return sentences;
    }

    private List<String> change() {
        if (story.chosen().isEmpty()) {
            return story.proposal().stream().map(Proposal::reason).toList();
        }
        List<String> sentences = new ArrayList<>();
        Candidate best = story.chosen().get();
        sentences.add("Turn " + words(best) + ": expected there "
                + figures.signed(Math.toDegrees(best.target().central()), 2) + " deg (8 in 10: "
                + figures.signed(Math.toDegrees(best.target().low()), 2) + " to "
                + figures.signed(Math.toDegrees(best.target().high()), 2) + "; + is toward understeer), lap time "
                + figures.signed(best.prediction().lapTimeS().central(), 2) + " s.");
        best.prediction().reasons().stream().limit(2).forEach(sentences::add);
        List<String> others = story.proposal().stream()
                .flatMap(proposal -> proposal.others().stream())
                .limit(SHOWN - 1L)
                .map(choice -> words(choice) + " ("
                        + figures.signed(Math.toDegrees(choice.target().central()), 2) + " deg)")
                .toList();
        if (!others.isEmpty()) {
            sentences.add("Next best: " + String.join("; ", others) + ".");
        }
        story.proposal().ifPresent(proposal -> {
            proposal.target()
                    .flatMap(target -> StandingOut.words(
                            best,
                            proposal.others(),
                            target,
                            story.coached().answer().diagnosis().grounds().standing()))
                    .ifPresent(sentences::add);
            sentences.addAll(proposal.expect());
        });
        sentences.add(Story.CAUTION);
        return sentences;
    }

    private static String words(Candidate choice) {
        return choice.prediction().changes().stream().map(DemoWords::words).collect(Collectors.joining(" and "));
    }

    private static String words(SetupChange change) {
        return change.item() + " from " + plain(change.from()) + " to " + plain(change.to());
    }

    private static String plain(double value) {
        return java.math.BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }

    private List<String> trial(Trial trial) {
        DemoStint changed = story.changed().orElseThrow();
        DemoStint again = story.again().orElseThrow();
        TrialWords words = new TrialWords(trial, figures);
        List<String> sentences = new ArrayList<>();
        sentences.add("Driven: " + story.coached().lapTimesS().size() + " laps as before, "
                + changed.lapTimesS().size() + " with the change, "
                + again.lapTimesS().size() + " as before again.");
        sentences.addAll(words.target());
        sentences.addAll(words.lap());
        Candidate choice = story.chosen().orElseThrow();
        double wanted = story.target().orElseThrow().wanted();
        sentences.add("Predicted were "
                + figures.signed(wanted * Math.toDegrees(choice.target().central()), 2)
                + " deg that way and "
                + figures.signed(choice.prediction().lapTimeS().central(), 2) + " s.");
        return sentences;
    }

    private List<String> verdict(Trial trial) {
        TrialWords words = new TrialWords(trial, figures);
        List<String> sentences = new ArrayList<>();
        sentences.add(words.headline() + ".");
        sentences.add(trial.reason());
        sentences.addAll(words.more());
        return sentences;
    }

    /** Returns what the story comes to: the verdict on the change, or that on the coached laps when none was tried. */
    public static String headline(DemoStory story, Figures figures) {
        return story.trial()
                .map(trial -> new TrialWords(trial, figures).headline()
                        + story.chosen().map(change -> ": " + words(change)).orElse("")
                        + ".")
                .orElseGet(() ->
                        Storyteller.tell(story.coached().answer(), figures).headline());
    }

    private List<String> brief(Finding problem) {
        List<String> sentences = new ArrayList<>();
        List<Integer> corners = problem.corners().stream().limit(PLACES).toList();
        sentences.add("Three places: corners " + numbers(corners) + ", "
                + problem.phase().place() + ".");
        String when = problem.trigger() == Trigger.NONE
                ? "in steady cornering"
                : "at " + problem.trigger().words();
        sentences.add(
                problem.balance() == BalanceSign.OVERSTEER
                        ? "Feel for: the rear that wants to step out " + when + "."
                        : "Feel for: the front that stops following as you wind on lock, " + when + ".");
        story.technique()
                .ifPresent(tried -> sentences.add("Try: " + tried.technique().words() + "."));
        sentences.add("How we will know: the same laps again, balance in those corners against today's.");
        return sentences;
    }

    private List<String> truth() {
        List<String> sentences = new ArrayList<>();
        sentences.add(story.fault()
                .map(fault -> "In this car: " + fault.name() + ". It costs "
                        + String.format(Locale.ROOT, "%.2f", story.costS())
                        + " s a lap, measured with a driver who does the same every lap and has learnt both cars.")
                .orElse("Nothing is wrong with this car."));
        story.problem()
                .ifPresent(finding -> sentences.add("The first finding put its price at "
                        + figures.number(finding.price().seconds(), 2) + " s ("
                        + figures.number(finding.price().low(), 2)
                        + " to " + figures.number(finding.price().high(), 2) + ")."));
        sentences.add(
                "Every figure above was computed from laps that were driven just now; another --seed, --car, --circuit or --fault"
                        + " tells another story.");
        return sentences;
    }

    private String degrees(Difference difference) {
        return figures.signed(difference.value(), 2) + " deg (" + figures.signed(difference.low(), 2) + " to "
                + figures.signed(difference.high(), 2) + ")";
    }

    private String seconds(Difference difference) {
        return figures.signed(difference.value(), 2) + " s (" + figures.signed(difference.low(), 2) + " to "
                + figures.signed(difference.high(), 2) + ")";
    }

    /** Returns the target in words, for the caption of a plot. */
    public static String words(TrialTarget target) {
        return target.phase().words() + " of corners " + numbers(target.corners());
    }

    private static String numbers(List<Integer> corners) {
        return corners.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }
}
