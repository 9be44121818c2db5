package setwright.app.server.job;

/**
 * How far a piece of work has come, at one moment.
 *
 * @param id        number, in the order of asking
 * @param title     what it is, for people
 * @param state     where it stands
 * @param step      what is being done; empty before it begins
 * @param done      steps that are over
 * @param steps     steps in all
 * @param stopping  whether it was told to stop and has not yet
 * @param message   what came of it or went wrong; empty until then
 * @param link      where on the page its result is; empty until there is one
 */
public record Job(
        long id,
        String title,
        State state,
        String step,
        int done,
        int steps,
        boolean stopping,
        String message,
        String link) {

    /** Where a job stands. */
    public enum State {
        WAITING,
        RUNNING,
        DONE,
        FAILED,
        STOPPED;

        /** Tells whether nothing more will happen. */
        public boolean over() {
            return this != WAITING && this != RUNNING;
        }
    }

    static Job waiting(long id, String title, int steps) {
        return new Job(id, title, State.WAITING, "", 0, steps, false, "", "");
    }

    Job running() {
        return new Job(id, title, State.RUNNING, step, 0, steps, stopping, message, link);
    }

    Job at(String newStep, int newDone) {
        return new Job(id, title, state, newStep, newDone, Math.max(steps, newDone + 1), stopping, message, link);
    }

    Job ready(String newMessage, String newLink) {
        return new Job(id, title, state, step, done, steps, stopping, newMessage, newLink);
    }

    Job toldToStop() {
        return new Job(id, title, state, step, done, steps, true, message, link);
    }

    Job over(State newState, String newMessage) {
        return new Job(id, title, newState, "", newState == State.DONE ? steps : done, steps, false, newMessage, link);
    }
}
