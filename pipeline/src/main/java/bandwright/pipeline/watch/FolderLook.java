package bandwright.pipeline.watch;

import bandwright.pipeline.intake.Inbox;
import bandwright.pipeline.limits.Limits;
import java.io.IOException;
import java.nio.file.FileVisitOption;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;

/**
 * A dropped folder, as one thing: as large as all its files, as old as the youngest. The order files that lie directly
 * in it are its orders, as {@code run} reads a folder. No link in it is followed.
 */
final class FolderLook extends SimpleFileVisitor<Path> {
    /** A shop's pictures are some hundreds; a whole drive that was dropped by mistake is more. */
    private static final int MOST = 10_000;

    private final Path folder;
    private final List<Path> orderFiles = new ArrayList<>();
    private long bytes;
    private long changed;
    private int parts;
    private Seen passing = Seen.WHOLE;

    private FolderLook(Path folder) {
        this.folder = folder;
    }

    static Look of(Path folder, Optional<Look> before, Instant now) throws IOException {
        FolderLook walk = new FolderLook(folder);
        Files.walkFileTree(folder, EnumSet.noneOf(FileVisitOption.class), Limits.ARTWORK_DEPTH, walk);
        walk.orderFiles.sort(Comparator.naturalOrder());
        Look look = new Look(now, walk.bytes, walk.changed, walk.parts, walk.passing, walk.orderFiles);
        return walk.passing != Seen.WHOLE
                ? look
                : Glance.with(look, Glance.wholeness(look, before, () -> worst(walk.orderFiles)));
    }

    private static Seen worst(List<Path> orderFiles) {
        if (orderFiles.isEmpty()) {
            return Seen.NO_ORDERS;
        }
        return orderFiles.stream()
                .map(file -> Wholeness.of(file, size(file)))
                .filter(seen -> seen != Seen.WHOLE)
                .findFirst()
                .orElse(Seen.WHOLE);
    }

    private static long size(Path file) {
        try {
            return Files.size(file);
        } catch (IOException e) {
            return 0;
        }
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes is) {
        parts++;
        bytes += is.size();
        changed = Math.max(changed, is.lastModifiedTime().toMillis());
        String name = Glance.name(file);
        if (parts > MOST) {
            passing = Seen.TOO_MANY;
            return FileVisitResult.TERMINATE;
        }
        if (DropNames.isCopy(name)) {
            passing = Seen.ARRIVING;
        } else if (DropNames.isLock(name) && passing == Seen.WHOLE) {
            passing = Seen.BEING_EDITED;
        }
        boolean isDirect = folder.equals(file.getParent());
        if (isDirect && is.isRegularFile() && Inbox.hasEnding(file) && !DropNames.isPassing(file)) {
            orderFiles.add(file);
        }
        return FileVisitResult.CONTINUE;
    }

    /** What can't be looked at can't be judged: the folder waits, and then says that it is closed. */
    @Override
    public FileVisitResult visitFileFailed(Path file, IOException e) {
        passing = Seen.CLOSED;
        return FileVisitResult.CONTINUE;
    }
}
