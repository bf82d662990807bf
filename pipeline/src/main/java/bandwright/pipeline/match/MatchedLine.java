package bandwright.pipeline.match;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.intake.OrderLine;
import bandwright.rules.blanks.Blank;
import bandwright.rules.designs.Design;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.heat.PressSetting;
import java.util.List;

/**
 * One item of an order line with everything that it names found in the rulebook and on the artwork shelf. A row that
 * orders a set is several of them.
 *
 * @param artworks the pictures that the design places, the left one first; one that is placed twice stands here once
 * @param pieces those of the line's pieces that are of this item
 */
public record MatchedLine(
        OrderLine line,
        Blank blank,
        HeatSource source,
        PressSetting setting,
        Design design,
        List<ArtworkFile> artworks,
        List<Piece> pieces) {
    public MatchedLine {
        artworks = List.copyOf(artworks);
        pieces = List.copyOf(pieces);
    }

    MatchedLine with(List<Piece> others) {
        return new MatchedLine(line, blank, source, setting, design, artworks, others);
    }

    /** The same with another number of its line. */
    public MatchedLine numbered(String number) {
        return new MatchedLine(line.numbered(number), blank, source, setting, design, artworks, pieces);
    }
}
