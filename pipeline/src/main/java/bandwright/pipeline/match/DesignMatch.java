package bandwright.pipeline.match;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.artwork.ArtworkShelf;
import bandwright.pipeline.artwork.Found;
import bandwright.pipeline.held.Outcome;
import bandwright.pipeline.intake.OrderLine;
import bandwright.pipeline.intake.listing.Item;
import bandwright.pipeline.match.MatchReason.NotYet;
import bandwright.pipeline.match.MatchReason.NotYet.Later;
import bandwright.rules.Rulebook;
import bandwright.rules.blanks.Blank;
import bandwright.rules.designs.Design;
import bandwright.rules.designs.Placement;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.table.Names;
import bandwright.rules.table.Nearest;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The design and the picture of a row: the design that its cell names, else a file of the artwork folder by that name;
 * and instead of the design's own picture the one that came with the order, if one did.
 */
final class DesignMatch {
    private static final int LONGEST_FILE_NAME = 255;

    private final Rulebook rules;
    private final ArtworkShelf shelf;
    private final Map<String, Outcome<Picked>> byCell = new HashMap<>();

    DesignMatch(Rulebook rules, ArtworkShelf shelf) {
        this.rules = rules;
        this.shelf = shelf;
    }

    Outcome<Picked> forRow(OrderLine line, Item item, Blank blank, HeatSource source) {
        List<Design> variants = rules.designs().variants(item.design());
        Optional<Found> own = ofOrder(line);
        if (own.isPresent()) {
            return picture(own.get(), item.design()).then(file -> withOwnPicture(variants, file, blank, source));
        }
        if (variants.isEmpty()) {
            return byCell.computeIfAbsent(Names.fold(item.design()), cell -> ofFileName(item.design()));
        }
        return ofDesign(variants, blank, source);
    }

    /** An order's number longer than any file's name needs no look at the shelf. */
    private Optional<Found> ofOrder(OrderLine line) {
        boolean isFileName = line.order().length() + line.line().length() < LONGEST_FILE_NAME;
        return isFileName ? shelf.findForOrder(line.order(), line.line()) : Optional.empty();
    }

    /** The order's picture, placed as the design says; without a design it covers the band all round. */
    private Outcome<Picked> withOwnPicture(List<Design> variants, ArtworkFile file, Blank blank, HeatSource source) {
        if (variants.isEmpty()) {
            return Outcome.made(new Picked(Design.ofArtwork(file.name()), file));
        }
        List<Picked> known = found(pictures(variants));
        Design design = known.isEmpty()
                ? variants.get(0)
                : Variants.nearest(known, blank, source).design();
        return sound(new Picked(design, file), blank);
    }

    private Outcome<Picked> ofDesign(List<Design> variants, Blank blank, HeatSource source) {
        List<Outcome<Picked>> pictures = pictures(variants);
        // Without the size of a missing picture nobody can say whether its variant was the nearest.
        Optional<Outcome<Picked>> held = pictures.stream()
                .filter(picture -> picture instanceof Outcome.Held<Picked>)
                .findFirst();
        return held.orElseGet(() -> sound(Variants.nearest(found(pictures), blank, source), blank));
    }

    private List<Outcome<Picked>> pictures(List<Design> variants) {
        return variants.stream()
                .map(variant -> picture(shelf.find(variant.artwork()), variant.name())
                        .then(file -> Outcome.made(new Picked(variant, file))))
                .toList();
    }

    private static List<Picked> found(List<Outcome<Picked>> pictures) {
        return pictures.stream()
                .flatMap(
                        picture -> picture instanceof Outcome.Made<Picked> made ? Stream.of(made.value()) : Stream.of())
                .toList();
    }

    private Outcome<Picked> ofFileName(String cell) {
        if (!rules.shop().artworkByName() || Quoted.isNothing(cell)) {
            return unknown(cell, List.of());
        }
        Found found = shelf.find(cell);
        return found instanceof Found.Missing missing
                ? unknown(cell, missing.nearest())
                : picture(found, cell).then(file -> Outcome.made(new Picked(Design.ofArtwork(file.name()), file)));
    }

    private Outcome<Picked> unknown(String cell, List<String> nearFiles) {
        Optional<String> near = Nearest.of(cell, rules.designs().names())
                .or(() -> nearFiles.stream().findFirst());
        return Outcome.held(new MatchReason.DesignUnknown(cell, near));
    }

    private static Outcome<ArtworkFile> picture(Found found, String design) {
        if (found instanceof Found.Picture picture) {
            return Outcome.made(picture.artwork());
        }
        if (found instanceof Found.Refused refused) {
            return Outcome.held(new MatchReason.ArtworkUnreadable(refused.name(), refused.flaw()));
        }
        if (found instanceof Found.NotYet later) {
            return Outcome.held(new NotYet(Later.PICTURE_KIND, later.kind()));
        }
        Found.Missing missing = (Found.Missing) found;
        Optional<String> near = missing.nearest().stream().findFirst();
        return Outcome.held(new MatchReason.ArtworkMissing(design, missing.asked(), near));
    }

    /** The pick, unless its design asks for what is not made yet. */
    private Outcome<Picked> sound(Picked picked, Blank blank) {
        Design design = picked.design();
        if (hasTwoPictures(design, blank)) {
            return Outcome.held(new NotYet(Later.PLACEMENT, design.placement().word()));
        }
        return Outcome.made(picked);
    }

    private static boolean hasTwoPictures(Design design, Blank blank) {
        boolean isTwoSided =
                design.placement() == Placement.TWO_SIDED && !blank.form().isFlat();
        return isTwoSided && design.artwork2().isPresent();
    }
}
