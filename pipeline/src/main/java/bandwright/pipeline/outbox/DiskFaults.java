package bandwright.pipeline.outbox;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.util.List;
import java.util.Locale;

/**
 * What a person should hear when the disk under the outbox fails: full, read-only, not permitted, or what the system
 * itself says. "No space left on device" becomes: the disk of the outbox is full; make room.
 */
final class DiskFaults {
    /** How systems put it, in lower case; from memory. Where they speak another language, the free space tells. */
    private static final List<String> FULL = List.of("no space left", "not enough space", "quota", "disk full");

    private static final List<String> READ_ONLY = List.of("read-only", "write protected", "write-protected");
    private static final long NEXT_TO_NOTHING = 64 << 10;

    private DiskFaults() {}

    static OutboxFault of(Exception thrown, Path outbox) {
        Exception failure = unwrapped(thrown);
        String said = said(failure);
        if (says(said, FULL) || freeBytes(outbox) < NEXT_TO_NOTHING) {
            return OutboxFault.of(failure, "disk-full", outbox);
        }
        if (says(said, READ_ONLY) || failure instanceof ReadOnlyFileSystemException) {
            return OutboxFault.of(failure, "outbox-read-only", outbox);
        }
        if (failure instanceof AccessDeniedException) {
            return OutboxFault.of(failure, "outbox-no-permission", outbox);
        }
        return OutboxFault.of(failure, "outbox-failed", outbox, said);
    }

    /** The file of a run could not be made because of something that it is made from: a picture that is gone. */
    static OutboxFault ofSource(Exception thrown, Path outbox, String file) {
        Exception failure = unwrapped(thrown);
        return says(said(failure), FULL)
                ? OutboxFault.of(failure, "disk-full", outbox)
                : OutboxFault.of(failure, "file-not-made", file, said(failure));
    }

    private static Exception unwrapped(Exception thrown) {
        return thrown.getCause() instanceof IOException cause ? cause : thrown;
    }

    private static boolean says(String said, List<String> words) {
        String lower = said.toLowerCase(Locale.ROOT);
        return words.stream().anyMatch(lower::contains);
    }

    private static String said(Exception failure) {
        String reason = failure instanceof FileSystemException file && file.getReason() != null
                ? file.getFile() + ": " + file.getReason()
                : failure.getMessage();
        String kind = failure.getClass().getSimpleName();
        return reason == null ? kind : reason.lines().findFirst().orElse(kind);
    }

    private static long freeBytes(Path outbox) {
        try {
            return Files.getFileStore(outbox).getUsableSpace();
        } catch (IOException | SecurityException e) {
            return Long.MAX_VALUE;
        }
    }
}
