package bandwright.pipeline.write.pdf;

import bandwright.pipeline.RunId;
import bandwright.pipeline.pixels.SrgbProfile;
import bandwright.pipeline.write.WrittenText;
import bandwright.rules.paper.PrinterProfile;
import java.io.BufferedOutputStream;
import java.io.ByteArrayInputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;
import java.util.GregorianCalendar;
import java.util.Optional;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.graphics.color.PDOutputIntent;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;

/**
 * A PDF to be printed at true size: it asks the viewer for no scaling, and its id and dates come from the run, so that
 * the same run gives the same bytes. Shaped as PDF/A-2b (ISO 19005-2).
 */
public final class PdfFile {
    private static final String LANGUAGE = "en";
    /** A condition that no registry knows (ISO 32000-1, 14.11.5). */
    private static final String CUSTOM = "Custom";

    private static final String SRGB = "sRGB IEC61966-2.1";
    private static final String PRODUCER = "Bandwright";

    private PdfFile() {}

    /** A document without pages whose colours are sRGB's. The caller closes it. */
    public static PDDocument create(RunId run, String name, String title) throws IOException {
        return create(run, name, title, Optional.empty());
    }

    /**
     * A document without pages. The caller closes it.
     *
     * @param printer what its device colours mean; empty = sRGB
     */
    public static PDDocument create(RunId run, String name, String title, Optional<PrinterProfile> printer)
            throws IOException {
        PDDocument document = new PDDocument();
        document.setDocumentId(id(run + "/" + name));
        ZonedDateTime day = run.date().atStartOfDay(ZoneOffset.UTC);
        GregorianCalendar date = GregorianCalendar.from(day);
        document.getDocumentInformation().setTitle(title);
        document.getDocumentInformation().setProducer(PRODUCER);
        document.getDocumentInformation().setCreationDate(date);
        document.getDocumentInformation().setModificationDate(date);
        PDDocumentCatalog catalog = document.getDocumentCatalog();
        catalog.setLanguage(LANGUAGE);
        catalog.setViewerPreferences(trueSize());
        catalog.addOutputIntent(printer.isPresent() ? inks(document, printer.get()) : srgb(document));
        catalog.setMetadata(metadata(document, title, day));
        return document;
    }

    /** Whether a document was written here. */
    public static boolean isOwn(PDDocument document) {
        return PRODUCER.equals(document.getDocumentInformation().getProducer());
    }

    private static PDViewerPreferences trueSize() {
        PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
        preferences.setPrintScaling(PDViewerPreferences.PRINT_SCALING.None);
        preferences.setDisplayDocTitle(true);
        preferences.getCOSObject().setBoolean(COSName.getPDFName("PickTrayByPDFSize"), true);
        return preferences;
    }

    /** Saves and leaves the stream open. */
    public static void save(PDDocument document, OutputStream out) throws IOException {
        OutputStream buffered = new BufferedOutputStream(new LeftOpen(out), 1 << 16);
        document.save(buffered);
        buffered.flush();
    }

    /** The library closes what it writes to; whoever opened the stream does that here. */
    private static final class LeftOpen extends FilterOutputStream {
        LeftOpen(OutputStream out) {
            super(out);
        }

        @Override
        public void write(byte[] bytes, int from, int count) throws IOException {
            out.write(bytes, from, count);
        }

        @Override
        public void close() throws IOException {
            flush();
        }
    }

    private static long id(String text) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return ByteBuffer.wrap(hash).getLong();
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    /** Colours that name no space of their own, black for one, are sRGB's. */
    private static PDOutputIntent srgb(PDDocument document) throws IOException {
        PDOutputIntent intent = new PDOutputIntent(document, new ByteArrayInputStream(SrgbProfile.bytes()));
        intent.setOutputConditionIdentifier(SRGB);
        intent.setInfo(SRGB);
        return intent;
    }

    /** Colours that name no space of their own are the printer's. */
    private static PDOutputIntent inks(PDDocument document, PrinterProfile printer) throws IOException {
        PDOutputIntent intent = new PDOutputIntent(document, new ByteArrayInputStream(printer.bytes()));
        intent.setOutputConditionIdentifier(CUSTOM);
        intent.setInfo(CUSTOM);
        return intent;
    }

    /** XMP (ISO 16684-1) that says what the information dictionary says. */
    private static PDMetadata metadata(PDDocument document, String title, ZonedDateTime day) throws IOException {
        String date = day.toLocalDate() + "T00:00:00Z";
        String packet = """
                <?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
                <x:xmpmeta xmlns:x="adobe:ns:meta/">
                <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
                <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/"
                 xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/"
                 xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/">
                <dc:title><rdf:Alt><rdf:li xml:lang="x-default">%s</rdf:li></rdf:Alt></dc:title>
                <xmp:CreateDate>%s</xmp:CreateDate><xmp:ModifyDate>%s</xmp:ModifyDate>
                <pdf:Producer>%s</pdf:Producer>
                <pdfaid:part>2</pdfaid:part><pdfaid:conformance>B</pdfaid:conformance>
                </rdf:Description></rdf:RDF></x:xmpmeta>
                <?xpacket end="w"?>
                """.formatted(WrittenText.markup(title), date, date, PRODUCER);
        return new PDMetadata(document, new ByteArrayInputStream(packet.getBytes(StandardCharsets.UTF_8)));
    }
}
