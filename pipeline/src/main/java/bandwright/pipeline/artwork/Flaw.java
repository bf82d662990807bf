package bandwright.pipeline.artwork;

import bandwright.rules.words.Words;
import java.util.Locale;

/** Everything for which a picture is refused; the wording stands in words.properties under artwork.flaw. */
public enum Flaw {
    /** A path or a link that leads out of the artwork folder. */
    OUTSIDE,
    /** A name with characters that no file name should have. */
    NAME,
    /** Two or more files for one order. */
    SEVERAL,
    /** The disk or its permissions refuse the file. */
    CLOSED,
    TOO_MANY_BYTES,
    TOO_MANY_PIXELS,
    NO_PIXELS,
    CUT_SHORT,
    DAMAGED,
    /** Interlaced, and so large that it would have to be unpacked whole. */
    INTERLACED,
    /** A TIFF, WebP or GIF so large that it can't be unpacked whole. */
    TOO_LARGE_TO_UNPACK,
    /** A TIFF of a kind that no picture for print needs: floating point, Lab, old JPEG, many inks. */
    RARE_TIFF,
    /** Arithmetic, lossless, 12-bit or two-component JPEG: PDF can't carry it. */
    RARE_JPEG,
    UNKNOWN_KIND,
    /** Vector artwork without a width or height, or hardly any. */
    NO_SIZE,
    /** More parts, operators or unpacked bytes than a printed picture needs. */
    TOO_COMPLEX,
    /** SVG that defines words of its own. */
    ENTITIES,
    /** Refers to something outside its file. */
    LINKS,
    /** SVG with what the library can't draw: blend modes, web content, inner pictures of other kinds. */
    BLENDING,
    /** SVG letters in a font that isn't bundled. */
    LETTERS,
    /** An encrypted PDF. */
    LOCKED,
    NO_PAGES,
    /** A PDF that doesn't bring its fonts. */
    FONTS,
    /** A PDF with layers that are switched off. */
    LAYERS;

    /** What is wrong with it: the end of a sentence that begins with the file's name. */
    public String message() {
        return Words.say("artwork.flaw." + key());
    }

    /** What to do about it. */
    public String cure() {
        return Words.say("artwork.flaw." + key() + ".cure");
    }

    private String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
