package setwright.app.server;

/** The port is somebody else's. */
public final class PortTaken extends RuntimeException {
    private static final long serialVersionUID = 1L;

    PortTaken(int port, Throwable cause) {
        super("port " + port + " is taken by another program, or by this one started twice.", cause);
    }
}
