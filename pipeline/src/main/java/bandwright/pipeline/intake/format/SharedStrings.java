package bandwright.pipeline.intake.format;

import bandwright.pipeline.rows.Cell;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.stream.XMLStreamException;

/** The texts that a workbook stores once and names by number: ECMA-376 Part 1, 18.4. */
final class SharedStrings {
    private final List<Cell> cells = new ArrayList<>();

    private SharedStrings() {}

    static SharedStrings read(Zip zip, Optional<String> part, Allowance allowance)
            throws IOException, XMLStreamException, Unreadable {
        SharedStrings strings = new SharedStrings();
        if (part.isEmpty() || !zip.has(part.get())) {
            return strings;
        }
        Cells cells = new Cells(allowance);
        try (Xml xml = zip.xml(part.get())) {
            while (xml.next()) {
                if (xml.starts("si")) {
                    strings.cells.add(cells.of(RichText.read(xml, "si", 0), 0));
                }
            }
        }
        return strings;
    }

    Cell get(String index) throws Unreadable {
        int at;
        try {
            at = Integer.parseInt(index.strip());
        } catch (NumberFormatException e) {
            throw Unreadable.of("file-damaged");
        }
        if (at < 0 || at >= cells.size()) {
            throw Unreadable.of("file-damaged");
        }
        return cells.get(at);
    }
}
