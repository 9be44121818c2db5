package setwright.fleet.depot;

import java.io.IOException;
import java.net.URI;
import java.util.Arrays;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.FileStatus;
import org.apache.hadoop.fs.Path;
import org.apache.hadoop.fs.RawLocalFileSystem;

/** A file system that only Hadoop knows how to reach; its files lie on this machine. */
public final class Elsewhere extends RawLocalFileSystem {
    public static final String SCHEME = "elsewhere";

    @Override
    public URI getUri() {
        return URI.create(SCHEME + ":///");
    }

    @Override
    public String getScheme() {
        return SCHEME;
    }

    /** Without permissions, which are looked up by the names of this machine's files. */
    private static FileStatus plain(FileStatus status) {
        return new FileStatus(
                status.getLen(),
                status.isDirectory(),
                1,
                status.getBlockSize(),
                status.getModificationTime(),
                status.getPath());
    }

    @Override
    public FileStatus getFileStatus(Path path) throws IOException {
        return plain(super.getFileStatus(path));
    }

    @Override
    public FileStatus[] listStatus(Path path) throws IOException {
        return Arrays.stream(super.listStatus(path)).map(Elsewhere::plain).toArray(FileStatus[]::new);
    }

    public static Configuration configuration() {
        Configuration configuration = new Configuration(false);
        configuration.set("fs." + SCHEME + ".impl", Elsewhere.class.getName());
        return configuration;
    }
}
