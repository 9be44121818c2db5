package setwright.fleet.depot;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileVisitOption;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.jspecify.annotations.Nullable;

/** Files of this machine, or of one that all machines see under the same name. */
final class LocalDepot implements Depot {
    private final Path root;

    LocalDepot(Path root) {
        this.root = root.toAbsolutePath().normalize();
    }

    @Override
    public String root() {
        return root.toString();
    }

    private Path path(String name) {
        return name.isEmpty() ? root : root.resolve(name);
    }

    private String name(Path file) {
        return StreamSupport.stream(root.relativize(file).spliterator(), false)
                .map(Path::toString)
                .collect(Collectors.joining("/"));
    }

    @Override
    public List<Listed> list(String folder) throws IOException {
        Path from = path(folder);
        if (!Files.exists(from)) {
            return List.of();
        }
        List<Listed> found = new ArrayList<>();
        Files.walkFileTree(
                from, EnumSet.of(FileVisitOption.FOLLOW_LINKS), Integer.MAX_VALUE, new SimpleFileVisitor<Path>() {
                    @Override
                    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
                        found.add(new Listed(
                                name(file),
                                attributes.size(),
                                attributes.lastModifiedTime().toMillis()));
                        return FileVisitResult.CONTINUE;
                    }
                });
        found.sort(Comparator.comparing(Listed::name));
        return found;
    }

    @Override
    public boolean has(String name) {
        return Files.exists(path(name));
    }

    @Override
    public byte[] read(String name) throws IOException {
        return Files.readAllBytes(path(name));
    }

    @Override
    public Path local(String name, Path folder) {
        return path(name);
    }

    @Override
    public void put(Path file, String name) throws IOException {
        put(name, aside -> Files.copy(file, aside));
    }

    @Override
    public void put(byte[] bytes, String name) throws IOException {
        put(name, aside -> Files.write(aside, bytes));
    }

    private interface Writing {
        void write(Path aside) throws IOException;
    }

    /** Aside, to the disk, then renamed; processes of several machines may do it at once. */
    private void put(String name, Writing writing) throws IOException {
        Path target = path(name);
        Path folder = Objects.requireNonNull(target.getParent(), "a file below the root has a folder");
        Files.createDirectories(folder);
        Path aside = folder.resolve("." + target.getFileName() + "." + UUID.randomUUID() + ".part");
        try {
            writing.write(aside);
            try (FileChannel channel = FileChannel.open(aside, StandardOpenOption.WRITE)) {
                channel.force(true);
            }
            Files.move(aside, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(aside);
        }
    }

    @Override
    public void delete(String name) throws IOException {
        Path top = path(name);
        if (!Files.exists(top)) {
            return;
        }
        try (Stream<Path> all = Files.walk(top)) {
            for (Path one : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.deleteIfExists(one);
            }
        }
    }

    /** The system's own lock, which ends with its process whatever becomes of it. */
    @Override
    public Hold hold(String name, String owner) throws IOException {
        Path file = path(name);
        Files.createDirectories(Objects.requireNonNull(file.getParent(), "a file below the root has a folder"));
        FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        try {
            FileLock lock = lock(channel);
            if (lock == null) {
                throw new IOException(
                        Files.readString(file).strip() + " is writing into " + root + ". Wait until that run is over");
            }
            channel.truncate(0);
            channel.write(ByteBuffer.wrap(owner.getBytes(StandardCharsets.UTF_8)), 0);
        } catch (IOException e) {
            channel.close();
            throw e;
        }
        return channel::close;
    }

    private static @Nullable FileLock lock(FileChannel channel) throws IOException {
        try {
            return channel.tryLock();
        } catch (OverlappingFileLockException e) {
            return null; // by this very process
        }
    }
}
