package bandwright.pipeline.size;

import bandwright.pipeline.match.MatchedLine;
import bandwright.pipeline.size.PrintedPicture.PlacedPicture;
import bandwright.rules.Shop;
import bandwright.rules.units.Length;
import bandwright.rules.words.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a shop puts up with in a picture: how few pixels, how much cut off, how much distorted. Strictly beyond the first
 * limit it is told, strictly beyond the second the row is held: with ppi_hold 100, 100 is printed and 99 is not.
 */
record PictureLimits(Shop shop) {
    /** Shares are quotients in binary: 1 - 0.85 is a hair more than 0.15. */
    private static final double HAIR = 1e-9;

    Optional<SizeReason> hold(MatchedLine line, PlacedPicture placed) {
        PictureFit fit = placed.fit();
        String picture = placed.artwork().name();
        String sku = line.blank().sku();
        if (!placed.artwork().kind().isVector() && fit.ppi() < shop.ppiHold()) {
            return Optional.of(new SizeReason.PpiLow(
                    picture,
                    sku,
                    fit.ppi(),
                    shop.ppiHold(),
                    pixels(fit, shop.ppiHold()),
                    pixels(fit, shop.ppiHold() < shop.ppiNote() ? shop.ppiNote() : shop.ppiHold())));
        }
        if (isBeyond(fit.crop(), shop.cropHold())) {
            return Optional.of(new SizeReason.CropLarge(picture, sku, fit.crop(), shop.cropHold()));
        }
        if (isBeyond(fit.stretch(), shop.stretchHold())) {
            return Optional.of(new SizeReason.StretchLarge(picture, sku, fit.stretch(), shop.stretchHold()));
        }
        return Optional.empty();
    }

    /** Each kind of note once, of the first picture that asks for it. */
    List<Note> notes(List<PlacedPicture> fits) {
        Map<String, Note> notes = new LinkedHashMap<>();
        fits.forEach(placed -> notes(placed).forEach(note -> notes.putIfAbsent(note.code(), note)));
        return List.copyOf(notes.values());
    }

    private List<Note> notes(PlacedPicture placed) {
        PictureFit fit = placed.fit();
        List<Note> notes = new ArrayList<>();
        if (!placed.artwork().kind().isVector() && fit.ppi() < shop.ppiNote()) {
            String needed = pixels(fit, shop.ppiNote());
            notes.add(note("ppi", fit.ppi(), Figures.number(shop.ppiNote()), needed));
        }
        if (isBeyond(fit.crop(), shop.cropNote())) {
            notes.add(note("crop", Figures.percentUp(fit.crop()), Figures.percent(shop.cropNote())));
        }
        if (isBeyond(fit.stretch(), shop.stretchNote())) {
            notes.add(note("stretch", Figures.percentUp(fit.stretch()), Figures.percent(shop.stretchNote())));
        }
        return notes;
    }

    private static Note note(String code, Object... about) {
        return new Note(code, Words.say("note." + code, about));
    }

    private static boolean isBeyond(double share, double limit) {
        return share > limit + HAIR;
    }

    /** How many pixels this picture would need on this blank for that many an inch. */
    private static String pixels(PictureFit fit, double ppi) {
        double most = ppi * fit.widest();
        return pixels(fit.place().width(), most) + " x " + pixels(fit.place().height(), most);
    }

    private static long pixels(Length side, double ppi) {
        return (long) Math.ceil(side.inches() * ppi - HAIR);
    }
}
