package bandwright.pipeline.size;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.rules.blanks.Band;
import bandwright.rules.blanks.Sector;
import bandwright.rules.designs.Design;
import bandwright.rules.designs.Fit;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;

/**
 * What is printed on a band: a design's picture in each of its boxes, their background, and at the right end the overlap,
 * where the first millimetres come again. A tumbler of 230 mm with 2 mm of overlap gets a transfer of 232 mm, the last 2
 * mm of which show what the first 2 mm show.
 *
 * @param layers without what the overlap repeats
 * @param fits how each picture lies in its box, the left one first
 * @param letterings the texts among the layers
 * @param thinnest the thin strokes of its letters; empty where none are set
 */
record PrintedPicture(
        Band band,
        List<Layer> layers,
        List<PlacedPicture> fits,
        List<Lettering> letterings,
        Optional<Length> thinnest) {
    /** Less is rounding, or an edge that nobody misses. */
    private static final Length CUT_SEEN = Length.mm(0.05);

    /**
     * A picture and how it lies.
     *
     * @param box where it stands
     */
    record PlacedPicture(ArtworkFile artwork, Box box, PictureFit fit) {}

    /** The letters of a design's field. */
    record Lettering(String field, Layer.Type type) {}

    PrintedPicture {
        layers = List.copyOf(layers);
        fits = List.copyOf(fits);
        letterings = List.copyOf(letterings);
    }

    /** Pixels an inch on the blank, of the picture that has the fewest; empty if all are vector artwork. */
    OptionalInt ppi() {
        return fits.stream()
                .filter(placed -> !placed.artwork().kind().isVector())
                .mapToInt(placed -> placed.fit().ppi())
                .min();
    }

    /**
     * @param boxes where pictures stand, at least one
     * @param artworks the first box's picture, the second's; the last stands in all that follow
     */
    static PrintedPicture of(Band band, Design design, List<Box> boxes, List<ArtworkFile> artworks) {
        List<PlacedPicture> fits = new ArrayList<>();
        List<Layer> layers = new ArrayList<>();
        for (Box box : boxes) {
            ArtworkFile artwork = artworks.get(Math.min(fits.size(), artworks.size() - 1));
            PictureFit fit = fit(band, design, artwork, box);
            fits.add(new PlacedPicture(artwork, box, fit));
            if (design.fit() == Fit.CONTAIN) {
                design.background().ifPresent(colour -> layers.add(new Layer.Fill(ground(box, band), colour)));
            }
            layers.add(new Layer.Picture(artwork, fit.place(), fit.place().shared(box)));
        }
        return new PrintedPicture(band, layers, fits, List.of(), Optional.empty());
    }

    private static PictureFit fit(Band band, Design design, ArtworkFile artwork, Box box) {
        PictureFit flat = PictureFit.of(design, artwork, box);
        return band.sector()
                .map(sector -> flat.widened(
                        artwork, largerArc(sector, box) / sector.middle().mm()))
                .orElse(flat);
    }

    /** The radius of the box's outer edge. */
    private static double largerArc(Sector sector, Box box) {
        return Math.max(sector.radius(box.y().mm()), sector.radius(box.top().mm()));
    }

    /** The same with letters over it. */
    PrintedPicture with(List<Lettering> texts, Optional<Length> strokes) {
        List<Layer> more = new ArrayList<>(layers);
        texts.forEach(text -> more.add(text.type()));
        return new PrintedPicture(band, more, fits, texts, strokes);
    }

    /** Its pictures and their backgrounds once round, without letters. */
    List<Layer> pictures() {
        Box once = Box.of(band.around(), band.printHeight());
        return layers.stream()
                .filter(layer -> !(layer instanceof Layer.Type))
                .map(layer -> layer.clipped(layer.shown().shared(once)))
                .toList();
    }

    /** How far letters reach beyond where they are printed, as they are cropped with their picture; empty where none do. */
    Optional<Length> cutText() {
        return layers.stream()
                .flatMap(layer -> layer instanceof Layer.Type type ? Stream.of(type) : Stream.of())
                .map(Layer.Type::cut)
                .filter(cut -> cut.longerThan(CUT_SEEN))
                .max(Comparator.naturalOrder());
    }

    /** All that is printed, the overlap too. */
    Transfer transfer() {
        Box printed = Box.of(band.printWidth(), band.printHeight());
        List<Layer> all = new ArrayList<>(layers);
        layers.stream()
                .filter(layer -> !layer.shown().right().longerThan(band.around()))
                .flatMap(layer -> again(layer, band, printed).stream())
                .forEach(all::add);
        return new Transfer(printed.width(), printed.height(), all, band.sector());
    }

    /** A background all round goes on under the overlap in one piece: two would show a hairline where they meet. */
    private static Box ground(Box box, Band band) {
        boolean isAllRound = box.width().equals(band.around());
        return isAllRound ? new Box(box.x(), box.y(), band.printWidth(), box.height()) : box;
    }

    /** What of a layer shows in the overlap, one turn further right. */
    private static Optional<Layer> again(Layer layer, Band band, Box printed) {
        Box overlap = new Box(band.around(), Length.ZERO, band.overlap(), printed.height());
        Layer shifted = layer.shifted(band.around());
        Box shows = shifted.shown().shared(overlap);
        return Stream.of(shows)
                .filter(box -> box.width().isPositive() && box.height().isPositive())
                .map(shifted::clipped)
                .findFirst();
    }
}
