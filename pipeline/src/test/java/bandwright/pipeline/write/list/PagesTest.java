package bandwright.pipeline.write.list;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.RunId;
import bandwright.rules.units.Length;
import bandwright.rules.units.LengthUnit;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;

/** How a list breaks into pages: nothing cut, nothing orphaned, nothing lost. */
final class PagesTest {
    private static final Length MEASURE = Length.mm(178);

    private interface Setting {
        void on(Pages pages) throws IOException;
    }

    private static byte[] list(Setting setting) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Pages pages = new Pages(
                new RunId(LocalDate.of(2026, 3, 2), 1), "tide.pdf", "Tide list", "", ListPaper.of(LengthUnit.MM))) {
            setting.on(pages);
            pages.writeTo(out);
        }
        return out.toByteArray();
    }

    private static List<String> pages(byte[] pdf) throws IOException {
        List<String> texts = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setSortByPosition(true);
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                texts.add(stripper.getText(document).replaceAll("\\s+", " "));
            }
        }
        return texts;
    }

    /** The lowest baseline of the body's words, in mm above the page's lower edge. */
    private static double lowest(byte[] pdf) throws IOException {
        double[] lowest = {1000};
        try (PDDocument document = Loader.loadPDF(pdf)) {
            new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition text) {
                    double up = (document.getPage(0).getMediaBox().getHeight() - text.getYDirAdj()) * 25.4 / 72;
                    if (text.getFontSizeInPt() > 9) {
                        lowest[0] = Math.min(lowest[0], up);
                    }
                }
            }.getText(document);
        }
        return lowest[0];
    }

    private static Block lines(int count, String word) {
        List<Block> lines = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            lines.add(Text.of(word + i + ".", Style.BODY));
        }
        return new Stack(lines);
    }

    private static Row row(Block... cells) {
        Length column = MEASURE.half();
        return Row.of(List.of(column, column), List.of(cells));
    }

    @Test
    void aTableNamesItsColumnsOnEveryPageAndNeverWithoutARowBelow() throws IOException {
        for (int before = 40; before <= 62; before++) {
            int above = before;
            List<String> texts = pages(list(pages -> {
                pages.add(lines(above, "above"));
                pages.table(Row.head(
                        List.of(MEASURE.half(), MEASURE.half()),
                        List.of(Text.of("HEAD", Style.LABEL), Text.of("NAMES", Style.LABEL))));
                for (int i = 1; i <= 30; i++) {
                    pages.add(row(lines(6, "tern" + i + "-"), Text.of("right", Style.BODY)));
                }
            }));
            for (String text : texts) {
                assertThat(text.contains("HEAD"))
                        .as(above + " lines above: " + text)
                        .isEqualTo(text.contains("tern"));
            }
        }
    }

    @Test
    void aFrameHigherThanAPageGoesOnOverleaf() throws IOException {
        byte[] pdf = list(pages -> pages.add(Framed.of(lines(150, "tide"))));
        assertThat(String.join(" ", pages(pdf))).contains("tide1.", "tide75.", "tide150.");
        assertThat(lowest(pdf)).isGreaterThan(15.9);
    }

    @Test
    void aRowHigherThanAPageGoesOnOverleaf() throws IOException {
        byte[] pdf = list(pages -> pages.add(row(Text.of("left", Style.BODY), lines(150, "tide"))));
        assertThat(String.join(" ", pages(pdf))).contains("left", "tide1.", "tide75.", "tide150.");
        assertThat(lowest(pdf)).isGreaterThan(15.9);
    }

    @Test
    void aTextHigherThanAPageGoesOnOverleaf() throws IOException {
        byte[] pdf = list(pages -> pages.add(Text.of("storm lamp ".repeat(4000) + "last", Style.BODY)));
        assertThat(pages(pdf)).hasSizeGreaterThan(2);
        assertThat(pages(pdf).get(pages(pdf).size() - 1)).contains("last");
        assertThat(lowest(pdf)).isGreaterThan(15.9);
    }

    @Test
    void whatBelongsTogetherStaysTogether() throws IOException {
        for (int before = 40; before <= 62; before++) {
            int above = before;
            List<String> texts = pages(list(pages -> {
                pages.add(lines(above, "above"));
                pages.together(Text.of("Heading", Style.HEADING), Text.of("follows", Style.BODY));
            }));
            for (String text : texts) {
                assertThat(text.contains("Heading")).isEqualTo(text.contains("follows"));
            }
        }
    }

    @Test
    void cellsOfARowStandOnOneBaselineWhateverTheirSize() throws IOException {
        byte[] pdf = list(pages -> pages.add(row(Text.of("A1", Style.FIGURE), Text.of("small", Style.BODY))));
        List<Float> baselines = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition text) {
                    if (text.getFontSizeInPt() > 9) {
                        baselines.add(text.getYDirAdj());
                    }
                }
            }.getText(document);
        }
        assertThat(baselines).hasSize(7).allSatisfy(each -> assertThat(each).isEqualTo(baselines.get(0)));
    }

    @Test
    void aWordWiderThanALineIsPartedAndNoneOfItLost() throws IOException {
        String word = "Quillmoor".repeat(60);
        String text = String.join("", pages(list(pages -> pages.add(Text.of(word, Style.BODY)))))
                .replace(" ", "");
        assertThat(text).contains(word);
    }

    @Test
    void lettersThatTheFirstFontLacksComeFromTheWideOne() throws IOException {
        assertThat(pages(list(pages -> pages.add(Text.of("Ti\u1EBFng \u05D0 \u2693", Style.BODY))))
                        .get(0))
                .contains("\u2693");
    }

    @Test
    void controlCharactersAndTurningMarksAreNeverSet() throws IOException {
        String hostile = "a\u0000b\u0007c\u001Bd\u202Ee\u200Ff\u2066g\uFEFFh\u00ADi";
        assertThat(pages(list(pages -> pages.add(Text.of(hostile, Style.BODY)))).get(0))
                .contains("abcdefgh")
                .doesNotContain("?");
    }

    @Test
    void whiteSpaceAtThePagesFootOpensNoOther() throws IOException {
        byte[] pdf = list(pages -> {
            for (int line = 0; line < 48; line++) {
                pages.add(Text.of("tide " + line, Style.BODY)).add(Gap.mm(0.5));
            }
            pages.add(Gap.mm(60));
        });
        assertThat(pages(pdf)).hasSize(1);
    }

    @Test
    void everyPageSaysItsNumberAmongAll() throws IOException {
        List<String> texts = pages(list(pages -> pages.add(lines(200, "tide"))));
        for (int i = 0; i < texts.size(); i++) {
            assertThat(texts.get(i)).contains("page " + (i + 1) + " of " + texts.size(), "run 2026-03-02-1");
        }
    }
}
