package bandwright.pipeline.artwork;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Walks the segments of a JPEG up to its first scan, then looks for its end. */
final class JpegSegments {
    private static final String EXIF = "Exif\0\0";
    private static final String ICC = "ICC_PROFILE\0";

    private final PictureBytes bytes;
    private int width;
    private int height;
    private int components;
    private String componentIds = "";
    private boolean jfif;
    /** The colour transform of an Adobe segment (ITU-T T.872 6.5.3), -1 without one. */
    private int adobeTransform = -1;

    private Orientation orientation = Orientation.TOP_LEFT;
    private boolean exifSeen;
    private final Map<Integer, Span> profile = new TreeMap<>();

    JpegSegments(PictureBytes bytes) {
        this.bytes = bytes;
    }

    JpegHeader header() throws IOException {
        long scan = walkToScan();
        if (components == 0) {
            throw new RefusedPicture(Flaw.DAMAGED);
        }
        if (!endsAtTail() && !endsAfter(scan)) {
            throw new RefusedPicture(Flaw.CUT_SHORT);
        }
        return new JpegHeader(width, height, components, isTransformed(), isInverted(), orientation, wholeProfile());
    }

    private long walkToScan() throws IOException {
        long at = 2;
        while (true) {
            if (bytes.u8(at) != 0xFF) {
                throw new RefusedPicture(Flaw.DAMAGED);
            }
            int marker = bytes.u8(at + 1);
            if (marker == 0xFF) { // fill byte
                at++;
                continue;
            }
            if (standsAlone(marker)) {
                at += 2;
                continue;
            }
            int length = bytes.u16(at + 2);
            if (length < 2 || marker == 0xD9 || marker == 0x00) {
                throw new RefusedPicture(Flaw.DAMAGED);
            }
            bytes.u8(at + 1 + length);
            if (marker == 0xDA) {
                return at + 2 + length;
            }
            take(marker, new Span(at + 4, length - 2));
            at += 2 + length;
        }
    }

    private static boolean standsAlone(int marker) {
        return marker == 0x01 || marker == 0xD8 || isRestart(marker);
    }

    private static boolean isRestart(int marker) {
        return marker >= 0xD0 && marker <= 0xD7;
    }

    private void take(int marker, Span body) throws IOException {
        boolean frame = marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC;
        if (frame) {
            takeFrame(marker, body);
        } else if (marker == 0xE0) {
            jfif |= begins(body, "JFIF\0");
        } else if (marker == 0xE1 && !exifSeen && begins(body, EXIF)) {
            exifSeen = true;
            orientation = ExifOrientation.of(bytes.bytes(body), EXIF.length());
        } else if (marker == 0xE2 && begins(body, ICC) && body.length() > ICC.length() + 2) {
            long skip = ICC.length() + 2L;
            profile.put(bytes.u8(body.at() + ICC.length()), new Span(body.at() + skip, body.length() - skip));
        } else if (marker == 0xEE && begins(body, "Adobe") && body.length() >= 12) {
            adobeTransform = bytes.u8(body.at() + 11);
        }
    }

    private void takeFrame(int marker, Span body) throws IOException {
        // Baseline, extended and progressive Huffman frames are what DCTDecode takes (ISO 32000-1, 7.4.8).
        if (marker > 0xC2) {
            throw new RefusedPicture(Flaw.RARE_JPEG);
        }
        if (body.length() < 6 || components != 0) {
            throw new RefusedPicture(Flaw.DAMAGED);
        }
        height = bytes.u16(body.at() + 1);
        width = bytes.u16(body.at() + 3);
        components = bytes.u8(body.at() + 5);
        if (bytes.u8(body.at()) != 8 || components == 2 || components > 4) {
            throw new RefusedPicture(Flaw.RARE_JPEG);
        }
        if (components == 0 || body.length() < 6 + 3L * components) {
            throw new RefusedPicture(Flaw.DAMAGED);
        }
        StringBuilder ids = new StringBuilder();
        for (int i = 0; i < components; i++) {
            ids.append((char) bytes.u8(body.at() + 6 + 3L * i));
        }
        componentIds = ids.toString();
    }

    private boolean begins(Span body, String text) throws IOException {
        return body.length() >= text.length()
                && bytes.ascii(body.at(), text.length()).equals(text);
    }

    /** Four components are inks as they are unless an Adobe segment says otherwise, which also inverts them. */
    private boolean isInverted() {
        return components == 4 && adobeTransform >= 0;
    }

    /** JFIF is always luma and chroma; an Adobe segment says; else component ids that spell RGB do. */
    private boolean isTransformed() {
        if (components == 4) {
            return adobeTransform > 0;
        }
        if (jfif) {
            return true;
        }
        return adobeTransform >= 0 ? adobeTransform != 0 : !componentIds.equals("RGB");
    }

    /** A profile with a part missing is none. */
    private List<Span> wholeProfile() {
        List<Span> parts = new ArrayList<>(profile.values());
        boolean whole = !profile.containsKey(0) && (parts.isEmpty() || profile.containsKey(parts.size()));
        return whole ? parts : List.of();
    }

    /** The usual case: the end marker stands last, or before zeros that a card or a mail program put there. */
    private boolean endsAtTail() throws IOException {
        long at = bytes.size() - 1;
        long nearest = Math.max(2, bytes.size() - (1 << 15));
        bytes.u8(nearest); // one read for the whole tail
        while (at > nearest && bytes.u8(at) == 0) {
            at--;
        }
        return at > nearest && bytes.u8(at) == 0xD9 && bytes.u8(at - 1) == 0xFF;
    }

    /** Walks the scans to the end marker: something else may follow it, such as a second picture or a note. */
    private boolean endsAfter(long scan) throws IOException {
        long at = scan;
        while (at + 1 < bytes.size()) {
            if (bytes.u8(at) != 0xFF) {
                at++;
                continue;
            }
            int marker = bytes.u8(at + 1);
            if (marker == 0xD9) {
                return true;
            }
            if (marker == 0xFF) {
                at++;
            } else if (marker == 0 || standsAlone(marker)) {
                at += 2;
            } else {
                at += at + 3 < bytes.size() ? 2 + Math.max(2, bytes.u16(at + 2)) : 2;
            }
        }
        return false;
    }
}
