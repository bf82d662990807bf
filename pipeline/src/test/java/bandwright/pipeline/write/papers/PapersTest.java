package bandwright.pipeline.write.papers;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.Flow;
import bandwright.pipeline.Run;
import bandwright.pipeline.RunId;
import bandwright.pipeline.past.Memory;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.write.OutFile;
import bandwright.pipeline.write.Output;
import bandwright.pipeline.write.checklist.PressChecklist;
import bandwright.pipeline.write.picklist.PickList;
import bandwright.pipeline.write.slips.PackingSlips;
import bandwright.pipeline.write.thumb.Thumbnails;
import bandwright.rules.Rulebook;
import bandwright.rules.RulebookFaults;
import bandwright.rules.blanks.Blank;
import bandwright.rules.blanks.Material;
import bandwright.rules.heat.Caution;
import bandwright.rules.heat.CautionStep;
import bandwright.rules.heat.Cautions;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The papers of a small Monday: what a person at the shelf, the press and the box can read on them. */
final class PapersTest {
    private static final String ORDERS = """
            Order,Buyer,Ship To,Street,City,Postcode,Country,Ship By,SKU,Design,Qty,Gift Message,Price
            Q9,Ada Fennimore,Ada Fennimore,3 Gannet Steps,Quillmoor,QM1 4TL,United Kingdom,2026-03-04,MUG-11-W,tern,2,,14.00
            Q9,Ada Fennimore,Ada Fennimore,3 Gannet Steps,Quillmoor,QM1 4TL,United Kingdom,2026-03-04,MUG-11-X,tern,1,,14.00
            Q10,Morwenna Tidewell,Perran <b>Tidewell</b>,=11 Ropewalk,Saltby,SB1,United Kingdom,2026-03-03,STEIN-16-F,lamp,1,Sing on!,22.50
            Q11,Noor Finch,Noor Finch,1 Kittiwake Terrace,Saltby,SB1,United Kingdom,2026-03-05,TUM-20-W,lamp,40,,30.00
            STOCK,,,,,,,,MUG-11-W,lamp,3,,
            """;

    @TempDir
    Path folder;

    private final Rulebook rules = builtIn();

    private static Rulebook builtIn() {
        try {
            return Rulebook.read(Optional.empty());
        } catch (RulebookFaults e) {
            throw new AssertionError(e.faults().toString(), e);
        }
    }

    private Run run() throws IOException {
        Path file = Files.write(folder.resolve("orders.csv"), ORDERS.getBytes(StandardCharsets.UTF_8));
        Flow.Request asked =
                new Flow.Request(List.of(file), Path.of("..", "inbox-sample", "artwork"), Optional.empty());
        return Flow.decide(new RunId(LocalDate.of(2026, 3, 2), 1), asked, rules, Memory.NOTHING, stage -> {});
    }

    private byte[] bytes(Output output, Run run) throws IOException {
        List<OutFile> files = output.files(run, rules);
        assertThat(files).hasSize(1);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        files.get(0).body().writeTo(out);
        return out.toByteArray();
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            return stripper.getText(document).replaceAll("\\s+", " ");
        }
    }

    @Test
    void thePickListCarriesSparesInShelfOrderAndSaysWhatIsShort() throws IOException {
        String text = text(bytes(new PickList(), run()));
        // 5 mugs and 1 stein at 3 % carry 1 and 0 spares; of 40 tumblers 43 are carried, as the binomial sum has it.
        assertThat(text).containsSubsequence("MUG-11-W", "5 1 6", "STEIN-16-F", "1 0 1", "TUM-20-W", "40 3 43");
        assertThat(text).contains("46 pieces for 4 orders", "4 spare", "50 to take off the shelf");
        assertThat(text).contains("Take off before pressing, and pack again: lid, seal");
        assertThat(text).contains("43 to take, 30 by the last count: 10 pieces can't be made");
        assertThat(text).containsSubsequence("Reorder", "TUM-20-W", "Order 2 x 25 = 50");
    }

    @Test
    void everyOrderGetsItsSlipTheMostUrgentFirstAndStockGetsNone() throws IOException {
        Run run = run();
        String text = text(bytes(new PackingSlips(Thumbnails.of(run)), run));
        assertThat(text)
                .containsSubsequence("Order Q10", "Order Q9", "Order Q11")
                .doesNotContain("STOCK");
        assertThat(text)
                .containsSubsequence("Order Q9", "NOT COMPLETE", "Ada Fennimore", "3 Gannet Steps", "Quillmoor QM1 4TL")
                .containsSubsequence("2 x", "MUG-11-W", "14.00", "Not in this box", "MUG-11-X", "Did you mean MUG-11-");
        assertThat(text).contains("page 1 of 3", "page 3 of 3", "run 2026-03-02-1");
        assertThat(text).containsSubsequence("40 x", "TUM-20-W", "In the box too: lid, seal");
    }

    @Test
    void aGiftHasItsMessageAndNoPriceAndStrangersTextIsOnlyText() throws IOException {
        Run run = run();
        String text = text(bytes(new PackingSlips(Thumbnails.of(run)), run));
        String gift = text.substring(text.indexOf("Order Q10"), text.indexOf("Order Q9"));
        assertThat(gift).contains("This is a gift", "Sing on!", "Perran <b>Tidewell</b>", "=11 Ropewalk");
        assertThat(gift).doesNotContain("22.50").contains("COMPLETE").doesNotContain("NOT COMPLETE");
    }

    @Test
    void theChecklistNamesEveryPieceOnceWithBothTemperatures() throws IOException {
        Run run = run();
        String text = text(bytes(new PressChecklist(Thumbnails.of(run)), run));
        for (Unit unit : run.units()) {
            Pattern whole = Pattern.compile("(?<![\\w-])" + Pattern.quote(unit.id()) + "(?![\\w-])");
            assertThat(whole.matcher(text).results().count()).as(unit.id()).isEqualTo(1);
        }
        assertThat(text).contains("374 °F (190 °C)").contains("NOT CONFIRMED").contains("letter-01.pdf, page 1");
        assertThat(text.toLowerCase(java.util.Locale.ROOT)).doesNotContain("no gloves");
    }

    @Test
    void everyCautionStandsBeforeTheFirstPieceOrStepThatItGuards() throws IOException {
        Run run = run();
        String text = text(bytes(new PressChecklist(Thumbnails.of(run)), run));
        for (Unit unit : run.units()) {
            Blank blank = unit.matched().blank();
            for (Caution caution : rules.cautions().list()) {
                boolean isBeforeThePiece =
                        switch (caution.step()) {
                            case DAY, PREPARE, TAPE, LOAD -> true;
                            case PRESS, PEEL, COOL, PACK -> false;
                        };
                if (Cautions.applies(caution, blank, unit.matched().source().kind())) {
                    int at = text.indexOf(caution.text().replaceAll("\\s+", " "));
                    assertThat(at).as(caution.code()).isNotNegative();
                    if (isBeforeThePiece) {
                        assertThat(at).as(caution.code()).isLessThan(text.indexOf(unit.id()));
                    }
                }
            }
        }
    }

    @Test
    void glassIsNeverOnlyReferredTo() throws IOException {
        Run run = run();
        String text = text(bytes(new PressChecklist(Thumbnails.of(run)), run));
        Caution crack = rules.cautions().list().stream()
                .filter(each -> each.step() == CautionStep.PRESS
                        && each.appliesTo().stream().anyMatch(c -> c.value().equals("glass")))
                .findFirst()
                .orElseThrow();
        assertThat(run.units()).anyMatch(unit -> unit.matched().blank().material() == Material.GLASS);
        assertThat(text).contains(crack.text());
    }

    @Test
    void fontsAreEmbeddedEdgesAreWhiteAndTwoWritingsAreAlike() throws IOException {
        Run run = run();
        for (Output output :
                List.of(new PickList(), new PackingSlips(Thumbnails.of(run)), new PressChecklist(Thumbnails.of(run)))) {
            byte[] pdf = bytes(output, run);
            assertThat(bytes(output, run)).isEqualTo(pdf);
            try (PDDocument document = Loader.loadPDF(pdf)) {
                assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en");
                for (int page = 0; page < document.getNumberOfPages(); page++) {
                    embedded(document.getPage(page));
                    white(new PDFRenderer(document).renderImageWithDPI(page, 40));
                }
            }
        }
    }

    private static void embedded(PDPage page) throws IOException {
        for (COSName name : page.getResources().getFontNames()) {
            assertThat(page.getResources().getFont(name).isEmbedded())
                    .as(name.getName())
                    .isTrue();
        }
    }

    /** No ink within a quarter of an inch of any edge, where many office printers leave white. */
    private static void white(BufferedImage page) {
        int border = 10;
        for (int y = 0; y < page.getHeight(); y++) {
            for (int x = 0; x < page.getWidth(); x++) {
                boolean isEdge =
                        x < border || y < border || x >= page.getWidth() - border || y >= page.getHeight() - border;
                if (isEdge) {
                    assertThat(page.getRGB(x, y) & 0xFFFFFF).isEqualTo(0xFFFFFF);
                }
            }
        }
    }
}
