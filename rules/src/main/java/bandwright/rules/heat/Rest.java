package bandwright.rules.heat;

import java.util.Locale;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** How long a piece rests before it may be handled, out of the words of a setting: "5 to 10 min on a dry rack" is 600 s. */
public final class Rest {
    private static final Pattern TIME =
            Pattern.compile("(?:(\\d{1,4})\\s*(?:to|-|\u2013)\\s*)?(\\d{1,4})\\s*(h|min(?:utes?)?|s)\\b");

    private Rest() {}

    /** When a piece can be looked at: at once where it is peeled hot, else when it has rested; in seconds. */
    public static int untilPeeled(String peel, String rest) {
        return peel.toLowerCase(Locale.ROOT).startsWith("hot")
                ? 0
                : seconds(rest).orElse(0);
    }

    /** The longest time named, in seconds; empty where the words name none. */
    public static OptionalInt seconds(String words) {
        Matcher time = TIME.matcher(words.toLowerCase(Locale.ROOT));
        int longest = -1;
        while (time.find()) {
            int number = Integer.parseInt(time.group(2));
            int unit =
                    switch (time.group(3)) {
                        case "h" -> 3600;
                        case "s" -> 1;
                        default -> 60;
                    };
            longest = Math.max(longest, number * unit);
        }
        return longest < 0 ? OptionalInt.empty() : OptionalInt.of(longest);
    }
}
