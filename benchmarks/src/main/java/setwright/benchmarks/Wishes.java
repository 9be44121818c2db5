package setwright.benchmarks;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import setwright.benchmarks.table.Group;

/**
 * What the command was asked for.
 *
 * @param task       what is measured
 * @param groups     of the table
 * @param megabytes  of the imported file
 * @param threads    that both sides may use
 * @param rounds     of each pair or point; 0 for the usual number
 * @param quick      to see that all works
 * @param warm       growth in warm processes
 * @param record     growth into the documents
 * @param profile    where the prediction spends its time
 */
record Wishes(
        Task task,
        Set<Group> groups,
        int megabytes,
        int threads,
        int rounds,
        boolean quick,
        boolean warm,
        boolean record,
        boolean profile) {

    private static final int USUAL_MEGABYTES = 20;

    Wishes {
        groups = Set.copyOf(groups);
    }

    /** What can be measured. */
    enum Task {
        TABLE,
        GROWTH,
        STINT,
        LAPS,
        LOGBOOK,
        HELP
    }

    /** What is wrong with the words. */
    static final class Wrong extends Exception {
        private static final long serialVersionUID = 1L;

        Wrong(String message) {
            super(message);
        }
    }

    /** Reads the words of a command line. */
    static Wishes read(List<String> words) throws Wrong {
        Task task = Task.TABLE;
        Set<Group> groups = EnumSet.allOf(Group.class);
        int megabytes = USUAL_MEGABYTES;
        int threads = Runtime.getRuntime().availableProcessors();
        int rounds = 0;
        boolean quick = false;
        boolean warm = false;
        boolean record = false;
        boolean profile = false;
        Deque<String> rest = new ArrayDeque<>(words);
        while (!rest.isEmpty()) {
            String word = rest.pop();
            switch (word) {
                case "--table" -> task = Task.TABLE;
                case "--growth" -> task = Task.GROWTH;
                case "--stint" -> task = Task.STINT;
                case "--laps" -> task = Task.LAPS;
                case "--logbook" -> task = Task.LOGBOOK;
                case "-h", "--help" -> task = Task.HELP;
                case "--only" -> groups = groups(value(word, rest));
                case "--megabytes" -> megabytes = number(word, value(word, rest));
                case "--threads" -> threads = number(word, value(word, rest));
                case "--rounds" -> rounds = number(word, value(word, rest));
                case "--quick" -> quick = true;
                case "--warm" -> warm = true;
                case "--record" -> record = true;
                case "--profile" -> profile = true;
                default -> throw new Wrong("unknown option " + word + "; --help shows them all");
            }
        }
        return new Wishes(task, groups, megabytes, threads, rounds, quick, warm, record, profile);
    }

    private static String value(String option, Deque<String> rest) throws Wrong {
        if (rest.isEmpty()) {
            throw new Wrong(option + " needs a value behind it");
        }
        return rest.pop();
    }

    private static int number(String option, String value) throws Wrong {
        try {
            int number = Integer.parseInt(value);
            if (number >= 1) {
                return number;
            }
        } catch (NumberFormatException e) {
            // said below, as for numbers below one
        }
        throw new Wrong(option + " needs a whole number from 1 on, not " + value);
    }

    private static Set<Group> groups(String value) throws Wrong {
        Set<Group> groups = EnumSet.noneOf(Group.class);
        for (String word : value.split(",", -1)) {
            try {
                groups.add(Group.valueOf(word.strip().toUpperCase(Locale.ROOT)));
            } catch (IllegalArgumentException e) {
                throw new Wrong("--only knows no " + word + "; there are " + Group.words());
            }
        }
        return groups;
    }
}
