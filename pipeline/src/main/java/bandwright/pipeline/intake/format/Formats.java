package bandwright.pipeline.intake.format;

import bandwright.pipeline.limits.Limits;
import bandwright.pipeline.rows.Cell;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToIntFunction;

/**
 * Reads an order file of any format. The format is told by the file's first bytes, as endings lie: many an .xls is
 * really a CSV or a web page, and a workbook with a password is no zip.
 */
public final class Formats {
    private static final byte[] ZIP = {'P', 'K', 3, 4};
    private static final byte[] EMPTY_ZIP = {'P', 'K', 5, 6};
    /** The container of .xls and of workbooks with a password: MS-CFB 2.2. */
    private static final byte[] COMPOUND = {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0};

    private Formats() {}

    /**
     * The sheets of that file.
     *
     * @param headerScore how many fields a row names if it is a header row, else 0: that is how CSV finds its separator
     */
    public static List<Grid> read(Path file, Allowance allowance, ToIntFunction<List<Cell>> headerScore)
            throws Unreadable {
        long before = allowance.left();
        try {
            return readAny(file, allowance, headerScore);
        } catch (Unreadable refused) {
            allowance.backTo(before);
            throw refused;
        } catch (VirtualMachineError e) {
            throw e;
        } catch (AccessDeniedException e) {
            throw Unreadable.of("file-closed");
        } catch (NoSuchFileException e) {
            throw Unreadable.of("file-gone");
        } catch (Throwable broken) { // a broken file can break a parser in any way
            allowance.backTo(before);
            throw Unreadable.of("file-damaged");
        }
    }

    private static List<Grid> readAny(Path file, Allowance allowance, ToIntFunction<List<Cell>> headerScore)
            throws Exception {
        if (Files.size(file) > Limits.ORDER_FILE_BYTES) {
            throw Unreadable.of("file-too-large", Limits.ORDER_FILE_BYTES >> 20);
        }
        byte[] start = start(file);
        if (startsWith(start, ZIP) || startsWith(start, EMPTY_ZIP)) {
            try (Zip zip = Zip.open(file)) {
                return Ods.isOne(zip) ? Ods.read(zip, allowance) : Xlsx.read(zip, allowance);
            }
        }
        if (startsWith(start, COMPOUND)) {
            return Xls.read(file, allowance); // loads a large library: not touched before
        }
        return Csv.read(file, allowance, headerScore);
    }

    static byte[] start(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(8);
        }
    }

    static boolean startsWith(byte[] bytes, byte[] start) {
        return bytes.length >= start.length && Arrays.equals(bytes, 0, start.length, start, 0, start.length);
    }
}
