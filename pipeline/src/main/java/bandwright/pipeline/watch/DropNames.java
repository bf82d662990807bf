package bandwright.pipeline.watch;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * Names that no order file has: what browsers, office programs, editors, sync clients and systems call a file while it
 * is on its way, locked or theirs. From memory of what such programs do.
 */
final class DropNames {
    /** Everything hidden, {@code .~lock.orders.ods#} and {@code .orders.xlsx.x7Gh2} among it. */
    private static final String HIDDEN = "\\..*";

    private static final Pattern PASSING = Pattern.compile(
            String.join(
                    "|",
                    HIDDEN,
                    "~\\$.*", // the lock of an open workbook
                    ".*\\.(tmp|temp|part|partial|filepart|crdownload|opdownload|download|swp|swx|lock|lck|sync|syncing)",
                    ".*\\.![^.]*", // orders.csv.!ab, a download
                    ".*~",
                    "#.*#",
                    "thumbs\\.db|ehthumbs\\.db|desktop\\.ini|icon\\r"),
            Pattern.CASE_INSENSITIVE | Pattern.DOTALL);

    private static final List<String> COPY_ENDINGS =
            List.of(".part", ".partial", ".filepart", ".crdownload", ".opdownload", ".download", ".tmp", ".sync");

    private static final Pattern HALF_SAVED = Pattern.compile("[0-9A-F]{8}");

    private DropNames() {}

    /** The name of a workbook for the moment in which it is saved: 5D2F1000. */
    static boolean isHalfSaved(String name) {
        return HALF_SAVED.matcher(name).matches();
    }

    static boolean isPassing(Path path) {
        return PASSING.matcher(path.getFileName().toString()).matches();
    }

    /** Whether a file of that name is on its way: it gets another name when it is whole. */
    static boolean isCopy(String name) {
        return COPY_ENDINGS.stream().anyMatch(lower(name)::endsWith);
    }

    /** Whether a file of that name says that an office program has another one open. */
    static boolean isLock(String name) {
        return name.startsWith("~$") || name.startsWith(".~lock.");
    }

    /** Whether one of these names, in lower case, says that this file is still on its way. */
    static boolean isArriving(String name, Set<String> beside) {
        return COPY_ENDINGS.stream().anyMatch(ending -> beside.contains(lower(name + ending)));
    }

    /** Whether one of them says that it is open; of a long name the lock may leave out the first two letters. */
    static boolean isBeingEdited(String name, Set<String> beside) {
        return beside.contains(lower("~$" + name))
                || beside.contains(lower(".~lock." + name + "#"))
                || (name.length() > 2 && beside.contains(lower("~$" + name.substring(2))));
    }

    static String lower(String name) {
        return name.toLowerCase(Locale.ROOT);
    }
}
