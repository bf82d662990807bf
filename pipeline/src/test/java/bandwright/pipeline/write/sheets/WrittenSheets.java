package bandwright.pipeline.write.sheets;

import bandwright.pipeline.write.SheetFile;
import bandwright.pipeline.write.pdf.PreparedPictures;
import bandwright.rules.Shop;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Files of sheets, written for the tests of other packages as well. */
public final class WrittenSheets {
    private WrittenSheets() {}

    public static Path write(SheetFile file, Path pdf) {
        return write(file, SheetShop.shop(), pdf);
    }

    public static Path write(SheetFile file, Shop shop, Path pdf) {
        try (OutputStream out = Files.newOutputStream(pdf)) {
            Files.createDirectories(pdf.resolveSibling("scratch"));
            SheetWriter.write(file, SheetShop.RUN, shop, new PreparedPictures(pdf.resolveSibling("scratch")), out);
            return pdf;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
