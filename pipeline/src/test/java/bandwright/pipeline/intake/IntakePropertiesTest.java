package bandwright.pipeline.intake;

import static bandwright.pipeline.intake.format.WorkbookParts.row;
import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.intake.format.WorkbookParts;
import bandwright.pipeline.rows.From;
import bandwright.pipeline.rows.Row;
import bandwright.rules.Rulebook;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for any inbox: nothing is lost, nothing is read twice, nothing breaks the reader. */
class IntakePropertiesTest {
    private static final List<String> WORDS = List.of(
            "",
            " ",
            "Q1",
            "Q2",
            "0071",
            "MUG-11-W",
            "heron",
            "3",
            "0",
            "2.5",
            "02/03/2026",
            "2026-03-02",
            "Cancelled",
            "soon",
            "-",
            "#N/A",
            "Order",
            "For Ada",
            "yes",
            "a;b",
            "x|y",
            "\"",
            "two\nlines",
            "1234567890123456789");
    private static final List<String> HEADERS = List.of(
            "Order", "SKU", "Qty", "Ship By", "Status", "Product", "Personalisation", "Line", "Site", "?", "SKU");

    @TempDir
    Path folder;

    static LongStream seeds() {
        return LongStream.range(0, 60);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyRowEndsOnce(long seed) throws IOException {
        SplittableRandom random = new SplittableRandom(seed);
        List<Path> inbox = new ArrayList<>();
        int written = 0;
        for (int f = 0; f < 1 + random.nextInt(3); f++) {
            List<List<String>> rows = rows(random);
            written += rows.size() - 1;
            inbox.add(f % 2 == 0 ? csv(f, rows, random) : workbook(f, rows));
        }
        Orders orders = Intake.read(inbox, TestRules.plain());
        List<From> ends = Stream.of(
                        orders.lines().stream().map(line -> line.row().from()),
                        orders.held().stream().map(held -> held.row().from()),
                        orders.skipped().stream().map(skipped -> skipped.row().from()),
                        orders.empty().stream().map(Row::from))
                .flatMap(each -> each)
                .toList();
        assertThat(ends).as("seed %d", seed).hasSize(written).doesNotHaveDuplicates();
        assertThat(orders.files().stream().mapToInt(InboxFile::rows).sum())
                .as("seed %d", seed)
                .isEqualTo(written);
        assertThat(Intake.read(inbox, TestRules.plain()).files()).isEqualTo(orders.files());
    }

    /** A header, any rows, and a last one that isn't blank. */
    private static List<List<String>> rows(SplittableRandom random) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(HEADERS);
        int count = random.nextInt(30);
        for (int i = 0; i < count; i++) {
            rows.add(IntStream.range(0, 1 + random.nextInt(HEADERS.size() + 2))
                    .mapToObj(c -> WORDS.get(random.nextInt(WORDS.size())))
                    .toList());
        }
        rows.add(List.of("Q9", "MUG-11-W", "1"));
        return rows;
    }

    private Path csv(int number, List<List<String>> rows, SplittableRandom random) throws IOException {
        String separator = List.of(",", ";", "\t", "|").get(random.nextInt(4));
        StringBuilder text = new StringBuilder();
        for (List<String> row : rows) {
            text.append(String.join(
                            separator,
                            row.stream()
                                    .map(cell -> '"' + cell.replace("\"", "\"\"") + '"')
                                    .toList()))
                    .append("\r\n");
        }
        return Files.writeString(folder.resolve("f" + number + ".csv"), text);
    }

    private Path workbook(int number, List<List<String>> rows) throws IOException {
        StringBuilder sheet = new StringBuilder();
        for (int i = 0; i < rows.size(); i++) {
            sheet.append(row(3 + i, rows.get(i).toArray(String[]::new)));
        }
        return new WorkbookParts().sheet("Orders", sheet.toString()).write(folder.resolve("f" + number + ".xlsx"));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void noDamageToAFileBreaksTheReader(long seed) throws IOException {
        SplittableRandom random = new SplittableRandom(seed);
        byte[] workbook = new WorkbookParts()
                .strings("<si><t>heron</t></si>")
                .sheet(
                        "Orders",
                        row(1, "Order", "SKU", "Qty") + row(2, "Q1", "MUG", "1")
                                + "<row r=\"3\"><c t=\"s\"><v>0</v></c><c s=\"1\"><v>46083</v></c><c><v>2</v></c></row>")
                .bytes();
        byte[] csv = "Order,SKU,Qty\n\"Q1\",MUG,1\nQ2,\"MU\"\"G\",2\n".getBytes(StandardCharsets.UTF_8);
        for (int i = 0; i < 40; i++) {
            byte[] damaged = damaged(i % 3 == 0 ? csv : workbook, random);
            Path file = Files.write(folder.resolve("damaged.xlsx"), damaged);
            Orders orders = Intake.read(List.of(file), TestRules.plain());
            assertThat(orders.files()).as("seed %d, %d", seed, i).isNotEmpty().allSatisfy(each -> assertThat(
                            each.message())
                    .doesNotContain("\n", "java", "Exception"));
        }
    }

    /** The same damage inside the zip, where the checksum would catch it before the reader does. */
    @ParameterizedTest
    @MethodSource("seeds")
    void noDamageToAPartBreaksTheReader(long seed) throws IOException {
        SplittableRandom random = new SplittableRandom(seed);
        String sheet =
                "<worksheet><sheetData><row r=\"1\"><c r=\"A1\" t=\"s\"><v>0</v></c><c t=\"inlineStr\"><is><t>SKU</t></is></c></row>"
                        + "<row r=\"2\"><c r=\"A2\" s=\"1\"><v>46083</v></c><c r=\"B2\" t=\"b\"><v>1</v></c></row></sheetData></worksheet>";
        String styles = "<styleSheet><numFmts><numFmt numFmtId=\"164\" formatCode=\"00000\"/></numFmts><cellXfs>"
                + "<xf numFmtId=\"0\"/><xf numFmtId=\"14\"/></cellXfs></styleSheet>";
        Rulebook rules = TestRules.plain();
        for (int i = 0; i < 20; i++) {
            Path file = new WorkbookParts()
                    .strings("<si><t>Order</t></si>")
                    .sheet("Orders", "")
                    .part("xl/worksheets/sheet1.xml", i % 2 == 0 ? damaged(sheet, random) : sheet)
                    .part("xl/styles.xml", i % 2 == 1 ? damaged(styles, random) : styles)
                    .write(folder.resolve("damaged.xlsx"));
            assertThat(Intake.read(List.of(file), rules).files())
                    .as("seed %d, %d", seed, i)
                    .isNotEmpty();
        }
    }

    private static String damaged(String part, SplittableRandom random) {
        byte[] bytes = damaged(part.getBytes(StandardCharsets.ISO_8859_1), random);
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }

    private static byte[] damaged(byte[] whole, SplittableRandom random) {
        byte[] bytes = whole.clone();
        for (int i = 0; i <= random.nextInt(4); i++) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(256);
        }
        return random.nextInt(5) == 0 ? java.util.Arrays.copyOf(bytes, random.nextInt(bytes.length)) : bytes;
    }
}
