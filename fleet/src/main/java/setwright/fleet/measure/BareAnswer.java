package setwright.fleet.measure;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What the bare core found, on its way from its process.
 *
 * @param all             recordings of the tree
 * @param ends            what came of each that was judged, in the ledger's words, by path
 * @param laterS          what those after the first half of them took, s
 * @param laterProcessorS  likewise on all processors together, s
 */
record BareAnswer(int all, Map<String, String> ends, double laterS, double laterProcessorS) {
    BareAnswer {
        ends = Map.copyOf(ends);
    }

    /** Returns how many of so many are the first half; what a fresh process pays once is paid by then. */
    static int half(int sampled) {
        return (sampled + 1) / 2;
    }

    /**
     * Returns what all recordings would have taken: those that were not judged count like those of the second half.
     *
     * @param sample  what the process took
     */
    Taken scaled(Taken sample) {
        int later = ends.size() - half(ends.size());
        int more = all - ends.size();
        if (more == 0 || later == 0) {
            return sample;
        }
        return new Taken(
                sample.wallS() + more * laterS / later,
                sample.processorS() + more * laterProcessorS / later,
                sample.mostBytes());
    }

    void write(Path file) throws IOException {
        List<String> lines = new ArrayList<>(List.of(all + " " + laterS + " " + laterProcessorS));
        ends.forEach((path, end) -> lines.add(path + "\t" + end));
        Files.write(file, lines);
    }

    static BareAnswer read(Path file) throws IOException {
        List<String> lines = Files.readAllLines(file);
        String[] head = lines.get(0).split(" ", -1);
        Map<String, String> ends = new TreeMap<>();
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split("\t", -1);
            ends.put(cells[0], cells[1]);
        }
        return new BareAnswer(
                Integer.parseInt(head[0]), ends, Double.parseDouble(head[1]), Double.parseDouble(head[2]));
    }
}
