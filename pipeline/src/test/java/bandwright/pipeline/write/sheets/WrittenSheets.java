package bandwright.pipeline.write.sheets;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Files of sheets, written for the tests of other packages as well. */
public final class WrittenSheets {
    private WrittenSheets() {}

    public static Path write(SheetFile file, Path pdf) {
        try (OutputStream out = Files.newOutputStream(pdf)) {
            SheetWriter.write(file, GiftShop.RUN, GiftShop.shop(), out);
            return pdf;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
