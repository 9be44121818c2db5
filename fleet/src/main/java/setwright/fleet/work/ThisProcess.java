package setwright.fleet.work;

import java.net.InetAddress;
import java.net.UnknownHostException;

/** Who works here, in words that tell people where to look. */
public final class ThisProcess {
    private ThisProcess() {}

    /** Returns the machine and the number of the process. */
    public static String words() {
        String host;
        try {
            host = InetAddress.getLocalHost().getHostName();
        } catch (UnknownHostException e) {
            host = "this machine";
        }
        return host + " (process " + ProcessHandle.current().pid() + ")";
    }
}
