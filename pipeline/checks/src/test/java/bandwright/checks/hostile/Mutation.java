package bandwright.checks.hostile;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/** Makes broken inputs of sound ones; the same number gives the same input on every computer. */
final class Mutation {
    /** Where counts, sizes and places go wrong: at the ends of 8, 16 and 32 bits, with and without a sign. */
    private static final int[] EDGES = {
        0, 1, 2, 127, 128, 255, 256, 32_767, 32_768, 65_535, 65_536, 0x7FFF_FFFF, 0x8000_0000, -1, -2, 1_000_000
    };

    /** Long enough to be absurd in a cell, a name or a number, short enough for thousands of tries. */
    private static final int GIANT = 40_000;

    private final Target target;
    private final SplittableRandom random;

    private Mutation(Target target, long number) {
        this.target = target;
        this.random = new SplittableRandom(
                number * 0x9E3779B97F4A7C15L + target.name().hashCode());
    }

    static byte[] of(Target target, long number) throws IOException {
        Mutation mutation = new Mutation(target, number);
        byte[] seed = mutation.any(target.seeds());
        return mutation.random.nextInt(4) == 0
                ? mutation.changed(seed)
                : target.mending().within(seed, mutation.random.nextInt(1 << 20), mutation::changed);
    }

    private byte[] any(List<byte[]> all) {
        return all.get(random.nextInt(all.size()));
    }

    private byte[] changed(byte[] seed) {
        byte[] bytes = seed;
        for (int n = random.nextInt(3) == 0 ? random.nextInt(1, 12) : random.nextInt(1, 3); n > 0; n--) {
            bytes = changedOnce(bytes);
        }
        return bytes;
    }

    private byte[] changedOnce(byte[] bytes) {
        int at = place(bytes);
        int span = Math.min(bytes.length - at, random.nextInt(random.nextInt(8) == 0 ? 400 : 12));
        return switch (random.nextInt(target.words().isEmpty() ? 12 : 20)) {
            case 0 -> put(bytes, at, 1, new byte[] {(byte) random.nextInt(256)});
            case 1 -> put(bytes, at, 1, new byte[] {(byte) (at(bytes, at) ^ (1 << random.nextInt(8)))});
            case 2 -> put(bytes, at, 2, number(2));
            case 3 -> put(bytes, at, 4, number(4));
            case 4 -> put(bytes, at, span, new byte[0]);
            case 5 -> put(bytes, at, 0, Arrays.copyOfRange(bytes, at, at + span));
            case 6 -> put(bytes, at, span, some(any(target.seeds())));
            case 7 -> random.nextInt(3) == 0 ? Arrays.copyOf(bytes, at) : put(bytes, at, span, number(1));
            case 8 -> put(bytes, at, 0, repeated(bytes, at, span));
            case 9 -> put(bytes, at, digits(bytes, at), text(Integer.toString(EDGES[random.nextInt(EDGES.length)])));
            default -> put(bytes, at, random.nextBoolean() ? 0 : span, word());
        };
    }

    /** Heads say most, so half of all changes happen there. */
    private int place(byte[] bytes) {
        int most = random.nextBoolean() ? Math.min(bytes.length, 200) : bytes.length;
        return most == 0 ? 0 : random.nextInt(most);
    }

    private static int at(byte[] bytes, int at) {
        return at < bytes.length ? bytes[at] : 0;
    }

    private byte[] number(int size) {
        int value = EDGES[random.nextInt(EDGES.length)];
        boolean isLowFirst = random.nextBoolean();
        byte[] bytes = new byte[size];
        for (int i = 0; i < size; i++) {
            bytes[isLowFirst ? i : size - 1 - i] = (byte) (value >> (8 * i));
        }
        return bytes;
    }

    private static int digits(byte[] bytes, int from) {
        int end = from;
        while (end < bytes.length && bytes[end] >= '0' && bytes[end] <= '9') {
            end++;
        }
        return end - from;
    }

    private byte[] some(byte[] other) {
        int at = place(other);
        return Arrays.copyOfRange(other, at, Math.min(other.length, at + random.nextInt(200)));
    }

    private byte[] repeated(byte[] bytes, int at, int span) {
        byte[] piece = span == 0 ? word() : Arrays.copyOfRange(bytes, at, at + span);
        if (piece.length == 0) {
            return piece;
        }
        int most = random.nextInt(20) == 0 ? GIANT : 300;
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        while (out.size() < most) {
            out.writeBytes(piece);
        }
        return out.toByteArray();
    }

    private byte[] word() {
        return target.words().isEmpty()
                ? number(4)
                : text(target.words().get(random.nextInt(target.words().size())));
    }

    private static byte[] text(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static byte[] put(byte[] bytes, int at, int instead, byte[] piece) {
        int from = Math.min(at, bytes.length);
        int rest = Math.min(bytes.length, from + instead);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(bytes, 0, from);
        out.writeBytes(piece);
        out.write(bytes, rest, bytes.length - rest);
        return out.toByteArray();
    }
}
