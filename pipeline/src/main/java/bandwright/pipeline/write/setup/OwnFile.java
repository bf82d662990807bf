package bandwright.pipeline.write.setup;

import bandwright.pipeline.write.pdf.PdfFile;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;

/** A page of ours as a file in a folder of the shop's: whole or not at all, and never over a file that isn't ours. */
public final class OwnFile {
    private static final Pattern UNSAFE = Pattern.compile("[^A-Za-z0-9._-]");

    private OwnFile() {}

    /** Writes to a stream that is closed afterwards. */
    @FunctionalInterface
    public interface Body {
        void writeTo(OutputStream out) throws IOException;
    }

    /** A file's name from what somebody typed. */
    public static String name(String kind, String about) {
        return kind + "-" + UNSAFE.matcher(about).replaceAll("_") + ".pdf";
    }

    /** Whether nothing stands there, or a page that was written by this program. */
    public static boolean mayReplace(Path file) {
        if (!Files.exists(file)) {
            return true;
        }
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            return PdfFile.isOwn(document);
        } catch (IOException e) {
            return false;
        }
    }

    /** Beside its place first, then in one step. */
    public static void write(Path file, Body body) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        Path beside = Files.createTempFile(folder, ".bandwright", ".pdf");
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
