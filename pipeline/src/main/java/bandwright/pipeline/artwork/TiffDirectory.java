package bandwright.pipeline.artwork;

import bandwright.pipeline.limits.Limits;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The first directory of a TIFF: its fields by their tags. No other directory is looked at. */
final class TiffDirectory {
    private static final int MOST_FIELDS = 4096;
    private static final int ENTRY = 12;
    /** Bytes of a value of each type (TIFF 6.0, section 2). */
    private static final List<Integer> TYPE_BYTES = List.of(0, 1, 1, 2, 4, 8, 1, 1, 2, 4, 8, 4, 8);

    private static final int BYTE = 1;
    private static final int SHORT = 3;
    private static final int LONG = 4;

    private final PictureBytes bytes;
    private final boolean littleEndian;
    private final Map<Integer, Field> fields = new TreeMap<>();

    /**
     * A field.
     *
     * @param values where they stand
     */
    record Field(int tag, int type, int count, Span values) {}

    private TiffDirectory(PictureBytes bytes) throws IOException {
        this.bytes = bytes;
        this.littleEndian = bytes.u8(0) == 'I';
    }

    static TiffDirectory read(PictureBytes bytes) throws IOException {
        TiffDirectory directory = new TiffDirectory(bytes);
        if (directory.u16(2) != 42) {
            throw new RefusedPicture(Flaw.RARE_TIFF); // the kind for files of over 4 GB
        }
        directory.readAt(directory.u32(4));
        return directory;
    }

    private void readAt(long at) throws IOException {
        int count = u16(at);
        if (at < 8 || count == 0 || count > MOST_FIELDS) {
            throw new RefusedPicture(Flaw.DAMAGED);
        }
        for (int i = 0; i < count; i++) {
            long entry = at + 2 + (long) ENTRY * i;
            int type = u16(entry + 2);
            long values = u32(entry + 4);
            boolean isKnown = type > 0 && type < TYPE_BYTES.size() && values > 0 && values <= Limits.PICTURE_BYTES;
            if (isKnown) {
                long length = values * TYPE_BYTES.get(type);
                Span span = new Span(length <= 4 ? entry + 8 : u32(entry + 8), length);
                fields.putIfAbsent(u16(entry), new Field(u16(entry), type, (int) values, span));
            }
        }
    }

    PictureBytes bytes() {
        return bytes;
    }

    boolean isLittleEndian() {
        return littleEndian;
    }

    /** A field whose values lie in the file. */
    Optional<Field> find(int tag) throws IOException {
        Field field = fields.get(tag);
        if (field != null) {
            bytes.u8(field.values().end() - 1);
        }
        return Optional.ofNullable(field);
    }

    boolean has(int tag) {
        return fields.containsKey(tag);
    }

    /** The only value, or the first, of a field of whole numbers. */
    int number(int tag, int without) throws IOException {
        Optional<Field> field = find(tag);
        return field.isEmpty() ? without : whole(number(field.get(), 0));
    }

    int required(int tag) throws IOException {
        if (!has(tag)) {
            throw new RefusedPicture(Flaw.DAMAGED);
        }
        return number(tag, 0);
    }

    /** All values of a field of whole numbers; none without it. */
    long[] numbers(int tag) throws IOException {
        Optional<Field> field = find(tag);
        if (field.isEmpty()) {
            return new long[0];
        }
        if (field.get().count() > Limits.TIFF_STRETCHES) {
            throw new RefusedPicture(Flaw.RARE_TIFF);
        }
        long[] numbers = new long[field.get().count()];
        for (int i = 0; i < numbers.length; i++) {
            numbers[i] = number(field.get(), i);
        }
        return numbers;
    }

    private long number(Field field, int i) throws IOException {
        long at = field.values().at();
        return switch (field.type()) {
            case BYTE -> bytes.u8(at + i);
            case SHORT -> u16(at + 2L * i);
            case LONG -> u32(at + 4L * i);
            default -> throw new RefusedPicture(Flaw.DAMAGED);
        };
    }

    private static int whole(long number) throws RefusedPicture {
        if (number > Integer.MAX_VALUE) {
            throw new RefusedPicture(Flaw.TOO_MANY_PIXELS);
        }
        return (int) number;
    }

    private int u16(long at) throws IOException {
        return littleEndian ? bytes.u16le(at) : bytes.u16(at);
    }

    private long u32(long at) throws IOException {
        return littleEndian ? bytes.u32le(at) : bytes.u32(at);
    }
}
