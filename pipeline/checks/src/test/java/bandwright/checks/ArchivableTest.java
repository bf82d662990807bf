package bandwright.checks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.verapdf.core.VeraPDFException;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;

/** Every PDF of a run beside the rules of PDF/A-2b (ISO 19005-2), as veraPDF's library reads them. */
final class ArchivableTest {
    @TempDir
    Path folder;

    @BeforeAll
    static void begin() {
        VeraGreenfieldFoundryProvider.initialise();
    }

    @Test
    void sheetsAndListsOfTheSampleAre() throws Exception {
        run(WholeRun.SAMPLE.toString());
        try (Stream<Path> all = Files.walk(folder.resolve("outbox"))) {
            List<Path> pdfs =
                    all.filter(file -> file.toString().endsWith(".pdf")).toList();
            assertThat(pdfs).hasSize(4);
            for (Path pdf : pdfs) {
                assertThat(broken(pdf)).as(pdf.toString()).isEmpty();
            }
        }
    }

    /** The colours of a printer by its profile need a profile that says what they are. */
    @Test
    void sheetsInAPrintersOwnInksAre() throws Exception {
        Path tables = Files.createDirectories(folder.resolve("tables"));
        Files.write(tables.resolve("ink.icc"), InkProfile.bytes());
        Files.writeString(
                tables.resolve("printers.csv"),
                "id,papers,mirror,colour,icc_profile\ndesk,letter,file,profile,ink.icc\nwide,13x19,driver,driver,\n");
        Path orders = Files.writeString(
                folder.resolve("weekend.csv"),
                "Order,SKU,Design,Personalisation\nQ1,MUG-11-W,tern,Ada\nQ2,MUG-11-W,lamp,\nQ3,CONE-12-W,pennants,Ada\n");
        run(
                orders.toString(),
                "--rules",
                tables.toString(),
                "--artwork",
                WholeRun.SAMPLE.resolve("artwork").toString());
        Path sheets = folder.resolve("outbox/2026-03-02-1/sheets/letter-01.pdf");
        assertThat(broken(sheets)).isEmpty();
    }

    @Test
    void theSwatchesOfATrialAre() throws Exception {
        Path tables = Files.createDirectories(folder.resolve("tables"));
        Files.write(tables.resolve("ink.icc"), InkProfile.bytes());
        Files.writeString(
                tables.resolve("printers.csv"),
                "id,papers,mirror,colour,icc_profile\ndesk,letter,file,profile,ink.icc\nwide,13x19,driver,driver,\n");
        for (List<String> rules : List.of(List.<String>of(), List.of("--rules", tables.toString()))) {
            Path pdf = folder.resolve("trial-" + rules.size() + ".pdf");
            List<String> words = new ArrayList<>(List.of("trial", "CONE-12-W", "--out", pdf.toString()));
            words.addAll(rules);
            assertThat(WholeRun.bandwright(List.of(), Map.of(), words.toArray(String[]::new)))
                    .isZero();
            assertThat(broken(pdf)).as(pdf.toString()).isEmpty();
        }
    }

    private void run(String... words) throws IOException, InterruptedException {
        String[] all = Stream.concat(
                        Stream.of("run"),
                        Stream.concat(
                                Stream.of(words),
                                Stream.of(
                                        "--date",
                                        "2026-03-02",
                                        "--out",
                                        folder.resolve("outbox").toString())))
                .toArray(String[]::new);
        assertThat(WholeRun.bandwright(List.of(), Map.of(), all)).isIn(0, 3);
    }

    private static List<String> broken(Path pdf) throws IOException, VeraPDFException {
        try (InputStream in = Files.newInputStream(pdf);
                PDFAParser parser = Foundries.defaultInstance().createParser(in, PDFAFlavour.PDFA_2_B);
                PDFAValidator validator = Foundries.defaultInstance().createValidator(PDFAFlavour.PDFA_2_B, false)) {
            ValidationResult result = validator.validate(parser);
            List<String> broken = result.getTestAssertions().stream()
                    .filter(assertion -> assertion.getStatus() == TestAssertion.Status.FAILED)
                    .map(assertion -> assertion.getRuleId().getClause() + " " + assertion.getMessage())
                    .distinct()
                    .toList();
            assertThat(result.isCompliant()).isEqualTo(broken.isEmpty());
            return broken;
        }
    }
}
