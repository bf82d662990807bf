package bandwright.pipeline.watch;

import bandwright.rules.Rulebook;
import bandwright.rules.RulebookFaults;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Optional;
import java.util.TreeMap;

/** The rulebook as it is now: read again whenever a file of its folder has changed. */
final class RulesReading {
    private final Optional<Path> folder;
    private String mark = "";
    private Optional<Rulebook> sound = Optional.empty();
    private Optional<Stop> faulty = Optional.empty();

    RulesReading(Optional<Path> folder) {
        this.folder = folder;
    }

    Rulebook current() throws Stop {
        String now = mark();
        boolean isUnread = sound.isEmpty() && faulty.isEmpty();
        if (isUnread || !now.equals(mark)) {
            read();
            mark = now;
        }
        if (faulty.isPresent()) {
            throw faulty.get();
        }
        return sound.orElseThrow();
    }

    private void read() {
        try {
            sound = Optional.of(Rulebook.read(folder));
            faulty = Optional.empty();
        } catch (RulebookFaults e) {
            sound = Optional.empty();
            faulty = Optional.of(Stop.of(e));
        }
    }

    /** Every file's name, size and time; of a folder that can't be listed that it can't. */
    private String mark() {
        if (folder.isEmpty()) {
            return "built in";
        }
        TreeMap<Path, String> files = new TreeMap<>();
        try {
            for (Path file : Glance.list(folder.get())) {
                BasicFileAttributes is = Files.readAttributes(file, BasicFileAttributes.class);
                files.put(file, is.size() + " " + is.lastModifiedTime());
            }
            return files.toString();
        } catch (IOException e) {
            return "closed";
        }
    }
}
