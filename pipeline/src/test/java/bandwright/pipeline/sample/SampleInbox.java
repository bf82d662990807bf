package bandwright.pipeline.sample;

import bandwright.pipeline.sample.art.Gallery;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Writes inbox-sample: a weekend of invented orders at the Quillmoor Lighthouse Trust's gift shop, from its own shop as a
 * workbook and from a market as CSV with other headers.
 */
final class SampleInbox {
    private static final String WEB_SHOP = """
            Order ID;Date;Dispatch By;Item SKU;Artwork;Quantity;Press;Recipient;Address 1;Town;ZIP;Country;Is Gift;Gift Message;Order Status
            0068;2026-02-27;2026-03-03;11 oz white mug;choir;2;;Keeper Josiah Brannock;North Gallery, Quillmoor Light;Quillmoor;QM1 0LT;Skerry Isles;;;Open
            0068;2026-02-27;2026-03-03;black handle mug;keeper;1;;Keeper Josiah Brannock;North Gallery, Quillmoor Light;Quillmoor;QM1 0LT;Skerry Isles;;;Open
            0069;2026-02-27;2026-03-04;pink handle mug;lamp;1;;Zo\u00eb Lindqvist;"Villa Fyren; \u00d6stra v\u00e4gen 9";M\u00f6rkholm;182 30;Nordmark;;;Open
            0069;2026-02-27;2026-03-04;pale blue mug;tern;1;;Zo\u00eb Lindqvist;"Villa Fyren; \u00d6stra v\u00e4gen 9";M\u00f6rkholm;182 30;Nordmark;;;Open
            0070;2026-02-28;2026-03-04;round coaster;keeper;4;;Noor Adeyemi-Finch;22 Kittiwake Terrace;Saltby;SB1 2KT;Skerry Isles;;;Open
            0070;2026-02-28;2026-03-04;20 oz tumbler;shoal;1;oven;Noor Adeyemi-Finch;22 Kittiwake Terrace;Saltby;SB1 2KT;Skerry Isles;;;Open
            0071;2026-02-28;2026-03-05;6 oz white mug;tide table;2;;Barnaby Oke;5 Cockle Yard;Quillmoor;QM2 3BO;Skerry Isles;;;Open
            0071;2026-02-28;2026-03-05;tapered foot mug;rowing club;1;;Barnaby Oke;5 Cockle Yard;Quillmoor;QM2 3BO;Skerry Isles;;;Open
            0072;2026-02-28;2026-03-05;slim tumbler;shoal;2;;Cass Merrow;The Ferry Office;Nether Skerry;NS1 1CM;Skerry Isles;yes;"For the long crossing, with love from all at the pier.";Open
            0072;2026-02-28;2026-03-05;silver glitter mug;lamp;1;;Cass Merrow;The Ferry Office;Nether Skerry;NS1 1CM;Skerry Isles;yes;"For the long crossing, with love from all at the pier.";Open
            0073;2026-03-01;2026-03-06;frosted glass mug;keper.png;1;;Linnet Ashgrove;Tern House, 2 Shingle Road;Wrackham;WR2 5LA;Skerry Isles;;;Open
            0073;2026-03-01;2026-03-06;frosted glass mug;tern;1;;Linnet Ashgrove;Tern House, 2 Shingle Road;Wrackham;WR2 5LA;Skerry Isles;;;Open
            0074;2026-03-01;2026-03-06;tile;skerries;2;;Magnus Thorvald;Havnegade 3;Sk\u00e6rholm;4100;Nordmark;;;Open
            0074;2026-03-01;2026-03-06;camp cup;rowing club;1;;Magnus Thorvald;Havnegade 3;Sk\u00e6rholm;4100;Nordmark;;;Open
            0075;2026-03-01;2026-03-07;15 oz white mug;tide table;2;;Saltby Sailing School;Pontoon C;Saltby;SB4 4SS;Skerry Isles;;;Open
            0075;2026-03-01;2026-03-07;15 oz white mug;rowing club;2;;Saltby Sailing School;Pontoon C;Saltby;SB4 4SS;Skerry Isles;;;Open
            STOCK;2026-03-01;;MUG-11-W;tern;4;;;;;;;;;Open
            STOCK;2026-03-01;;square coaster;lamp;4;;;;;;;;;Open
            """;

    private SampleInbox() {}

    /** Writes artwork and order files into that folder; says the names of the pictures. */
    static List<String> write(Path inbox) throws IOException {
        List<String> pictures = Gallery.write(inbox.resolve("artwork"));
        Files.writeString(inbox.resolve("web-shop.csv"), WEB_SHOP, StandardCharsets.UTF_8);
        workbook(inbox.resolve("weekend-orders.xlsx"));
        return pictures;
    }

    private static void workbook(Path file) throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            Sheet sheet = book.createSheet("Orders");
            sheet.createRow(0)
                    .createCell(0)
                    .setCellValue("Quillmoor Lighthouse Trust: gift shop orders of the weekend");
            CellStyle day = book.createCellStyle();
            day.setDataFormat(book.getCreationHelper().createDataFormat().getFormat("d mmm yyyy"));
            Row header = sheet.createRow(2);
            for (int i = 0; i < WeekendOrders.HEADERS.size(); i++) {
                header.createCell(i).setCellValue(WeekendOrders.HEADERS.get(i));
                sheet.setColumnWidth(i, 18 * 256);
            }
            int next = 3;
            for (List<Object> cells : WeekendOrders.rows()) {
                fill(sheet.createRow(next++), cells, day);
            }
            book.write(out);
        }
    }

    private static void fill(Row row, List<Object> cells, CellStyle day) {
        for (int i = 0; i < cells.size(); i++) {
            Cell cell = row.createCell(i);
            Object value = cells.get(i);
            if (value instanceof LocalDate date) {
                cell.setCellValue(date);
                cell.setCellStyle(day);
            } else if (value instanceof Integer number) {
                cell.setCellValue(number);
            } else {
                cell.setCellValue(value.toString());
            }
        }
    }
}
