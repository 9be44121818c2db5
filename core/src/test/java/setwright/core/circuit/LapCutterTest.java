package setwright.core.circuit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import setwright.core.recording.Channel;
import setwright.core.recording.Quantity;
import setwright.core.recording.Recording;

class LapCutterTest {
    private static Laps laps(long seed) {
        return new Laps(Shape.road(), seed).count(5).from(400.0, 300.0);
    }

    @ParameterizedTest
    @ValueSource(doubles = {10.0, 20.0, 50.0, 100.0, 250.0})
    void marks_refined_by_position_give_lap_times_to_two_hundredths(double rate) {
        Laps.Driven driven = laps(1).rate(rate).drive();
        assertTimes(LapCutter.cut(driven.recording()), driven, 0.02);
    }

    @Test
    void laps_left_out_of_the_file_leave_the_others_whole() {
        Laps.Driven driven = laps(12).drive();
        List<Lap> all = LapCutter.cut(driven.recording());
        Lap gone = all.stream().filter(lap -> lap.number() == 2).findFirst().orElseThrow();
        Map<Quantity, Channel> kept = new EnumMap<>(Quantity.class);
        for (Quantity quantity : driven.recording().quantities()) {
            double[] samples = driven.recording().channel(quantity).toArray();
            java.util.Arrays.fill(samples, gone.from(), gone.to(), Double.NaN);
            kept.put(quantity, Channel.of(samples));
        }

        List<Lap> laps = LapCutter.cut(new Recording("kept", driven.recording().sampleRateHz(), kept, List.of()));

        assertThat(laps).hasSameSizeAs(all);
        for (int i = 0; i < laps.size(); i++) {
            assertThat(laps.get(i).number()).isEqualTo(all.get(i).number());
            boolean isGone = laps.get(i).number() == 2;
            assertThat(laps.get(i).kind())
                    .isEqualTo(isGone ? LapKind.GAPS : all.get(i).kind());
            double twoSamples = 0.04;
            assertThat(laps.get(i).timeS()).isCloseTo(all.get(i).timeS(), within(twoSamples));
        }
    }

    @Test
    void position_alone_gives_the_same_laps_from_a_line_of_its_own() {
        Laps.Driven driven = laps(2).drive();
        List<Lap> laps = LapCutter.cut(driven.unmarked());
        assertThat(laps.stream().filter(Lap::good)).hasSizeGreaterThanOrEqualTo(4);
        // Steady laps take as long from any line; the scatter of speed along the lap is 0.2 %.
        double mean = 0.5 * (driven.lapTime(1) + driven.lapTime(2));
        assertThat(laps.stream().filter(Lap::good))
                .allSatisfy(lap -> assertThat(lap.timeS()).isCloseTo(mean, within(0.02 * mean)));
    }

    @Test
    void distance_resets_alone_give_lap_times() {
        Laps.Driven driven = laps(3).drive();
        Recording recording =
                driven.without(Quantity.LAP_NUMBER, Quantity.LAP_TRIGGER, Quantity.POSITION_X, Quantity.POSITION_Y);
        assertTimes(LapCutter.cut(recording), driven, 0.02);
    }

    @Test
    void curvature_alone_finds_the_lap_length() {
        Laps.Driven driven = laps(4).drive();
        Cuts cuts = LapCutter.cuts(Motion.of(bare(driven)));
        Motion motion = Motion.of(bare(driven));
        assertThat(cuts.wholeLaps()).isGreaterThanOrEqualTo(4);
        for (int lap = 0; lap < cuts.wholeLaps(); lap++) {
            double length = motion.distanceAt(cuts.end(lap)) - motion.distanceAt(cuts.start(lap));
            assertThat(length)
                    .isCloseTo(
                            Shape.road().length(), within(0.003 * Shape.road().length()));
        }
    }

    @Test
    void half_a_lap_of_a_symmetric_oval_is_no_lap() {
        Laps.Driven driven = new Laps(Shape.oval(600.0, 120.0), 5).count(5).drive();
        Motion motion = Motion.of(bare(driven));
        Cuts cuts = LapCutter.cuts(motion);
        double length = motion.distanceAt(cuts.end(0)) - motion.distanceAt(cuts.start(0));
        assertThat(length).isCloseTo(Shape.oval(600.0, 120.0).length(), within(20.0));
    }

    @Test
    void a_trigger_one_sample_after_the_lap_number_is_the_same_crossing() {
        Laps.Driven driven = laps(6).drive();
        double[] trigger = driven.recording().channel(Quantity.LAP_TRIGGER).toArray();
        double[] late = new double[trigger.length];
        System.arraycopy(trigger, 0, late, 1, trigger.length - 1);
        Recording recording = driven.recording().with(Quantity.LAP_TRIGGER, Channel.of(late));
        assertTimes(LapCutter.cut(recording), driven, 0.02);
    }

    @Test
    void lap_numbers_are_the_loggers_own() {
        Laps.Driven driven = laps(7).drive();
        double[] number = driven.recording().channel(Quantity.LAP_NUMBER).toArray();
        for (int i = 0; i < number.length; i++) {
            number[i] += 14.0;
        }
        List<Lap> laps = LapCutter.cut(driven.recording().with(Quantity.LAP_NUMBER, Channel.of(number)));
        assertThat(laps.get(0).number()).isEqualTo(14);
        assertThat(laps.get(3).number()).isEqualTo(17);
    }

    @Test
    void a_counter_that_starts_again_still_parts_laps() {
        Laps.Driven driven = laps(8).drive();
        double[] number = driven.recording().channel(Quantity.LAP_NUMBER).toArray();
        for (int i = 0; i < number.length; i++) {
            number[i] = number[i] >= 3.0 ? number[i] - 3.0 : number[i];
        }
        List<Lap> laps = LapCutter.cut(driven.recording().with(Quantity.LAP_NUMBER, Channel.of(number)));
        assertTimes(laps, driven, 0.02);
        assertThat(laps.stream().map(Lap::number)).doesNotHaveDuplicates();
    }

    @Test
    void the_first_lap_from_slow_is_an_out_lap_and_cut_ends_are_partial() {
        Laps.Driven slow = new Laps(Shape.road(), 9).count(5).startSpeed(15.0).drive();
        assertThat(LapCutter.cut(slow.recording()).get(0).kind()).isEqualTo(LapKind.OUT);
        List<Lap> laps = LapCutter.cut(laps(9).drive().recording());
        assertThat(laps.get(0).kind()).isEqualTo(LapKind.PARTIAL);
        assertThat(laps.get(laps.size() - 1).kind()).isEqualTo(LapKind.PARTIAL);
        assertThat(laps.get(0).why()).contains("begins inside");
    }

    @Test
    void a_recording_that_ends_at_the_line_ends_with_a_whole_lap() {
        Laps.Driven driven = new Laps(Shape.road(), 10).count(4).drive();
        List<Lap> laps = LapCutter.cut(driven.recording());
        assertThat(laps).hasSize(4).allMatch(Lap::good);
    }

    @Test
    void a_lap_with_much_missing_is_put_aside() {
        Laps.Driven driven = laps(11).drive();
        double[] speed = driven.recording().channel(Quantity.SPEED).toArray();
        Lap third = LapCutter.cut(driven.recording()).get(3);
        int length = (third.to() - third.from()) / 10;
        java.util.Arrays.fill(speed, third.from() + 200, third.from() + 200 + length, Double.NaN);
        Lap holed = LapCutter.cut(driven.recording().with(Quantity.SPEED, Channel.of(speed)))
                .get(3);
        assertThat(holed.kind()).isEqualTo(LapKind.GAPS);
        assertThat(holed.why()).contains("10 %");
    }

    @Test
    void without_speed_and_position_it_says_what_is_missing() {
        Map<Quantity, Channel> channels = new EnumMap<>(Quantity.class);
        channels.put(Quantity.YAW_RATE, Channel.of(new double[100]));
        Recording recording = new Recording("bare", 50.0, channels, List.of());
        assertThatThrownBy(() -> LapCutter.cut(recording))
                .isInstanceOf(MissingQuantity.class)
                .hasMessageContaining("'bare'")
                .hasMessageContaining("channel map");
    }

    private static Recording bare(Laps.Driven driven) {
        return driven.without(
                Quantity.LAP_NUMBER,
                Quantity.LAP_TRIGGER,
                Quantity.LAP_DISTANCE,
                Quantity.POSITION_X,
                Quantity.POSITION_Y);
    }

    private static void assertTimes(List<Lap> laps, Laps.Driven driven, double tolerance) {
        List<Lap> whole =
                laps.stream().filter(lap -> lap.kind() != LapKind.PARTIAL).toList();
        assertThat(whole).hasSize(driven.crossingS().size() - 1);
        for (int i = 0; i < whole.size(); i++) {
            assertThat(whole.get(i).timeS()).isCloseTo(driven.lapTime(i), within(tolerance));
        }
    }
}
