package bandwright.pipeline.artwork.vector;

import static bandwright.pipeline.artwork.vector.PdfText.page;
import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.artwork.ArtworkShelf;
import bandwright.pipeline.artwork.Flaw;
import bandwright.pipeline.artwork.Found;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.zip.GZIPOutputStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Drawings that ask for more than a picture: each is refused in one word, or is printed without what it asked for. */
class HostileDrawingsTest {
    private static final String PRINTED = "printed";

    @TempDir
    Path folder;

    private final Map<String, byte[]> files = new LinkedHashMap<>();
    private final Map<String, String> ends = new LinkedHashMap<>();

    @TestFactory
    List<DynamicTest> eachEndsInOneWord() throws IOException {
        entities();
        outside();
        sizes();
        copies();
        filters();
        numbers();
        pdfLoops();
        pdfBombs();
        pdfActions();
        pdfRefused();
        assertThat(files.size()).isGreaterThanOrEqualTo(45);
        return files.keySet().stream()
                .map(name -> DynamicTest.dynamicTest(name, () -> ends(name)))
                .toList();
    }

    private void ends(String name) throws IOException {
        Files.write(folder.resolve(name), files.get(name));
        Found found = ArtworkShelf.open(folder).find(name);
        String end = found instanceof Found.Refused refused
                ? refused.flaw().name()
                : found instanceof Found.Picture ? PRINTED : String.valueOf(found);
        assertThat(List.of(ends.getOrDefault(name, "").split(" or ", -1)))
                .as(name)
                .contains(end);
        if (found instanceof Found.Refused refused) {
            assertThat(refused.flaw().message()).isNotBlank().doesNotContain("\n");
            assertThat(refused.flaw().cure()).isNotBlank().doesNotContain("\n");
        }
        Files.delete(folder.resolve(name));
    }

    private void svg(String name, Flaw flaw, String body) {
        file(name + ".svg", flaw.name(), document(body));
    }

    private void printed(String name, String body) {
        file(name + ".svg", PRINTED, document(body));
    }

    private static String document(String body) {
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\" width=\"200\""
                + " height=\"100\">" + body + "<rect width=\"20\" height=\"10\"/></svg>";
    }

    private void file(String name, String end, String content) {
        file(name, end, content.getBytes(StandardCharsets.UTF_8));
    }

    private void file(String name, String end, byte[] content) {
        files.put(name, content);
        ends.put(name, end);
    }

    private void entities() {
        StringBuilder laughs = new StringBuilder("<!DOCTYPE svg [<!ENTITY a0 \"ha\">");
        for (int i = 1; i < 12; i++) {
            laughs.append("<!ENTITY a%d \"%s\">".formatted(i, ("&a" + (i - 1) + ";").repeat(10)));
        }
        file("laughs.svg", "ENTITIES", laughs + "]>" + document("<text>&a11;</text>"));
        String file = "<!DOCTYPE svg [<!ENTITY x SYSTEM \"file:///etc/passwd\">]>";
        file("file-entity.svg", "ENTITIES", file + document("<text>&x;</text>"));
        file("utf16-entity.svg", "UNKNOWN_KIND", (file + document("")).getBytes(StandardCharsets.UTF_16));
        file("outer-type.svg", PRINTED, "<!DOCTYPE svg SYSTEM \"http://127.0.0.1:9/a.dtd\">" + document(""));
        file("unknown-entity.svg", "DAMAGED or ENTITIES", document("<g id=\"&nbsp;\"/>"));
    }

    private void outside() {
        svg("picture-by-file", Flaw.LINKS, "<image href=\"file:///etc/passwd\" width=\"9\" height=\"9\"/>");
        svg("picture-by-http", Flaw.LINKS, "<image xlink:href=\"http://127.0.0.1:9/a.png\" width=\"9\" height=\"9\"/>");
        svg("picture-beside", Flaw.LINKS, "<image href=\"../secret.png\" width=\"9\" height=\"9\"/>");
        svg("use-elsewhere", Flaw.LINKS, "<use href=\"http://127.0.0.1:9/a.svg#x\"/>");
        svg("paint-elsewhere", Flaw.LINKS, "<rect width=\"9\" height=\"9\" fill=\"url(http://127.0.0.1:9/a#b)\"/>");
        svg("import", Flaw.LINKS, "<style>@import 'http://127.0.0.1:9/a.css';</style>");
        svg(
                "font-by-http",
                Flaw.LETTERS,
                "<style>@font-face{font-family:a;src:url(http://127.0.0.1:9/a)}"
                        + "text{font-family:a}</style><text y=\"20\">tern</text>");
        file("sheet.svg", "LINKS", "<?xml-stylesheet href=\"http://127.0.0.1:9/a.css\"?>" + document(""));
        svg("web-page", Flaw.BLENDING, "<foreignObject width=\"9\" height=\"9\"/>");
        svg("svg-in-svg", Flaw.BLENDING, "<image href=\"data:image/svg+xml;base64,PHN2Zy8+\" width=\"9\"/>");
        printed("script", "<script>while(true){}</script><g onload=\"alert(1)\"/>");
        printed("script-elsewhere", "<script href=\"http://127.0.0.1:9/a.js\"/>");
    }

    private void sizes() throws IOException {
        file("huge.svg", PRINTED, document("").replace("\"200\"", "\"1e9\"").replace("\"100\"", "\"1e9\""));
        file("tiny.svg", PRINTED, document("").replace("\"200\"", "\"0.001\"").replace("\"100\"", "\"0.001\""));
        file(
                "slim.svg",
                "NO_SIZE",
                document("").replace("\"200\"", "\"100000\"").replace("\"100\"", "\"1\""));
        file("nothing.svg", "NO_SIZE or DAMAGED", document("").replace("\"200\"", "\"0\""));
        file("minus.svg", "NO_SIZE or DAMAGED", document("").replace("\"200\"", "\"-20\""));
        file("not-a-number.svg", "NO_SIZE or DAMAGED or printed", document("").replace("\"200\"", "\"NaN\""));
        ByteArrayOutputStream bomb = new ByteArrayOutputStream();
        try (OutputStream out = new GZIPOutputStream(bomb)) {
            out.write(document("").getBytes(StandardCharsets.UTF_8));
            byte[] blanks = " ".repeat(1 << 20).getBytes(StandardCharsets.UTF_8);
            for (int i = 0; i < 500; i++) {
                out.write(blanks);
            }
        }
        file("bomb.svgz", "TOO_COMPLEX", bomb.toByteArray());
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (OutputStream out = new GZIPOutputStream(packed)) {
            out.write(document("").getBytes(StandardCharsets.UTF_8));
        }
        file("packed.svgz", PRINTED, packed.toByteArray());
    }

    private void copies() {
        StringBuilder uses = new StringBuilder("<defs><g id=\"u0\"><rect width=\"9\" height=\"9\"/></g>");
        StringBuilder patterns = new StringBuilder("<defs>");
        StringBuilder masks = new StringBuilder("<defs>");
        for (int i = 1; i < 15; i++) {
            uses.append("<g id=\"u%d\">%s</g>".formatted(i, ("<use href=\"#u" + (i - 1) + "\"/>").repeat(10)));
        }
        for (int i = 0; i < 12; i++) {
            String rects = "<rect width=\"4\" height=\"4\" fill=\"url(#p%d)\"/>"
                    .formatted(i + 1)
                    .repeat(8);
            patterns.append("<pattern id=\"p%d\" width=\".1\" height=\".1\">%s</pattern>".formatted(i, rects));
            masks.append("<mask id=\"m%d\"><g mask=\"url(#m%d)\"><rect width=\"90\" height=\"90\"/></g></mask>"
                    .formatted(i, i + 1));
        }
        svg("use-bomb", Flaw.TOO_COMPLEX, uses + "</defs><use href=\"#u14\"/>");
        svg("use-of-itself", Flaw.TOO_COMPLEX, "<g id=\"a\"><use href=\"#a\"/></g>");
        file(
                "patterns.svg",
                "TOO_COMPLEX or DAMAGED or printed",
                document(patterns + "</defs><rect width=\"200\" height=\"100\" fill=\"url(#p0)\"/>"));
        file(
                "pattern-of-itself.svg",
                "TOO_COMPLEX",
                document(
                        "<pattern id=\"p\" width=\".1\" height=\".1\"><rect width=\"9\" height=\"9\" fill=\"url(#p)\"/></pattern>"
                                + "<rect width=\"90\" height=\"90\" fill=\"url(#p)\"/>"));
        file(
                "masks.svg",
                "TOO_COMPLEX or DAMAGED or printed",
                document(masks + "</defs><rect width=\"90\" height=\"90\" mask=\"url(#m0)\"/>"));
        svg("deep", Flaw.TOO_COMPLEX, "<g>".repeat(5000) + "</g>".repeat(5000));
        svg("many", Flaw.TOO_COMPLEX, "<rect width=\"1\" height=\"1\"/>".repeat(250_000));
    }

    private void filters() {
        file(
                "blur.svg",
                "TOO_COMPLEX or DAMAGED or printed",
                document("<filter id=\"f\"><feGaussianBlur stdDeviation=\"9999\"/></filter>"
                        + "<rect width=\"90\" height=\"90\" filter=\"url(#f)\"/>"));
        file(
                "region.svg",
                "TOO_COMPLEX or DAMAGED or printed",
                document("<filter id=\"f\" x=\"-9e6\" y=\"-9e6\" width=\"9e7\" height=\"9e7\"><feFlood/></filter>"
                        + "<rect width=\"90\" height=\"90\" filter=\"url(#f)\"/>"));
        svg(
                "many-filters",
                Flaw.TOO_COMPLEX,
                "<filter id=\"f\"><feFlood/></filter>"
                        + "<rect width=\"90\" height=\"90\" filter=\"url(#f)\"/>".repeat(1000));
        svg(
                "noise",
                Flaw.TOO_COMPLEX,
                "<filter id=\"f\">" + "<feTurbulence numOctaves=\"9999\"/>".repeat(300)
                        + "</filter><rect width=\"90\" height=\"90\" filter=\"url(#f)\"/>");
    }

    private void numbers() {
        file("nan.svg", "DAMAGED or printed", document("<path d=\"M NaN NaN L 1e400 -1e400 Z\"/><circle r=\"NaN\"/>"));
        printed(
                "vast",
                "<path d=\"M0 0 L3e38 3e38 L-3e38 2 Z\"/><rect width=\"9e37\" height=\"9e37\" stroke=\"red\"/>");
        printed("no-inverse", "<g transform=\"scale(0)\"><rect width=\"9\" height=\"9\" stroke=\"red\"/></g>");
        file(
                "dashes.svg",
                "TOO_COMPLEX or DAMAGED or printed",
                document("<path d=\"M0 50H200\" stroke=\"red\" stroke-width=\"9\" stroke-dasharray=\"0.0001\"/>"));
        StringBuilder path = new StringBuilder("<path d=\"M0 0");
        for (int i = 0; i < 400_000; i++) {
            path.append(String.format(Locale.ROOT, "L%d %d", i % 200, i * 7 % 100));
        }
        file("long-path.svg", "TOO_COMPLEX or printed", document(path + "Z\"/>"));
        file("half.svg", "DAMAGED", document("<rect width=\"9\" height=\"9\"/>").substring(0, 150));
        file("html.svg", "UNKNOWN_KIND", "<html><body><svg/></body></html>");
    }

    private void pdfLoops() {
        file(
                "page-loop.pdf",
                "DAMAGED or NO_PAGES",
                page("0 g")
                        .object(2, "<< /Type /Pages /Kids [2 0 R] /Count 1 >>")
                        .file());
        file(
                "parent-loop.pdf",
                "DAMAGED or printed",
                page("").object(3, "<< /Type /Page /Parent 3 0 R /Contents 4 0 R >>")
                        .file());
        file(
                "object-loop.pdf",
                "DAMAGED or printed or NO_SIZE",
                page("/Resources 5 0 R", "0 0 9 9 re f").object("5 0 R").file());
        String form = "/Type /XObject /Subtype /Form /BBox [0 0 200 100] /Resources << /XObject << /F %d 0 R >> >>";
        file(
                "form-of-itself.pdf",
                "DAMAGED or printed or TOO_COMPLEX",
                page("/Resources << /XObject << /F 5 0 R >> >>", "/F Do").stream(
                                form.formatted(5), "/F Do".getBytes(StandardCharsets.ISO_8859_1))
                        .file());
        PdfText forms = page("/Resources << /XObject << /F 5 0 R >> >>", "/F Do");
        for (int i = 5; i < 20; i++) {
            forms.stream(form.formatted(i + 1), "/F Do ".repeat(10).getBytes(StandardCharsets.ISO_8859_1));
        }
        file(
                "form-bomb.pdf",
                "TOO_COMPLEX",
                forms.stream(form.formatted(99), new byte[0]).file());
        file(
                "deep-array.pdf",
                "DAMAGED or printed or TOO_COMPLEX",
                page("/Resources << /XObject " + "[".repeat(200_000) + "]".repeat(200_000) + " >>", "0 g")
                        .file());
        file(
                "no-xref.pdf",
                "DAMAGED or printed",
                new String(page("0 0 9 9 re f").file(), StandardCharsets.ISO_8859_1)
                        .replaceAll("(?s)xref.*", "startxref\n99999999\n%%EOF"));
        file(
                "xref-of-itself.pdf",
                "DAMAGED or printed or NO_PAGES",
                page("0 g").trailer("/Prev 9").file());
        file(
                "cut.pdf",
                "DAMAGED or NO_PAGES",
                java.util.Arrays.copyOf(page("0 g").file(), 120));
    }

    private void pdfBombs() {
        byte[] zeros = PdfText.deflated(new byte[300 << 20]);
        file(
                "bomb.pdf",
                "TOO_COMPLEX",
                page("/Resources 5 0 R", "0 g").stream("/Filter /FlateDecode", zeros)
                        .file());
        file(
                "bomb-in-bomb.pdf",
                "TOO_COMPLEX",
                page("0 g").stream(
                                "/Filter [/FlateDecode /FlateDecode]",
                                PdfText.deflated(PdfText.deflated(new byte[100 << 20])))
                        .file());
        file(
                "vast-picture.pdf",
                "TOO_MANY_PIXELS",
                page("/Resources << /XObject << /I 5 0 R >> >>", "200 0 0 100 0 0 cm /I Do").stream(
                                "/Type /XObject /Subtype /Image /Width 60000 /Height 60000 /ColorSpace /DeviceGray /BitsPerComponent 8 /Filter /FlateDecode",
                                PdfText.deflated(new byte[1 << 20]))
                        .file());
        file(
                "vast-page.pdf",
                PRINTED,
                page("0 0 9 9 re f")
                        .object(3, "<< /Type /Page /Parent 2 0 R /MediaBox [0 0 9e9 9e9] /Contents 4 0 R >>")
                        .file());
        file(
                "many-shapes.pdf",
                "TOO_COMPLEX or printed",
                page("0 0 9 9 re f ".repeat(400_000)).file());
        file(
                "cells.pdf",
                "TOO_COMPLEX or DAMAGED or printed",
                page("/Resources << /Pattern << /P 5 0 R >> >>", "/Pattern cs /P scn 0 0 200 100 re f").stream(
                                "/Type /Pattern /PatternType 1 /PaintType 1 /TilingType 1 /BBox [0 0 1 1] /XStep 0.00001 /YStep 0.00001 /Resources << >>",
                                "0 0 1 1 re f".getBytes(StandardCharsets.ISO_8859_1))
                        .file());
    }

    private void pdfActions() {
        String script = "/S /JavaScript /JS (app.launchURL\\('http://127.0.0.1:9/'\\))";
        file(
                "script.pdf",
                PRINTED,
                page("0 0 9 9 re f")
                        .object(
                                1,
                                "<< /Type /Catalog /Pages 2 0 R /OpenAction << " + script + " >> /AA << /WC << "
                                        + script + " >> >> >>")
                        .file());
        file(
                "launch.pdf",
                PRINTED,
                page(
                                "/Annots [<< /Type /Annot /Subtype /Link /Rect [0 0 200 100] /A << /S /Launch /F (/bin/sh) >> >>]",
                                "0 0 9 9 re f")
                        .file());
        file(
                "outer-stream.pdf",
                "LINKS",
                page("/Resources << /XObject << /F 5 0 R >> >>", "/F Do").stream(
                                "/Type /XObject /Subtype /Form /BBox [0 0 9 9] /F (/etc/passwd)", new byte[0])
                        .file());
    }

    private void pdfRefused() throws IOException {
        ByteArrayOutputStream locked = new ByteArrayOutputStream();
        ByteArrayOutputStream shut = new ByteArrayOutputStream();
        for (boolean needsPassword : new boolean[] {true, false}) {
            try (PDDocument document = new PDDocument()) {
                document.addPage(new PDPage());
                document.protect(
                        new StandardProtectionPolicy("storm", needsPassword ? "lamp" : "", new AccessPermission()));
                document.save(needsPassword ? locked : shut);
            }
        }
        file("locked.pdf", "LOCKED", locked.toByteArray());
        file("no-copying.pdf", "LOCKED", shut.toByteArray());
        file(
                "no-pages.pdf",
                "NO_PAGES",
                page("").object(2, "<< /Type /Pages /Kids [] /Count 0 >>").file());
        file(
                "flat.pdf",
                "NO_SIZE or printed",
                page("").object(3, "<< /Type /Page /Parent 2 0 R /MediaBox [0 0 0 0] /Contents 4 0 R >>")
                        .file());
        file(
                "fonts.pdf",
                "FONTS",
                page(
                                "/Resources << /Font << /A << /Type /Font /Subtype /Type1 /BaseFont /Helvetica >> >> >>",
                                "BT /A 12 Tf (tern) Tj ET")
                        .file());
        file(
                "layers.pdf",
                "LAYERS",
                page("/OC /L BDC 0 0 9 9 re f EMC")
                        .object(
                                1,
                                "<< /Type /Catalog /Pages 2 0 R /OCProperties << /OCGs [5 0 R] /D << /OFF [5 0 R] >> >> >>")
                        .object("<< /Type /OCG /Name (draft) >>")
                        .file());
        file("rubbish.pdf", "DAMAGED or NO_PAGES", "%PDF-1.7\n" + "tern ".repeat(1000));
    }
}
