package setwright.fleet.depot;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import org.apache.hadoop.conf.Configuration;

/** Finds what serves an address. */
public final class Depots {
    private Depots() {}

    /**
     * Opens a depot.
     *
     * @param address        a folder, {@code file:} with one, or an address with another scheme, which is Hadoop's
     * @param configuration  of Hadoop's file systems
     * @throws IOException when no file system serves it
     */
    public static Depot open(String address, Configuration configuration) throws IOException {
        if (!address.matches("[A-Za-z][A-Za-z0-9+.-]+:.*")) {
            return new LocalDepot(Path.of(address));
        }
        if (address.startsWith("file:")) {
            return new LocalDepot(Path.of(URI.create(address).getPath()));
        }
        return new HadoopDepot(address, configuration);
    }

    /** Tells whether an address is that of a folder of this machine. */
    public static boolean isLocal(Depot depot) {
        return depot instanceof LocalDepot;
    }
}
