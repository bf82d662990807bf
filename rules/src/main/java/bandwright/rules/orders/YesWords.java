package bandwright.rules.orders;

import bandwright.rules.table.Names;
import java.util.List;

/** The words by which an order file says yes: "Yes", "x" and "1" do, "no" and an empty cell don't. */
public final class YesWords {
    private static final List<String> YES = List.of("yes", "y", "true", "1", "x");

    private YesWords() {}

    public static boolean has(String text) {
        return YES.contains(Names.fold(text));
    }
}
