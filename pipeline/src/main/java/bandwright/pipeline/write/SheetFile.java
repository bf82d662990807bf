package bandwright.pipeline.write;

import bandwright.pipeline.tile.Sheet;
import bandwright.rules.paper.PaperRoom;
import java.util.List;

/**
 * One file of sheets: what one printer prints on one paper.
 *
 * @param name in the run's folder: sheets/letter-01.pdf
 * @param sheets its pages, in order; never empty
 */
public record SheetFile(String name, List<Sheet> sheets) {
    public SheetFile {
        sheets = List.copyOf(sheets);
        if (sheets.isEmpty()) {
            throw new IllegalArgumentException(name + " has no page");
        }
    }

    public PaperRoom room() {
        return sheets.get(0).room();
    }

    /** The name without its folder. */
    public String shortName() {
        return name.substring(name.lastIndexOf('/') + 1);
    }
}
