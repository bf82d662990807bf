package bandwright.pipeline.write.workbook;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Names for the sheets of one workbook: at most 31 characters, none of : \ / ? * [ ], no quote at either end, not
 * "History", each once whatever its case. From memory of what spreadsheet programs refuse to open.
 */
final class SheetNames {
    private static final int LONGEST = 31;

    private final Set<String> taken = new HashSet<>(Set.of("history"));

    /** @param kept names that are for other sheets */
    SheetNames(String... kept) {
        taken.addAll(List.of(kept));
    }

    /** The wanted name as nearly as it may be: a second "Orders" becomes "Orders (2)". */
    String next(String wanted) {
        String legal = legal(wanted);
        String name = cut(legal, LONGEST);
        for (int n = 2; !taken.add(name.toLowerCase(Locale.ROOT)); n++) {
            String count = " (" + n + ")";
            name = cut(legal, LONGEST - count.length()) + count;
        }
        return name;
    }

    private static String legal(String wanted) {
        String text = wanted.replaceAll("[:\\\\/?*\\[\\]\\p{Cntrl}\\x{D800}-\\x{DFFF}\\x{FFFE}\\x{FFFF}]", "_")
                .strip()
                .replaceAll("^'+|'+$", "_");
        return text.isEmpty() ? "_" : text;
    }

    private static String cut(String text, int longest) {
        if (text.length() <= longest) {
            return text;
        }
        int end = Character.isHighSurrogate(text.charAt(longest - 1)) ? longest - 1 : longest;
        return text.substring(0, end).replaceAll("[\\s']+$", "");
    }
}
