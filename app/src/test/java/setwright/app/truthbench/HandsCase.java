package setwright.app.truthbench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import setwright.core.car.CarSheet;
import setwright.core.circuit.Stint;
import setwright.core.circuit.StintBuilder;
import setwright.core.handling.CornerPasses;
import setwright.core.handling.HandlingTrace;
import setwright.core.handling.HandlingTracer;
import setwright.core.simulation.driver.DrivenStint;
import setwright.core.simulation.logger.Logger;
import setwright.core.slip.AxleEvidence;
import setwright.intake.RecordingReader;
import setwright.intake.car.CarSheetReader;

/** A case of the bench of which only the hands are asked. */
final class HandsCase {
    private HandsCase() {}

    /**
     * Drives, logs and reads a case.
     *
     * @throws Driven.Undriveable when the car was lost in every mood
     */
    static HandsTally tally(BenchCase drawn) {
        Driven driven = Driven.recorded(drawn);
        try (CaseFolder folder = CaseFolder.of(drawn, Optional.empty())) {
            return tally(
                    driven.recorded(),
                    CaseFiles.write(
                            folder.path(),
                            "stint1",
                            driven.last(),
                            Logger.log(
                                    driven.recorded().history(),
                                    driven.sheet(),
                                    driven.last().logger())));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Reads a recording as for a user and holds the hands in it against what they did. */
    static HandsTally tally(DrivenStint driven, CaseFiles files) {
        CarSheet sheet = CarSheetReader.read(files.sheet());
        Stint stint = StintBuilder.build(RecordingReader.read(files.recording(), Optional.empty(), Optional.of(sheet))
                .recording());
        HandlingTrace trace = HandlingTracer.trace(stint, sheet);
        AxleEvidence axles = AxleEvidence.of(stint, trace, sheet).with(stint, CornerPasses.of(stint, trace, sheet));
        return HandsTally.of(driven, stint, List.copyOf(axles.hands()), sheet.wheelbaseM());
    }
}
