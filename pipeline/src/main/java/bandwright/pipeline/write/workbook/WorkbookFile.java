package bandwright.pipeline.write.workbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.apache.commons.compress.archivers.zip.ZipArchiveEntry;
import org.apache.commons.compress.archivers.zip.ZipFile;
import org.dhatim.fastexcel.Workbook;

/**
 * Writes a workbook whose bytes tell nothing but its cells: the library stamps the present time into it, so its parts
 * are packed anew with one fixed time, and the stamp becomes the run's date.
 */
final class WorkbookFile {
    /**
     * Early, but not the very first time that a zip file's clock can show: ZipEntry takes that one for a time before
     * 1980 and adds a field in universal time, which depends on the computer's time zone.
     */
    private static final LocalDateTime ZIP_TIME = LocalDateTime.of(1980, 2, 1, 0, 0);

    private static final String SHEETS = "xl/worksheets/";
    private static final Pattern OFFER = Pattern.compile("<dataValidation .*?</dataValidation>", Pattern.DOTALL);
    private static final String PROPERTIES = "docProps/core.xml";

    /** Fills the sheets of a workbook. */
    @FunctionalInterface
    interface Content {
        void fill(Workbook workbook);
    }

    private WorkbookFile() {}

    static void write(OutputStream out, LocalDate date, Content content) throws IOException {
        byte[] stamped = stamped(content);
        try (ZipFile parts = ZipFile.builder().setByteArray(stamped).get()) {
            ZipOutputStream zip = new ZipOutputStream(out);
            for (ZipArchiveEntry part : Collections.list(parts.getEntriesInPhysicalOrder())) {
                ZipEntry entry = new ZipEntry(part.getName());
                entry.setTimeLocal(ZIP_TIME); // setTime would depend on the time zone
                zip.putNextEntry(entry);
                copy(parts, part, date, zip);
                zip.closeEntry();
            }
            zip.finish();
        }
    }

    private static byte[] stamped(Content content) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (Workbook workbook = new Workbook(bytes, "Bandwright", "1.0")) {
            workbook.setCompressionLevel(0); // it is packed anew
            content.fill(workbook);
        }
        return bytes.toByteArray();
    }

    private static void copy(ZipFile parts, ZipArchiveEntry part, LocalDate date, OutputStream zip) throws IOException {
        if (part.getName().equals(PROPERTIES)) {
            zip.write(properties(date).getBytes(StandardCharsets.UTF_8));
            return;
        }
        try (InputStream in = parts.getInputStream(part)) {
            if (part.getName().startsWith(SHEETS)) {
                zip.write(inOrder(new String(in.readAllBytes(), StandardCharsets.UTF_8))
                        .getBytes(StandardCharsets.UTF_8));
            } else {
                in.transferTo(zip);
            }
        }
    }

    /** The library keeps what cells offer in a set without an order of its own. */
    private static String inOrder(String sheet) {
        List<String> offers =
                OFFER.matcher(sheet).results().map(MatchResult::group).sorted().toList();
        Iterator<String> next = offers.iterator();
        return offers.size() < 2
                ? sheet
                : OFFER.matcher(sheet).replaceAll(match -> Matcher.quoteReplacement(next.next()));
    }

    /** ECMA-376 Part 2, core properties. */
    private static String properties(LocalDate date) {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>"
                + "<cp:coreProperties"
                + " xmlns:cp=\"http://schemas.openxmlformats.org/package/2006/metadata/core-properties\""
                + " xmlns:dc=\"http://purl.org/dc/elements/1.1/\" xmlns:dcterms=\"http://purl.org/dc/terms/\""
                + " xmlns:xsi=\"http://www.w3.org/2001/XMLSchema-instance\"><dc:creator>Bandwright</dc:creator>"
                + "<dcterms:created xsi:type=\"dcterms:W3CDTF\">" + date + "T00:00:00Z</dcterms:created>"
                + "</cp:coreProperties>";
    }
}
