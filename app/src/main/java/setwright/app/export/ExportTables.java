package setwright.app.export;

import java.util.List;
import java.util.Optional;

/** All tables that can be taken out, in the order in which they are told of. */
public final class ExportTables {
    /** To add a table, add a line. */
    public static final List<Table<?>> ALL = List.of(
            new LapsTable(),
            new PassesTable(),
            new PhasesTable(),
            new FindingsTable(),
            new FaultsTable(),
            new ProposalsTable(),
            new ProposalPhasesTable(),
            new ProposalCornersTable(),
            new TrialsTable(),
            new TrialPhasesTable(),
            new ChannelsTable(),
            new CircuitTable());

    private ExportTables() {}

    /** Returns the table of that name. */
    public static Optional<Table<?>> named(String name) {
        return ALL.stream()
                .filter(table -> table.name().equals(name))
                .<Table<?>>map(table -> table)
                .findFirst();
    }

    /** Returns all names. */
    public static List<String> names() {
        return ALL.stream().<String>map(Table::name).toList();
    }
}
