package setwright.fleet.depot;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.UUID;
import org.apache.hadoop.conf.Configuration;
import org.apache.hadoop.fs.FileAlreadyExistsException;
import org.apache.hadoop.fs.FileStatus;
import org.apache.hadoop.fs.FileSystem;
import org.apache.hadoop.fs.LocatedFileStatus;
import org.apache.hadoop.fs.Path;
import org.apache.hadoop.fs.RemoteIterator;

/** Files wherever Hadoop's file systems reach. */
final class HadoopDepot implements Depot {
    private final FileSystem files;
    private final Path root;

    HadoopDepot(String root, Configuration configuration) throws IOException {
        Path named = new Path(root);
        this.files = named.getFileSystem(configuration);
        this.root = files.makeQualified(named);
    }

    @Override
    public String root() {
        return root.toString();
    }

    private Path path(String name) {
        return name.isEmpty() ? root : new Path(root, new Path(null, null, name)); // a colon in a name is no scheme
    }

    @Override
    public List<Listed> list(String folder) throws IOException {
        List<Listed> found = new ArrayList<>();
        int above = root.toUri().getPath().replaceFirst("/$", "").length() + 1;
        try {
            for (RemoteIterator<LocatedFileStatus> all = files.listFiles(path(folder), true); all.hasNext(); ) {
                FileStatus one = all.next();
                found.add(new Listed(
                        one.getPath().toUri().getPath().substring(above), one.getLen(), one.getModificationTime()));
            }
        } catch (FileNotFoundException e) {
            if (has(folder)) {
                throw e;
            }
        }
        found.sort(Comparator.comparing(Listed::name));
        return found;
    }

    @Override
    public boolean has(String name) throws IOException {
        return files.exists(path(name));
    }

    @Override
    public byte[] read(String name) throws IOException {
        try (InputStream in = files.open(path(name))) {
            return in.readAllBytes();
        }
    }

    @Override
    public java.nio.file.Path local(String name, java.nio.file.Path folder) throws IOException {
        java.nio.file.Path copy = folder.resolve(name.substring(name.lastIndexOf('/') + 1));
        Files.createDirectories(folder);
        try (InputStream in = files.open(path(name))) {
            Files.copy(in, copy);
        }
        return copy;
    }

    @Override
    public void put(java.nio.file.Path file, String name) throws IOException {
        put(name, out -> Files.copy(file, out));
    }

    @Override
    public void put(byte[] bytes, String name) throws IOException {
        put(name, out -> out.write(bytes));
    }

    private interface Writing {
        void write(OutputStream out) throws IOException;
    }

    /** Aside, then renamed. Some file systems refuse to rename onto another file, so that one goes first. */
    private void put(String name, Writing writing) throws IOException {
        Path target = path(name);
        Path aside = new Path(target.getParent(), "." + target.getName() + "." + UUID.randomUUID() + ".part");
        try {
            try (OutputStream out = files.create(aside, false)) {
                writing.write(out);
            }
            if (!files.rename(aside, target)) {
                files.delete(target, false);
                if (!files.rename(aside, target)) {
                    throw new IOException("cannot write " + target + ": it cannot be renamed to that name");
                }
            }
        } finally {
            files.delete(aside, false);
        }
    }

    @Override
    public void delete(String name) throws IOException {
        files.delete(path(name), true);
    }

    /** A file that only one can make. It outlives a run that is killed, and then has to be deleted by hand. */
    @Override
    public Hold hold(String name, String owner) throws IOException {
        Path file = path(name);
        try (OutputStream out = files.create(file, false)) {
            out.write(owner.getBytes(StandardCharsets.UTF_8));
        } catch (FileAlreadyExistsException e) {
            throw taken(name, e);
        } catch (IOException e) {
            throw files.exists(file) ? taken(name, e) : e;
        }
        return () -> files.delete(file, false);
    }

    private IOException taken(String name, IOException cause) throws IOException {
        return new IOException(
                new String(read(name), StandardCharsets.UTF_8).strip() + " is writing into " + root
                        + ". Wait until that run is over; if it was killed, delete " + path(name),
                cause);
    }
}
