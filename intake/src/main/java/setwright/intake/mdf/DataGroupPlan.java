package setwright.intake.mdf;

import java.util.List;

/**
 * A data group: channel groups that share their data.
 *
 * @param at       where its block lies
 * @param idBytes  length of the record id in front of each record: 0, 1, 2, 4 or 8
 * @param data     link to the data
 * @param groups   in the file's order
 */
record DataGroupPlan(long at, int idBytes, long data, List<GroupPlan> groups) {
    DataGroupPlan {
        groups = List.copyOf(groups);
    }
}
