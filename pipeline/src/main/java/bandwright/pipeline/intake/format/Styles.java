package bandwright.pipeline.intake.format;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.xml.stream.XMLStreamException;

/** The number format of each cell style: ECMA-376 Part 1, 18.8.10 (cellXfs), 18.8.30 (numFmt). */
final class Styles {
    private final List<NumberFormat> byStyle = new ArrayList<>();

    private Styles() {}

    static Styles read(Zip zip, Optional<String> part) throws IOException, XMLStreamException, Unreadable {
        Styles styles = new Styles();
        if (part.isEmpty() || !zip.has(part.get())) {
            return styles;
        }
        Map<Integer, NumberFormat> own = new HashMap<>();
        boolean inCellStyles = false;
        try (Xml xml = zip.xml(part.get())) {
            while (xml.next()) {
                if (xml.starts("numFmt")) {
                    own.put(id(xml), NumberFormat.of(xml.attribute("formatCode")));
                } else if (xml.starts("cellXfs")) {
                    inCellStyles = true;
                } else if (xml.ends("cellXfs")) {
                    inCellStyles = false;
                } else if (inCellStyles && xml.starts("xf")) {
                    int id = id(xml);
                    styles.byStyle.add(own.containsKey(id) ? own.get(id) : NumberFormat.builtIn(id));
                }
            }
        }
        return styles;
    }

    private static int id(Xml xml) {
        return number(xml.attribute("numFmtId"));
    }

    /** The format of a cell's style; General where the style is not there. */
    NumberFormat format(String style) {
        int index = style.isEmpty() ? 0 : number(style);
        return index >= 0 && index < byStyle.size() ? byStyle.get(index) : NumberFormat.GENERAL;
    }

    private static int number(String text) {
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException e) {
            return -1;
        }
    }
}
