package setwright.app.evidence;

import java.util.List;
import setwright.core.car.CarSheet;
import setwright.core.judgement.Diagnosis;

/**
 * A diagnosis with what was known and understood before it.
 *
 * @param diagnosis  the whole answer
 * @param car        what is known of the car
 * @param channels   how each column of the file was understood; empty when there was no file
 * @param remarks    what was odd, left out or taken otherwise than its header says, each in a sentence
 */
public record Answer(Diagnosis diagnosis, CarSheet car, List<ChannelNote> channels, List<String> remarks) {
    public Answer {
        channels = List.copyOf(channels);
        remarks = List.copyOf(remarks);
    }
}
