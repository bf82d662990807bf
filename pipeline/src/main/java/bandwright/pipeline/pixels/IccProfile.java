package bandwright.pipeline.pixels;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** Looks at a profile that a stranger's picture brings (ICC.1:2022, 7.2 and 7.3); a doubtful one is left out. */
final class IccProfile {
    private static final int HEADER = 128;
    private static final List<String> CLASSES = List.of("mntr", "scnr", "prtr", "spac");
    private static final int MOST_TAGS = 200;

    private IccProfile() {}

    /** The profile, if it is one for so many components and its tags lie inside it. */
    static Optional<ByteBuffer> find(byte[] profile, int components) {
        ByteBuffer in = ByteBuffer.wrap(profile);
        if (profile.length < HEADER + 4
                || in.getInt(0) != profile.length
                || !text(in, 36).equals("acsp")) {
            return Optional.empty();
        }
        String pcs = text(in, 20);
        boolean known = profile[8] >= 2
                && profile[8] <= 4
                && CLASSES.contains(text(in, 12))
                && text(in, 16).equals(space(components))
                && (pcs.equals("XYZ ") || pcs.equals("Lab "));
        return known && tagsLieInside(in) && (components < 4 || hasTag(in, "A2B0"))
                ? Optional.of(in.asReadOnlyBuffer())
                : Optional.empty();
    }

    private static String space(int components) {
        return components == 1 ? "GRAY" : components == 3 ? "RGB " : "CMYK";
    }

    /** Of a profile of inks only a table leads to colours; one that only leads from them is of no use here. */
    private static boolean hasTag(ByteBuffer in, String tag) {
        for (int i = 0; i < in.getInt(HEADER); i++) {
            if (text(in, HEADER + 4 + 12 * i).equals(tag)) {
                return true;
            }
        }
        return false;
    }

    private static boolean tagsLieInside(ByteBuffer in) {
        int tags = in.getInt(HEADER);
        if (tags < 1 || tags > MOST_TAGS || HEADER + 4 + 12 * tags > in.limit()) {
            return false;
        }
        for (int i = 0; i < tags; i++) {
            long at = in.getInt(HEADER + 8 + 12 * i) & 0xFFFF_FFFFL;
            long length = in.getInt(HEADER + 12 + 12 * i) & 0xFFFF_FFFFL;
            if (at < HEADER || at + length > in.limit()) {
                return false;
            }
        }
        return true;
    }

    private static String text(ByteBuffer in, int at) {
        byte[] four = new byte[4];
        in.get(at, four);
        return new String(four, StandardCharsets.ISO_8859_1);
    }
}
