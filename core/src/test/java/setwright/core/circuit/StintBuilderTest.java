package setwright.core.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import setwright.core.recording.Channel;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;

class StintBuilderTest {
    private static final Shape ROAD = Shape.road();

    private static Stint plain() {
        return StintBuilder.build(new Laps(ROAD, 1).drive().recording());
    }

    @ParameterizedTest
    @CsvSource({"10, 0.1", "10, 1.0", "25, 0.5", "50, 0.02", "100, 1.0", "250, 0.3"})
    void rate_and_noise_of_positions_do_not_change_the_corners(double rate, double noise) {
        Stint stint = StintBuilder.build(new Laps(ROAD, 2)
                .rate(rate)
                .positionNoise(noise)
                .count(8)
                .drive()
                .recording());
        assertSameCorners(stint, plain(), 15.0);
        assertThat(stint.circuit().line().lengthM()).isCloseTo(ROAD.length(), within(0.005 * ROAD.length()));
    }

    @Test
    void of_very_many_laps_some_make_the_line() {
        Stint stint =
                StintBuilder.build(new Laps(ROAD, 3).rate(10).count(60).drive().recording());
        assertThat(stint.goodLaps().size()).isGreaterThan(45);
        assertThat(stint.recording().calibrations())
                .anyMatch(note -> note.reason().contains("is the middle of 40 laps"));
        assertSameCorners(stint, plain(), 15.0);
    }

    @Test
    void moving_and_turning_the_plane_changes_nothing() {
        Stint stint = StintBuilder.build(
                new Laps(ROAD, 1).placed(2.1, 40_000.0, -7_000.0).drive().recording());
        assertSameCorners(stint, plain(), 1.0);
        assertStations(stint, plain(), 0.5);
    }

    @Test
    void mirroring_mirrors_the_directions() {
        Stint mirrored = StintBuilder.build(new Laps(ROAD, 1).mirrored().drive().recording());
        List<Corner> straight = plain().circuit().corners();
        assertThat(mirrored.circuit().corners()).hasSameSizeAs(straight);
        for (int k = 0; k < straight.size(); k++) {
            Corner corner = mirrored.circuit().corners().get(k);
            assertThat(corner.direction()).isNotEqualTo(straight.get(k).direction());
            assertThat(corner.apexM()).isCloseTo(straight.get(k).apexM(), within(3.0));
        }
    }

    @Test
    void a_left_handed_plane_is_turned_over_and_noted() {
        Recording recording = new Laps(ROAD, 1).drive().recording();
        Recording leftHanded = recording
                .with(Quantity.POSITION_X, recording.channel(Quantity.POSITION_Y))
                .with(Quantity.POSITION_Y, recording.channel(Quantity.POSITION_X));
        Stint stint = StintBuilder.build(leftHanded);
        assertSameCorners(stint, plain(), 1.0);
        assertThat(stint.recording().calibrations()).anyMatch(c -> c.what().equals("position y"));
        assertThat(stint.recording().channel(Quantity.POSITION_Y).get(7))
                .isEqualTo(-recording.channel(Quantity.POSITION_X).get(7));
    }

    @Test
    void a_figure_of_eight_is_followed_through_its_crossing() {
        Shape eight = Shape.figureOfEight(100.0, 220.0);
        assertThat(eight.closingGap()).isLessThan(1.0);
        Laps.Driven driven = new Laps(eight, 3).drive();
        Stint stint = StintBuilder.build(driven.recording());
        assertThat(stint.circuit().corners().stream().map(Corner::direction))
                .containsExactly(Corner.Direction.LEFT, Corner.Direction.RIGHT);
        assertTrueStations(stint, driven, eight.length(), 2.0);
        Stint blind = StintBuilder.build(driven.without(Quantity.POSITION_X, Quantity.POSITION_Y));
        assertSameCorners(blind, stint, 15.0);
    }

    @Test
    void stations_are_right_to_two_metres_and_offsets_to_the_noise() {
        Laps.Driven driven = new Laps(ROAD, 4).positionNoise(0.5).drive();
        Stint stint = StintBuilder.build(driven.recording());
        assertTrueStations(stint, driven, ROAD.length(), 2.0);
        double[] size = stint.offset().toArray();
        for (int i = 0; i < size.length; i++) {
            size[i] = Math.abs(size[i]);
        }
        // Half of the samples lie within the combined scatter of line (0.4 m) and receiver (0.5 m).
        assertThat(setwright.core.numerics.Robust.median(size)).isLessThan(0.8);
    }

    @Test
    void without_position_corners_and_stations_are_the_same() {
        Laps.Driven driven = new Laps(ROAD, 1).drive();
        Stint yaw = StintBuilder.build(driven.without(Quantity.POSITION_X, Quantity.POSITION_Y));
        assertSameCorners(yaw, plain(), 10.0);
        assertTrueStations(yaw, driven, ROAD.length(), 6.0);
        assertThat(yaw.offset().toArray()).containsOnly(Double.NaN);
        assertThat(yaw.circuit().anchor()).isInstanceOf(Circuit.Unanchored.class);
        assertThat(yaw.recording().calibrations().get(0).reason()).contains("no position");
        Stint lateral = StintBuilder.build(driven.without(Quantity.POSITION_X, Quantity.POSITION_Y, Quantity.YAW_RATE));
        assertSameCorners(lateral, plain(), 10.0);
    }

    @Test
    void the_closed_line_has_the_circuits_shape() {
        Laps.Driven driven = new Laps(ROAD, 5).drive();
        ReferenceLine line = StintBuilder.build(driven.without(Quantity.POSITION_X, Quantity.POSITION_Y))
                .circuit()
                .line();
        double[][] points = new double[4][line.nodeCount()];
        for (int i = 0; i < line.nodeCount(); i++) {
            points[0][i] = line.x(i);
            points[1][i] = line.y(i);
            points[2][i] = ROAD.x(i * line.stepM() * ROAD.length() / line.lengthM(), 0.0);
            points[3][i] = ROAD.y(i * line.stepM() * ROAD.length() / line.lengthM(), 0.0);
        }
        RigidMove move = RigidMove.fit(points[0], points[1], points[2], points[3]);
        for (int i = 0; i < line.nodeCount(); i++) {
            assertThat(move.x(points[0][i], points[1][i])).isCloseTo(points[2][i], within(10.0));
            assertThat(move.y(points[0][i], points[1][i])).isCloseTo(points[3][i], within(10.0));
        }
    }

    @Test
    void a_gap_in_the_data_stays_a_gap_and_changes_nothing_else() {
        Recording whole = new Laps(ROAD, 6).drive().recording();
        Recording holed = whole;
        for (Quantity quantity : whole.quantities()) {
            double[] samples = whole.channel(quantity).toArray();
            java.util.Arrays.fill(samples, 2000, 2030, Double.NaN);
            holed = holed.with(quantity, Channel.of(samples));
        }
        Stint stint = StintBuilder.build(holed);
        assertThat(stint.station().get(2015)).isNaN();
        assertSameCorners(stint, StintBuilder.build(whole), 3.0);
        assertThat(stint.goodLaps()).hasSameSizeAs(StintBuilder.build(whole).goodLaps());
    }

    @Test
    void one_lap_is_too_few_and_the_message_says_what_to_do() {
        Recording recording = new Laps(ROAD, 7).count(1).drive().recording();
        assertThatThrownBy(() -> StintBuilder.build(recording))
                .isInstanceOf(NotEnoughLaps.class)
                .hasMessageContaining("at least 2 needed")
                .hasMessageContaining("Record more laps");
    }

    @Test
    void without_position_and_rate_of_turn_it_says_what_is_missing() {
        Recording recording = new Laps(ROAD, 8)
                .drive()
                .without(Quantity.POSITION_X, Quantity.POSITION_Y, Quantity.YAW_RATE, Quantity.LATERAL_ACCELERATION);
        assertThatThrownBy(() -> StintBuilder.build(recording))
                .isInstanceOf(MissingQuantity.class)
                .hasMessageContaining("yaw rate");
    }

    @Test
    void a_position_in_the_wrong_unit_is_refused_with_both_lengths() {
        Recording recording = new Laps(ROAD, 9).drive().recording();
        double[] x = recording.channel(Quantity.POSITION_X).toArray();
        double[] y = recording.channel(Quantity.POSITION_Y).toArray();
        for (int i = 0; i < x.length; i++) {
            x[i] *= 3.28;
            y[i] *= 3.28;
        }
        Recording feet = recording.with(Quantity.POSITION_X, Channel.of(x)).with(Quantity.POSITION_Y, Channel.of(y));
        assertThatThrownBy(() -> StintBuilder.build(feet))
                .isInstanceOf(MissingQuantity.class)
                .hasMessageContaining("m long by position")
                .hasMessageContaining("units");
    }

    @Test
    void junk_is_refused_with_a_message_of_ours_or_taken_but_never_breaks() {
        Random random = new Random(1);
        Quantity[] quantities = {
            Quantity.SPEED,
            Quantity.YAW_RATE,
            Quantity.POSITION_X,
            Quantity.POSITION_Y,
            Quantity.LAP_NUMBER,
            Quantity.LAP_TRIGGER,
            Quantity.LAP_DISTANCE
        };
        int refused = 0;
        for (int trial = 0; trial < 150; trial++) {
            int count = 1 + random.nextInt(2000);
            Map<Quantity, Channel> channels = new EnumMap<>(Quantity.class);
            channels.put(Quantity.THROTTLE, Channel.of(new double[count]));
            for (Quantity quantity : quantities) {
                if (random.nextBoolean()) {
                    channels.put(quantity, Channel.of(junk(random, count)));
                }
            }
            try {
                Stint stint = StintBuilder.build(new Recording("junk", 50.0, channels, List.of()));
                assertThat(stint.laps()).isNotEmpty();
            } catch (MissingQuantity | NotEnoughLaps refusal) {
                assertThat(refusal).hasMessageContaining("recording 'junk'");
                refused++;
            }
        }
        assertThat(refused).isGreaterThan(100);
    }

    private static double[] junk(Random random, int count) {
        int kind = random.nextInt(6);
        double size = Math.pow(10.0, random.nextInt(4) - 1);
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            values[i] = switch (kind) {
                case 0 -> 0.0;
                case 1 -> Double.NaN;
                case 2 -> size * random.nextGaussian();
                case 3 -> random.nextInt(20) == 0 ? Double.NaN : size * Math.abs(Math.sin(0.01 * i));
                case 4 -> Math.floor(i / 300.0);
                default -> 30.0 + 10.0 * Math.sin(0.02 * i);
            };
        }
        return values;
    }

    @Test
    void the_same_recording_gives_the_same_stint() {
        assertThat(plain().station().toArray()).isEqualTo(plain().station().toArray());
        assertThat(plain().circuit().corners()).isEqualTo(plain().circuit().corners());
    }

    static void assertSameCorners(Stint stint, Stint expected, double tolerance) {
        List<Corner> corners = stint.circuit().corners();
        List<Corner> others = expected.circuit().corners();
        double scale =
                expected.circuit().line().lengthM() / stint.circuit().line().lengthM();
        assertThat(corners.stream().map(Corner::direction))
                .isEqualTo(others.stream().map(Corner::direction).toList());
        for (int k = 0; k < corners.size(); k++) {
            assertThat(corners.get(k).number()).isEqualTo(k + 1);
            assertThat(corners.get(k).apexM() * scale).isCloseTo(others.get(k).apexM(), within(tolerance));
        }
    }

    private static void assertStations(Stint stint, Stint expected, double tolerance) {
        double length = expected.circuit().line().lengthM();
        for (int i = 0; i < stint.station().size(); i++) {
            double difference =
                    Math.abs(stint.station().get(i) - expected.station().get(i));
            assertThat(Math.min(difference, length - difference)).isLessThan(tolerance);
        }
    }

    /** Compares with the true distance since the line, which the recording holds as its lap distance. */
    private static void assertTrueStations(Stint stint, Laps.Driven driven, double length, double tolerance) {
        double scale = length / stint.circuit().line().lengthM();
        Channel truth = driven.recording().channel(Quantity.LAP_DISTANCE);
        for (int i = 0; i < truth.size(); i++) {
            double difference = Math.abs(stint.station().get(i) * scale - truth.get(i));
            assertThat(Math.min(difference, length - difference)).isLessThan(tolerance);
        }
    }
}
