package bandwright.checks.hostile;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.checks.WholeRun;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One run whose buyers write what does harm somewhere, in every cell: every output shows it as the letters that it is. */
final class EscapesTest {
    private static final List<String> PAYLOADS = List.of(
            "<script>alert(1)</script>",
            "\"><img src=x onerror=alert(1)>",
            "' onmouseover='alert(1)",
            "</style></title><svg/onload=alert(1)>",
            "javascript:alert(1)",
            "&lt;script&gt;&#60;b&#62;",
            "{{7*7}}${7*7}#{7*7}",
            "=1+1",
            "=HYPERLINK(\"http://127.0.0.1/\";\"tern\")",
            "+1-1",
            "@SUM(A1)",
            "-2+3",
            "\t=1+1",
            "'=1+1",
            "=cmd|' /C calc'!A0",
            "\u001B[2J\u001B[31mred\u0007",
            "\u001B]0;title\u0007",
            "\u009B2J",
            "a\rb\u0008\u0008c",
            "\u202Egnp.nret",
            "\u2028line\u2029end",
            "../../../etc/passwd",
            "..\\..\\windows",
            "/etc/passwd",
            "C:con",
            "nul",
            ".hidden",
            "name\u0000.png",
            "$(reboot) `reboot` ; rm -rf / | cat && x",
            "'; DROP TABLE units; --",
            "(tern) Tj ET Q endstream \\( \\)",
            "%s%n%x {0} {1}",
            "_x0041_",
            "x".repeat(3000));

    private static final Pattern TAG = Pattern.compile("<(/?)([A-Za-z!][A-Za-z0-9]*)([^>]*)>");
    private static final Pattern ATTRIBUTE = Pattern.compile("([a-zA-Z-]+)=\"([^\"]*)\"");

    @TempDir
    static Path folder;

    private static Map<String, byte[]> files = Map.of();
    private static String said = "";

    @BeforeAll
    static void aRunOfThem() throws Exception {
        StringBuilder orders = new StringBuilder(
                "Order,SKU,Design,Qty,Personalisation,Site,Buyer,Ship To,Street,Gift,Gift Message,Note,Ship By\r\n");
        for (int i = 0; i < PAYLOADS.size(); i++) {
            String bad = '"' + PAYLOADS.get(i).replace("\"", "\"\"") + '"';
            String design = i % 2 == 0 ? "tern" : "lamp";
            orders.append(String.join(
                            ",",
                            bad,
                            "COAST-S",
                            design,
                            "1",
                            i % 2 == 0 ? bad : "",
                            bad,
                            bad,
                            bad,
                            bad,
                            "yes",
                            bad,
                            bad,
                            ""))
                    .append("\r\n")
                    .append(String.join(",", "H" + i, bad, bad, bad, bad, bad, bad, bad, bad, bad, bad, bad, bad))
                    .append("\r\n");
        }
        Path file = Files.writeString(folder.resolve("<b>&'=x.csv"), orders, StandardCharsets.UTF_8);
        Path heard = folder.resolve("heard");
        List<String> command = WholeRun.command(
                List.of("-XX:TieredStopAtLevel=1"),
                "run",
                file.toString(),
                "--artwork",
                WholeRun.SAMPLE.resolve("artwork").toString(),
                "--out",
                folder.resolve("outbox").toString(),
                "--date",
                "2026-03-02");
        int code = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(heard.toFile())
                .start()
                .waitFor();
        said = Files.readString(heard);
        assertThat(code).as(said).isEqualTo(3);
        files = WholeRun.files(folder.resolve("outbox/2026-03-02-1"));
    }

    @Test
    void theRunPrintsSomeAndHoldsSome() {
        assertThat(files).containsKeys("index.html", "orders.xlsx", "held.xlsx", "packing-slips.pdf", "run.json");
        assertThat(files.keySet()).anyMatch(name -> name.startsWith("sheets/"));
    }

    @Test
    void thePageHasNoElementAndNoAttributeOfAStranger() {
        String html = text("index.html");
        TreeSet<String> elements = new TreeSet<>();
        TreeSet<String> attributes = new TreeSet<>();
        TAG.matcher(html).results().forEach(tag -> {
            elements.add(tag.group(2));
            ATTRIBUTE.matcher(tag.group(3)).results().forEach(attribute -> {
                attributes.add(attribute.group(1));
                if (attribute.group(1).equals("href") || attribute.group(1).equals("src")) {
                    assertThat(attribute.group(2)).matches("#[\\w.-]*|data:image/(png|jpeg);.*|[A-Za-z0-9._/#=-]+");
                }
            });
            assertThat(ATTRIBUTE
                            .matcher(tag.group(3))
                            .replaceAll("")
                            .replace("/", "")
                            .strip())
                    .as(tag.group())
                    .matches("|html|open");
        });
        assertThat(elements).doesNotContain("script", "iframe", "object", "b").contains("html", "table");
        assertThat(attributes).noneMatch(name -> name.startsWith("on") || name.equals("style"));
        assertThat(html).contains("&lt;script&gt;alert(1)&lt;/script&gt;");
        assertThat(html.codePoints().noneMatch(c -> Character.isISOControl(c) && c != '\n'))
                .isTrue();
    }

    @Test
    void noCellIsAFormula() throws IOException {
        for (String name : List.of("orders.xlsx", "held.xlsx")) {
            Map<String, String> parts = parts(bytes(name));
            parts.forEach((part, xml) -> {
                if (part.startsWith("xl/worksheets/")) {
                    assertThat(xml).as(part).doesNotContain("<f>", "<f ", "<hyperlink");
                }
                assertThat(part).doesNotContain("externalLink", "vbaProject");
            });
            assertThat(String.join("", parts.values())).contains("=HYPERLINK(");
        }
    }

    @Test
    void theTerminalIsToldNothing() {
        assertThat(said.codePoints().noneMatch(c -> Character.isISOControl(c) && c != '\n'))
                .isTrue();
        assertThat(said).doesNotContain("\u202E", "\u2028").doesNotContain("Exception");
    }

    @Test
    void everyFileHasAPlainName() {
        assertThat(files.keySet()).allSatisfy(name -> {
            assertThat(name).matches("([a-z]+/)?[A-Za-z0-9_-][A-Za-z0-9._-]*\\.(pdf|png|html|json|xlsx)");
            assertThat(name.length()).isLessThan(100);
            assertThat(name.toLowerCase(Locale.ROOT)).doesNotMatch("(.*/)?(con|nul|prn|aux)\\..*");
        });
    }

    @Test
    void noPdfDoesAnything() throws IOException {
        for (Map.Entry<String, byte[]> file : files.entrySet()) {
            if (file.getKey().endsWith(".pdf")) {
                try (PDDocument document = Loader.loadPDF(file.getValue())) {
                    assertThat(document.getDocumentCatalog().getOpenAction()).isNull();
                    for (PDPage page : document.getPages()) {
                        assertThat(page.getAnnotations()).as(file.getKey()).isEmpty();
                    }
                }
            }
        }
        try (PDDocument slips = Loader.loadPDF(bytes("packing-slips.pdf"))) {
            assertThat(new PDFTextStripper().getText(slips))
                    .contains("<img src=x onerror=alert(1)>", "DROP TABLE units", "=1+1");
        }
    }

    @Test
    void theFileForMachinesIsSoundJson() throws IOException {
        try (JsonParser json = new JsonFactory().createParser(bytes("run.json"))) {
            int tokens = 0;
            while (json.nextToken() != null) {
                tokens++;
            }
            assertThat(tokens).isGreaterThan(100);
        }
        assertThat(text("run.json")).doesNotContain("\u001B").doesNotContain("\u0000");
    }

    private static byte[] bytes(String name) {
        return Objects.requireNonNull(files.get(name), name);
    }

    private static String text(String name) {
        return new String(bytes(name), StandardCharsets.UTF_8);
    }

    private static Map<String, String> parts(byte[] zip) throws IOException {
        Map<String, String> parts = new TreeMap<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                parts.put(entry.getName(), new String(in.readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        return parts;
    }
}
