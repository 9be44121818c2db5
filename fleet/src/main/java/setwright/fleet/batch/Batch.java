package setwright.fleet.batch;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;

/**
 * A piece of work.
 *
 * @param id           follows from the members alone, so that a second attempt writes files of the same names
 * @param circuit      that the members share; empty for those that stand alone
 * @param circuitKept  whether that circuit is kept among the tables; otherwise each member shows its own
 * @param members      sorted by path
 */
public record Batch(String id, String circuit, boolean circuitKept, List<Member> members) implements Serializable {
    public Batch {
        members = List.copyOf(members);
    }

    static Batch of(String circuit, boolean circuitKept, List<Member> members) {
        List<String> parts = new ArrayList<>();
        for (Member member : members) {
            parts.add(member.recorded().path());
            parts.add(member.recorded().bytes() + " " + member.recorded().modifiedMs());
            parts.add(member.inputs());
        }
        return new Batch(Digest.ofTexts(parts), circuit, circuitKept, members);
    }

    /** Returns the size of all members' files. */
    public long bytes() {
        return members.stream().mapToLong(member -> member.recorded().bytes()).sum();
    }
}
