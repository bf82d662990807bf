package bandwright.checks;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A made-up printer of four inks as an ICC profile of version 2.4 (ICC.1:2001-04): three tables to Lab and three from
 * Lab, each another, so that it shows which one was taken, and a paper that isn't white.
 */
public final class InkProfile {
    private static final int HEADER = 128;
    private static final int FROM_LAB = 9;
    private static final int TO_LAB = 5;

    private InkProfile() {}

    public static byte[] bytes() {
        Map<String, byte[]> tags = new LinkedHashMap<>();
        tags.put("desc", body("desc", out -> {
            out.writeInt(5);
            out.writeBytes("inks\0");
            out.write(new byte[78]);
        }));
        tags.put("cprt", body("text", out -> out.writeBytes("none\0")));
        tags.put("wtpt", body("XYZ ", out -> {
            out.writeInt(fixed(0.85));
            out.writeInt(fixed(0.88));
            out.writeInt(fixed(0.70));
        }));
        for (int intent = 0; intent < 3; intent++) {
            int number = intent;
            tags.put("A2B" + intent, table(4, 3, TO_LAB, part -> lab(part, number)));
            tags.put("B2A" + intent, table(3, 4, FROM_LAB, part -> inks(part, number)));
        }
        return joined(tags);
    }

    private interface Colour {
        double[] of(double[] parts);
    }

    private interface Content {
        void writeTo(DataOutputStream out) throws IOException;
    }

    /** From L, a and b as 16-bit tables have them (ICC.1:2001-04, annex A), each 0 to 1. */
    private static double[] inks(double[] lab, int intent) {
        double dark = 1 - lab[0] * 65535 / 65280;
        double a = (lab[1] * 65535 - 32768) / 32768;
        double b = (lab[2] * 65535 - 32768) / 32768;
        return new double[] {
            dark * (0.9 - 0.1 * intent) - a,
            dark * (0.8 - 0.1 * intent) + 0.8 * a - 0.2 * b,
            dark * (0.7 - 0.05 * intent) + b,
            Math.max(0, dark - 0.5) * (0.4 + 0.3 * intent)
        };
    }

    private static double[] lab(double[] inks, int intent) {
        double light =
                (1 - inks[3]) * (1 - (0.4 * inks[0] + 0.5 * inks[1] + 0.1 * inks[2]) * (0.9 - 0.1 * intent)) * 0.94;
        double a = (inks[1] - inks[0]) / 2;
        double b = (inks[2] - 0.5 * inks[0] - 0.2 * inks[1]) / 2;
        return new double[] {light * 65280 / 65535, (a * 32768 + 32768) / 65535, (b * 32768 + 32768) / 65535};
    }

    /** Type lut16 (ICC.1:2001-04, 6.5.7). */
    private static byte[] table(int in, int out, int grid, Colour colour) {
        return body("mft2", to -> {
            to.write(new byte[] {(byte) in, (byte) out, (byte) grid, 0});
            for (int i = 0; i < 9; i++) {
                to.writeInt(i % 4 == 0 ? fixed(1) : 0);
            }
            to.writeShort(2);
            to.writeShort(2);
            straight(to, in);
            double[] parts = new double[in];
            for (int i = 0; i < Math.round(Math.pow(grid, in)); i++) {
                int rest = i;
                for (int k = in - 1; k >= 0; k--) {
                    parts[k] = rest % grid / (grid - 1.0);
                    rest /= grid;
                }
                for (double part : colour.of(parts)) {
                    to.writeShort((int) Math.round(Math.max(0, Math.min(1, part)) * 65535));
                }
            }
            straight(to, out);
        });
    }

    private static void straight(DataOutputStream to, int channels) throws IOException {
        for (int i = 0; i < channels; i++) {
            to.writeShort(0);
            to.writeShort(65535);
        }
    }

    private static byte[] joined(Map<String, byte[]> tags) {
        return written(out -> {
            int first = HEADER + 4 + 12 * tags.size();
            out.writeInt(
                    first + tags.values().stream().mapToInt(tag -> tag.length).sum());
            out.writeInt(0);
            out.writeInt(0x02400000);
            out.writeBytes("prtrCMYKLab ");
            for (int part : new int[] {2026, 1, 1, 0, 0, 0}) {
                out.writeShort(part);
            }
            out.writeBytes("acsp");
            out.write(new byte[68 - out.size()]);
            out.writeInt(fixed(0.9642));
            out.writeInt(fixed(1));
            out.writeInt(fixed(0.8249));
            out.write(new byte[HEADER - out.size()]);
            out.writeInt(tags.size());
            int at = first;
            for (Map.Entry<String, byte[]> tag : tags.entrySet()) {
                out.write(tag.getKey().getBytes(StandardCharsets.US_ASCII));
                out.writeInt(at);
                out.writeInt(tag.getValue().length);
                at += tag.getValue().length;
            }
            for (byte[] tag : tags.values()) {
                out.write(tag);
            }
        });
    }

    private static int fixed(double number) {
        return (int) Math.round(number * 65536);
    }

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

    private static byte[] written(Content content) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            content.writeTo(out);
        } catch (IOException e) {
            throw new IllegalStateException(e); // memory doesn't fail
        }
        return bytes.toByteArray();
    }
}
