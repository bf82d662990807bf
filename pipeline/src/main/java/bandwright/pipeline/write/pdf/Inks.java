package bandwright.pipeline.write.pdf;

import bandwright.pipeline.pixels.ToPrinter;
import bandwright.rules.paper.PrinterProfile;
import bandwright.rules.units.Rgb;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Flat colours as one document has them: sRGB's, or converted into a printer's own inks. */
public final class Inks {
    private final PictureColourSpaces colours;
    private final Optional<ToPrinter> inks;

    /**
     * Those of a document without pictures.
     *
     * @param printer the profile by which its colours are converted; empty = they stay as they are
     */
    public Inks(PDDocument document, Optional<PrinterProfile> printer) {
        this(new PictureColourSpaces(document), printer);
    }

    Inks(PictureColourSpaces colours, Optional<PrinterProfile> printer) {
        this.colours = colours;
        this.inks = printer.map(ToPrinter::ofSrgb);
    }

    /** A flat colour, so that it looks like a picture's. */
    public Ink of(Rgb colour) throws IOException {
        return inks.isPresent()
                ? Ink.of(inks.get().inks(colour))
                : Ink.of(
                        colours.srgb(),
                        ByteBuffer.wrap(new byte[] {(byte) colour.red(), (byte) colour.green(), (byte) colour.blue()}));
    }
}
