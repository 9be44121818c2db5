package setwright.intake.map;

import java.util.List;
import java.util.stream.Collectors;
import setwright.core.recording.Quantity;

/**
 * Words of channels that answers do without: pressures, temperatures across the tread, ride heights, the day's temperatures, steering
 * torque. Written as in {@link Vocabulary}; English, German, French and Italian.
 */
final class OptionalWords {
    static final List<String> FRONT = List.of("front", "vorn", "vorne", "avant", "anteriore");
    static final List<String> REAR = List.of("rear", "hinten", "arriere", "arrière", "posteriore");
    static final List<String> LEFT = List.of("left", "links", "gauche", "sinistra", "sinistro");
    static final List<String> RIGHT = List.of("right", "rechts", "droite", "droit", "destra", "destro");

    private static final List<String> FRONT_AXLE = more(FRONT, "f", "va", "av", "ant", "vorderachse", "fa");
    private static final List<String> REAR_AXLE = more(REAR, "r", "ha", "ar", "post", "hinterachse", "ra");

    private static final List<String> INNER =
            List.of("inner", "inside", "innen", "interieur", "intérieur", "interno", "int", "inn", "i");
    private static final List<String> MIDDLE =
            List.of("middle", "mid", "centre", "center", "central", "mitte", "milieu", "centro", "ctr");
    private static final List<String> OUTER = List.of(
            "outer", "outside", "aussen", "außen", "exterieur", "extérieur", "esterno", "ext", "est", "out", "o");

    /** Words of a part of the tread. */
    static final List<String> THIRDS = more(more(INNER, MIDDLE), OUTER);

    private static final String WHEEL_WORDS =
            " !fl !fr !rl !rr !lf !rf !lr !vl !vr !hl !hr !avg !avd !arg !ard" + forbidden(LEFT) + forbidden(RIGHT);
    private static final String PRESSURE = "pressure/press/druck/pression/pressione/prs";
    private static final String BRAKE = "brake/brk/brakes/bremse/brems/frein/freins/freno/freni";
    private static final String NO_BRAKE =
            " !temp !temperature !bias !balance !disc !disk !wear !target !split !pad" + WHEEL_WORDS;
    private static final String TYRE = "tyre/tire/tyres/tires/reifen/pneu/pneus/pneumatico/gomma/tpms";
    private static final String TEMPERATURE = "temp/temperature/temperatur/temperatura/tmp";
    private static final String RIDE = "ride/bodenfreiheit/fahrhoehe/fahrhöhe/rideheight/assetto/rh";
    private static final String NO_DAY =
            " !tyre !tire !oil !water !coolant !brake !intake !inlet !charge !box !engine !exhaust"
                    + " !manifold !lap !fuel !gear !gearbox !pos !position !width !airbox !pressure";

    private OptionalWords() {}

    /** One rule of a quantity. */
    record Words(Quantity quantity, double score, String text) {}

    /** One rule of four quantities, a wheel each. */
    record WheelWords(String family, double score, String text) {}

    static final List<Words> AXLES = List.of(
            new Words(Quantity.BRAKE_PRESSURE_FRONT, 1.0, BRAKE + " " + PRESSURE + " " + any(FRONT_AXLE) + NO_BRAKE),
            new Words(Quantity.BRAKE_PRESSURE_REAR, 1.0, BRAKE + " " + PRESSURE + " " + any(REAR_AXLE) + NO_BRAKE),
            new Words(Quantity.BRAKE_PRESSURE_FRONT, 1.0, "bremsdruck " + any(FRONT_AXLE) + NO_BRAKE),
            new Words(Quantity.BRAKE_PRESSURE_REAR, 1.0, "bremsdruck " + any(REAR_AXLE) + NO_BRAKE),
            new Words(Quantity.BRAKE_PRESSURE_FRONT, 0.9, BRAKE + " " + any(FRONT_AXLE) + " @PRESSURE" + NO_BRAKE),
            new Words(Quantity.BRAKE_PRESSURE_REAR, 0.9, BRAKE + " " + any(REAR_AXLE) + " @PRESSURE" + NO_BRAKE),
            new Words(Quantity.RIDE_HEIGHT_FRONT, 1.0, "ride height/heights " + any(FRONT_AXLE) + WHEEL_WORDS),
            new Words(Quantity.RIDE_HEIGHT_REAR, 1.0, "ride height/heights " + any(REAR_AXLE) + WHEEL_WORDS),
            new Words(
                    Quantity.RIDE_HEIGHT_FRONT,
                    0.95,
                    RIDE + " " + any(FRONT_AXLE) + " !rate !speed !frequency !target" + WHEEL_WORDS),
            new Words(
                    Quantity.RIDE_HEIGHT_REAR,
                    0.95,
                    RIDE + " " + any(REAR_AXLE) + " !rate !speed !frequency !target" + WHEEL_WORDS),
            new Words(
                    Quantity.RIDE_HEIGHT_FRONT,
                    0.9,
                    "height/hauteur/altezza/laser " + any(FRONT_AXLE) + " @LENGTH !roll !gps !wing" + WHEEL_WORDS),
            new Words(
                    Quantity.RIDE_HEIGHT_REAR,
                    0.9,
                    "height/hauteur/altezza/laser " + any(REAR_AXLE) + " @LENGTH !roll !gps !wing" + WHEEL_WORDS),
            new Words(
                    Quantity.TRACK_TEMPERATURE,
                    1.0,
                    "track/road/asphalt/tarmac/strecke/fahrbahn/piste/pista/asfalto " + TEMPERATURE + NO_DAY),
            new Words(Quantity.TRACK_TEMPERATURE, 1.0, "streckentemperatur/asphalttemperatur" + NO_DAY),
            new Words(
                    Quantity.AIR_TEMPERATURE,
                    1.0,
                    "air/ambient/outside/luft/umgebung/aussen/ambiante/ambiant/aria/ambiente " + TEMPERATURE + NO_DAY),
            new Words(
                    Quantity.AIR_TEMPERATURE,
                    1.0,
                    "lufttemperatur/aussentemperatur/außentemperatur/umgebungstemperatur" + NO_DAY),
            new Words(
                    Quantity.STEERING_TORQUE,
                    1.0,
                    "steer/steering/lenkung/lenkrad/volant/direction/sterzo/volante"
                            + " torque/moment/drehmoment/couple/coppia"
                            + " !engine !motor !drive !assist !brake !demand !target !fl !fr !rl !rr"),
            new Words(Quantity.STEERING_TORQUE, 1.0, "lenkmoment/handmoment"));

    static final List<WheelWords> WHEELS = List.of(
            new WheelWords("TYRE_PRESSURE", 1.0, TYRE + " " + PRESSURE + "/inflation !temp !temperature !target !cold"),
            new WheelWords("TYRE_PRESSURE", 1.0, "reifendruck"),
            new WheelWords("TYRE_PRESSURE", 0.95, TYRE + " @PRESSURE !temp !temperature !target !cold"),
            third("INNER", INNER),
            third("MIDDLE", MIDDLE),
            third("OUTER", OUTER),
            new WheelWords("RIDE_HEIGHT", 1.0, "ride height/heights"),
            new WheelWords("RIDE_HEIGHT", 0.95, RIDE + " !rate !speed !frequency !target"),
            new WheelWords("RIDE_HEIGHT", 0.9, "height/hauteur/altezza/laser @LENGTH !roll !gps !wing"));

    private static WheelWords third(String name, List<String> words) {
        return new WheelWords(
                "TYRE_TEMPERATURE_" + name, 1.0, TYRE + " " + TEMPERATURE + " " + any(words) + " !pressure !inflation");
    }

    private static String any(List<String> words) {
        return String.join("/", words);
    }

    /** Returns these words as ones that forbid a match. */
    static String forbidden(List<String> words) {
        return words.stream().map(word -> " !" + word).collect(Collectors.joining());
    }

    private static List<String> more(List<String> words, String... others) {
        return more(words, List.of(others));
    }

    private static List<String> more(List<String> words, List<String> others) {
        return java.util.stream.Stream.concat(words.stream(), others.stream()).toList();
    }
}
