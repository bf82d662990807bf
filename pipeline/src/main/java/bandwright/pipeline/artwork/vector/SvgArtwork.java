package bandwright.pipeline.artwork.vector;

import bandwright.pipeline.artwork.Flaw;
import bandwright.pipeline.artwork.RefusedPicture;
import bandwright.pipeline.limits.Limits;
import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.DocumentLimits;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.parser.resources.ResourcePolicy;
import com.github.weisj.jsvg.renderer.NullPlatformSupport;
import com.github.weisj.jsvg.renderer.PlatformSupport;
import com.github.weisj.jsvg.view.FloatSize;
import com.github.weisj.jsvg.view.ViewBox;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.ImageObserver;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Path;
import javax.xml.stream.XMLInputFactory;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;

/** An SVG (SVG 1.1, and of SVG 2 what the library draws). Its colours are sRGB. */
final class SvgArtwork extends VectorArtwork {
    /** CSS Values and Units, 5.2: 96 px are an inch, as 72 points are. */
    private static final double POINTS_A_PIXEL = 0.75;

    /** The library keeps the fonts that it found in a map of all threads. */
    private static final Object ONE_AT_A_TIME = new Object();

    private final SVGDocument svg;
    private final FloatSize size;
    private final Object turn;

    private SvgArtwork(SVGDocument svg, FloatSize size, boolean hasText) {
        this.svg = svg;
        this.size = size;
        this.turn = hasText ? ONE_AT_A_TIME : new Object();
    }

    static SvgArtwork open(Path path) throws IOException {
        byte[] bytes = SvgFile.read(path);
        SvgScan.Facts facts = SvgScan.of(bytes);
        if (facts.hasText()) {
            SvgFonts.register();
        }
        XMLInputFactory parsers = SvgFile.parsers();
        Reader text = SvgFile.text(bytes);
        LoaderContext context = LoaderContext.builder()
                .externalResourcePolicy(ResourcePolicy.DENY_EXTERNAL)
                .documentLimits(new DocumentLimits(Limits.SVG_DEPTH, Limits.SVG_USE_DEPTH, Limits.SVG_ELEMENTS))
                .build();
        try {
            SVGDocument svg =
                    new SVGLoader().load(() -> new SvgEvents(parsers.createXMLEventReader(text), facts), null, context);
            if (svg == null) {
                throw new RefusedPicture(Flaw.DAMAGED); // the library gives no reason
            }
            FloatSize size = svg.size();
            if (!(size.width > 0) || !(size.height > 0) || Float.isInfinite(size.width * size.height)) {
                throw new RefusedPicture(Flaw.NO_SIZE);
            }
            return new SvgArtwork(svg, size, facts.hasText());
        } catch (RuntimeException | StackOverflowError e) {
            throw new RefusedPicture(Flaw.DAMAGED); // whatever a parser throws at a stranger's bytes
        }
    }

    @Override
    double width() {
        return size.width * POINTS_A_PIXEL;
    }

    @Override
    double height() {
        return size.height * POINTS_A_PIXEL;
    }

    @Override
    void draw(Graphics2D g) throws IOException {
        smooth(g);
        g.scale(POINTS_A_PIXEL, POINTS_A_PIXEL);
        synchronized (turn) {
            try {
                svg.renderWithPlatform(new Platform(), g, new ViewBox(size));
            } catch (ShapeGraphics.TooMuch e) {
                throw new RefusedPicture(Flaw.TOO_COMPLEX);
            } catch (RuntimeException | StackOverflowError e) {
                throw new IOException(e); // whatever a renderer throws at a stranger's drawing
            }
        }
    }

    @Override
    void draw(BufferedImage image) throws IOException {
        Graphics2D g = image.createGraphics();
        g.scale(image.getWidth() / width(), image.getHeight() / height());
        draw(g);
        g.dispose();
    }

    @Override
    public PDFormXObject form(PDDocument document, COSArray srgb) throws IOException {
        return SvgForm.of(this, document, srgb);
    }

    @Override
    public void close() {
        // all of it is in memory
    }

    /** Letters without a family are set in the bundled sans. */
    private static final class Platform implements PlatformSupport {
        @Override
        public ImageObserver imageObserver() {
            return NullPlatformSupport.INSTANCE.imageObserver();
        }

        @Override
        public TargetSurface targetSurface() {
            return NullPlatformSupport.INSTANCE.targetSurface();
        }

        @Override
        public String fontFamily() {
            return SvgFonts.USUAL;
        }
    }
}
