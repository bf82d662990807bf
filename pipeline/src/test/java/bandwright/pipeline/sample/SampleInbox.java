package bandwright.pipeline.sample;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Writes inbox-sample: a weekend of invented orders at the Quillmoor Lighthouse Trust's gift shop. */
final class SampleInbox {
    private static final List<String> HEADERS = List.of(
            "Order Number",
            "Order Date",
            "Ship By",
            "Buyer Name",
            "Ship To",
            "Street",
            "City",
            "Postcode",
            "Country",
            "SKU",
            "Design",
            "Qty",
            "Gift",
            "Gift Message");

    private static final List<List<Object>> ORDERS = List.of(
            row(
                    "Q1042",
                    27,
                    4,
                    "Ada Fennimore",
                    "Ada Fennimore",
                    "3 Gannet Steps",
                    "Quillmoor",
                    "QM1 4TL",
                    "United Kingdom",
                    "MUG-11-W",
                    "tern",
                    2,
                    "",
                    ""),
            row(
                    "Q1042",
                    27,
                    4,
                    "Ada Fennimore",
                    "Ada Fennimore",
                    "3 Gannet Steps",
                    "Quillmoor",
                    "QM1 4TL",
                    "United Kingdom",
                    "COAST-S",
                    "lamp",
                    4,
                    "",
                    ""),
            row(
                    "Q1043",
                    27,
                    4,
                    "Jonah Pellow",
                    "Jonah Pellow",
                    "The Old Signal House, Wrack Lane",
                    "Nether Skerry",
                    "NS8 2QD",
                    "United Kingdom",
                    "MUG-15-W",
                    "tern",
                    1,
                    "",
                    ""),
            row(
                    "Q1044",
                    27,
                    5,
                    "Morwenna Tidewell",
                    "Perran Tidewell",
                    "11 Ropewalk",
                    "Quillmoor",
                    "QM2 9AA",
                    "United Kingdom",
                    "STEIN-16-F",
                    "lamp",
                    1,
                    "yes",
                    "To the best bass in the choir. Sing on!"),
            row(
                    "Q1045",
                    28,
                    5,
                    "Ingrid Solberg-Hale",
                    "Ingrid Solberg-Hale",
                    "Kirkegata 14",
                    "Bergvik",
                    "5003",
                    "Norway",
                    "MUG-11-GL",
                    "choir",
                    2,
                    "",
                    ""),
            row(
                    "Q1046",
                    28,
                    5,
                    "Tobias Wren",
                    "Tobias Wren",
                    "Flat 2, 40 Beacon Row",
                    "Quillmoor",
                    "QM1 1LH",
                    "United Kingdom",
                    "MUG-11-WH",
                    "choir",
                    1,
                    "",
                    ""),
            row(
                    "Q1047",
                    28,
                    6,
                    "Quillmoor Rowing Club",
                    "Boathouse steward",
                    "Slipway 1",
                    "Quillmoor",
                    "QM1 7RC",
                    "United Kingdom",
                    "TUM-20-W",
                    "lamp",
                    3,
                    "",
                    ""),
            row(
                    "Q1048",
                    28,
                    6,
                    "Elspeth Carrow",
                    "Elspeth Carrow",
                    "7 Lampmakers Court",
                    "Saltby",
                    "SB3 6EH",
                    "United Kingdom",
                    "CAMP-12-E",
                    "lamp",
                    2,
                    "",
                    ""));

    private static final String WEB_SHOP = """
            Order ID;Date;Dispatch By;Item SKU;Artwork;Quantity;Recipient;Address 1;Town;ZIP;Country
            0071;2026-02-28;2026-03-04;white mug;choir;3;Keeper Josiah Brannock;North Gallery, Quillmoor Light;Quillmoor;QM1 0LT;United Kingdom
            0072;2026-02-28;2026-03-05;round coaster;choir;6;Noor Adeyemi-Finch;22 Kittiwake Terrace;Saltby;SB1 2KT;United Kingdom
            0073;2026-03-01;2026-03-06;pink handle mug;lamp;1;Zo\u00eb Lindqvist;"Villa Fyren; \u00d6stra v\u00e4gen 9";M\u00f6rby;182 30;Sweden
            0074;2026-03-01;2026-03-06;6 oz white mug;choir;2;Barnaby Oke;5 Cockle Yard;Quillmoor;QM2 3BO;United Kingdom
            STOCK;2026-03-01;;MUG-11-W;lamp;4;;;;;
            """;

    private SampleInbox() {}

    /** Writes artwork and order files into that folder. */
    static void write(Path inbox) throws IOException {
        Path artwork = Files.createDirectories(inbox.resolve("artwork"));
        jpeg(Artist.tern().image(), artwork.resolve("tern.jpg"));
        ImageIO.write(
                Artist.stormLamp().image(),
                "png",
                artwork.resolve("storm-lamp.png").toFile());
        ImageIO.write(
                Artist.choir().image(), "png", artwork.resolve("choir.png").toFile());
        Files.writeString(inbox.resolve("web-shop.csv"), WEB_SHOP, StandardCharsets.UTF_8);
        workbook(inbox.resolve("weekend-orders.xlsx"));
    }

    private static List<Object> row(Object... cells) {
        return List.of(cells);
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
            for (int i = 0; i < HEADERS.size(); i++) {
                header.createCell(i).setCellValue(HEADERS.get(i));
                sheet.setColumnWidth(i, 18 * 256);
            }
            for (int r = 0; r < ORDERS.size(); r++) {
                fill(sheet.createRow(3 + r), ORDERS.get(r), day);
            }
            book.write(out);
        }
    }

    private static void fill(Row row, List<Object> cells, CellStyle day) {
        for (int i = 0; i < cells.size(); i++) {
            Cell cell = row.createCell(i);
            Object value = cells.get(i);
            if (i == 1 || i == 2) {
                int number = (Integer) value;
                // Days late in the list are of February, early ones of March.
                cell.setCellValue(LocalDate.of(2026, number > 20 ? 2 : 3, number));
                cell.setCellStyle(day);
            } else if (value instanceof Integer number) {
                cell.setCellValue(number);
            } else {
                cell.setCellValue(value.toString());
            }
        }
    }

    private static void jpeg(BufferedImage image, Path file) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        try (ImageOutputStream out = ImageIO.createImageOutputStream(Files.newOutputStream(file))) {
            ImageWriteParam quality = writer.getDefaultWriteParam();
            quality.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            quality.setCompressionQuality(0.92f);
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, null, null), quality);
        } finally {
            writer.dispose();
        }
    }
}
