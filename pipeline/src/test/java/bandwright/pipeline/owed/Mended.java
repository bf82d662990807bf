package bandwright.pipeline.owed;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Mends a cell of held.xlsx with another program's library, as a person does with a spreadsheet program. */
final class Mended {
    private Mended() {}

    static Path copy(Path held, Path to, String faulty, String right) throws IOException {
        try (InputStream in = Files.newInputStream(held);
                XSSFWorkbook book = new XSSFWorkbook(in);
                OutputStream out = Files.newOutputStream(to)) {
            for (Sheet sheet : book) {
                for (Row row : sheet) {
                    for (Cell cell : row) {
                        if (cell.getStringCellValue().equals(faulty)) {
                            cell.setCellValue(right);
                        }
                    }
                }
            }
            book.write(out);
        }
        return to;
    }
}
