package bandwright.pipeline.intake.format;

import bandwright.pipeline.limits.Limits;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.hssf.record.BOFRecord;
import org.apache.poi.hssf.record.BoundSheetRecord;
import org.apache.poi.hssf.record.DateWindow1904Record;
import org.apache.poi.hssf.record.EOFRecord;
import org.apache.poi.hssf.record.ExtendedFormatRecord;
import org.apache.poi.hssf.record.FormatRecord;
import org.apache.poi.hssf.record.Record;
import org.apache.poi.hssf.record.RecordFactoryInputStream;
import org.apache.poi.hssf.record.SSTRecord;
import org.apache.poi.poifs.filesystem.DirectoryNode;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;

/**
 * Reads a workbook in the binary form of 1997 to 2003 (MS-XLS), record by record: the workbook's own records first,
 * which say the sheets, formats and texts, then those of each sheet.
 */
final class Xls {
    private static final List<String> WORKBOOKS = List.of("Workbook", "WORKBOOK", "BOOK");

    private final Allowance allowance;
    private final List<BoundSheetRecord> tabs = new ArrayList<>();
    private final Map<Integer, NumberFormat> ownFormats = new HashMap<>();
    private final List<Integer> formatOfStyle = new ArrayList<>();
    private Optional<SSTRecord> texts = Optional.empty();
    private boolean from1904;

    private Xls(Allowance allowance) {
        this.allowance = allowance;
    }

    static List<Grid> read(Path file, Allowance allowance) throws IOException, Unreadable {
        try (POIFSFileSystem container = new POIFSFileSystem(file.toFile(), true)) {
            DirectoryNode root = container.getRoot();
            String workbook = workbook(root);
            try (InputStream in = open(root, workbook)) {
                BiffRecords.check(in, allowance);
            }
            try (InputStream in = new BiffRecords(open(root, workbook))) {
                return new Xls(allowance).grids(new RecordFactoryInputStream(in, false));
            }
        }
    }

    private static InputStream open(DirectoryNode root, String stream) throws IOException {
        return new BufferedInputStream(root.createDocumentInputStream(stream), 1 << 16);
    }

    /** A workbook of 2007 and later is in such a container if it has a password: MS-OFFCRYPTO 2.3.4.4. */
    private static String workbook(DirectoryNode root) throws Unreadable {
        if (root.hasEntry("EncryptedPackage")) {
            throw Unreadable.of("file-encrypted");
        }
        for (String name : WORKBOOKS) {
            if (root.hasEntry(name)) {
                return name;
            }
        }
        throw Unreadable.of(root.hasEntry("Book") ? "format-xls-95" : "compound-no-workbook");
    }

    private List<Grid> grids(RecordFactoryInputStream records) throws Unreadable {
        readWorkbook(records);
        Map<BoundSheetRecord, Grid> read = new LinkedHashMap<>();
        XlsSheet.Book book = new XlsSheet.Book(this::format, texts, from1904, allowance);
        for (BoundSheetRecord tab : BoundSheetRecord.orderByBofPosition(tabs)) {
            Optional<Grid> grid = sheet(records, tab, book);
            grid.ifPresent(each -> read.put(tab, each));
        }
        return tabs.stream().filter(read::containsKey).map(read::get).toList();
    }

    private void readWorkbook(RecordFactoryInputStream records) throws Unreadable {
        for (Record each = records.nextRecord(); !(each instanceof EOFRecord); each = records.nextRecord()) {
            if (each == null) {
                throw Unreadable.of("file-cut-short");
            } else if (each instanceof BoundSheetRecord tab) {
                tabs.add(tab);
                checkCount();
            } else if (each instanceof FormatRecord format) {
                ownFormats.put(format.getIndexCode(), NumberFormat.of(format.getFormatString()));
            } else if (each instanceof ExtendedFormatRecord style) {
                formatOfStyle.add((int) style.getFormatIndex());
            } else if (each instanceof DateWindow1904Record window) {
                from1904 = window.getWindowing() == 1;
            } else if (each instanceof SSTRecord all) {
                texts = Optional.of(all);
            }
        }
    }

    private void checkCount() throws Unreadable {
        if (tabs.size() > Limits.SHEETS) {
            throw Unreadable.of("too-many-sheets", Limits.SHEETS);
        }
    }

    /** The format of a cell's style; General where the style is not there. */
    private NumberFormat format(int style) {
        if (style < 0 || style >= formatOfStyle.size()) {
            return NumberFormat.GENERAL;
        }
        int id = formatOfStyle.get(style);
        NumberFormat own = ownFormats.get(id);
        return own == null ? NumberFormat.builtIn(id) : own;
    }

    /** Empty where the tab is one chart or a sheet of macros. */
    private static Optional<Grid> sheet(RecordFactoryInputStream records, BoundSheetRecord tab, XlsSheet.Book book)
            throws Unreadable {
        if (!(records.nextRecord() instanceof BOFRecord start)) {
            throw Unreadable.of("file-cut-short");
        }
        boolean isRead = start.getType() == BOFRecord.TYPE_WORKSHEET && !isHidden(tab);
        XlsSheet sheet = new XlsSheet(book);
        int depth = 1;
        while (depth > 0) {
            Record each = records.nextRecord();
            if (each == null) {
                throw Unreadable.of("file-cut-short");
            }
            depth += each instanceof BOFRecord ? 1 : each instanceof EOFRecord ? -1 : 0; // charts lie inside sheets
            if (isRead && depth == 1) {
                sheet.take(each);
            }
        }
        if (start.getType() != BOFRecord.TYPE_WORKSHEET) {
            return Optional.empty();
        }
        return Optional.of(isRead ? sheet.grid(tab.getSheetname()) : Grid.hidden(tab.getSheetname()));
    }

    private static boolean isHidden(BoundSheetRecord tab) {
        return tab.isHidden() || tab.isVeryHidden();
    }
}
