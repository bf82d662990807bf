package bandwright.rules.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Every word that is printed or shown, from one file: {@code words.properties}. Another language is another such file.
 * {@code {0}}, {@code {1}} ... stand for what a sentence is about.
 */
public final class Words {
    private static final Map<String, String> ALL = read();

    private Words() {}

    /**
     * The sentence of that key with its places filled; an unknown key is our own mistake. What it is about may be a
     * stranger's words: whatever would break the line, turn it or tell a terminal something is a space in it.
     */
    public static String say(String key, Object... about) {
        return filled(key, Stream.of(about).map(Words::inLine).toArray());
    }

    /** The same for a letter: the stranger's words are quoted in it as they came, in lines of their own. */
    public static String write(String key, Object... about) {
        return filled(key, about);
    }

    private static Object inLine(Object about) {
        if (!(about instanceof String text) || text.codePoints().noneMatch(Words::breaksLine)) {
            return about;
        }
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(c -> out.appendCodePoint(breaksLine(c) ? ' ' : c));
        return out.toString();
    }

    private static boolean breaksLine(int c) {
        boolean isTurning = (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
        return Character.isISOControl(c) || c == 0x2028 || c == 0x2029 || isTurning;
    }

    private static String filled(String key, Object... about) {
        String sentence = ALL.get(key);
        if (sentence == null) {
            throw new IllegalArgumentException("words.properties has no " + key);
        }
        if (about.length == 0) {
            return sentence;
        }
        StringBuilder out = new StringBuilder();
        int from = 0;
        // One pass, so that a value that itself holds {1} is never filled again.
        for (int at = sentence.indexOf('{'); at >= 0; at = sentence.indexOf('{', at + 1)) {
            int index =
                    at + 2 < sentence.length() && sentence.charAt(at + 2) == '}' ? sentence.charAt(at + 1) - '0' : -1;
            if (index >= 0 && index < about.length) {
                out.append(sentence, from, at).append(about[index]);
                from = at + 3;
            }
        }
        return out.append(sentence, from, sentence.length()).toString();
    }

    /** All keys, for tests and for pages made from the code. */
    public static Set<String> keys() {
        return ALL.keySet();
    }

    private static Map<String, String> read() {
        Properties file = new Properties();
        try (InputStream in = Words.class.getResourceAsStream("/bandwright/words.properties")) {
            if (in == null) {
                throw new IllegalStateException("words.properties is missing from the build");
            }
            file.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        Map<String, String> all = new TreeMap<>();
        for (String key : file.stringPropertyNames()) {
            all.put(key, file.getProperty(key));
        }
        return Map.copyOf(all);
    }
}
