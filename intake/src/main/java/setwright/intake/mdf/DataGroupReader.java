package setwright.intake.mdf;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Reads the records of one data group; its counts of records are checked, or made, before anything is allocated for them. */
final class DataGroupReader {
    private final MdfFile file;
    private final DataGroupPlan plan;
    private final boolean countsMissing;
    private final DataPieces pieces;
    private final long[] counts;

    /**
     * Counts.
     *
     * @param countsMissing  tells that the file's counts mean nothing
     */
    DataGroupReader(MdfFile file, DataGroupPlan plan, boolean countsMissing) {
        this.file = file;
        this.plan = plan;
        this.countsMissing = countsMissing;
        this.pieces = DataPieces.of(file, plan.data());
        this.counts = plan.idBytes() == 0 ? sorted() : unsorted();
    }

    DataGroupPlan plan() {
        return plan;
    }

    /** Returns how many records the group in this place has. */
    long rows(int group) {
        return counts[group];
    }

    private long[] sorted() {
        if (plan.groups().isEmpty()) {
            return new long[0];
        }
        SortedRecords records = new SortedRecords(file, plan.groups().get(0), pieces);
        if (!countsMissing) {
            records.check();
        }
        return new long[] {
            countsMissing ? records.count() : plan.groups().get(0).cycles()
        };
    }

    private long[] unsorted() {
        UnsortedRecords records = new UnsortedRecords(file, plan, pieces);
        if (countsMissing) {
            return records.walk((group, bytes, from) -> {}, true);
        }
        long left = records.bytes();
        long[] said = plan.groups().stream().mapToLong(GroupPlan::cycles).toArray();
        for (int i = 0; i < said.length; i++) {
            GroupPlan group = plan.groups().get(i);
            int least = plan.idBytes() + (group.variable() ? 4 : group.layout().recordBytes());
            if (said[i] < 0 || said[i] > left / least) {
                throw file.damaged(
                        group.at(),
                        Long.toUnsignedString(said[i]) + " records of at least " + least
                                + " bytes for the channel group",
                        "data for fewer");
            }
            left -= said[i] * least;
        }
        return said;
    }

    /**
     * Reads the records.
     *
     * @param columns  where those of each group go, in their order; empty for those that nobody wants
     */
    void read(List<Optional<GroupColumns>> columns) {
        if (plan.idBytes() == 0) {
            columns.get(0)
                    .ifPresent(
                            into -> new SortedRecords(file, plan.groups().get(0), pieces).read(into, (int) counts[0]));
            return;
        }
        long[] taken = new long[counts.length];
        long[] found = new UnsortedRecords(file, plan, pieces)
                .walk(
                        (group, bytes, from) -> {
                            if (taken[group]++ >= counts[group]) {
                                throw otherCount(group, "more");
                            }
                            columns.get(group).ifPresent(into -> into.add(bytes, from));
                        },
                        countsMissing);
        if (!Arrays.equals(found, counts)) {
            throw otherCount(Arrays.mismatch(found, counts), "others");
        }
        columns.forEach(into -> into.ifPresent(GroupColumns::flush));
    }

    private RuntimeException otherCount(int group, String found) {
        return file.damaged(plan.groups().get(group).at(), counts[group] + " records for the channel group", found);
    }
}
