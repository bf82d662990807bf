package bandwright.pipeline.match;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.artwork.ArtworkShelf;
import bandwright.pipeline.artwork.Found;
import bandwright.pipeline.held.Outcome;
import bandwright.pipeline.intake.OrderLine;
import bandwright.pipeline.intake.listing.Item;
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

    /**
     * The order's picture, placed as the design says, on both sides of a two-sided one; without a design it covers the
     * band all round.
     */
    private Outcome<Picked> withOwnPicture(List<Design> variants, ArtworkFile file, Blank blank, HeatSource source) {
        if (variants.isEmpty()) {
            return Outcome.made(new Picked(Design.ofArtwork(file.name()), file));
        }
        List<Picked> known = found(pictures(variants, blank));
        Design design = known.isEmpty()
                ? variants.get(0)
                : Variants.nearest(known, blank, source).design();
        return Outcome.made(new Picked(design, file));
    }

    private Outcome<Picked> ofDesign(List<Design> variants, Blank blank, HeatSource source) {
        List<Outcome<Picked>> pictures = pictures(variants, blank);
        // Without the size of a missing picture nobody can say whether its variant was the nearest.
        Optional<Outcome<Picked>> held = pictures.stream()
                .filter(picture -> picture instanceof Outcome.Held<Picked>)
                .findFirst();
        return held.orElseGet(() -> Outcome.made(Variants.nearest(found(pictures), blank, source)));
    }

    private List<Outcome<Picked>> pictures(List<Design> variants, Blank blank) {
        return variants.stream().map(variant -> pictures(variant, blank)).toList();
    }

    private Outcome<Picked> pictures(Design design, Blank blank) {
        Outcome<ArtworkFile> first = picture(shelf.find(design.artwork()), design.name());
        if (!hasTwoPictures(design, blank)) {
            return first.then(file -> Outcome.made(new Picked(design, file)));
        }
        return first.then(left -> picture(shelf.find(design.artwork2().orElseThrow()), design.name())
                .then(right -> Outcome.made(new Picked(design, List.of(left, right)))));
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
        Found.Missing missing = (Found.Missing) found;
        Optional<String> near = missing.nearest().stream().findFirst();
        return Outcome.held(new MatchReason.ArtworkMissing(design, missing.asked(), near));
    }

    /** On a flat every placement is the whole flat, and only the first picture is printed. */
    private static boolean hasTwoPictures(Design design, Blank blank) {
        boolean isTwoSided =
                design.placement() == Placement.TWO_SIDED && !blank.form().isFlat();
        return isTwoSided && design.artwork2().isPresent();
    }
}
