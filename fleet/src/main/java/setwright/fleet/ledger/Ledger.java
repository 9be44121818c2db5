package setwright.fleet.ledger;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import setwright.fleet.depot.Depot;
import setwright.fleet.depot.Listed;
import setwright.fleet.depot.TemporaryFolder;
import setwright.intake.columns.ParquetRows;

/*
 * Design note. A batch's tables are renamed into place first and its ledger file last, so a table file without one is of a batch that was
 * not finished and goes at the next start. Rows of a recording that is to be judged again leave the tables before they leave the ledger:
 * whatever moment a run dies at, the ledger then still holds the recording as it was, the next start finds it changed again, and takes
 * it out again. So no table ever holds two rows of one recording for the same thing.
 */

/** Keeps the tables in step with the ledger; only the run that holds the folder may call it. */
public final class Ledger {
    private final Depot out;

    /** Makes one over a folder of tables. */
    public Ledger(Depot out) {
        this.out = out;
    }

    /**
     * Keeps other runs out until it is closed.
     *
     * @param owner  who works here, in words
     * @throws IOException when another run does
     */
    public static Depot.Hold hold(Depot out, String owner) throws IOException {
        return out.hold(OutLayout.HOLD, owner);
    }

    /**
     * Deletes what a run that died has left.
     *
     * @return how many files
     */
    public int sweep() throws IOException {
        out.delete(OutLayout.TRYING);
        Set<String> finished = new TreeSet<>();
        List<String> extra = new ArrayList<>();
        for (Listed file : out.list(OutLayout.LEDGER)) {
            (hidden(file.name()) ? extra : finished).add(file.name());
        }
        for (String table : OutLayout.TABLES) {
            Set<String> there = new HashSet<>();
            out.list(table).forEach(file -> there.add(file.name()));
            // What lost a table is not finished, whoever took it away.
            for (String batch : List.copyOf(finished)) {
                if (!there.contains(OutLayout.sibling(batch, table))) {
                    finished.remove(batch);
                    out.delete(batch);
                }
            }
        }
        for (String table : OutLayout.TABLES) {
            for (Listed file : out.list(table)) {
                if (!finished.contains(OutLayout.sibling(file.name(), OutLayout.LEDGER))) {
                    extra.add(file.name());
                }
            }
        }
        for (String name : extra) {
            out.delete(name);
        }
        return extra.size();
    }

    private static boolean hidden(String name) {
        return name.substring(name.lastIndexOf('/') + 1).startsWith(".");
    }

    /** Returns what came of every recording so far, by its path. */
    public Map<String, Done> read() throws IOException {
        List<String> names = out.list(OutLayout.LEDGER).stream()
                .map(Listed::name)
                .filter(name -> !hidden(name))
                .toList();
        Map<String, Done> done = new TreeMap<>();
        try (TemporaryFolder folder = TemporaryFolder.make("setwright-ledger")) {
            List<Path> files = new ArrayList<>();
            for (String name : names) {
                files.add(out.local(name, folder.path().resolve(String.valueOf(files.size()))));
            }
            ParquetRows.read(
                    files,
                    List.of(
                            LedgerTable.RECORDING,
                            LedgerTable.BYTES,
                            LedgerTable.MODIFIED,
                            LedgerTable.INPUTS,
                            LedgerTable.STATUS,
                            LedgerTable.REASON),
                    (number, row) -> done.put(
                            row.get(0),
                            new Done(
                                    names.get(number),
                                    Long.parseLong(row.get(1)),
                                    Long.parseLong(row.get(2)),
                                    row.get(3),
                                    Status.of(row.get(4)),
                                    row.get(5))));
        }
        return done;
    }

    /**
     * Takes recordings out of all tables.
     *
     * @param paths  with what the ledger holds of each
     */
    public void forget(Map<String, Done> done, Collection<String> paths) throws IOException {
        Map<String, Set<String>> kept = new TreeMap<>();
        Map<String, Set<String>> gone = new TreeMap<>();
        Set<String> leaving = Set.copyOf(paths);
        done.forEach((path, one) -> (leaving.contains(path) ? gone : kept)
                .computeIfAbsent(one.file(), file -> new TreeSet<>())
                .add(path));
        for (Map.Entry<String, Set<String>> batch : gone.entrySet()) {
            if (kept.containsKey(batch.getKey())) {
                thin(batch.getKey(), batch.getValue());
            } else {
                drop(batch.getKey());
            }
        }
    }

    private void drop(String batch) throws IOException {
        out.delete(batch);
        for (String table : OutLayout.TABLES) {
            out.delete(OutLayout.sibling(batch, table));
        }
    }

    private void thin(String batch, Set<String> paths) throws IOException {
        List<String> files = new ArrayList<>();
        OutLayout.TABLES.forEach(table -> files.add(OutLayout.sibling(batch, table)));
        files.add(batch); // the ledger last
        try (TemporaryFolder folder = TemporaryFolder.make("setwright-ledger")) {
            for (String name : files) {
                Path fetched = folder.path().resolve(String.valueOf(files.indexOf(name)));
                Path copy = folder.path().resolve("copy.parquet");
                ParquetRows.copyWithout(out.local(name, fetched), copy, LedgerTable.RECORDING, paths);
                out.put(copy, name);
            }
        }
    }
}
