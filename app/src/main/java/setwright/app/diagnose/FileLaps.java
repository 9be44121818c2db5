package setwright.app.diagnose;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;
import setwright.app.evidence.Answer;
import setwright.intake.car.CarSheetReader;

/**
 * Laps in a file.
 *
 * @param diagnoser  that reads and judges
 * @param request    naming the file and its companions
 */
public record FileLaps(Diagnoser diagnoser, DiagnoseRequest request) implements LapSource {
    @Override
    public String name() {
        return request.recording().name();
    }

    @Override
    public NamedCar car() throws IOException {
        Optional<Path> file = request.car();
        if (file.isPresent() && !Files.exists(file.get())) {
            throw new NoSuchFileException(file.get().toString());
        }
        return new NamedCar(
                file.map(path -> String.valueOf(path.getFileName())).orElse("car sheet"),
                file.map(CarSheetReader::read).orElseGet(CarSheetReader::nothingKnown));
    }

    @Override
    public Answer answer(Progress progress) throws IOException {
        return diagnoser.diagnose(request, progress);
    }
}
