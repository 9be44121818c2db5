package setwright.app.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import setwright.app.example.Example;
import setwright.core.handling.CornerPass;
import setwright.core.handling.HandsEvent;
import setwright.core.handling.HandsEvent.Kind;
import setwright.core.judgement.Diagnosis;
import setwright.core.slip.AxleEvidence;
import setwright.core.slip.HandsReading;
import setwright.core.slip.HandsReading.Cause;

final class ToldHandsTest {
    private static final Diagnosis FOUND = Example.answer().diagnosis();

    @Test
    void holdsAndWindingOnAreToldWithTheirAxleOnly() {
        CornerPass wound = FOUND.passes().stream()
                .filter(pass -> pass.hands().stream().anyMatch(event -> event.kind() == Kind.WIND_ON))
                .findFirst()
                .orElseThrow();
        HandsEvent event = wound.hands().stream()
                .filter(found -> found.kind() == Kind.WIND_ON)
                .findFirst()
                .orElseThrow();

        assertThat(told(read(wound, event, Cause.DRIVER))).doesNotContain(Kind.WIND_ON, Kind.HOLD);
        assertThat(told(read(wound, event, Cause.FRONT))).containsOnlyOnce(Kind.WIND_ON);
    }

    @Test
    void correctionsAreToldAsOftenAsTheTraceShowsThem() {
        assertThat(told(FOUND)).contains(Kind.CORRECTION);
        assertThat(told(FOUND).stream().filter(kind -> kind == Kind.CORRECTION).count())
                .isEqualTo(kinds(FOUND.passes().stream())
                        .filter(kind -> kind == Kind.CORRECTION)
                        .count());
    }

    private static Diagnosis read(CornerPass pass, HandsEvent event, Cause cause) {
        Optional<AxleEvidence> axles = FOUND.axles();
        AxleEvidence before = axles.orElseThrow();
        return FOUND.with(new AxleEvidence(
                before.trace(),
                before.front(),
                before.rear(),
                before.wheels(),
                List.of(new HandsReading(pass.lap(), pass.corner(), event, cause, 0.8, 0.4))));
    }

    private static List<Kind> told(Diagnosis diagnosis) {
        return kinds(ToldHands.of(diagnosis).stream()).toList();
    }

    private static Stream<Kind> kinds(Stream<CornerPass> passes) {
        return passes.flatMap(pass -> pass.hands().stream()).map(HandsEvent::kind);
    }
}
