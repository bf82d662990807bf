package bandwright.pipeline.intake.format;

import java.io.IOException;
import java.io.InputStream;
import java.util.Set;

/**
 * The records of an .xls workbook that a table of orders needs, one after another as they stand in the file (MS-XLS
 * 2.1.4: two bytes of type, two of length, the body). Drawings, pictures, charts' data and print settings are passed
 * over, so nothing has to be made of them.
 */
final class BiffRecords extends InputStream {
    private static final int BOF = 0x0809;
    private static final int EOF = 0x000A;
    private static final int BOUND_SHEET = 0x0085;
    private static final int DATE_1904 = 0x0022;
    private static final int FORMAT = 0x041E;
    private static final int XF = 0x00E0;
    private static final int SST = 0x00FC;
    private static final int CONTINUE = 0x003C;
    private static final int FILE_PASS = 0x002F;
    private static final int ROW = 0x0208;
    private static final int LABEL_SST = 0x00FD;
    private static final int LABEL = 0x0204;
    private static final int NUMBER = 0x0203;
    private static final int RK = 0x027E;
    private static final int MULTIPLE_RK = 0x00BD;
    private static final int BOOL_ERR = 0x0205;
    private static final int FORMULA = 0x0006;
    private static final int STRING = 0x0207;
    private static final int MERGE_CELLS = 0x00E5;

    private static final Set<Integer> WANTED = Set.of(
            BOF,
            EOF,
            BOUND_SHEET,
            DATE_1904,
            FORMAT,
            XF,
            SST,
            ROW,
            LABEL_SST,
            LABEL,
            NUMBER,
            RK,
            MULTIPLE_RK,
            BOOL_ERR,
            FORMULA,
            STRING,
            MERGE_CELLS);

    /** MS-XLS 2.1.4. */
    private static final int LONGEST_BODY = 8224;
    /** A text of the shared table takes its length and its kind at least: MS-XLS 2.5.293. */
    private static final int SHORTEST_TEXT = 3;

    private final InputStream in;
    private byte[] record = new byte[0];
    private int at;
    private boolean isWanted = true;

    BiffRecords(InputStream in) {
        this.in = in;
    }

    /**
     * Looks through all records before anything is made of them: no password, none cut short, no shared texts that
     * claim to be more than the file has room for.
     */
    static void check(InputStream in, Allowance allowance) throws IOException, Unreadable {
        BiffRecords records = new BiffRecords(in);
        long texts = 0;
        long textBytes = 0;
        boolean inTexts = false;
        while (records.load()) {
            int type = records.type();
            inTexts = type == SST || (inTexts && type == CONTINUE);
            if (type == FILE_PASS) {
                throw Unreadable.of("file-encrypted");
            }
            if (records.record.length - 4 > LONGEST_BODY) {
                throw Unreadable.of("file-damaged");
            }
            texts += type == SST && records.record.length >= 12 ? records.uniqueTexts() : 0;
            textBytes += inTexts ? records.record.length : 0;
        }
        if (texts * SHORTEST_TEXT > textBytes) {
            throw Unreadable.of("file-damaged");
        }
        allowance.keepTexts(texts, textBytes);
    }

    private int type() {
        return unsigned(record, 0);
    }

    private long uniqueTexts() {
        return unsigned(record, 8) | ((long) unsigned(record, 10) << 16);
    }

    private static int unsigned(byte[] bytes, int at) {
        return (bytes[at] & 0xFF) | ((bytes[at + 1] & 0xFF) << 8);
    }

    /** Reads the next record; false at the end, or where what is left is padding. */
    private boolean load() throws IOException {
        byte[] head = in.readNBytes(4);
        if (head.length < 4 || unsigned(head, 0) == 0) {
            return false;
        }
        int length = unsigned(head, 2);
        byte[] whole = new byte[4 + length];
        System.arraycopy(head, 0, whole, 0, 4);
        if (in.readNBytes(whole, 4, length) < length) {
            return false;
        }
        record = whole;
        at = 0;
        return true;
    }

    /** Goes on to a wanted record if the last one is read; what continues a record is wanted as it is. */
    private boolean fill() throws IOException {
        while (at == record.length || !isWanted) {
            if (!load()) {
                return false;
            }
            isWanted = type() == CONTINUE ? isWanted : WANTED.contains(type());
        }
        return true;
    }

    @Override
    public int available() throws IOException {
        return fill() ? record.length - at : 0;
    }

    @Override
    public int read() throws IOException {
        return fill() ? record[at++] & 0xFF : -1;
    }

    @Override
    public int read(byte[] bytes, int from, int length) throws IOException {
        if (length == 0) {
            return 0;
        }
        if (!fill()) {
            return -1;
        }
        int some = Math.min(length, record.length - at);
        System.arraycopy(record, at, bytes, from, some);
        at += some;
        return some;
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
