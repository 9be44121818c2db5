package setwright.intake.map;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import setwright.core.recording.Quantity;

/**
 * Scores how well the generic words of a header fit each quantity, 0 (not at all) to 1.
 *
 * <p>A rule is written as groups of alternatives, all of which must be found, such as {@code "lat/lateral acc/accel"}; a word
 * after {@code !} forbids the match; {@code @DIMENSION} asks for a unit of that kind. Words that no group explains lower the
 * score. To teach it a new quantity, add a line to {@link #RULES}.
 */
final class Vocabulary {
    private static final String ACC = "acc/accel/acceleration/a/g/accelerometer/beschleunigung";
    private static final String NOT_ACC = " !yaw !angular !roll !pitch !pedal !wheel !gyro !throttle !position !pos";
    private static final String STATES =
            " !rate !speed !velocity !torque !force !temp !temperature !target !error !demand";

    /** A third of the tread is a quantity of its own. */
    private static final String NO_THIRD = OptionalWords.forbidden(OptionalWords.THIRDS);

    private static final List<Rule> RULES = new ArrayList<>();
    private static final Set<String> DICTIONARY = new HashSet<>();
    /** Shorter words of optional channels would cut words that mean something else. */
    private static final int SHORTEST_OPTIONAL = 4;

    private static int shortest;

    /** Words of things that are recorded but not used; physics alone never claims such a column. */
    private static final Set<String> OTHER = Set.of(
            "heading",
            "course",
            "bank",
            "banking",
            "roll",
            "pitch",
            "slip",
            "sideslip",
            "beta",
            "oil",
            "water",
            "coolant",
            "temp",
            "temperature",
            "voltage",
            "volt",
            "battery",
            "torque",
            "force",
            "load",
            "clutch",
            "target",
            "error",
            "altitude",
            "height",
            "elevation",
            "hdop",
            "satellites",
            "lambda",
            "exhaust",
            "turbo",
            "boost",
            "wind",
            "humidity",
            "vy",
            "vz",
            "flow",
            "current",
            "strain");

    static {
        rule(
                Quantity.TIME,
                1.0,
                "time/timestamp/zeit/temps/tiempo/elapsed" + " !lap !sector !best !delta !split !gap !last");
        rule(Quantity.TIME, 0.9, "t !temp");
        String notGround =
                " !wheel !engine !yaw !angular !wind !lateral !y !vertical !z !front !rear !limit !target !pedal"
                        + " !steer !steering !roll !pitch !turbo !fan !motor !damper !fl !fr !rl !rr";
        rule(
                Quantity.SPEED,
                1.0,
                "speed/velocity/vel/spd/geschwindigkeit/vitesse/velocita ground/vehicle/car/gps" + notGround);
        rule(Quantity.SPEED, 1.0, "speed/velocity/vel/spd/geschwindigkeit/vitesse/velocita" + notGround);
        rule(Quantity.SPEED, 0.95, "vx");
        rule(Quantity.SPEED, 0.9, "v !y !z !lat !lateral !battery !wheel !fl !fr !rl !rr");
        String steer = "steer/steering/steered/lenkwinkel/lenkung/volant/handwheel/sterzo";
        rule(
                Quantity.STEERING_WHEEL_ANGLE,
                1.0,
                steer + " wheel/hand/handwheel angle/position/pos" + STATES + " !road !tyre !tire");
        rule(Quantity.STEERING_WHEEL_ANGLE, 1.0, steer + STATES + " !road !tyre !tire !front");
        rule(Quantity.STEERING_WHEEL_ANGLE, 0.95, "hand wheel" + STATES);
        rule(Quantity.STEERING_WHEEL_ANGLE, 0.95, "swa");
        rule(Quantity.ROAD_WHEEL_ANGLE, 1.0, steer + " road/roadwheel/tyre/tire/front" + STATES);
        rule(Quantity.ROAD_WHEEL_ANGLE, 0.9, "wheel angle front/road" + STATES);
        rule(Quantity.ROAD_WHEEL_ANGLE, 0.9, "roadwheel angle" + STATES);
        rule(Quantity.ROAD_WHEEL_ANGLE, 0.4, "delta @ANGLE !time !lap");
        String notPedal = " !temp !temperature !rate !bias !balance !disc !disk !wear !light !map";
        rule(Quantity.THROTTLE, 1.0, "throttle/tps/gas/gaspedal/accelerator/accelerateur/acceleratore" + notPedal);
        rule(Quantity.THROTTLE, 1.0, "accel/acceleration/acc/gas pedal" + notPedal);
        rule(Quantity.BRAKE, 1.0, "brake/brk/braking/brakes/bremse/frein/freno" + notPedal);
        rule(Quantity.GEAR, 1.0, "gear/gang/rapport/marcia !ratio !temp !temperature !oil !box !pressure !shift");
        rule(Quantity.ENGINE_SPEED, 1.0, "engine/motor speed/rpm/revs/rev/revolutions");
        rule(Quantity.ENGINE_SPEED, 0.95, "engine/motor @ANGULAR_RATE !temp !torque");
        rule(Quantity.ENGINE_SPEED, 0.9, "rpm/revs/drehzahl !wheel !turbo !fl !fr !rl !rr !front !rear");
        rule(
                Quantity.LONGITUDINAL_ACCELERATION,
                1.0,
                ACC + " long/longitudinal/lon/x/inline/laengs/longitudinale" + NOT_ACC);
        rule(Quantity.LONGITUDINAL_ACCELERATION, 1.0, "ax/along");
        rule(Quantity.LONGITUDINAL_ACCELERATION, 0.9, "long/longitudinal/lon @ACCELERATION");
        rule(Quantity.LATERAL_ACCELERATION, 1.0, ACC + " lat/lateral/y/side/quer/laterale" + NOT_ACC);
        rule(Quantity.LATERAL_ACCELERATION, 1.0, "ay/alat");
        rule(Quantity.LATERAL_ACCELERATION, 0.9, "lat/lateral/cornering @ACCELERATION");
        rule(Quantity.VERTICAL_ACCELERATION, 1.0, ACC + " vert/vertical/z/hoch" + NOT_ACC);
        rule(Quantity.VERTICAL_ACCELERATION, 1.0, "az");
        rule(Quantity.YAW_RATE, 1.0, "yaw/gier/lacet rate/velocity/vel/speed/gyro/angular !acc !acceleration");
        rule(Quantity.YAW_RATE, 1.0, "gierrate/yawrate");
        rule(Quantity.YAW_RATE, 0.9, "yaw @ANGULAR_RATE !acc !acceleration");
        rule(Quantity.YAW_RATE, 0.9, "gyro/angular z !acc !acceleration");
        rule(Quantity.YAW_RATE, 0.5, "yaw !angle !acc !acceleration");
        rule(Quantity.YAW_RATE, 0.4, "r @ANGULAR_RATE");
        String lapCount = "number/no/count/counter/num/index/nr/nummer";
        rule(Quantity.LAP_NUMBER, 1.0, "lap/laps/runde/tour/giro " + lapCount + " !time !distance !trigger");
        rule(
                Quantity.LAP_NUMBER,
                0.9,
                "lap/runde !time !distance !dist !trigger !pulse !beacon !marker !best !delta !last !flag !signal !position !pos");
        rule(Quantity.LAP_TRIGGER, 1.0, "lap/laps trigger/pulse/marker/beacon/flag/signal/event");
        rule(Quantity.LAP_TRIGGER, 1.0, "beacon");
        rule(Quantity.LAP_TRIGGER, 0.9, "start finish/line");
        rule(Quantity.LAP_TRIGGER, 0.6, "trigger");
        rule(Quantity.LAP_DISTANCE, 1.0, "lap/runde distance/dist/position/pos/station");
        rule(Quantity.LAP_DISTANCE, 0.9, "distance/dist/strecke/station/chainage/distanz/odometer");
        rule(Quantity.LAP_DISTANCE, 0.8, "s @LENGTH");
        String notGeo = " !acc !accel !acceleration !a !g !force";
        rule(Quantity.LATITUDE, 1.0, "latitude/breitengrad" + notGeo);
        rule(Quantity.LATITUDE, 0.9, "lat" + notGeo);
        rule(Quantity.LONGITUDE, 1.0, "longitude/lng/laengengrad" + notGeo);
        rule(Quantity.LONGITUDE, 0.9, "lon" + notGeo);
        rule(Quantity.LONGITUDE, 0.9, "long gps/position/pos" + notGeo);
        rule(Quantity.LONGITUDE, 0.6, "long @ANGLE" + notGeo);
        String place = "pos/position/coord/coordinate/local/gps/plane/world/map";
        String notPlace = " !acc !accel !a !g !gyro !pedal !speed !velocity !wheel !steer !steering";
        rule(Quantity.POSITION_X, 1.0, place + " x/east/easting/e" + notPlace);
        rule(Quantity.POSITION_X, 0.9, "x/east/easting" + notPlace);
        rule(Quantity.POSITION_Y, 1.0, place + " y/north/northing/n" + notPlace);
        rule(Quantity.POSITION_Y, 0.9, "y/north/northing" + notPlace);
        corners("WHEEL_SPEED", 1.0, "wheel/rad/roue speed/velocity/vel/spd/rpm/rotation !steer !steering !temp !load");
        corners("WHEEL_SPEED", 0.95, "wheel @SPEED !steer !steering !temp !load");
        corners("WHEEL_SPEED", 0.95, "wheel @ANGULAR_RATE !steer !steering !temp !load");
        corners("WHEEL_SPEED", 0.8, "speed/vel/ws/omega !damper !shock !susp !suspension");
        String notTravel = " !velocity !speed !force !temp !temperature !acc !accel !load !pressure";
        corners("SUSPENSION", 1.0, "susp/suspension/damper/dampers/shock/strut/spring/federweg" + notTravel);
        corners(
                "TYRE_TEMPERATURE",
                1.0,
                "tyre/tire/reifen/pneu temp/temperature/temperatur !pressure !inflation" + NO_THIRD);
        corners("TYRE_TEMPERATURE", 0.9, "tyre/tire @TEMPERATURE !pressure" + NO_THIRD);
        rule(
                Quantity.FUEL_MASS,
                1.0,
                "fuel !rate !flow !used !consumption !pressure !temp !temperature !per !cut !map !mix");
        rule(
                Quantity.FUEL_MASS,
                0.95,
                "kraftstoff/tankinhalt/carburant/carburante !druck !pression !pressione !verbrauch !temp !temperature"
                        + " !temperatur !rate !flow !debit");
        shortest = SHORTEST_OPTIONAL;
        OptionalWords.AXLES.forEach(words -> rule(words.quantity(), words.score(), words.text()));
        OptionalWords.WHEELS.forEach(words -> corners(words.family(), words.score(), words.text()));
    }

    private static void learn(String word) {
        if (word.length() >= shortest) {
            DICTIONARY.add(word);
        }
    }

    private record Rule(
            Quantity quantity,
            double score,
            List<Set<String>> groups,
            Set<String> forbidden,
            Optional<Dimension> unit,
            Optional<Corner> corner) {}

    /** A corner of the car, as headers name it. */
    private enum Corner {
        FRONT_LEFT("fl", "lf", "vl", "avg"),
        FRONT_RIGHT("fr", "rf", "vr", "avd"),
        REAR_LEFT("rl", "lr", "hl", "arg"),
        REAR_RIGHT("rr", "hr", "ard");

        @SuppressWarnings("ImmutableEnumChecker") // List.of cannot be changed
        private final List<String> written;

        Corner(String... written) {
            this.written = List.of(written);
        }

        boolean isWrittenAs(String word) {
            return written.contains(word);
        }

        private List<String> ends() {
            return name().startsWith("FRONT") ? OptionalWords.FRONT : OptionalWords.REAR;
        }

        private List<String> sides() {
            return name().endsWith("LEFT") ? OptionalWords.LEFT : OptionalWords.RIGHT;
        }

        boolean isIn(Set<String> words) {
            return written.stream().anyMatch(words::contains)
                    || (ends().stream().anyMatch(words::contains)
                            && sides().stream().anyMatch(words::contains));
        }

        boolean explains(String word) {
            return isWrittenAs(word)
                    || name().toLowerCase(java.util.Locale.ROOT).contains(word)
                    || ends().contains(word)
                    || sides().contains(word);
        }
    }

    private Vocabulary() {}

    private static void rule(Quantity quantity, double score, String text) {
        RULES.add(parse(quantity, score, text, Optional.empty()));
    }

    private static void corners(String family, double score, String text) {
        for (Corner corner : Corner.values()) {
            RULES.add(parse(Quantity.valueOf(family + "_" + corner.name()), score, text, Optional.of(corner)));
        }
    }

    private static Rule parse(Quantity quantity, double score, String text, Optional<Corner> corner) {
        List<Set<String>> groups = new ArrayList<>();
        Set<String> forbidden = new HashSet<>();
        Optional<Dimension> unit = Optional.empty();
        for (String part : text.split(" +", -1)) {
            if (part.startsWith("!")) {
                forbidden.add(part.substring(1));
                learn(part.substring(1));
            } else if (part.startsWith("@")) {
                unit = Optional.of(Dimension.valueOf(part.substring(1)));
            } else {
                groups.add(Set.of(part.split("/", -1)));
                Arrays.asList(part.split("/", -1)).forEach(Vocabulary::learn);
            }
        }
        return new Rule(quantity, score, groups, forbidden, unit, corner);
    }

    /** Returns the quantities that the words may mean, with scores in (0, 1]. */
    static Map<Quantity, Double> scores(HeaderWords header) {
        Map<Quantity, Double> scores = new EnumMap<>(Quantity.class);
        Set<String> words = new HashSet<>(header.words());
        for (Rule rule : RULES) {
            double score = score(rule, header, words);
            if (score > 0.0) {
                scores.merge(rule.quantity(), score, Math::max);
            }
        }
        return scores;
    }

    private static double score(Rule rule, HeaderWords header, Set<String> words) {
        if (rule.corner().isPresent() && !rule.corner().get().isIn(words)) {
            return 0.0;
        }
        Set<String> left = new HashSet<>(words);
        for (Set<String> group : rule.groups()) {
            if (group.stream().noneMatch(words::contains)) {
                return 0.0;
            }
            left.removeAll(group);
        }
        left.removeIf(word -> !Units.spelled(word).isEmpty());
        rule.corner().ifPresent(corner -> left.removeIf(corner::explains));
        if (left.stream().anyMatch(rule.forbidden()::contains)) {
            return 0.0;
        }
        boolean unitFits = header.unitFor(rule.quantity()).isPresent();
        if (rule.unit().isPresent()) {
            Dimension wanted = rule.unit().get();
            if (header.unitSpellings().stream()
                    .noneMatch(text -> Units.spelled(text, wanted).isPresent())) {
                return 0.0;
            }
        }
        // A unit in brackets of the wrong kind speaks against the words; a last word that is no fitting unit does less.
        double factor = unitFits || header.unitSpellings().isEmpty() ? 1.0 : header.explicitUnit() ? 0.4 : 0.9;
        return rule.score() * factor * Math.pow(0.85, left.size());
    }

    /** Tells whether the words name something that is known and not used here. */
    static boolean namesSomethingElse(HeaderWords header) {
        return header.words().stream().anyMatch(OTHER::contains)
                || (header.words().contains("rate") && !header.words().contains("yaw"));
    }

    /** Cuts a run of letters that is made of known words, such as {@code yawrate}; else returns it whole. */
    static List<String> segment(String piece) {
        if (piece.length() < 5 || DICTIONARY.contains(piece)) {
            return List.of(piece);
        }
        for (int cut = piece.length() - 2; cut >= 3; cut--) {
            String head = piece.substring(0, cut);
            String tail = piece.substring(cut);
            boolean corner = Arrays.stream(Corner.values()).anyMatch(c -> c.isWrittenAs(tail));
            if (DICTIONARY.contains(head) && (corner || (tail.length() >= 3 && DICTIONARY.contains(tail)))) {
                return List.of(head, tail);
            }
        }
        return List.of(piece);
    }
}
