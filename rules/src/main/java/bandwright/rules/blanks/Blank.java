package bandwright.rules.blanks;

import bandwright.rules.table.Evidence;
import bandwright.rules.units.Length;
import bandwright.rules.units.Rgb;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * One kind of coated, undecorated item: a row of blanks.csv.
 *
 * @param topMargin down the wall from the rim to the band; on a flat blank from the upper edge, may be negative there
 * @param sideMargin flat blanks only; negative prints past the edge
 * @param handleWidth zero = no handle
 * @param wrapOverlap how far a full wrap repeats its beginning over the seam
 * @param heatSources ids in the order of preference; empty = the order of heat-sources.csv
 * @param parts what is taken off before pressing and packed again: lid, seal
 */
public record Blank(
        String sku,
        List<String> aliases,
        String name,
        Material material,
        Form form,
        Length topMargin,
        Length bottomMargin,
        Length sideMargin,
        Length handleWidth,
        Length wrapOverlap,
        Length bleedTop,
        Length bleedBottom,
        Rgb baseColour,
        Optional<Rgb> hotColour,
        Optional<Rgb> handleColour,
        Optional<Rgb> insideColour,
        Finish finish,
        Backing backing,
        List<String> parts,
        List<String> heatSources,
        int ovenPlaces,
        String shelf,
        Optional<BigDecimal> cost,
        String care,
        Evidence evidence,
        String note) {
    public Blank {
        aliases = List.copyOf(aliases);
        parts = List.copyOf(parts);
        heatSources = List.copyOf(heatSources);
    }

    public boolean hasHandle() {
        return handleWidth.isPositive();
    }

    /** The same blank, never offered to those heat sources; their ids as the blank lists them. */
    public Blank withoutSources(List<String> ids) {
        List<String> kept = heatSources.stream().filter(id -> !ids.contains(id)).toList();
        return new Blank(
                sku,
                aliases,
                name,
                material,
                form,
                topMargin,
                bottomMargin,
                sideMargin,
                handleWidth,
                wrapOverlap,
                bleedTop,
                bleedBottom,
                baseColour,
                hotColour,
                handleColour,
                insideColour,
                finish,
                backing,
                parts,
                kept,
                ovenPlaces,
                shelf,
                cost,
                care,
                evidence,
                note);
    }
}
