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

/**
 * Every word that is printed or shown, from one file: {@code words.properties}. Another language is another such file.
 * {@code {0}}, {@code {1}} ... stand for what a sentence is about.
 */
public final class Words {
    private static final Map<String, String> ALL = read();

    private Words() {}

    /** The sentence of that key with its places filled; an unknown key is our own mistake. */
    public static String say(String key, Object... about) {
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
