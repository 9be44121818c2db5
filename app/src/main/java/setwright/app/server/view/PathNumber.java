package setwright.app.server.view;

import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;

/** The number that an address names something by. */
public final class PathNumber {
    private PathNumber() {}

    /**
     * Reads it.
     *
     * @param name  of the part of the address
     * @param what  has such a number
     * @throws NotFoundResponse when it is none
     */
    public static long of(Context request, String name, String what) {
        String text = request.pathParam(name);
        if (!text.matches("[0-9]{1,18}")) {
            throw new NotFoundResponse("There is no " + what + " of that number.");
        }
        return Long.parseLong(text);
    }
}
