package bandwright.pipeline.write.workbook;

import bandwright.pipeline.limits.Limits;
import bandwright.pipeline.write.WrittenText;
import bandwright.rules.words.Words;
import java.util.regex.Pattern;

/**
 * Text as a cell of a workbook holds it, so that who opens it sees what was typed: "=1+1" stays these four characters,
 * for a text cell is never worked out.
 */
final class CellText {
    /** In a cell's text _x0041_ means the character 41 hex; _x005F_ is the underscore (ECMA-376 Part 1, 22.9.2.19). */
    private static final Pattern ESCAPE = Pattern.compile("_(?=x[0-9A-Fa-f]{4}_)");

    private CellText() {}

    static String of(String text) {
        return ESCAPE.matcher(WrittenText.xml(cut(text))).replaceAll("_x005F_");
    }

    /** A cell holds so many characters and no more; a longer text ends with a mark that says so. */
    private static String cut(String text) {
        if (text.length() <= Limits.CELL_CHARACTERS) {
            return text;
        }
        String mark = Words.say("workbook.cut");
        int end = Limits.CELL_CHARACTERS - mark.length();
        boolean splitsPair = Character.isHighSurrogate(text.charAt(end - 1));
        return text.substring(0, splitsPair ? end - 1 : end) + mark;
    }
}
