package bandwright.checks.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every row of docs/faults.md names a test that is there. */
final class FaultsPageTest {
    private static final Path PAGE = Path.of("..", "..", "docs", "faults.md");
    private static final List<Path> TESTS =
            List.of(Path.of("src", "test", "java"), Path.of("..", "src", "test", "java"));
    private static final Pattern NAMED = Pattern.compile("<!-- (.+) --> \\|$");

    @Test
    void everyRowIsATest() throws IOException {
        Map<String, String> sources = sources();
        List<String> rows = Files.readAllLines(PAGE).stream()
                .filter(line ->
                        line.startsWith("| ") && !line.startsWith("| ---") && !line.startsWith("| What happens"))
                .toList();

        assertThat(rows).hasSizeGreaterThan(10).allSatisfy(row -> {
            var named = NAMED.matcher(row);
            assertThat(named.find()).as(row).isTrue();
            for (String test : named.group(1).split(" ", -1)) {
                String[] parts = test.split("\\.", -1);
                assertThat(sources).as(row).containsKey(parts[0]);
                assertThat(isTest(sources.getOrDefault(parts[0], ""), parts[1]))
                        .as(test)
                        .isTrue();
            }
        });
    }

    /** Whether a method of that name stands there under what makes it a test. */
    private static boolean isTest(String source, String method) {
        int at = source.indexOf("void " + method + "(");
        return at > 0
                && source.substring(source.substring(0, at).lastIndexOf("\n\n"), at)
                        .contains("Test");
    }

    private static Map<String, String> sources() throws IOException {
        Map<String, String> sources = new TreeMap<>();
        for (Path folder : TESTS) {
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path file : files.filter(each -> each.toString().endsWith("Test.java"))
                        .toList()) {
                    String name = String.valueOf(file.getFileName());
                    sources.put(name.substring(0, name.length() - ".java".length()), Files.readString(file));
                }
            }
        }
        return sources;
    }
}
