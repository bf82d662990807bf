package bandwright.pipeline.rows;

import java.util.regex.Pattern;

/**
 * The one door from a stranger's word to a part of a unit's id or of a file's name: only A-Z a-z 0-9 . _ - which any file
 * system, code and shell takes as it is.
 */
public final class PlainName {
    /** A label and its code must hold the name; nobody's order numbers are longer. [J] */
    private static final int LONGEST = 48;

    /** Names of devices, which Windows keeps for itself whatever their ending. From memory. */
    private static final Pattern DEVICE =
            Pattern.compile("(con|prn|aux|nul|com\\d|lpt\\d)(\\..*)?", Pattern.CASE_INSENSITIVE);

    private PlainName() {}

    /** {@code "QM 7/1"} is {@code QM_7_1}. */
    public static String of(String word) {
        StringBuilder out = new StringBuilder();
        word.codePoints().limit(LONGEST).forEach(c -> out.append(isPlain(c) ? (char) c : '_'));
        return out.toString();
    }

    /** The same as a file's name before its ending: hidden nowhere, no device, not cut by a system. */
    public static String file(String word) {
        String name = of(word).replaceAll("^\\.+|\\.+$", "_");
        return name.isEmpty() || DEVICE.matcher(name).matches() ? "_" + name : name;
    }

    private static boolean isPlain(int c) {
        return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || "._-".indexOf(c) >= 0;
    }
}
