package bandwright.pipeline.intake.format;

import bandwright.pipeline.limits.Limits;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.stream.XMLStreamException;

/**
 * Reads a workbook in Office Open XML: its visible worksheets in the order of their tabs. Own reading of the few parts
 * that matter (ECMA-376 Part 1, 12.3 and 18), as a table of orders needs no styles, charts or formulas: it is several
 * times quicker to start than a whole spreadsheet library, and every byte that it unpacks is counted.
 */
final class Xlsx {
    /** A worksheet as the workbook lists it. */
    private record Tab(String name, String relation, boolean hidden) {}

    private Xlsx() {}

    static List<Grid> read(Zip zip, Allowance allowance) throws IOException, XMLStreamException, Unreadable {
        String workbook = workbookPart(zip);
        Relations relations = Relations.of(zip, workbook);
        List<Tab> tabs = new ArrayList<>();
        boolean from1904 = tabs(zip, workbook, tabs);
        Styles styles = Styles.read(zip, relations.findByType("styles"));
        SharedStrings strings = SharedStrings.read(zip, relations.findByType("sharedStrings"), allowance);
        SheetReader reader = new SheetReader(strings, styles, new Serials(from1904), allowance);
        List<Grid> grids = new ArrayList<>();
        for (Tab tab : tabs) {
            Optional<String> part = relations.findSheet(tab.relation());
            if (part.isPresent()) { // else a sheet that is one chart
                grids.add(tab.hidden() ? Grid.hidden(tab.name()) : grid(zip, part.get(), tab, reader));
            }
        }
        return grids;
    }

    private static Grid grid(Zip zip, String part, Tab tab, SheetReader reader)
            throws IOException, XMLStreamException, Unreadable {
        try (Xml xml = zip.xml(part)) {
            return reader.grid(tab.name(), xml);
        }
    }

    private static String workbookPart(Zip zip) throws IOException, XMLStreamException, Unreadable {
        String part = Relations.of(zip, "").findByType("officeDocument").orElse("xl/workbook.xml");
        if (part.endsWith(".bin")) {
            throw Unreadable.of("format-xlsb");
        }
        if (!zip.has(part)) {
            throw Unreadable.of("zip-no-workbook");
        }
        return part;
    }

    /** Fills in the tabs and says whether days count from 1904. */
    private static boolean tabs(Zip zip, String workbook, List<Tab> tabs)
            throws IOException, XMLStreamException, Unreadable {
        boolean from1904 = false;
        boolean isWorkbook = false;
        try (Xml xml = zip.xml(workbook)) {
            while (xml.next()) {
                if (xml.starts("workbook")) {
                    isWorkbook = true;
                } else if (xml.starts("workbookPr")) {
                    from1904 = Xml.isTrue(xml.attribute("date1904"));
                } else if (xml.starts("sheet")) {
                    String state = xml.attribute("state");
                    tabs.add(new Tab(xml.attribute("name"), xml.relation(), state.endsWith("idden")));
                    checkCount(tabs.size());
                }
            }
        }
        if (!isWorkbook) {
            throw Unreadable.of("zip-no-workbook");
        }
        return from1904;
    }

    private static void checkCount(int sheets) throws Unreadable {
        if (sheets > Limits.SHEETS) {
            throw Unreadable.of("too-many-sheets", Limits.SHEETS);
        }
    }
}
