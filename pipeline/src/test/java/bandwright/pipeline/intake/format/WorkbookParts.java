package bandwright.pipeline.intake.format;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Workbooks written part by part, so that a test says exactly what stands in the file. */
public final class WorkbookParts {
    private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static final String TYPES = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    private final Map<String, String> parts = new LinkedHashMap<>();
    private final StringBuilder sheets = new StringBuilder();
    private final StringBuilder relations = new StringBuilder();
    private String workbookProperties = "";
    private int count;

    public WorkbookParts() {
        parts.put("_rels/.rels", relationships(relation("rId1", "officeDocument", "xl/workbook.xml")));
        strings("");
        styles("");
    }

    /** A sheet whose {@code sheetData} holds this. */
    public WorkbookParts sheet(String name, String rows) {
        return sheet(name, "", rows);
    }

    public WorkbookParts sheet(String name, String attributes, String rows) {
        count++;
        sheets.append("<sheet name=\"%s\" sheetId=\"%d\" r:id=\"s%d\" %s/>".formatted(name, count, count, attributes));
        relations.append(relation("s" + count, "worksheet", "worksheets/sheet" + count + ".xml"));
        return part(
                "xl/worksheets/sheet" + count + ".xml",
                "<worksheet xmlns=\"" + MAIN + "\"><sheetData>" + rows + "</sheetData></worksheet>");
    }

    public WorkbookParts strings(String items) {
        return part("xl/sharedStrings.xml", "<sst xmlns=\"" + MAIN + "\">" + items + "</sst>");
    }

    /** {@code numFmts} and {@code cellXfs}. */
    public WorkbookParts styles(String inside) {
        return part("xl/styles.xml", "<styleSheet xmlns=\"" + MAIN + "\">" + inside + "</styleSheet>");
    }

    public WorkbookParts from1904() {
        workbookProperties = "<workbookPr date1904=\"1\"/>";
        return this;
    }

    public WorkbookParts part(String name, String text) {
        parts.put(name, text);
        return this;
    }

    public byte[] bytes() {
        part(
                "xl/workbook.xml",
                "<workbook xmlns=\"%s\" xmlns:r=\"%s\">%s<sheets>%s</sheets></workbook>"
                        .formatted(MAIN, TYPES, workbookProperties, sheets));
        part(
                "xl/_rels/workbook.xml.rels",
                relationships(relation("st", "styles", "styles.xml")
                        + relation("ss", "sharedStrings", "/xl/sharedStrings.xml")
                        + relations));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (Map.Entry<String, String> part : parts.entrySet()) {
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(part.getValue().getBytes(StandardCharsets.UTF_8));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    public Path write(Path file) throws IOException {
        return Files.write(file, bytes());
    }

    /** A row of inline strings. */
    public static String row(int number, String... texts) {
        StringBuilder row = new StringBuilder("<row r=\"" + number + "\">");
        for (String text : texts) {
            row.append("<c t=\"inlineStr\"><is><t xml:space=\"preserve\">")
                    .append(text)
                    .append("</t></is></c>");
        }
        return row.append("</row>").toString();
    }

    private static String relationships(String inside) {
        return "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">" + inside
                + "</Relationships>";
    }

    private static String relation(String id, String type, String target) {
        return "<Relationship Id=\"%s\" Type=\"%s/%s\" Target=\"%s\"/>".formatted(id, TYPES, type, target);
    }
}
