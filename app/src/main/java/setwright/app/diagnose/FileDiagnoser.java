package setwright.app.diagnose;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;
import setwright.app.circuit.CircuitFile;
import setwright.app.evidence.Answer;
import setwright.app.evidence.ChannelNote;
import setwright.app.files.WholeFile;
import setwright.core.baseline.Baseline;
import setwright.core.car.CarSheet;
import setwright.core.circuit.Stint;
import setwright.core.circuit.StintBuilder;
import setwright.core.judgement.Diagnosis;
import setwright.intake.Intake;
import setwright.intake.RecordingReader;
import setwright.intake.car.CarSheetReader;
import setwright.intake.gather.RecordingFiles;
import setwright.intake.map.ChannelMapFile;

/** Reads a recording and its companions from files and has it judged. */
public final class FileDiagnoser implements Diagnoser {
    private final Judge judge;

    /** Makes one with the judgement it asks. */
    public FileDiagnoser(Judge judge) {
        this.judge = judge;
    }

    @Override
    public Answer diagnose(DiagnoseRequest request, Progress progress) throws IOException {
        for (Path file : request.recording().all()) {
            mustExist(Optional.of(file));
        }
        mustExist(request.car());
        mustExist(request.map());
        mustExist(request.circuit());
        mustExist(request.baseline().map(BaselineFile::recording));
        mustExist(request.baseline().flatMap(BaselineFile::car));
        progress.step("car sheet and recording");
        Optional<CarSheet> given = request.car().map(CarSheetReader::read);
        CarSheet car = given.orElseGet(CarSheetReader::nothingKnown);
        Intake intake = RecordingReader.read(request.recording(), request.map().map(ChannelMapFile::read), given);
        progress.step("laps and corners");
        Stint stint = request.circuit().isPresent()
                ? StintBuilder.build(
                        intake.recording(), CircuitFile.read(request.circuit().get()))
                : StintBuilder.build(intake.recording());
        progress.step("balance and driving");
        Optional<Baseline> baseline = request.baseline().isPresent()
                ? Optional.of(baseline(request.baseline().get(), request, stint, car))
                : Optional.empty();
        Diagnosis diagnosis = judge.diagnose(stint, car, baseline);
        progress.step("writing");
        if (request.saveCircuit().isPresent()) {
            CircuitFile.write(request.saveCircuit().get(), stint.circuit());
        }
        if (request.writeMap().isPresent()) {
            WholeFile.write(request.writeMap().get(), ChannelMapFile.write(intake.proposal()));
        }
        return new Answer(diagnosis, car, ChannelNote.of(intake.proposal()), intake.remarks());
    }

    private static Baseline baseline(BaselineFile file, DiagnoseRequest request, Stint stint, CarSheet car)
            throws IOException {
        CarSheet sheet = file.car().map(CarSheetReader::read).orElse(car);
        Intake intake = RecordingReader.read(
                RecordingFiles.of(file.recording()), request.map().map(ChannelMapFile::read), Optional.of(sheet));
        String name = String.valueOf(file.recording().getFileName());
        Baselines.mustBeOfOneCar(name, sheet, car);
        return Baselines.of(name, StintBuilder.build(intake.recording(), stint.circuit()), sheet);
    }

    private static void mustExist(Optional<Path> file) throws NoSuchFileException {
        if (file.isPresent() && !Files.exists(file.get())) {
            throw new NoSuchFileException(file.get().toString());
        }
    }
}
