package bandwright.pipeline.intake.format;

import bandwright.pipeline.limits.Limits;
import javax.xml.stream.XMLStreamException;

/**
 * The text of a cell as it is shown: its paragraphs, one a line. Runs of blanks in the file are one blank, and those
 * that count are written as elements (OpenDocument 1.2, Part 1, 6.1.2 and 6.1.3). Notes and drawings are none of it.
 */
final class OdsText {
    private final StringBuilder text = new StringBuilder();
    private final int row;
    private boolean isFirst = true;
    private boolean afterBlank = true;

    private OdsText(int row) {
        this.row = row;
    }

    static String read(Xml xml, int row) throws XMLStreamException, Unreadable {
        OdsText text = new OdsText(row);
        while (xml.next() && !xml.ends("table-cell")) {
            if (xml.starts("annotation") || xml.starts("table") || xml.startsIn(Ods.DRAW) || xml.starts("ruby-text")) {
                xml.skip();
            } else if (xml.isStart()) {
                text.element(xml);
            } else if (xml.isText()) {
                text.characters(xml);
            }
        }
        return text.text.toString();
    }

    private void element(Xml xml) throws Unreadable {
        if (xml.starts("p") || xml.starts("h")) {
            if (!isFirst) {
                text.append('\n');
            }
            isFirst = false;
            afterBlank = true;
        } else if (xml.starts("s")) {
            blanks(xml.attribute(Ods.TEXT, "c"));
        } else if (xml.starts("tab")) {
            text.append('\t');
        } else if (xml.starts("line-break")) {
            text.append('\n');
        }
        Cells.checkLength(text.length(), row);
    }

    private void blanks(String count) throws Unreadable {
        double blanks = count.isEmpty() ? 1 : NumberCells.parse(count);
        if (blanks > Limits.CELL_CHARACTERS) {
            Cells.checkLength(Limits.CELL_CHARACTERS + 1, row);
        }
        text.append(" ".repeat((int) Math.max(0, blanks)));
    }

    private void characters(Xml xml) throws Unreadable {
        if (isFirst) {
            return; // the file's own line breaks between elements
        }
        StringBuilder raw = new StringBuilder();
        xml.addTextTo(raw);
        for (int i = 0; i < raw.length(); i++) {
            char c = raw.charAt(i);
            boolean isBlank = c == ' ' || c == '\n' || c == '\t' || c == '\r';
            if (!isBlank) {
                text.append(c);
            } else if (!afterBlank) {
                text.append(' ');
            }
            afterBlank = isBlank;
        }
        Cells.checkLength(text.length(), row);
    }
}
