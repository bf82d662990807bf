package bandwright.pipeline.artwork;

import java.io.IOException;
import java.util.Optional;

/** What a file is, told by its content: a GIF that calls itself heron.png is a GIF. */
enum PictureKind {
    JPEG(""),
    PNG(""),
    GIF("GIF"),
    TIFF("TIFF"),
    WEBP("WebP"),
    PDF("PDF"),
    SVG("SVG");

    /** So much of a file is searched for a sign of PDF or SVG, which may begin late. */
    private static final int SEARCHED = 4096;

    private final String word;

    PictureKind(String word) {
        this.word = word;
    }

    /** As a sentence says it; no other language has another word for these. */
    String word() {
        return word;
    }

    static Optional<PictureKind> of(PictureBytes bytes) throws IOException {
        int length = (int) Math.min(SEARCHED, bytes.size());
        if (length < 8) {
            throw new RefusedPicture(Flaw.CUT_SHORT);
        }
        String head = bytes.ascii(0, length);
        if (head.startsWith("\u00FF\u00D8\u00FF")) {
            return Optional.of(JPEG);
        }
        if (bytes.u32(0) == PngChunks.SIGNATURE >>> 32 && bytes.u32(4) == (PngChunks.SIGNATURE & 0xFFFF_FFFFL)) {
            return Optional.of(PNG);
        }
        return ofLater(head);
    }

    private static Optional<PictureKind> ofLater(String head) {
        if (head.startsWith("GIF8")) {
            return Optional.of(GIF);
        }
        if (head.startsWith("II*\0") || head.startsWith("MM\0*") || head.startsWith("II+\0")) {
            return Optional.of(TIFF);
        }
        if (head.startsWith("RIFF") && head.startsWith("WEBP", 8)) {
            return Optional.of(WEBP);
        }
        if (head.contains("%PDF-")) {
            return Optional.of(PDF);
        }
        boolean isPacked = head.startsWith("\u001F\u008B"); // a .svgz, or else damaged: no other kind is packed so
        return isPacked || head.contains("<svg") ? Optional.of(SVG) : Optional.empty();
    }
}
