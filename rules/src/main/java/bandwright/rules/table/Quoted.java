package bandwright.rules.table;

/** Somebody's text as it may stand in a message: one line, no control characters, cut where it goes on and on. */
public final class Quoted {
    private static final int MOST = 60;

    private Quoted() {}

    public static String text(String text) {
        boolean isLong = text.codePointCount(0, text.length()) > MOST;
        return oneLine(isLong ? text.substring(0, text.offsetByCodePoints(0, MOST)) + "..." : text);
    }

    /** The whole text without what a terminal would obey. */
    static String oneLine(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> out.appendCodePoint(isShown(c) ? c : ' '));
        return out.toString();
    }

    private static boolean isShown(int c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.SURROGATE,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.UNASSIGNED -> false;
            default -> true;
        };
    }
}
