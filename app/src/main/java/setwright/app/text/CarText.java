package setwright.app.text;

import static setwright.app.text.CarTables.fixed;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import setwright.app.car.CarCheck;
import setwright.app.car.Given;
import setwright.app.story.Story;
import setwright.app.units.Figures;
import setwright.core.car.CarSheet;
import setwright.core.car.SetupItem;
import setwright.core.car.SetupLabel;
import setwright.core.car.figures.BrakeFigures;
import setwright.core.car.figures.CarFigures;
import setwright.core.car.setup.SetupCatalogue;
import setwright.core.car.setup.SetupItemKind;
import setwright.core.car.sums.Gravity;

/** Writes what there is to say of a car sheet: what to look at twice, the sheet, what follows from it, what was assumed. */
public final class CarText {
    private final CarSheet sheet;
    private final CarFigures figures;
    private final Figures shown;
    private final Terminal terminal;
    private final List<String> lines = new ArrayList<>();

    private CarText(CarCheck check, Figures shown, Terminal terminal) {
        this.sheet = check.sheet();
        this.figures = check.figures();
        this.shown = shown;
        this.terminal = terminal;
    }

    /** Returns the text, ending with a line break. */
    public static String write(CarCheck check, Figures shown, Terminal terminal) {
        CarText text = new CarText(check, shown, terminal);
        text.lines.add(terminal.paint().bold(Wrap.clean(check.sheet().description())));
        text.bullets("Look at twice", check.remarks(shown));
        text.table(CarTables.car(text.sheet));
        List<Given> given = Given.of(text.sheet);
        if (!given.isEmpty()) {
            text.table(CarTables.given(given));
        }
        if (!text.sheet.setup().isEmpty() || !text.sheet.labels().isEmpty()) {
            text.table(CarTables.setup(text.sheet));
        }
        text.table(CarTables.axles(text.figures));
        text.paragraph("With " + fixed(text.sheet.fuelStartKg(), 1) + " kg of fuel (" + fixed(text.figures.massKg(), 0)
                + " kg in all), without downforce.");
        text.lines.add("");
        text.attitude();
        text.brakes();
        text.topSpeed();
        if (!text.figures.speeds().gears().isEmpty()) {
            text.table(CarTables.gears(text.figures.speeds().gears(), shown.units()));
        }
        text.bullets("Not told", text.figures.untold());
        text.assumed();
        text.bullets("What each item acts on", text.actsOn());
        text.lines.add("");
        Wrap.lines(Story.CAUTION, terminal.width())
                .forEach(line -> text.lines.add(terminal.paint().faint(line)));
        return String.join("\n", text.lines) + "\n";
    }

    private void attitude() {
        figures.roll()
                .ifPresent(roll -> paragraph(
                        "Roll gradient " + fixed(Math.toDegrees(roll.gradientRad()), 2) + " deg/g, tyres included."));
        figures.understeerGradient()
                .ifPresent(gradient -> paragraph("Understeer gradient "
                        + shown.signed(Math.toDegrees(gradient) * Gravity.STANDARD_MPS2, 2)
                        + " deg/g at low lateral acceleration, by the model with tyres sized for their axles; car fit reads"
                        + " it off laps."));
        if (figures.rakeRad().isPresent()) {
            double rake = figures.rakeRad().getAsDouble();
            double millimetres = 1000.0 * Math.tan(rake) * sheet.wheelbaseM();
            paragraph("Rake " + shown.signed(Math.toDegrees(rake), 2) + " deg: rear " + fixed(Math.abs(millimetres), 0)
                    + " mm " + (millimetres < 0.0 ? "lower" : "higher") + " than front.");
        }
    }

    private void brakes() {
        BrakeFigures brakes = figures.brakes();
        paragraph("Braking at 1 g moves " + fixed(brakes.transferN(), 0)
                + " N to the front axle; both axles lock together with " + percent(brakes.idealShare())
                + " of the braking at the front.");
        if (brakes.biasShare().isEmpty()) {
            return;
        }
        double together = brakes.togetherG().orElseThrow();
        paragraph("The sheet has " + percent(brakes.biasShare().getAsDouble()) + ": at 1 g the "
                + (brakes.frontLocksFirst().orElse(false) ? "front" : "rear") + " axle locks first"
                + (together > 0.0
                        ? ". Both lock together at " + fixed(together, 2)
                                + " g; below that the front locks first, above it the rear."
                        : ", as at any deceleration."));
    }

    private void topSpeed() {
        List<String> tops = new ArrayList<>();
        add(tops, figures.speeds().byLimiterMps(), " by the limiter in the last gear");
        add(tops, figures.speeds().byPowerMps(), " by power against drag");
        if (!tops.isEmpty()) {
            paragraph("Top speed " + String.join(", ", tops) + ".");
        }
    }

    private void add(List<String> tops, OptionalDouble speed, String words) {
        if (speed.isPresent()) {
            tops.add(shown.speed(speed.getAsDouble()) + words);
        }
    }

    private List<String> actsOn() {
        return Stream.concat(
                        sheet.setup().stream().map(SetupItem::name),
                        sheet.labels().stream().map(SetupLabel::name))
                .flatMap(name -> SetupCatalogue.find(name).stream())
                .map(SetupItemKind::family)
                .distinct()
                .map(family -> family.word().replace('_', ' ') + ": " + family.actsOn())
                .toList();
    }

    private void assumed() {
        if (sheet.assumed().isEmpty() && figures.assumed().isEmpty()) {
            lines.add("");
            lines.add("Nothing is assumed.");
            return;
        }
        // a key keeps its small letters, so that it can be searched for and copied
        List<String> sentences = new ArrayList<>(sheet.assumed().stream()
                .filter(sentence -> !CarTables.isShown(sentence.split(" ", 2)[0]))
                .toList());
        if (sentences.size() < sheet.assumed().size()) {
            sentences.add(0, "What the first table marks as assumed, as is usual for the kind of car.");
        }
        bullets("Assumed, because the sheet does not give it", sentences);
        if (!figures.assumed().isEmpty()) {
            heading("Usual values used in these figures; give the key if you know better");
            lines.addAll(CarTables.usual(figures.assumed()).lines(terminal.width(), terminal.paint()));
        }
    }

    private void heading(String words) {
        lines.add("");
        lines.add(terminal.paint().bold(words));
    }

    private void bullets(String words, List<String> sentences) {
        if (sentences.isEmpty()) {
            return;
        }
        heading(words);
        for (String sentence : sentences) {
            List<String> wrapped = Wrap.lines(sentence, terminal.width() - 2);
            for (int i = 0; i < wrapped.size(); i++) {
                lines.add((i == 0 ? "- " : "  ") + wrapped.get(i));
            }
        }
    }

    private void paragraph(String text) {
        lines.addAll(Wrap.lines(text.replace(Figures.KEPT_TOGETHER, ' '), terminal.width()));
    }

    private void table(TextTable table) {
        lines.add("");
        lines.addAll(table.lines(terminal.width(), terminal.paint()));
    }

    private static String percent(double share) {
        return fixed(100.0 * share, 1) + Figures.KEPT_TOGETHER + "%";
    }
}
