package bandwright.pipeline.docs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import bandwright.rules.words.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The pages that are made from the code say what the code does now; {@code -Ddocs.renew} writes them anew and fails that build. */
final class DocsTest {
    private static final Path DOCS = Path.of("..", "docs");
    private static final Pattern LITERAL = Pattern.compile("\"([a-z][A-Za-z0-9._-]*)\"");

    /** A page and what makes it. */
    enum Page {
        RULEBOOK("rulebook.md"),
        HELD("held.md"),
        FIGURES("figures.md"),
        LIMITS("limits.md");

        private final String file;

        Page(String file) {
            this.file = file;
        }

        String text() {
            return switch (this) {
                case RULEBOOK -> RulebookPage.text();
                case HELD -> HeldPage.text();
                case FIGURES -> FiguresPage.text();
                case LIMITS -> LimitsPage.text();
            };
        }
    }

    @ParameterizedTest
    @EnumSource
    void thePageSaysWhatTheCodeDoes(Page page) throws IOException {
        Path file = DOCS.resolve(page.file);
        String made = page.text();
        if (Boolean.getBoolean("docs.renew")) {
            Files.writeString(file, made);
            fail(page.file + " is written anew: read it, then build without -Ddocs.renew");
        }
        assertThat(Files.readString(file))
                .as("renew it with -Dtest=DocsTest -Ddocs.renew and read what changed")
                .isEqualToNormalizingNewlines(made);
    }

    /** A sentence for a column or a code that is gone would never be read again. */
    @Test
    void noSentenceOfThePagesIsForgotten() throws IOException {
        String pages = "";
        for (Page page : Page.values()) {
            pages += page.text();
        }
        Set<String> asked = literals();
        for (String key : new TreeSet<>(Words.keys())) {
            if (key.startsWith("docs.") && !asked.contains(key.substring("docs.".length()))) {
                assertThat(pages).as(key).contains(cellOf(Words.say(key).replaceAll("\\{.}.*", "")));
            }
        }
    }

    private static String cellOf(String sentence) {
        return sentence.replace("|", "\\|");
    }

    private static Set<String> literals() throws IOException {
        Set<String> all = new TreeSet<>();
        try (Stream<Path> files = Files.list(Path.of("src/test/java/bandwright/pipeline/docs"))) {
            for (Path file : List.copyOf(files.toList())) {
                Matcher literal = LITERAL.matcher(Files.readString(file));
                while (literal.find()) {
                    all.add(literal.group(1));
                }
            }
        }
        return all;
    }
}
