package bandwright.pipeline.intake;

import bandwright.rules.words.Words;
import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * Which files of the inbox are order files. A folder gives those directly in it that end in .xlsx, .xls, .ods, .csv or
 * .tsv; hidden files and the lock files of spreadsheet programs ({@code ~$orders.xlsx}, {@code .~lock.orders.ods#}) are
 * none.
 */
public final class Inbox {
    private static final List<String> ENDINGS = List.of(".xlsx", ".xls", ".ods", ".csv", ".tsv");

    /** By code point, so that the order is one on every machine; equal names by their whole path. */
    private static final Comparator<Path> BY_NAME = Comparator.<Path, int[]>comparing(
                    path -> name(path).codePoints().toArray(), Arrays::compare)
            .thenComparing(Path::toString);

    private Inbox() {}

    /** The order files among these files and in these folders, sorted by name; a file named twice is read once. */
    public static List<Path> files(List<Path> inbox) throws InboxFault {
        Map<Path, Path> found = new LinkedHashMap<>();
        for (Path path : inbox) {
            for (Path file : Files.isDirectory(path) ? inFolder(path) : named(path)) {
                found.putIfAbsent(file.toAbsolutePath().normalize(), file);
            }
        }
        List<Path> files = new ArrayList<>(found.values());
        files.sort(BY_NAME);
        return Collections.unmodifiableList(files);
    }

    private static List<Path> inFolder(Path folder) throws InboxFault {
        List<Path> files = new ArrayList<>();
        try (DirectoryStream<Path> all = Files.newDirectoryStream(folder)) {
            for (Path path : all) {
                if (!isAside(path) && hasEnding(path) && Files.isRegularFile(path)) {
                    files.add(path);
                }
            }
        } catch (IOException | DirectoryIteratorException e) {
            throw fault("inbox-closed", folder);
        }
        return files;
    }

    private static List<Path> named(Path path) throws InboxFault {
        if (!Files.exists(path)) {
            throw fault("inbox-missing", path);
        }
        if (isAside(path)) {
            return List.of();
        }
        if (!hasEnding(path) || !Files.isRegularFile(path)) {
            throw fault("inbox-no-order-file", path);
        }
        return List.of(path);
    }

    private static InboxFault fault(String key, Path path) {
        return new InboxFault(Words.say("fault." + key, path), Words.say("fault." + key + ".cure"));
    }

    private static boolean isAside(Path path) {
        return name(path).startsWith(".") || name(path).startsWith("~$");
    }

    /** Whether the name ends as order files do. */
    public static boolean hasEnding(Path path) {
        String name = name(path).toLowerCase(Locale.ROOT);
        return ENDINGS.stream().anyMatch(name::endsWith);
    }

    /** The file's own name; the root of a drive has none. */
    static String name(Path path) {
        Path name = path.getFileName();
        return name == null ? path.toString() : name.toString();
    }
}
