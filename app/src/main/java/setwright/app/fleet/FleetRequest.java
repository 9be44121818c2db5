package setwright.app.fleet;

import java.io.Serializable;

/**
 * Which recordings are to be judged, where the tables go and who does it.
 *
 * @param in         root of the tree of recordings: a folder, or an address that Hadoop's file systems know
 * @param out        root of the tables, likewise
 * @param master     of the cluster, as Spark names it; not looked at with workers
 * @param workers    processes on this machine, each with one core; 0 for none
 * @param limit      recordings judged at most in this run
 * @param again      which recordings that are judged already are judged again
 * @param assumeCar  whether a recording without a car sheet is judged on an assumed car
 */
public record FleetRequest(String in, String out, String master, int workers, int limit, Again again, boolean assumeCar)
        implements Serializable {
    /** Which recordings are judged again though their files are as they were. */
    public enum Again {
        /** None. */
        NONE,
        /** Those that failed. */
        FAILED,
        /** All. */
        ALL
    }
}
