package setwright.intake.mdf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import setwright.intake.table.Table;
import setwright.intake.table.TableColumn;

/** Whatever the layout, what was written is read. */
class RandomLayoutsTest {
    private static final long SEED = 20_261_126L;
    private static final int FILES = 300;

    @TempDir
    private Path folder;

    @Test
    void whatIsWrittenIsRead() throws IOException {
        for (int i = 0; i < FILES; i++) {
            Random random = new Random(SEED + i);
            String label = "seed " + (SEED + i);
            MdfWriter writer = new MdfWriter();
            List<RandomGroup> groups = new ArrayList<>();
            long next = 0;
            for (int k = random.nextInt(3); k >= 0; k--) {
                next = dataGroup(random, writer, next, groups, "c" + k + "_");
            }
            byte[] bytes = writer.finish(next);
            List<Table> tables = new MdfFormat().read(Files.write(folder.resolve("random.mf4"), bytes));
            assertThat(tables).as(label).hasSize(groups.size());
            for (int k = 0; k < tables.size(); k++) {
                check(label, tables.get(k), groups.get(k));
            }
        }
    }

    /** Data groups are written from the last, so their groups go in front. */
    private static long dataGroup(Random random, MdfWriter writer, long next, List<RandomGroup> all, String prefix) {
        int idBytes = random.nextBoolean() ? 0 : 1 << random.nextInt(4);
        List<RandomGroup> groups = new ArrayList<>();
        List<Long> ids = new ArrayList<>();
        for (int k = idBytes == 0 ? 1 : 1 + random.nextInt(3); k > 0; k--) {
            groups.add(new RandomGroup(random, prefix + k + "_"));
            ids.add(idBytes < 2 ? 100L * k + 3 & 0xFF : 1000L * k);
        }
        int row = groups.get(0).records[0].length;
        long data = writer.anyhow(mixed(random, groups, ids, idBytes), row, random);
        long group = 0;
        for (int k = groups.size() - 1; k >= 0; k--) {
            group = groups.get(k).write(writer, group, ids.get(k));
        }
        all.addAll(0, groups);
        return writer.dataGroup(next, group, data, idBytes);
    }

    /** Records of all groups in any order, each group's own in theirs. */
    private static byte[] mixed(Random random, List<RandomGroup> groups, List<Long> ids, int idBytes) {
        ByteArrayOutputStream data = new ByteArrayOutputStream();
        int[] taken = new int[groups.size()];
        int left = groups.stream().mapToInt(group -> group.records.length).sum();
        while (left > 0) {
            int k = random.nextInt(groups.size());
            if (taken[k] < groups.get(k).records.length) {
                data.writeBytes(
                        Arrays.copyOf(MdfWriter.little(8).putLong(ids.get(k)).array(), idBytes));
                data.writeBytes(groups.get(k).records[taken[k]++]);
                left--;
            }
        }
        return data.toByteArray();
    }

    private static void check(String label, Table table, RandomGroup group) {
        assertThat(table.columns()).as(label).hasSize(group.channels.size());
        for (int k = 0; k < table.columns().size(); k++) {
            TableColumn column = table.columns().get(k);
            assertThat(column.header()).isEqualTo(group.channels.get(k).name());
            assertThat(column.toArray())
                    .as("%s, %s", label, group.channels.get(k))
                    .containsExactly(group.expected.get(k));
        }
    }
}
