package bandwright.pipeline.write.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * A workbook of ours read back: for each sheet its rows, for each row its cells as the file keeps them. Reads only what
 * {@link WorkbookFile} writes: shared texts and numbers.
 *
 * @param sheets the header is the first row of each
 */
public record WorkbookBack(List<List<Row>> sheets) {
    /** A row's cells by column, counted from 0; cells that are left out are empty. */
    public record Row(List<String> cells) {
        public Row {
            cells = List.copyOf(cells);
        }

        public String cell(int column) {
            return column < cells.size() ? cells.get(column) : "";
        }
    }

    public WorkbookBack {
        sheets = List.copyOf(sheets);
    }

    public static WorkbookBack read(Path file) throws IOException {
        try (ZipFile zip = new ZipFile(file.toFile())) {
            List<String> texts = texts(zip);
            List<List<Row>> sheets = new ArrayList<>();
            for (int n = 1; zip.getEntry(sheetPart(n)) != null; n++) {
                sheets.add(rows(zip, sheetPart(n), texts));
            }
            return new WorkbookBack(sheets);
        } catch (XMLStreamException e) {
            throw new IOException(file.getFileName() + ": " + e.getMessage(), e);
        }
    }

    private static String sheetPart(int number) {
        return "xl/worksheets/sheet" + number + ".xml";
    }

    private static List<String> texts(ZipFile zip) throws IOException, XMLStreamException {
        List<String> texts = new ArrayList<>();
        try (InputStream in = open(zip, "xl/sharedStrings.xml")) {
            XMLStreamReader xml = xml(in);
            while (xml.hasNext()) {
                if (xml.next() == XMLStreamConstants.START_ELEMENT
                        && xml.getLocalName().equals("t")) {
                    texts.add(xml.getElementText());
                }
            }
        }
        return texts;
    }

    private static List<Row> rows(ZipFile zip, String part, List<String> texts) throws IOException, XMLStreamException {
        List<Row> rows = new ArrayList<>();
        List<String> cells = new ArrayList<>();
        boolean isText = false;
        try (InputStream in = open(zip, part)) {
            XMLStreamReader xml = xml(in);
            while (xml.hasNext()) {
                int event = xml.next();
                if (event == XMLStreamConstants.END_ELEMENT
                        && xml.getLocalName().equals("row")) {
                    rows.add(new Row(cells));
                    cells.clear();
                } else if (event == XMLStreamConstants.START_ELEMENT
                        && xml.getLocalName().equals("c")) {
                    isText = "s".equals(xml.getAttributeValue(null, "t"));
                    pad(cells, column(xml.getAttributeValue(null, "r")));
                } else if (event == XMLStreamConstants.START_ELEMENT
                        && xml.getLocalName().equals("v")) {
                    String value = xml.getElementText();
                    cells.add(isText ? texts.get(Integer.parseInt(value)) : value);
                }
            }
        }
        return rows;
    }

    private static void pad(List<String> cells, int column) {
        while (cells.size() < column) {
            cells.add("");
        }
    }

    /** AB12 is in column 27, counted from 0. */
    private static int column(String reference) {
        int column = 0;
        for (int i = 0; i < reference.length() && Character.isLetter(reference.charAt(i)); i++) {
            column = column * 26 + reference.charAt(i) - 'A' + 1;
        }
        return column - 1;
    }

    private static XMLStreamReader xml(InputStream in) throws XMLStreamException {
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_COALESCING, true);
        return factory.createXMLStreamReader(in);
    }

    private static InputStream open(ZipFile zip, String part) throws IOException {
        ZipEntry entry = zip.getEntry(part);
        if (entry == null) {
            throw new IOException(zip.getName() + " has no " + part);
        }
        return zip.getInputStream(entry);
    }
}
