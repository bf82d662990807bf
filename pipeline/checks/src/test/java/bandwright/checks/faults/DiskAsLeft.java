package bandwright.checks.faults;

import bandwright.checks.faults.DiskCall.Made;
import bandwright.checks.faults.DiskCall.Moved;
import bandwright.checks.faults.DiskCall.Removed;
import bandwright.checks.faults.DiskCall.Synced;
import bandwright.checks.faults.DiskCall.Written;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.Stream;

/**
 * A folder as it is found after a run was stopped at some moment. A kill leaves all that was asked so far. A power cut
 * leaves for certain only what was synced: a file's bytes by a sync of the file, a new name, a rename or a removal by a
 * sync of the folder it is in (fsync(2)); of the rest any part, in any order.
 */
final class DiskAsLeft {
    private final List<DiskCall> calls;
    private final Path recorded;
    private final Path folder;

    DiskAsLeft(List<DiskCall> calls, Path recorded, Path folder) {
        this.calls = List.copyOf(calls);
        this.recorded = recorded;
        this.folder = folder;
    }

    /**
     * Makes the folder as it was left.
     *
     * @param moment so many calls were made
     * @param survives whether a call's change, if nothing has made it certain, is on the disk nevertheless
     */
    void make(int moment, IntPredicate survives) throws IOException {
        clear();
        for (int i = 0; i < moment; i++) {
            if (isCertain(i, moment) || survives.test(i)) {
                replay(calls.get(i));
            }
        }
    }

    private boolean isCertain(int number, int moment) {
        DiskCall call = calls.get(number);
        Path by = call instanceof Written ? call.path() : call.path().getParent();
        return calls.subList(number, moment).stream()
                .anyMatch(
                        later -> later instanceof Synced synced && synced.path().equals(by));
    }

    private Path here(Path path) {
        return folder.resolve(recorded.relativize(path));
    }

    private void replay(DiskCall call) throws IOException {
        Path path = here(call.path());
        if (call instanceof Made made && Files.isDirectory(path.resolveSibling("."))) {
            if (made.isFolder()) {
                Files.createDirectories(path);
            } else {
                Files.write(path, new byte[0]);
            }
        } else if (call instanceof Written written && Files.isRegularFile(path)) {
            try (FileChannel file = FileChannel.open(path, StandardOpenOption.WRITE)) {
                file.write(written.bytes().duplicate(), written.at());
            }
        } else if (call instanceof Moved moved && Files.exists(path)) {
            Files.move(path, here(moved.to()), StandardCopyOption.ATOMIC_MOVE);
        } else if (call instanceof Removed && Files.exists(path)) {
            delete(path);
        }
    }

    private void clear() throws IOException {
        if (Files.exists(folder)) {
            delete(folder);
        }
        Files.createDirectories(folder.getParent());
    }

    private static void delete(Path path) throws IOException {
        try (Stream<Path> all = Files.walk(path)) {
            for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(each);
            }
        }
    }
}
