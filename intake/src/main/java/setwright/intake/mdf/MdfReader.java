package setwright.intake.mdf;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import setwright.intake.problem.InputProblem;
import setwright.intake.table.Table;
import setwright.intake.table.TableColumn;

/** Reads the tables of a measurement file: structure first, then counts, then memory, then the data in one pass. */
final class MdfReader {
    /** Half of the memory may hold the tables; the rest is for working on them. */
    private static final double SHARE_OF_MEMORY = 0.5;

    private static final int FEWEST_ROWS = 2;

    private final MdfFile file;
    private final boolean countsMissing;
    private final Map<Long, GroupPlan> plans = new HashMap<>();
    private final Map<Long, Set<String>> names = new HashMap<>();
    private final LeftOut leftOut = new LeftOut();

    private MdfReader(MdfFile file) {
        this.file = file;
        this.countsMissing = Identification.of(file).countsMissing();
    }

    /**
     * Reads a file.
     *
     * @return one table for each channel group with a time
     * @throws InputProblem when it is damaged, or holds none
     */
    static List<Table> read(Path path) {
        try (MdfFile file = MdfFile.open(path)) {
            return new MdfReader(file).tables();
        }
    }

    private List<Table> tables() {
        List<DataGroupPlan> all = StructureReader.read(file, leftOut);
        all.forEach(data -> data.groups().forEach(group -> plans.put(group.at(), group)));
        boolean timed = plans.values().stream().anyMatch(this::hasTime);
        Predicate<GroupPlan> wanted =
                timed ? this::hasTime : group -> !group.channels().isEmpty();
        List<DataGroupReader> readers = all.stream()
                .filter(data -> data.groups().stream().anyMatch(wanted))
                .map(data -> new DataGroupReader(file, data, countsMissing))
                .toList();
        checkMemory(readers, wanted);
        List<GroupColumns> read = new ArrayList<>();
        for (DataGroupReader reader : readers) {
            List<Optional<GroupColumns>> columns = new ArrayList<>();
            for (int i = 0; i < reader.plan().groups().size(); i++) {
                columns.add(columns(reader.plan().groups().get(i), reader.rows(i), wanted));
            }
            reader.read(columns);
            columns.forEach(some -> some.ifPresent(read::add));
        }
        all.stream()
                .flatMap(data -> data.groups().stream())
                .filter(wanted.negate())
                .forEach(group -> leftOut(group, "nothing says when they were recorded"));
        return assembled(read);
    }

    /** A group has time when it or the group that it shares the master of has an axis of time. */
    private boolean hasTime(GroupPlan group) {
        GroupPlan master = group.masterGroup() == Block.NIL ? group : plans.get(group.masterGroup());
        return !group.channels().isEmpty() && master != null && master.hasTime();
    }

    private void leftOut(GroupPlan group, String why) {
        group.channels().stream()
                .filter(channel -> channel.master() == ChannelPlan.Master.NONE)
                .forEach(channel -> leftOut.add(channel.header(), why));
    }

    private Optional<GroupColumns> columns(GroupPlan group, long rows, Predicate<GroupPlan> wanted) {
        if (!wanted.test(group)) {
            return Optional.empty();
        }
        if (rows < FEWEST_ROWS) {
            leftOut(group, "there are no records of them, or only one");
            return Optional.empty();
        }
        Set<String> taken = names.computeIfAbsent(owner(group), key -> new HashSet<>());
        return Optional.of(new GroupColumns(group.named(taken), (int) rows));
    }

    private static long owner(GroupPlan group) {
        return group.masterGroup() == Block.NIL ? group.at() : group.masterGroup();
    }

    private void checkMemory(List<DataGroupReader> readers, Predicate<GroupPlan> wanted) {
        double most = SHARE_OF_MEMORY * Runtime.getRuntime().maxMemory();
        double bytes = 0.0;
        for (DataGroupReader reader : readers) {
            for (int i = 0; i < reader.plan().groups().size(); i++) {
                GroupPlan group = reader.plan().groups().get(i);
                long rows = wanted.test(group) ? reader.rows(i) : 0;
                bytes += rows > 0 ? GroupColumns.bytes(group, rows) : 0.0;
                if (rows < 0 || rows > Integer.MAX_VALUE - 8 || bytes > most) {
                    throw InputProblem.in(file.name())
                            .expected("a recording that fits into memory")
                            .found(Long.toUnsignedString(rows) + " records of "
                                    + group.channels().size() + " channels")
                            .advice("Cut the file into shorter recordings, or give the program more memory (-Xmx).")
                            .problem();
                }
            }
        }
    }

    /** One table for each axis: the group that has it, then those that share it. */
    private List<Table> assembled(List<GroupColumns> read) {
        Map<Long, List<TableColumn>> byOwner = new LinkedHashMap<>();
        read.stream()
                .filter(group -> group.plan().masterGroup() == Block.NIL)
                .forEach(group -> byOwner.put(group.plan().at(), new ArrayList<>(group.columns())));
        for (GroupColumns group : read) {
            if (group.plan().masterGroup() != Block.NIL) {
                List<TableColumn> owner = byOwner.getOrDefault(group.plan().masterGroup(), List.of());
                List<TableColumn> columns = group.columns();
                if (owner.isEmpty() || owner.get(0).size() != columns.get(0).size()) {
                    throw file.damaged(
                            group.plan().at(), "as many records as the group has whose time it shares", "others");
                }
                owner.addAll(columns);
            }
        }
        List<List<TableColumn>> filled = new ArrayList<>();
        for (List<TableColumn> columns : byOwner.values()) {
            if (columns.stream().skip(1).anyMatch(column -> column.finiteCount() > 0)) {
                filled.add(columns);
            } else {
                columns.stream().skip(1).forEach(column -> leftOut.add(column.header(), "no record holds a number"));
            }
        }
        if (filled.isEmpty()) {
            throw InputProblem.in(file.name())
                    .expected("channels of numbers with their time")
                    .found("none"
                            + leftOut.remarks().stream()
                                    .map(text -> " (" + text + ")")
                                    .findFirst()
                                    .orElse(""))
                    .advice("Have the logger's program save the recording again, with its channels decoded.")
                    .problem();
        }
        List<String> remarks = new ArrayList<>(leftOut.remarks());
        if (countsMissing) {
            remarks.add("The logger did not finish the file; its records were counted from the data.");
        }
        List<Table> tables = new ArrayList<>();
        for (List<TableColumn> columns : filled) {
            tables.add(new Table(file.name(), columns, 1, tables.isEmpty() ? remarks : List.of()));
        }
        return tables;
    }
}
