package bandwright.pipeline.pixels;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * sRGB (IEC 61966-2-1) as an ICC profile of version 2, which old printers read too (ICC.1:2001-04): three primaries and
 * one curve of 1024 steps, about 2.6 kB.
 */
public final class SrgbProfile {
    private static final int STEPS = 1024;
    private static final int HEADER = 128;
    /** The white of the profile connection space, D50 (ICC.1:2022, 7.2.16). */
    private static final double[] D50 = {0.9642, 1.0, 0.8249};
    /** sRGB's primaries adapted from D65 to D50 by the Bradford transform: XYZ of red, green, blue. */
    private static final double[][] PRIMARIES = {
        {0.4360747, 0.2225045, 0.0139322}, {0.3850649, 0.7168786, 0.0971045}, {0.1430804, 0.0606169, 0.7141733}
    };

    private SrgbProfile() {}

    /** A tag's four letters and its data. */
    private static final class Tag {
        final String sign;
        final byte[] body;

        Tag(String sign, byte[] body) {
            this.sign = sign;
            this.body = body;
        }
    }

    /** The profile's bytes, always the same. */
    public static byte[] bytes() {
        List<Tag> tags = new ArrayList<>();
        tags.add(new Tag("desc", description("sRGB IEC61966-2-1")));
        tags.add(new Tag(
                "cprt", body("text", out -> out.write("No rights reserved.\0".getBytes(StandardCharsets.US_ASCII)))));
        tags.add(new Tag("wtpt", xyz(D50)));
        tags.add(new Tag("rXYZ", xyz(PRIMARIES[0])));
        tags.add(new Tag("gXYZ", xyz(PRIMARIES[1])));
        tags.add(new Tag("bXYZ", xyz(PRIMARIES[2])));
        byte[] curve = curve();
        tags.add(new Tag("rTRC", curve));
        tags.add(new Tag("gTRC", curve));
        tags.add(new Tag("bTRC", curve));
        return joined(tags);
    }

    /** Linear light of an encoded value (IEC 61966-2-1, 5.2). */
    static double linear(double encoded) {
        return encoded <= 0.04045 ? encoded / 12.92 : Math.pow((encoded + 0.055) / 1.055, 2.4);
    }

    private static byte[] joined(List<Tag> tags) {
        return written(out -> {
            int first = HEADER + 4 + 12 * tags.size();
            List<Tag> bodies = new ArrayList<>();
            List<Integer> places = new ArrayList<>();
            int end = first;
            for (Tag tag : tags) {
                int last = bodies.size() - 1;
                // The three curves are one, stored once.
                if (last >= 0 && bodies.get(last).body == tag.body) {
                    places.add(places.get(places.size() - 1));
                    continue;
                }
                bodies.add(tag);
                places.add(end);
                end += tag.body.length;
            }
            header(out, end);
            out.writeInt(tags.size());
            for (int i = 0; i < tags.size(); i++) {
                out.writeBytes(tags.get(i).sign);
                out.writeInt(places.get(i));
                out.writeInt(tags.get(i).body.length);
            }
            for (Tag tag : bodies) {
                out.write(tag.body);
            }
        });
    }

    private static void header(DataOutputStream out, int size) throws IOException {
        out.writeInt(size);
        out.writeInt(0); // no preferred colour engine
        out.writeInt(0x02400000); // version 2.4
        out.writeBytes("mntrRGB XYZ ");
        for (int part : new int[] {2026, 1, 1, 0, 0, 0}) { // a fixed date: the same bytes every time
            out.writeShort(part);
        }
        out.writeBytes("acsp");
        out.writeInt(0);
        out.writeInt(0); // flags
        out.writeBytes("IEC sRGB"); // the device: readers know sRGB by these signs
        out.writeLong(0); // attributes
        out.writeInt(0); // perceptual
        for (double part : D50) {
            out.writeInt(fixed(part));
        }
        out.write(new byte[HEADER - 80]);
    }

    private static byte[] description(String text) {
        return body("desc", out -> {
            out.writeInt(text.length() + 1);
            out.writeBytes(text);
            out.write(new byte[1 + 4 + 4 + 2 + 1 + 67]); // no Unicode, no Macintosh text (ICC.1:2001-04, 6.5.17)
        });
    }

    private static byte[] xyz(double[] xyz) {
        return body("XYZ ", out -> {
            for (double part : xyz) {
                out.writeInt(fixed(part));
            }
        });
    }

    private static byte[] curve() {
        return body("curv", out -> {
            out.writeInt(STEPS);
            for (int i = 0; i < STEPS; i++) {
                out.writeShort((int) Math.round(65535 * linear(i / (STEPS - 1.0))));
            }
        });
    }

    /** s15Fixed16Number (ICC.1:2022, 4.6). */
    private static int fixed(double number) {
        return (int) Math.round(number * 65536);
    }

    /** A tag's type, four zeros, its content, filled to a multiple of four. */
    private static byte[] body(String type, Content content) {
        return written(out -> {
            out.writeBytes(type);
            out.writeInt(0);
            content.writeTo(out);
            while (out.size() % 4 != 0) {
                out.write(0);
            }
        });
    }

    @FunctionalInterface
    private interface Content {
        void writeTo(DataOutputStream out) throws IOException;
    }

    private static byte[] written(Content content) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            content.writeTo(new DataOutputStream(bytes));
        } catch (IOException e) {
            throw new UncheckedIOException(e); // memory doesn't fail
        }
        return bytes.toByteArray();
    }
}
