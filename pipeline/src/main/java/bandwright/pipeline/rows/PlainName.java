package bandwright.pipeline.rows;

/** A stranger's word as part of a unit's id: only A-Z a-z 0-9 . _ - which any file system, code and shell takes as it is. */
public final class PlainName {
    /** A label and its code must hold the name; nobody's order numbers are longer. [J] */
    private static final int LONGEST = 48;

    private PlainName() {}

    /** {@code "QM 7/1"} is {@code QM_7_1}. */
    public static String of(String word) {
        StringBuilder out = new StringBuilder();
        word.codePoints().limit(LONGEST).forEach(c -> out.append(isPlain(c) ? (char) c : '_'));
        return out.toString();
    }

    private static boolean isPlain(int c) {
        return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || "._-".indexOf(c) >= 0;
    }
}
