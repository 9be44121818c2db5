package setwright.app.fleet;

import java.io.IOException;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.function.Consumer;

/** Works on many recordings; a service, so that the program runs without the libraries that it needs. */
public interface FleetEngine {
    /**
     * Judges what is not judged yet.
     *
     * @param told  takes news of the work, one sentence each
     * @throws IOException when the tree cannot be read, the tables cannot be written, or another run is writing them
     */
    FleetCount diagnose(FleetRequest request, Consumer<String> told) throws IOException;

    /**
     * Answers what a school asks.
     *
     * @return text or JSON
     * @throws IOException when the tables cannot be read
     */
    String summary(SummaryRequest request) throws IOException;

    /** Returns the engine; empty where its libraries are not there. */
    static Optional<FleetEngine> find() {
        return ServiceLoader.load(FleetEngine.class).findFirst();
    }
}
