package bandwright.rules.paper;

import java.awt.color.CMMException;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.awt.image.ColorConvertOp;
import java.awt.image.DataBuffer;
import java.awt.image.Raster;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;

/**
 * How a printer's inks make colours on its paper: an ICC profile (ICC.1:2022) and the rendering intent it is used with.
 * Two are equal if they turn every colour into the same inks.
 */
public final class PrinterProfile {
    private static final int MOST_BYTES = 64 << 20;
    private static final int HEADER = 128;
    private static final int CLASS = 12;
    private static final int SPACE = 16;
    private static final int SIGNATURE = 36;
    private static final int TAG_BYTES = 12;
    private static final int MOST_TAGS = 200;

    private final byte[] bytes;
    private final Intent intent;
    private final int components;
    private final String digest;

    private PrinterProfile(byte[] bytes, Intent intent, int components) {
        this.bytes = bytes;
        this.intent = intent;
        this.components = components;
        this.digest = digest(bytes) + intent;
    }

    /** Why a file is no printer's profile; the key of a fault. */
    static final class Unusable extends Exception {
        private static final long serialVersionUID = 1;
        private final String fault;

        Unusable(String fault) {
            super(fault);
            this.fault = fault;
        }

        String fault() {
            return fault;
        }
    }

    /** Reads a profile and tries it on a colour. */
    static PrinterProfile read(Path file, Intent intent) throws Unusable {
        byte[] bytes = bytes(file);
        PrinterProfile profile = new PrinterProfile(bytes, intent, components(bytes));
        try {
            byte[] srgb = ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData();
            profile.from(srgb)
                    .filter(
                            Raster.createInterleavedRaster(DataBuffer.TYPE_BYTE, 1, 1, 3, null),
                            Raster.createInterleavedRaster(DataBuffer.TYPE_BYTE, 1, 1, profile.components, null));
        } catch (CMMException | IllegalArgumentException e) {
            throw new Unusable("profile.direction");
        }
        return profile;
    }

    /** 3: red, green and blue; 4: cyan, magenta, yellow and black. */
    public int components() {
        return components;
    }

    /** The file's bytes; a copy. */
    public byte[] bytes() {
        return bytes.clone();
    }

    /** Whether even the paper's own white is printed, so that colours only come right from sRGB. */
    public boolean isAbsolute() {
        return intent == Intent.ABSOLUTE_COLORIMETRIC;
    }

    /**
     * From colours of a profile to this printer's inks. Java's colour engine takes no intent; what it does take is told
     * to it so: it uses a source of class {@code prtr} relative colorimetrically, any other by the printer's perceptual
     * table, in whose place the one for saturation can be put; and absolute is relative with the source's primaries seen
     * by the paper's white (ICC.1:2022, annex D.6).
     *
     * @param source a profile of three components or one; for an absolute intent sRGB's, of primaries and curves
     */
    public ColorConvertOp from(byte[] source) {
        byte[] from = source.clone();
        byte[] to = bytes.clone();
        boolean isColorimetric = intent == Intent.RELATIVE_COLORIMETRIC || intent == Intent.ABSOLUTE_COLORIMETRIC;
        write(from, CLASS, isColorimetric ? "prtr" : "mntr");
        if (intent == Intent.SATURATION) {
            exchange(to, "B2A0", "B2A2");
        } else if (intent == Intent.ABSOLUTE_COLORIMETRIC) {
            seenByWhite(from, to);
        }
        return new ColorConvertOp(new ICC_Profile[] {ICC_Profile.getInstance(from), ICC_Profile.getInstance(to)}, null);
    }

    /** The same printer, used relative colorimetrically. */
    public PrinterProfile colorimetric() {
        return new PrinterProfile(bytes, Intent.RELATIVE_COLORIMETRIC, components);
    }

    /**
     * From this printer's inks to what they look like in sRGB, its paper being white. Using it throws a
     * {@link CMMException} if the profile doesn't say.
     */
    public ColorConvertOp toSrgb() {
        byte[] from = bytes.clone();
        write(from, CLASS, "prtr");
        return new ColorConvertOp(
                new ICC_Profile[] {ICC_Profile.getInstance(from), ICC_Profile.getInstance(ColorSpace.CS_sRGB)}, null);
    }

    private static byte[] bytes(Path file) throws Unusable {
        try {
            if (Files.size(file) > MOST_BYTES) {
                throw new Unusable("profile.unreadable");
            }
            byte[] bytes = Files.readAllBytes(file);
            boolean isProfile = bytes.length > HEADER + 4
                    && ByteBuffer.wrap(bytes).getInt(0) <= bytes.length
                    && text(bytes, SIGNATURE).equals("acsp")
                    && tags(bytes) >= 1
                    && tags(bytes) <= MOST_TAGS
                    && HEADER + 4 + TAG_BYTES * tags(bytes) <= bytes.length;
            if (!isProfile) {
                throw new Unusable("profile.unreadable");
            }
            return bytes;
        } catch (IOException e) {
            throw new Unusable("profile.unreadable");
        }
    }

    private static int components(byte[] bytes) throws Unusable {
        return switch (text(bytes, SPACE)) {
            case "RGB " -> 3;
            case "CMYK" -> 4;
            default -> throw new Unusable("profile.space");
        };
    }

    private static int tags(byte[] bytes) {
        return ByteBuffer.wrap(bytes).getInt(HEADER);
    }

    /** Where the entry of a tag stands in the table of tags; empty if there is none. */
    private static Optional<Integer> entry(byte[] bytes, String tag) {
        for (int i = 0; i < tags(bytes); i++) {
            int at = HEADER + 4 + TAG_BYTES * i;
            if (text(bytes, at).equals(tag)) {
                return Optional.of(at);
            }
        }
        return Optional.empty();
    }

    private static void exchange(byte[] bytes, String one, String other) {
        Optional<Integer> first = entry(bytes, one);
        Optional<Integer> second = entry(bytes, other);
        if (first.isPresent() && second.isPresent()) {
            write(bytes, first.get(), other);
            write(bytes, second.get(), one);
        }
    }

    /** Where the three numbers of a tag stand, each 65536 times as large. */
    private static Optional<Integer> xyz(byte[] bytes, String tag) {
        return entry(bytes, tag)
                .map(at -> ByteBuffer.wrap(bytes).getInt(at + 4) + 8)
                .filter(at -> at > 0 && at + 12 <= bytes.length);
    }

    private static void seenByWhite(byte[] source, byte[] printer) {
        Optional<Integer> white = xyz(printer, "wtpt");
        int[] d50 = {63_190, 65_536, 54_061}; // 0.9642, 1, 0.8249 (ICC.1:2022, 7.2.16)
        for (String tag : new String[] {"rXYZ", "gXYZ", "bXYZ"}) {
            Optional<Integer> primary = xyz(source, tag);
            if (white.isEmpty() || primary.isEmpty()) {
                return;
            }
            for (int i = 0; i < 3; i++) {
                ByteBuffer numbers = ByteBuffer.wrap(source);
                int at = primary.get() + 4 * i;
                int paper = Math.max(1, ByteBuffer.wrap(printer).getInt(white.get() + 4 * i));
                numbers.putInt(at, (int) Math.round((double) numbers.getInt(at) * d50[i] / paper));
            }
        }
    }

    private static String text(byte[] bytes, int at) {
        return new String(bytes, at, 4, StandardCharsets.ISO_8859_1);
    }

    private static void write(byte[] bytes, int at, String text) {
        System.arraycopy(text.getBytes(StandardCharsets.ISO_8859_1), 0, bytes, at, 4);
    }

    private static String digest(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof PrinterProfile profile && digest.equals(profile.digest);
    }

    @Override
    public int hashCode() {
        return digest.hashCode();
    }
}
