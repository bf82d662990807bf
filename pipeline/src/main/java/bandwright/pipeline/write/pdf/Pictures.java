package bandwright.pipeline.write.pdf;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.artwork.vector.InkedShape;
import bandwright.pipeline.artwork.vector.VectorArtwork;
import bandwright.pipeline.write.pdf.PreparedPicture.Packing;
import bandwright.pipeline.write.pdf.PreparedPicture.Plane;
import bandwright.rules.paper.PrinterProfile;
import bandwright.rules.units.Rgb;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;

/**
 * The pictures of one document, each stored once however often it is drawn, in the bytes that its file has. Its
 * orientation tag is obeyed by whoever draws it: see {@link bandwright.pipeline.artwork.Orientation#toShown}.
 */
public final class Pictures {
    private static final COSName COLOUR_TRANSFORM = COSName.getPDFName("ColorTransform");
    /** Predictor 15: each row names its PNG filter (ISO 32000-1, table 10). */
    private static final int PNG_PREDICTOR = 15;

    private final PDDocument document;
    private final PreparedPictures prepared;
    private final Optional<PrinterProfile> printer;
    private final Inks inks;
    private final PictureColourSpaces colours;
    private final Map<Integer, PDImageXObject> stored = new TreeMap<>();
    private final Map<Path, PDFormXObject> forms = new TreeMap<>();

    /**
     * A document without pictures so far.
     *
     * @param printer the profile by which its colours are converted; empty = they stay as they are
     */
    public Pictures(PDDocument document, PreparedPictures prepared, Optional<PrinterProfile> printer) {
        this.document = document;
        this.prepared = prepared;
        this.printer = printer;
        this.colours = new PictureColourSpaces(document);
        this.inks = new Inks(colours, printer);
    }

    /** The picture as this document has it, drawn in the unit square; the same object every time. */
    public PDXObject of(ArtworkFile artwork) throws IOException {
        boolean isForm = artwork.kind().isVector() && printer.isEmpty();
        return isForm ? form(artwork) : stored(prepared.get(artwork, printer));
    }

    private PDFormXObject form(ArtworkFile artwork) throws IOException {
        Path first = prepared.first(artwork);
        PDFormXObject known = forms.get(first);
        if (known != null) {
            return known;
        }
        try (VectorArtwork vector = VectorArtwork.open(artwork)) {
            PDFormXObject form = vector.form(document, colours.srgb());
            forms.put(first, form);
            return form;
        }
    }

    /** Whether colours become a printer's own inks, those of vector artwork too. */
    public boolean areConverted() {
        return printer.isPresent();
    }

    /** Its shapes, if all of them are flat colours. */
    public Optional<List<InkedShape>> shapes(ArtworkFile artwork) throws IOException {
        return prepared.shapes(artwork);
    }

    /** A picture that is bent for a cone. */
    public PDImageXObject of(Bending bending) throws IOException {
        return stored(prepared.get(bending, printer));
    }

    private PDImageXObject stored(PreparedPicture picture) throws IOException {
        PDImageXObject known = stored.get(picture.number());
        if (known != null) {
            return known;
        }
        PDImageXObject image = new PDImageXObject(new PDStream(stream(picture)), null);
        stored.put(picture.number(), image);
        return image;
    }

    /** A flat colour as this document has it, so that it looks like a picture's. */
    public Ink ink(Rgb colour) throws IOException {
        return inks.of(colour);
    }

    private COSStream stream(PreparedPicture picture) throws IOException {
        COSStream stream = plane(picture, picture.plane());
        stream.setItem(COSName.COLORSPACE, colours.of(picture.colour()));
        if (!picture.colourKey().isEmpty()) {
            COSArray key = new COSArray();
            picture.colourKey().forEach(value -> key.add(COSInteger.get(value)));
            stream.setItem(COSName.MASK, key);
        }
        if (picture.mask().isPresent()) {
            COSStream mask = plane(picture, picture.mask().get());
            mask.setItem(COSName.COLORSPACE, COSName.DEVICEGRAY);
            stream.setItem(COSName.SMASK, mask);
        }
        return stream;
    }

    private COSStream plane(PreparedPicture picture, Plane plane) throws IOException {
        COSStream stream = document.getDocument().createCOSStream();
        try (InputStream in = plane.data().open();
                OutputStream out = stream.createRawOutputStream()) {
            in.transferTo(out);
        }
        stream.setItem(COSName.TYPE, COSName.XOBJECT);
        stream.setItem(COSName.SUBTYPE, COSName.IMAGE);
        stream.setInt(COSName.WIDTH, picture.width());
        stream.setInt(COSName.HEIGHT, picture.height());
        stream.setInt(COSName.BITS_PER_COMPONENT, plane.bits());
        pack(stream, picture.width(), plane);
        return stream;
    }

    private static void pack(COSStream stream, int width, Plane plane) {
        COSDictionary parameters = new COSDictionary();
        if (plane.packing() instanceof Packing.Jpeg jpeg) {
            stream.setItem(COSName.FILTER, COSName.DCT_DECODE);
            if (!jpeg.transformed()) {
                parameters.setInt(COLOUR_TRANSFORM, 0);
            }
            if (jpeg.inverted()) {
                stream.setItem(COSName.DECODE, inverted());
            }
        } else {
            stream.setItem(COSName.FILTER, COSName.FLATE_DECODE);
        }
        if (plane.packing() instanceof Packing.PngRows rows) {
            parameters.setInt(COSName.PREDICTOR, PNG_PREDICTOR);
            parameters.setInt(COSName.COLORS, rows.components());
            parameters.setInt(COSName.BITS_PER_COMPONENT, plane.bits());
            parameters.setInt(COSName.COLUMNS, width);
        }
        if (parameters.size() > 0) {
            parameters.setDirect(true);
            stream.setItem(COSName.DECODE_PARMS, parameters);
        }
    }

    /** The largest number is no ink, of four inks (ISO 32000-1, 8.9.5.2). */
    private static COSArray inverted() {
        COSArray decode = new COSArray();
        for (int c = 0; c < 4; c++) {
            decode.add(COSInteger.ONE);
            decode.add(COSInteger.ZERO);
        }
        return decode;
    }
}
