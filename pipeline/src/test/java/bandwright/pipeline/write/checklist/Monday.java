package bandwright.pipeline.write.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.Flow;
import bandwright.pipeline.Run;
import bandwright.pipeline.RunId;
import bandwright.pipeline.past.Memory;
import bandwright.pipeline.write.OutFile;
import bandwright.pipeline.write.thumb.Thumbnails;
import bandwright.rules.Rulebook;
import bandwright.rules.RulebookFaults;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** A Monday at the lighthouse trust's gift shop: a few orders, decided with the built-in rulebook or the shop's own tables. */
record Monday(Run run, Rulebook rules) {
    private static final String HEAD = "Order,SKU,Artwork,Quantity,Ship By\n";

    /**
     * @param orders lines like {@code Q1042,MUG-11-W,wide.png,2,2026-03-05}; the other picture is {@code square.png}
     */
    static Monday of(Path folder, Optional<Path> tables, String... orders) throws IOException, RulebookFaults {
        Path artwork = Files.createDirectories(folder.resolve("artwork"));
        picture(artwork.resolve("wide.png"), 2300, 1050);
        picture(artwork.resolve("square.png"), 2000, 2000);
        Path file = Files.writeString(folder.resolve("orders.csv"), HEAD + String.join("\n", orders) + "\n");
        Rulebook rules = Rulebook.read(tables);
        Flow.Request asked = new Flow.Request(List.of(file), artwork, Optional.empty());
        Run run = Flow.decide(new RunId(LocalDate.of(2026, 3, 2), 1), asked, rules, Memory.NOTHING, stage -> {});
        assertThat(run.held())
                .extracting(held -> held.reason().message())
                .as("held")
                .isEmpty();
        return new Monday(run, rules);
    }

    private static void picture(Path file, int width, int height) throws IOException, RulebookFaults {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < width; x++) {
            image.setRGB(x, x % height, 0x1F5C73);
        }
        ImageIO.write(image, "png", file.toFile());
    }

    byte[] pdf() throws IOException {
        List<OutFile> files = new PressChecklist(Thumbnails.of(run)).files(run, rules);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        files.get(0).body().writeTo(out);
        return out.toByteArray();
    }

    /** What a person reads, in reading order, every white space one blank. */
    String text() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf())) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    int pages() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf())) {
            return document.getNumberOfPages();
        }
    }
}
