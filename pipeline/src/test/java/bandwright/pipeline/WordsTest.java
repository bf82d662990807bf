package bandwright.pipeline;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.rules.words.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The one message file: nothing asked of it is missing, nothing in it is forgotten, every message has its cure. */
final class WordsTest {
    private static final Pattern SAID = Pattern.compile("Words\\.say\\(\\s*\"([^\"]+)\"\\s*[,)]");
    private static final Pattern LITERAL = Pattern.compile("\"([A-Za-z][A-Za-z0-9._-]*)\"");

    @Test
    void everyKeyThatTheCodeAsksForIsThere() throws IOException {
        List<String> missing = new ArrayList<>();
        for (String source : sources()) {
            Matcher said = SAID.matcher(source);
            while (said.find()) {
                String key = said.group(1);
                boolean isWhole = !key.endsWith(".");
                if (isWhole && !Words.keys().contains(key)) {
                    missing.add(key);
                }
            }
        }
        assertThat(missing).isEmpty();
    }

    @Test
    void everyKeyIsUsedSomewhere() throws IOException {
        Set<String> literals = new TreeSet<>();
        for (String source : sources()) {
            Matcher literal = LITERAL.matcher(source);
            while (literal.find()) {
                literals.add(literal.group(1));
            }
        }
        String all = String.join("\n", sources());
        List<String> forgotten = Words.keys().stream()
                .filter(key ->
                        !key.startsWith("docs.")) // asked for by the pages made from the code, and tested beside them
                .filter(key -> !key.contains(".usage.") && !literals.contains(key) && !isComposed(key, all))
                .sorted()
                .toList();
        assertThat(forgotten).isEmpty();
    }

    /** A key that the code puts together: one of its last parts, or its first, stands there as a piece of text. */
    private static boolean isComposed(String key, String sources) {
        String[] parts = key.split("\\.", -1);
        for (int i = 1; i < parts.length; i++) {
            String head = String.join(".", List.of(parts).subList(0, i)) + ".";
            if (sources.contains('"' + head)) {
                return true;
            }
        }
        return false;
    }

    @Test
    void everyHeldMessageHasACure() {
        for (String key : Words.keys()) {
            if (key.startsWith("held.") && key.endsWith(".message")) {
                String code = key.split("\\.", -1)[1];
                if (code.equals("artwork-unreadable")) {
                    continue; // its cure is the flaw's own, tested beside the flaws
                }
                assertThat(Words.keys())
                        .as(key)
                        .anyMatch(other -> other.matches("held\\." + code + "\\b.*\\.cure(\\..*)?"));
            }
        }
    }

    @Test
    void aValueThatLooksLikeAPlaceIsNeverFilledAgain() {
        assertThat(Words.say("cli.nothing-made", "{1}", "x")).contains("{1} x");
    }

    private static List<String> sources() throws IOException {
        List<String> sources = new ArrayList<>();
        for (Path root : List.of(Path.of("src/main/java"), Path.of("../rules/src/main/java"))) {
            try (Stream<Path> files = Files.walk(root)) {
                for (Path file : files.filter(path -> path.toString().endsWith(".java"))
                        .sorted()
                        .toList()) {
                    sources.add(Files.readString(file));
                }
            }
        }
        return sources;
    }
}
