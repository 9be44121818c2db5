package setwright.core.circuit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class LapJudgeTest {
    @Test
    void a_lap_slower_all_round_is_a_slow_lap() {
        Shape road = Shape.road();
        List<Lap> laps = judged(new Laps(road, 1).count(8).slower(4, 0.0, road.length(), 0.97));
        assertThat(laps.get(4).kind()).isEqualTo(LapKind.SLOW);
        assertThat(laps.get(4).why()).contains("slower all round");
        assertThat(laps.stream().filter(Lap::good)).hasSize(7);
    }

    @Test
    void time_lost_in_one_place_is_a_mistake() {
        List<Lap> laps = judged(new Laps(Shape.road(), 2).count(8).slower(3, 600.0, 700.0, 0.7));
        assertThat(laps.get(3).kind()).isEqualTo(LapKind.MISTAKE);
        assertThat(laps.stream().filter(Lap::good)).hasSize(7);
    }

    @Test
    void a_spin_goes_whatever_the_scatter() {
        List<Lap> laps =
                judged(new Laps(Shape.road(), 3).count(7).unsteady(0.06).slower(5, 600.0, 640.0, 0.3));
        assertThat(laps.get(5).kind()).isEqualTo(LapKind.MISTAKE);
        assertThat(laps.get(5).why()).contains("km/h");
    }

    @Test
    void an_unsteady_driver_keeps_his_laps() {
        int kept = 0;
        int all = 0;
        for (int seed = 1; seed <= 30; seed++) {
            List<Lap> laps = judged(new Laps(Shape.road(), seed).count(7).unsteady(0.04));
            kept += (int) laps.stream().filter(Lap::good).count();
            all += laps.size();
        }
        // At a level of 1 % per stint one lap in 700 may go; robust scales of six laps wander, so allow one in fifty.
        assertThat(kept).isGreaterThanOrEqualTo((int) (0.98 * all));
    }

    @Test
    void a_steady_driver_keeps_his_laps() {
        int kept = 0;
        int all = 0;
        for (int seed = 101; seed <= 130; seed++) {
            List<Lap> laps = judged(new Laps(Shape.road(), seed).count(7));
            kept += (int) laps.stream().filter(Lap::good).count();
            all += laps.size();
        }
        assertThat(kept).isGreaterThanOrEqualTo((int) (0.98 * all));
    }

    private static List<Lap> judged(Laps laps) {
        return StintBuilder.build(laps.drive().recording()).laps();
    }
}
