package bandwright.pipeline.watch;

import bandwright.pipeline.intake.Inbox;
import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Supplier;

/** One look over the inbox: everything that was dropped, not what is put away, on its way or none of our business. */
final class Glance {
    private final Path inbox;
    private final List<Path> reserved;

    /** @param reserved folders that may lie inside the inbox and are no drops: pictures, outbox, rulebook */
    Glance(Path inbox, List<Path> reserved) {
        this.inbox = inbox;
        this.reserved = List.copyOf(reserved);
    }

    /**
     * What lies there.
     *
     * @param before what was seen last: a file that is as it was then is not opened again
     */
    SortedMap<Path, Look> look(Map<Path, Look> before, Instant now) throws IOException {
        List<Path> all = list(inbox);
        List<Path> kept = reserved.stream().map(Glance::real).toList();
        Set<String> names = new HashSet<>();
        all.forEach(path -> names.add(DropNames.lower(name(path))));
        SortedMap<Path, Look> looks = new TreeMap<>();
        for (Path path : all) {
            if (!DropNames.isPassing(path) && !isReserved(path, kept)) {
                look(path, names, Optional.ofNullable(before.get(path)), now).ifPresent(look -> looks.put(path, look));
            }
        }
        return looks;
    }

    /** Nothing where it has gone in the meantime. */
    private static Optional<Look> look(Path path, Set<String> beside, Optional<Look> before, Instant now) {
        try {
            BasicFileAttributes is = Files.readAttributes(path, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
            if (is.isDirectory()) {
                return Optional.of(FolderLook.of(path, before, now));
            }
            Look look = new Look(now, is.size(), is.lastModifiedTime().toMillis(), 1, Seen.ARRIVING, List.of(path));
            return Optional.of(with(look, seen(path, is, look, beside, before)));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private static Seen seen(Path path, BasicFileAttributes is, Look look, Set<String> beside, Optional<Look> before) {
        if (is.isSymbolicLink()) {
            return Seen.LINK;
        }
        if (!is.isRegularFile()) {
            return Seen.NO_FILE;
        }
        if (DropNames.isArriving(name(path), beside) || DropNames.isHalfSaved(name(path))) {
            return Seen.ARRIVING;
        }
        if (!Inbox.hasEnding(path)) {
            return Seen.OTHER_ENDING;
        }
        if (DropNames.isBeingEdited(name(path), beside)) {
            return Seen.BEING_EDITED;
        }
        return wholeness(look, before, () -> Wholeness.of(path, look.bytes()));
    }

    /** Opens nothing that is still written to, and nothing twice that was whole. */
    static Seen wholeness(Look look, Optional<Look> before, Supplier<Seen> opened) {
        if (before.isEmpty() || !before.get().isLike(look)) {
            return Seen.ARRIVING;
        }
        return before.get().seen() == Seen.WHOLE ? Seen.WHOLE : opened.get();
    }

    static Look with(Look look, Seen seen) {
        return new Look(look.at(), look.bytes(), look.changed(), look.parts(), seen, look.orderFiles());
    }

    /** Whether it is one of our folders, or one that such a folder lies in. */
    private static boolean isReserved(Path path, List<Path> kept) {
        return DropFolder.isOwn(name(path))
                || (Files.isDirectory(path, LinkOption.NOFOLLOW_LINKS)
                        && kept.stream().anyMatch(folder -> folder.startsWith(real(path))));
    }

    /** Where it really is, by whichever links it is named. */
    private static Path real(Path path) {
        try {
            return path.toRealPath();
        } catch (IOException e) {
            return path.toAbsolutePath().normalize();
        }
    }

    static List<Path> list(Path folder) throws IOException {
        List<Path> all = new ArrayList<>();
        try (DirectoryStream<Path> paths = Files.newDirectoryStream(folder)) {
            paths.forEach(all::add);
        } catch (DirectoryIteratorException e) {
            throw e.getCause();
        }
        return all;
    }

    static String name(Path path) {
        return path.getFileName().toString();
    }
}
