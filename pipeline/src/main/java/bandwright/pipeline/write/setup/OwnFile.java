package bandwright.pipeline.write.setup;

import bandwright.pipeline.rows.PlainName;
import bandwright.pipeline.write.pdf.PdfFile;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;

/** A page of ours as a file in a folder of the shop's: whole or not at all, and never over a file that isn't ours. */
public final class OwnFile {
    private static final String MARK = "BandwrightPage";

    private OwnFile() {}

    /** Which page a file holds; one is never written over the other, nor over the sheets of a run. */
    public enum Kind {
        STRIP("strip"),
        RULER("ruler"),
        TRIAL("trial");

        private final String word;

        Kind(String word) {
            this.word = word;
        }
    }

    /** Writes to a stream that is closed afterwards. */
    @FunctionalInterface
    public interface Body {
        void writeTo(OutputStream out) throws IOException;
    }

    /** A file's name from what somebody typed. */
    public static String name(Kind kind, String about) {
        return kind.word + "-" + PlainName.file(about) + ".pdf";
    }

    static void mark(PDDocument document, Kind kind) {
        document.getDocumentInformation().setCustomMetadataValue(MARK, kind.word);
    }

    /** Whether nothing stands there, or such a page that was written by this program. */
    public static boolean mayReplace(Path file, Kind kind) {
        if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            return true;
        }
        if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            return false;
        }
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            return PdfFile.isOwn(document)
                    && kind.word.equals(document.getDocumentInformation().getCustomMetadataValue(MARK));
        } catch (IOException e) {
            return false;
        }
    }

    /** Beside its place first, then in one step. */
    public static void write(Path file, Body body) throws IOException {
        // Not a temporary file of the system's, which only its owner could open.
        Path beside = file.resolveSibling("." + file.getFileName() + ".part");
        try {
            try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(beside))) {
                body.writeTo(out);
            }
            Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(beside);
        }
    }
}
