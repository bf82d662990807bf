package bandwright.pipeline.intake.format;

import bandwright.pipeline.limits.Limits;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.xml.stream.XMLStreamException;

/**
 * Reads a spreadsheet in OpenDocument (1.2, Part 1): the tables of its content.xml, in their order. A table whose style
 * isn't displayed is a hidden sheet.
 */
final class Ods {
    static final String OFFICE = "urn:oasis:names:tc:opendocument:xmlns:office:1.0";
    static final String TABLE = "urn:oasis:names:tc:opendocument:xmlns:table:1.0";
    static final String TEXT = "urn:oasis:names:tc:opendocument:xmlns:text:1.0";
    static final String DRAW = "urn:oasis:names:tc:opendocument:xmlns:drawing:1.0";
    private static final String STYLE = "urn:oasis:names:tc:opendocument:xmlns:style:1.0";

    private static final String CONTENT = "content.xml";
    private static final String MANIFEST = "META-INF/manifest.xml";

    private final Allowance allowance;
    private final Set<String> hiddenStyles = new HashSet<>();
    private final List<Grid> grids = new ArrayList<>();

    private Ods(Allowance allowance) {
        this.allowance = allowance;
    }

    static boolean isOne(Zip zip) {
        return zip.has(CONTENT) && zip.has(MANIFEST);
    }

    static List<Grid> read(Zip zip, Allowance allowance) throws IOException, XMLStreamException, Unreadable {
        checkOpen(zip);
        try (Xml xml = zip.xml(CONTENT)) {
            return new Ods(allowance).grids(xml);
        }
    }

    /** OpenDocument 1.2, Part 3, 4.4: a part with a password says so in the manifest. */
    private static void checkOpen(Zip zip) throws IOException, XMLStreamException, Unreadable {
        try (Xml xml = zip.xml(MANIFEST)) {
            while (xml.next()) {
                if (xml.starts("encryption-data")) {
                    throw Unreadable.of("file-encrypted");
                }
            }
        }
    }

    private List<Grid> grids(Xml xml) throws XMLStreamException, Unreadable {
        boolean isSpreadsheet = false;
        String style = "";
        while (xml.next()) {
            if (xml.starts("style")) {
                style = xml.attribute(STYLE, "name");
            } else if (xml.starts("table-properties")) {
                noteHidden(style, xml.attribute(TABLE, "display"));
            } else if (xml.starts("spreadsheet")) {
                isSpreadsheet = true;
            } else if (xml.starts("tracked-changes") || xml.starts("dde-links")) {
                xml.skip(); // cells that were, and cells of other files
            } else if (isSpreadsheet && xml.starts("table")) {
                table(xml);
            }
        }
        if (!isSpreadsheet) {
            throw Unreadable.of("zip-no-workbook");
        }
        return grids;
    }

    private void noteHidden(String style, String display) throws Unreadable {
        if (display.equals("false")) {
            allowance.keepCell(style);
            hiddenStyles.add(style);
        }
    }

    private void table(Xml xml) throws XMLStreamException, Unreadable {
        String name = xml.attribute(TABLE, "name");
        if (hiddenStyles.contains(xml.attribute(TABLE, "style-name"))) {
            if (!isCopyOfAnotherFile(xml)) {
                add(Grid.hidden(name));
            }
            return;
        }
        add(new OdsTable(allowance).read(name, xml));
    }

    /** What formulas took from other files is kept in hidden tables that name their source: 9.2.6. */
    private static boolean isCopyOfAnotherFile(Xml xml) throws XMLStreamException, Unreadable {
        boolean isCopy = false;
        while (xml.next() && !xml.ends("table")) {
            if (xml.starts("table-source")) {
                isCopy = true;
            } else if (xml.isStart() && !xml.starts("table-source")) {
                xml.skip();
            }
        }
        return isCopy;
    }

    private void add(Grid grid) throws Unreadable {
        grids.add(grid);
        if (grids.size() > Limits.SHEETS) {
            throw Unreadable.of("too-many-sheets", Limits.SHEETS);
        }
    }
}
