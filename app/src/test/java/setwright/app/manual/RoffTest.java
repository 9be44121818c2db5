package setwright.app.manual;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Expected forms after man(7) and groff(7), section "Escape sequences" (value from memory). */
final class RoffTest {
    @Test
    void aLineOfTextNeverBecomesAMacro() {
        assertThat(new Roff().line(".SH no heading").line("'tis").line("plain"))
                .hasToString("\\&.SH no heading\n\\&'tis\nplain\n");
    }

    @Test
    void aMinusCanBeCopiedIntoATerminalAndABackslashIsSeen() {
        assertThat(new Roff().line("--car a\\b")).hasToString("\\-\\-car a\\eb\n");
    }

    @Test
    void aHeadingMayHoldQuotes() {
        assertThat(new Roff().section("the \"car\"")).hasToString(".SH \"the \\(dqcar\\(dq\"\n");
    }

    @Test
    void aTagStandsAboveItsText() {
        assertThat(new Roff().tagged("-x", List.of("one", "two"))).hasToString(".TP\n\\fB\\-x\\fR\none\n.IP\ntwo\n");
    }
}
