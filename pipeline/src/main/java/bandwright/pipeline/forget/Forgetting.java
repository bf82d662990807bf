package bandwright.pipeline.forget;

import bandwright.pipeline.outbox.OwnOnly;
import bandwright.pipeline.write.workbook.HeldWithout;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** Deletes what holds an order, as far as no other order is harmed. */
public final class Forgetting {
    private static final Set<StandardOpenOption> AFRESH =
            Set.of(StandardOpenOption.CREATE, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING);

    private Forgetting() {}

    public static void delete(Trace trace, String order) throws IOException {
        if (trace.kind() == Trace.Kind.RUN_WITH_HELD) {
            Path held = trace.place().resolve("held.xlsx");
            rewrite(held, order);
            deleteBut(trace.place(), held);
        } else if (trace.kind().mayGo()) {
            deleteBut(trace.place(), trace.place().resolveSibling("nothing is kept"));
        }
    }

    /** Beside first: a disk that is full must not cost the rows of others. */
    private static void rewrite(Path held, String order) throws IOException {
        Path beside = held.resolveSibling(".held.xlsx.new");
        try (FileChannel channel = FileChannel.open(beside, AFRESH, OwnOnly.file());
                OutputStream out = Channels.newOutputStream(channel)) {
            HeldWithout.write(held, order, out);
            channel.force(true);
        }
        Files.move(beside, held, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    /** The deepest first; a link is deleted, what it leads to stays. */
    private static void deleteBut(Path place, Path kept) throws IOException {
        if (!Files.exists(place, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        try (Stream<Path> all = Files.walk(place)) {
            List<Path> doomed = all.filter(path -> !kept.startsWith(path))
                    .sorted(Comparator.reverseOrder())
                    .toList();
            for (Path path : doomed) {
                Files.delete(path);
            }
        }
    }
}
