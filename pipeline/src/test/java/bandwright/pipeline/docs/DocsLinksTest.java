package bandwright.pipeline.docs;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.rules.table.TableKind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a page points to is there: files, columns, keys, tables. */
final class DocsLinksTest {
    private static final Path ROOT = Path.of("..");
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)\\s]+)\\)");
    private static final Pattern CODE = Pattern.compile("`([^`\n]+)`");

    static List<Path> pages() throws IOException {
        List<Path> pages = new ArrayList<>(List.of(ROOT.resolve("README.md"), ROOT.resolve("DEVELOPERS.md")));
        try (Stream<Path> files = Files.list(ROOT.resolve("docs"))) {
            files.filter(file -> file.toString().endsWith(".md")).sorted().forEach(pages::add);
        }
        return pages;
    }

    @ParameterizedTest
    @MethodSource("pages")
    void everyLinkPointsToAFile(Path page) throws IOException {
        LINK.matcher(Files.readString(page))
                .results()
                .map(link -> link.group(1).replaceAll("#.*", ""))
                .filter(target -> !target.isEmpty() && !target.contains("://"))
                .forEach(target ->
                        assertThat(page.resolveSibling(target)).as("%s", page).exists());
    }

    /** A word with an underscore in code font is a column, a key or a field of the rulebook, or a key of run.json. */
    @ParameterizedTest
    @MethodSource("pages")
    void everyNameInCodeFontIsKnown(Path page) throws IOException {
        Set<String> known = names();
        String prose = Files.readString(page).replaceAll("(?s)```.*?```", "");
        CODE.matcher(prose)
                .results()
                .map(code -> code.group(1))
                .filter(code -> code.matches("[a-z]+(_[a-z0-9]+)+"))
                .forEach(code -> assertThat(known).as("%s", page).contains(code));
    }

    private static Set<String> names() throws IOException {
        Set<String> names = new TreeSet<>(ShopValues.keys());
        for (TableKind kind : TableKind.values()) {
            names.addAll(kind.columns());
        }
        Arrays.stream(bandwright.rules.orders.OrderField.class.getFields())
                .map(field -> field.getName().toLowerCase(java.util.Locale.ROOT))
                .forEach(names::add);
        try (Stream<Path> samples = Files.walk(ROOT.resolve("outbox-sample"))) {
            for (Path json : samples.filter(file -> file.endsWith("run.json")).toList()) {
                Pattern.compile("\"([a-z_]+)\":")
                        .matcher(Files.readString(json))
                        .results()
                        .forEach(key -> names.add(key.group(1)));
            }
        }
        return names;
    }
}
