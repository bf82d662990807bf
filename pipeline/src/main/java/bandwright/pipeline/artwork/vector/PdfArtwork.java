package bandwright.pipeline.artwork.vector;

import bandwright.pipeline.artwork.Flaw;
import bandwright.pipeline.artwork.RefusedPicture;
import bandwright.pipeline.limits.Limits;
import java.awt.AlphaComposite;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.io.IOUtils;
import org.apache.pdfbox.multipdf.LayerUtility;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.apache.pdfbox.rendering.ImageType;

/**
 * The first page of a PDF: what its crop box shows, turned as its Rotate entry says. Its colours, fonts and pictures go
 * into a sheet as they are; actions, scripts, annotations and attachments stay behind.
 */
final class PdfArtwork extends VectorArtwork {
    private final PDDocument document;
    private final PDRectangle crop;
    private final int quarters;

    private PdfArtwork(PDDocument document, PDPage page) {
        this.document = document;
        this.crop = page.getCropBox();
        this.quarters = Math.floorMod(page.getRotation(), 360) / 90;
    }

    static PdfArtwork open(Path path) throws IOException {
        if (Files.size(path) > Limits.PDF_BYTES) {
            throw new RefusedPicture(Flaw.TOO_COMPLEX);
        }
        byte[] bytes = Files.readAllBytes(path);
        PdfBombs.require(bytes);
        NoSystemFonts.install();
        try {
            PDDocument document = Loader.loadPDF(bytes, "", null, null, IOUtils.createMemoryOnlyStreamCache());
            try {
                return of(document);
            } catch (IOException | RuntimeException | StackOverflowError e) {
                document.close();
                throw e;
            }
        } catch (RefusedPicture e) {
            throw e;
        } catch (InvalidPasswordException e) {
            throw new RefusedPicture(Flaw.LOCKED);
        } catch (IOException | RuntimeException | StackOverflowError e) {
            throw new RefusedPicture(Flaw.DAMAGED); // whatever a parser throws at a stranger's bytes
        }
    }

    private static PdfArtwork of(PDDocument document) throws IOException {
        if (document.isEncrypted()) {
            throw new RefusedPicture(Flaw.LOCKED);
        }
        if (!document.getPages().iterator().hasNext()) {
            throw new RefusedPicture(Flaw.NO_PAGES);
        }
        requireNoHiddenLayers(document);
        PDPage page = alone(document.getPage(0));
        PdfParts.clean(page.getCOSObject());
        onlyPage(document, page.getCOSObject());
        PdfArtwork artwork = new PdfArtwork(document, page);
        if (!(artwork.crop.getWidth() > 0) || !(artwork.crop.getHeight() > 0)) {
            throw new RefusedPicture(Flaw.NO_SIZE);
        }
        return artwork;
    }

    /** What is switched off must not be printed, and who prints a sheet knows nothing of layers. */
    private static void requireNoHiddenLayers(PDDocument document) throws RefusedPicture {
        PDOptionalContentProperties layers = document.getDocumentCatalog().getOCProperties();
        boolean isHidden = layers != null
                && layers.getOptionalContentGroups().stream().anyMatch(layer -> !layers.isGroupEnabled(layer));
        if (isHidden) {
            throw new RefusedPicture(Flaw.LAYERS);
        }
    }

    /** The page without its annotations, its actions and its way to other pages. */
    private static PDPage alone(PDPage page) {
        COSDictionary from = page.getCOSObject();
        COSDictionary to = new COSDictionary();
        to.setItem(COSName.TYPE, COSName.PAGE);
        to.setItem(COSName.CONTENTS, from.getItem(COSName.CONTENTS));
        to.setItem(COSName.GROUP, from.getItem(COSName.GROUP));
        to.setItem(COSName.RESOURCES, page.getResources());
        to.setItem(COSName.MEDIA_BOX, page.getMediaBox());
        to.setItem(COSName.CROP_BOX, page.getCropBox());
        to.setInt(COSName.ROTATE, page.getRotation());
        return new PDPage(to);
    }

    /** Of all else that a document holds nothing is left, so that nothing of it can be drawn, run or copied. */
    private static void onlyPage(PDDocument document, COSDictionary page) {
        COSDictionary catalog = document.getDocumentCatalog().getCOSObject();
        for (COSName name : List.copyOf(catalog.keySet())) {
            if (!COSName.TYPE.equals(name)) {
                catalog.removeItem(name);
            }
        }
        COSArray kids = new COSArray();
        kids.add(page);
        COSDictionary pages = new COSDictionary();
        pages.setItem(COSName.TYPE, COSName.PAGES);
        pages.setItem(COSName.KIDS, kids);
        pages.setInt(COSName.COUNT, 1);
        page.setItem(COSName.PARENT, pages);
        catalog.setItem(COSName.PAGES, pages);
    }

    @Override
    double width() {
        return quarters % 2 == 0 ? crop.getWidth() : crop.getHeight();
    }

    @Override
    double height() {
        return quarters % 2 == 0 ? crop.getHeight() : crop.getWidth();
    }

    @Override
    void draw(Graphics2D g) throws IOException {
        smooth(g);
        try {
            new CountedRenderer(document).renderPageToGraphics(0, g);
        } catch (ShapeGraphics.TooMuch e) {
            throw new RefusedPicture(Flaw.TOO_COMPLEX);
        } catch (RuntimeException | StackOverflowError e) {
            throw new IOException(e); // whatever a renderer throws at a stranger's drawing
        }
    }

    @Override
    void draw(BufferedImage image) throws IOException {
        float scale = (float) (image.getWidth() / width());
        BufferedImage drawn;
        try {
            drawn = new CountedRenderer(document).renderImage(0, scale, ImageType.ARGB);
        } catch (RuntimeException | StackOverflowError e) {
            throw new IOException(e);
        }
        Graphics2D g = image.createGraphics();
        g.setComposite(AlphaComposite.Src);
        g.drawImage(drawn, 0, 0, image.getWidth(), image.getHeight(), null);
        g.dispose();
    }

    @Override
    public PDFormXObject form(PDDocument target, COSArray srgb) throws IOException {
        try {
            PDFormXObject form = new LayerUtility(target).importPageAsForm(document, 0);
            form.setBBox(crop);
            form.setMatrix(toUnitSquare());
            return form;
        } catch (RuntimeException | StackOverflowError e) {
            throw new IOException(e);
        }
    }

    /** From the page's own points to the unit square of what a person sees: Rotate turns clockwise (table 30). */
    private AffineTransform toUnitSquare() {
        AffineTransform to = new AffineTransform();
        to.translate(0.5, 0.5);
        to.quadrantRotate(-quarters);
        to.translate(-0.5, -0.5);
        to.scale(1 / (double) crop.getWidth(), 1 / (double) crop.getHeight());
        to.translate(-crop.getLowerLeftX(), -crop.getLowerLeftY());
        return to;
    }

    @Override
    public void close() throws IOException {
        document.close();
    }
}
