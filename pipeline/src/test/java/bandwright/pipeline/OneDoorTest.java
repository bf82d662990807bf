package bandwright.pipeline;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Strangers' texts are made harmless where they are written, in one place for each kind of output. This looks through the
 * sources for a place that writes round that door.
 */
class OneDoorTest {
    private static final Path SOURCES = Path.of("src/main/java/bandwright/pipeline");

    /** What is written, the pattern that writes it, and the sources that may. */
    static Stream<Arguments> doors() {
        return Stream.of(
                Arguments.of(
                        "elements and attributes of HTML",
                        "write/index",
                        "\"[^\"\\n]*[<>][^\"\\n]*\"",
                        Set.of("Html.java")),
                Arguments.of("entities", "", "&(amp|lt|gt|quot|#39);", Set.of("Html.java", "WrittenText.java")),
                Arguments.of(
                        "texts of cells",
                        "",
                        "sheet\\.value\\((?!row, column, CellText\\.of\\(|atRow, column, number\\))",
                        Set.of()),
                Arguments.of("formulas", "", "\\.(formula|hyperlink|setFormula)\\(", Set.of()),
                Arguments.of(
                        "lines of a terminal",
                        "",
                        "\\.print(ln|f)?\\((?!harmless\\(|Terminal\\.harmless\\(|text\\);|$|\"\\\\r\")",
                        Set.of()),
                Arguments.of("names of files", "write", "A-Za-z0-9\\._-", Set.of()),
                Arguments.of("actions of a PDF", "", "PDAction|PDAnnotation|setOpenAction|JavaScript", Set.of()),
                Arguments.of(
                        "text operators of a PDF",
                        "",
                        "showText\\(|\\bTj\\b",
                        Set.of("EmbeddedFont.java", "Canvas.java")),
                Arguments.of(
                        "statements of SQL with values in them",
                        "ledger",
                        "\"[^\"\\n]*(=|VALUES) *'?\" *\\+ *(?!MADE\\b)\\w",
                        Set.of("Schema.java")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("doors")
    void nothingIsWrittenRoundTheDoor(String what, String folder, String pattern, Set<String> doors)
            throws IOException {
        Pattern writes = Pattern.compile(pattern, Pattern.MULTILINE);
        List<String> round = new ArrayList<>();
        try (Stream<Path> files = Files.walk(SOURCES.resolve(folder))) {
            for (Path file : files.filter(each -> each.toString().endsWith(".java"))
                    .sorted()
                    .toList()) {
                if (!doors.contains(String.valueOf(file.getFileName()))) {
                    String code = Files.readString(file).replaceAll("(?s)/\\*.*?\\*/|//[^\\n]*", "");
                    writes.matcher(code).results().forEach(found -> round.add(file + ": " + found.group()));
                }
            }
        }
        assertThat(round).as(what).isEmpty();
    }
}
