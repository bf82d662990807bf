package bandwright.checks.hostile;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/** Small sound order files of every format. */
final class OrderSeeds {
    private static final Path FIXTURES = Path.of("..", "src", "test", "resources", "formats");
    private static final String[][] ROWS = {
        {"Order", "SKU", "Design", "Qty", "Ship By", "Personalisation", "Buyer", "Gift", "Gift Message", "Status"},
        {"Q1", "MUG-11-W", "tern", "2", "2026-03-04", "Name: Ada", "Hester Quill", "yes", "Fair winds", "Paid"},
        {"Q2", "stein", "lamp", "1", "4 March 2026", "", "Zoë Lindqvist", "", "", "Cancelled"},
        {"", "", "", "", "", "", "", "", "", ""},
        {"Q3", "COAST-R", "nothing.png", "3.0", "soon", "Ada\nBen\nCleo", "=1+1", "", "", ""}
    };

    private OrderSeeds() {}

    static List<byte[]> text(char separator) {
        StringBuilder text = new StringBuilder();
        for (String[] row : ROWS) {
            for (int i = 0; i < row.length; i++) {
                text.append(i == 0 ? "" : separator).append('"').append(row[i]).append('"');
            }
            text.append("\r\n");
        }
        String plain = text.toString().replace("\"", "").replace("\nBen\nCleo", "");
        return List.of(
                text.toString().getBytes(StandardCharsets.UTF_8),
                plain.getBytes(StandardCharsets.ISO_8859_1),
                ("\uFEFF" + text).getBytes(StandardCharsets.UTF_16LE));
    }

    static List<byte[]> xlsx() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Workbook book = new Workbook(out, "Seeds", "1.0")) {
            book.setCompressionLevel(9);
            Worksheet sheet = book.newWorksheet("Orders");
            for (int r = 0; r < ROWS.length; r++) {
                for (int c = 0; c < ROWS[r].length; c++) {
                    sheet.value(r, c, ROWS[r][c]);
                }
            }
            sheet.value(1, 3, 2);
            sheet.value(1, 4, java.time.LocalDate.of(2026, 3, 4));
            sheet.style(1, 4).format("yyyy-mm-dd").set();
            sheet.range(3, 0, 3, 4).merge();
        }
        return fixture(out, "orders.xlsx");
    }

    static List<byte[]> xls() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (HSSFWorkbook book = new HSSFWorkbook()) {
            Sheet sheet = book.createSheet("Orders");
            for (int r = 0; r < ROWS.length; r++) {
                Row row = sheet.createRow(r);
                for (int c = 0; c < ROWS[r].length; c++) {
                    row.createCell(c).setCellValue(ROWS[r][c]);
                }
            }
            sheet.getRow(1).getCell(3).setCellFormula("1+1");
            sheet.getRow(4).getCell(3).setCellValue(3);
            book.write(out);
        }
        return fixture(out, "orders.xls");
    }

    static List<byte[]> ods() throws IOException {
        return List.of(Files.readAllBytes(FIXTURES.resolve("orders.ods")));
    }

    private static List<byte[]> fixture(ByteArrayOutputStream own, String name) throws IOException {
        List<byte[]> all = new ArrayList<>();
        all.add(own.toByteArray());
        all.add(Files.readAllBytes(FIXTURES.resolve(name)));
        return all;
    }
}
