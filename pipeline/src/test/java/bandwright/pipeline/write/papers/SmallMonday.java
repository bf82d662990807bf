package bandwright.pipeline.write.papers;

import bandwright.pipeline.Flow;
import bandwright.pipeline.Run;
import bandwright.pipeline.RunId;
import bandwright.pipeline.past.Memory;
import bandwright.pipeline.write.OutFile;
import bandwright.pipeline.write.Output;
import bandwright.pipeline.write.thumb.Thumbnails;
import bandwright.rules.Rulebook;
import bandwright.rules.RulebookFaults;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;

/** One order file, the tables that the shop changed, and the paper that comes of them. */
public record SmallMonday(Path folder) {
    /** Replaces a whole table of the built-in rulebook. */
    public SmallMonday table(String name, String csv) throws IOException {
        Path tables = Files.createDirectories(folder.resolve("rules"));
        Files.write(tables.resolve(name), csv.getBytes(StandardCharsets.UTF_8));
        return this;
    }

    /** The paper's pages in reading order, spaces collapsed. */
    public List<String> pages(Function<Thumbnails, Output> output, String orders) throws IOException {
        List<String> pages = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf(output, orders))) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                pages.add(stripper.getText(document).replaceAll("\\s+", " ").strip());
            }
        }
        return pages;
    }

    private byte[] pdf(Function<Thumbnails, Output> output, String orders) throws IOException {
        Rulebook rules = rules();
        Path file = Files.write(folder.resolve("harbour.csv"), orders.getBytes(StandardCharsets.UTF_8));
        Flow.Request asked =
                new Flow.Request(List.of(file), Path.of("..", "inbox-sample", "artwork"), Optional.empty());
        Run run = Flow.decide(new RunId(LocalDate.of(2026, 3, 2), 1), asked, rules, Memory.NOTHING, stage -> {});
        List<OutFile> files = output.apply(Thumbnails.of(run)).files(run, rules);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        files.get(0).body().writeTo(out);
        return out.toByteArray();
    }

    private Rulebook rules() throws IOException {
        try {
            return Rulebook.read(Optional.of(Files.createDirectories(folder.resolve("rules"))));
        } catch (RulebookFaults e) {
            throw new AssertionError(e.faults().toString(), e);
        }
    }
}
