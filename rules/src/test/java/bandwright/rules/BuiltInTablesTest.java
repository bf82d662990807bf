package bandwright.rules;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.rules.table.Names;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the tables that everybody starts with may and may not say, whoever edits them. */
class BuiltInTablesTest {
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();

    private static List<CSVRecord> rows(String table) throws IOException {
        try (InputStream in = Objects.requireNonNull(
                        BuiltInTablesTest.class.getResourceAsStream("/bandwright/tables/" + table), table);
                CSVParser parser = FORMAT.parse(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return parser.getRecords();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"blanks.csv", "press-settings.csv", "cautions.csv"})
    void everyFigureSaysHonestlyWhereItIsFrom(String table) throws IOException {
        assertThat(rows(table))
                .allSatisfy(row -> assertThat(row.get("evidence")).isIn("common practice", "from memory"));
    }

    @Test
    void noSettingPretendsToBeThatOfOneBlank() throws IOException {
        assertThat(rows("press-settings.csv"))
                .allSatisfy(row -> assertThat(row.get("sku")).isEmpty());
    }

    @Test
    void everySettingThatAllowsAPieceAsksForGlovesAndSaysWhichRangeItStandsFor() throws IOException {
        List<CSVRecord> allowed = rows("press-settings.csv").stream()
                .filter(row -> row.get("allowed").equals("yes"))
                .toList();
        assertThat(allowed).isNotEmpty().allSatisfy(row -> {
            assertThat(row.get("gloves")).isEqualTo("yes");
            assertThat(row.get("note")).containsIgnoringCase("only a start").contains("the supplier's listing wins");
            assertThat(row.get("temperature")).matches("\\d{3} C");
            assertThat(row.get("time")).matches("\\d+ (s|min)");
            assertThat(List.of(row.get("least_temperature"), row.get("most_temperature")))
                    .allSatisfy(end -> assertThat(end).matches("\\d{3} C"));
            assertThat(List.of(row.get("least_time"), row.get("most_time")))
                    .allSatisfy(end -> assertThat(end).matches("\\d+ (s|min)"));
        });
    }

    @Test
    void everyMaterialIsAnsweredForEveryKindOfHeatSource() throws IOException {
        Map<String, String> answers = new HashMap<>();
        for (CSVRecord row : rows("press-settings.csv")) {
            answers.put(row.get("material") + " in " + row.get("heat_kind"), row.get("allowed"));
        }
        assertThat(answers).hasSize(6 * 4);
    }

    @ParameterizedTest
    @CsvSource({
        "glass, mug press, no",
        "glass, tumbler press, no",
        "glass, flat press, no",
        "glass, oven, yes",
        "metal, mug press, if listed",
        "metal, tumbler press, yes",
        "polymer, oven, if listed",
        "ceramic, mug press, yes",
    })
    void whatTheTradeAllows(String material, String kind, String allowed) throws IOException {
        assertThat(rows("press-settings.csv"))
                .filteredOn(row -> row.get("material").equals(material)
                        && row.get("heat_kind").equals(kind))
                .extracting(row -> row.get("allowed"))
                .containsExactly(allowed);
    }

    @ParameterizedTest
    @ValueSource(strings = {"day", "prepare", "tape", "load", "press", "peel", "cool", "pack"})
    void everyStepOfTheWorkHasACautionForAll(String step) throws IOException {
        assertThat(rows("cautions.csv"))
                .anyMatch(row ->
                        row.get("step").equals(step) && row.get("applies_to").equals("all"));
    }

    @ParameterizedTest
    @CsvSource({
        "day, all, supplier's listing",
        "day, all, maker's manual",
        "day, all, local codes",
        "day, all, licensed electrician",
        "day, all, unattended",
        "day, all, burn",
        "day, all, fumes",
        "prepare, part:lid, before heat",
        "prepare, part:seal, before heat",
        "prepare, material:polymer, melts",
        "tape, kind:oven, heat gun",
        "load, all, gloves",
        "load, all, circuit",
        "load, material:glass, clamp press",
        "press, material:glass, crack or shatter",
        "peel, all, steam",
        "peel, all, handle",
        "peel, material:glass, cold water",
        "cool, material:glass, crack",
        "cool, material:metal, cool long before",
    })
    void nobodyIsLeftUnwarned(String step, String appliesTo, String words) throws IOException {
        assertThat(rows("cautions.csv"))
                .filteredOn(row ->
                        row.get("step").equals(step) && row.get("applies_to").equals(appliesTo))
                .anyMatch(row -> Names.fold(row.get("text")).contains(words));
    }

    @Test
    void noTextCallsAnythingSafeOrCool() throws IOException {
        List<String> texts = new ArrayList<>();
        rows("cautions.csv").forEach(row -> texts.add(row.get("text")));
        rows("blanks.csv").forEach(row -> texts.add(row.get("care") + " " + row.get("note")));
        rows("press-settings.csv").forEach(row -> texts.add(row.get("rest") + " " + row.get("note")));
        assertThat(texts)
                .noneMatch(text -> Names.fold(text).matches(".*(\\bsafe\\b|no gloves|stays cool|food[- ]grade).*"));
    }

    @Test
    void everyBlankIsFoundByOneNameOnly() throws IOException {
        List<String> names = new ArrayList<>();
        for (CSVRecord row : rows("blanks.csv")) {
            names.add(Names.fold(row.get("sku")));
            for (String alias : row.get("aliases").split("\\|", -1)) {
                names.add(Names.fold(alias));
            }
        }
        assertThat(names).doesNotHaveDuplicates().doesNotContain("");
    }

    @Test
    void whatHasALidOrASealIsWarnedOfIt() throws IOException {
        Set<String> warned = rows("cautions.csv").stream()
                .filter(row -> row.get("step").equals("prepare"))
                .map(row -> row.get("applies_to"))
                .collect(Collectors.toSet());
        for (CSVRecord row : rows("blanks.csv")) {
            for (String part : row.get("parts").split("\\|", -1)) {
                assertThat(part.isEmpty() || warned.contains("part:" + part))
                        .as(row.get("sku") + ": " + part)
                        .isTrue();
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        // ANSI/ASME Y14.1 (letter, tabloid) and ISO 216 (A sizes)
        "letter, 8.5 in, 11 in",
        "tabloid, 11 in, 17 in",
        "a4, 210 mm, 297 mm",
        "a3, 297 mm, 420 mm",
        // common practice, no source
        "legal, 8.5 in, 14 in",
        "13x19, 13 in, 19 in",
        "roll-24, 24 in, ''",
    })
    void papersHaveTheSizesOfTheirStandards(String id, String width, String height) throws IOException {
        assertThat(rows("papers.csv"))
                .filteredOn(row -> row.get("id").equals(id))
                .singleElement()
                .satisfies(row -> {
                    assertThat(row.get("width")).isEqualTo(width);
                    assertThat(row.get("height")).isEqualTo(height);
                });
    }
}
