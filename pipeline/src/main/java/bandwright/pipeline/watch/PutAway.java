package bandwright.pipeline.watch;

import bandwright.pipeline.outbox.OwnOnly;
import bandwright.rules.words.Words;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;
import java.util.Set;

/**
 * Moves drops to where they belong. Nothing is overwritten: a name that is taken gets a number. A link is moved as a
 * link; no path leads out of the inbox.
 */
final class PutAway {
    static final String REASON = ".why.txt";
    /** Most file systems take 255 bytes a name. */
    private static final int LONGEST = 200;

    private static final int LONGEST_ENDING = 10;

    private static final Set<StandardOpenOption> NEW = Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);

    private final DropFolder folder;

    PutAway(DropFolder folder) {
        this.folder = folder;
    }

    /**
     * Moves it, unless it was written to since it was decided about: then it is left for another look.
     *
     * @return whether it was moved
     */
    boolean place(Placing placing) throws IOException, Stop {
        if (!isUnchanged(placing.drop())) {
            return false;
        }
        if (placing instanceof Placing.Done done) {
            Path to = folder.done(done.run());
            Files.move(done.path(), free(to, Glance.name(done.path())));
        } else if (placing instanceof Placing.NotTaken notTaken) {
            notTaken(notTaken);
        }
        return true;
    }

    private static boolean isUnchanged(Sighting drop) throws IOException {
        if (!Files.exists(drop.path(), LinkOption.NOFOLLOW_LINKS)) {
            return false;
        }
        BasicFileAttributes is =
                Files.readAttributes(drop.path(), BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
        Look last = drop.last();
        return is.isDirectory()
                ? FolderLook.of(drop.path(), Optional.empty(), last.at()).isLike(last)
                : is.size() == last.bytes() && is.lastModifiedTime().toMillis() == last.changed();
    }

    /** The reason is written first: nothing lies there without one. */
    private void notTaken(Placing.NotTaken placing) throws IOException, Stop {
        Path to = folder.notTaken();
        String name = Glance.name(placing.path());
        Path place = free(to, name);
        Path reason = free(to, safe(Glance.name(place)), REASON);
        write(reason, Words.say("watch.reason", safe(name), placing.why(), placing.cure()));
        try {
            Files.move(placing.path(), place);
        } catch (IOException e) {
            Files.deleteIfExists(reason);
            throw e;
        }
    }

    private static void write(Path file, String words) throws IOException {
        try (FileChannel channel = FileChannel.open(file, NEW, OwnOnly.file())) {
            ByteBuffer bytes = ByteBuffer.wrap(words.getBytes(StandardCharsets.UTF_8));
            while (bytes.hasRemaining()) {
                channel.write(bytes);
            }
        }
    }

    /** A name that nothing has yet: orders.csv, orders (2).csv. */
    static Path free(Path folder, String wanted) {
        Path place = folder.resolve(wanted);
        int dot = wanted.lastIndexOf('.');
        boolean isFree = !Files.exists(place, LinkOption.NOFOLLOW_LINKS);
        boolean hasEnding = dot > 0 && wanted.length() - dot <= LONGEST_ENDING;
        return isFree
                ? place
                : free(folder, hasEnding ? wanted.substring(0, dot) : wanted, hasEnding ? wanted.substring(dot) : "");
    }

    private static Path free(Path folder, String name, String ending) {
        String stem = cut(name);
        Path place = folder.resolve(stem + ending);
        for (int n = 2; Files.exists(place, LinkOption.NOFOLLOW_LINKS); n++) {
            place = folder.resolve(stem + " (" + n + ")" + ending);
        }
        return place;
    }

    /** As a name of a file of ours: no sign that some system can't store, and room for our ending. */
    static String safe(String name) {
        return cut(name.replaceAll("[/\\\\:*?\"<>|\\p{Cntrl}\\p{Cs}]", "_"));
    }

    private static String cut(String name) {
        String shorter = name;
        while (shorter.getBytes(StandardCharsets.UTF_8).length > LONGEST) {
            shorter = shorter.substring(0, shorter.offsetByCodePoints(shorter.length(), -1));
        }
        return shorter;
    }
}
