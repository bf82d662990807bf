package bandwright.pipeline.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

/** Every command line that a page shows is one that the program understands. */
final class DocsCommandsTest {
    private static final Pattern LINE = Pattern.compile("(?m)(?:^|`)(?:pipeline/)?bandwright +([^`\n]+)");
    private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

    @Test
    void everyCommandLineOfThePagesParses() throws IOException {
        List<String> shown = commandLines();
        assertThat(shown).hasSizeGreaterThan(10);
        for (String one : shown) {
            assertThatCode(() -> line().parseArgs(words(one))).as(one).doesNotThrowAnyException();
        }
    }

    private static List<String> commandLines() throws IOException {
        List<Path> pages = new ArrayList<>(List.of(Path.of("../README.md"), Path.of("../DEVELOPERS.md")));
        try (Stream<Path> files = Files.list(Path.of("../docs"))) {
            files.filter(file -> file.toString().endsWith(".md")).sorted().forEach(pages::add);
        }
        List<String> shown = new ArrayList<>();
        for (Path page : pages) {
            LINE.matcher(Files.readString(page)).results().forEach(found -> shown.add(found.group(1)));
        }
        return shown;
    }

    /** Brackets round what may be left out, and the shape of a day, are for people. */
    private static String[] words(String shown) {
        String plain = shown.replaceAll("[\\[\\]]", "").replace("...", "").replace("YYYY-MM-DD", "2026-03-02");
        return WORD.matcher(plain)
                .results()
                .map(found -> found.group(1) == null ? found.group(2) : found.group(1))
                .toArray(String[]::new);
    }

    private static CommandLine line() {
        PrintWriter nowhere = new PrintWriter(new StringWriter());
        CommandLine line = new CommandLine(Main.class, new Commands(new Terminal(nowhere, nowhere, false)));
        line.setResourceBundle(new WordsBundle());
        return line;
    }
}
