package setwright.intake;

import java.util.List;
import setwright.core.recording.Recording;
import setwright.intake.map.Proposal;

/**
 * A recording with the story of how it came in.
 *
 * @param recording  channels in SI units on a uniform time base; its calibrations say what was corrected
 * @param proposal   the map that was used and the reasons for each entry
 * @param remarks    what was understood, left out, or could not be told, each in a sentence
 */
public record Intake(Recording recording, Proposal proposal, List<String> remarks) {
    public Intake {
        remarks = List.copyOf(remarks);
    }
}
