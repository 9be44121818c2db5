package setwright.benchmarks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import setwright.benchmarks.table.Group;

/** What the command line says. */
final class WishesTest {

    @Test
    void withoutAWordTheWholeTable() throws Wishes.Wrong {
        Wishes wishes = Wishes.read(List.of());
        assertThat(wishes.task()).isEqualTo(Wishes.Task.TABLE);
        assertThat(wishes.groups()).containsExactlyInAnyOrder(Group.values());
        assertThat(wishes.megabytes()).isEqualTo(20);
        assertThat(wishes.threads()).isEqualTo(Runtime.getRuntime().availableProcessors());
    }

    @Test
    void eachWordLandsInItsPlace() throws Wishes.Wrong {
        Wishes wishes = Wishes.read(
                List.of("--only", "import,page", "--megabytes", "500", "--threads", "1", "--rounds", "7", "--quick"));
        assertThat(wishes.groups()).containsExactlyInAnyOrder(Group.IMPORT, Group.PAGE);
        assertThat(wishes.megabytes()).isEqualTo(500);
        assertThat(wishes.threads()).isEqualTo(1);
        assertThat(wishes.rounds()).isEqualTo(7);
        assertThat(wishes.quick()).isTrue();
        Wishes growth = Wishes.read(List.of("--growth", "--warm", "--record"));
        assertThat(growth.task()).isEqualTo(Wishes.Task.GROWTH);
        assertThat(growth.warm()).isTrue();
        assertThat(growth.record()).isTrue();
        assertThat(Wishes.read(List.of("--stint", "--profile")).profile()).isTrue();
    }

    @Test
    void wrongWordsAreNamed() {
        assertThatThrownBy(() -> Wishes.read(List.of("--slow"))).hasMessageContaining("--slow");
        assertThatThrownBy(() -> Wishes.read(List.of("--rounds", "0"))).hasMessageContaining("--rounds");
        assertThatThrownBy(() -> Wishes.read(List.of("--megabytes"))).hasMessageContaining("--megabytes");
        assertThatThrownBy(() -> Wishes.read(List.of("--only", "moon"))).hasMessageContaining("kernels");
    }
}
