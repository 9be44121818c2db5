package setwright.intake.mdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * A channel group: which records are its own, and what is read of them.
 *
 * @param at           where its block lies, which tells it from all others
 * @param recordId     the number in front of its records when several groups share their data
 * @param cycles       how many records the file says there are; unsigned
 * @param layout       of a record
 * @param channels     the master first if it has one; empty when nothing is read
 * @param variable     tells that it holds texts of changing length, each behind its length (a VLSD channel group)
 * @param masterGroup  the group whose master is its own, {@link Block#NIL} when it has one itself (since version 4.20)
 */
record GroupPlan(
        long at,
        long recordId,
        long cycles,
        RecordLayout layout,
        List<ChannelPlan> channels,
        boolean variable,
        long masterGroup) {
    GroupPlan {
        channels = List.copyOf(channels);
    }

    /** Tells whether it has an axis of time itself. */
    boolean hasTime() {
        return !channels.isEmpty() && channels.get(0).master() == ChannelPlan.Master.TIME;
    }

    /** Returns the same group, with no name of a channel twice and none that is taken already. */
    GroupPlan named(Set<String> taken) {
        List<ChannelPlan> named = new ArrayList<>();
        for (ChannelPlan channel : channels) {
            String name = channel.header();
            for (int i = 2; !taken.add(name); i++) {
                name = channel.header() + " (" + i + ")";
            }
            named.add(channel.named(name));
        }
        return new GroupPlan(at, recordId, cycles, layout, named, variable, masterGroup);
    }
}
