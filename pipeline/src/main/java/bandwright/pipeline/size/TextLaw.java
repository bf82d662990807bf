package bandwright.pipeline.size;

import bandwright.pipeline.held.Outcome;
import bandwright.pipeline.match.MatchedLine;
import bandwright.pipeline.size.PrintedPicture.Lettering;
import bandwright.pipeline.size.PrintedPicture.PlacedPicture;
import bandwright.pipeline.type.SetText;
import bandwright.pipeline.type.TypeSetting;
import bandwright.rules.Rulebook;
import bandwright.rules.blanks.Band;
import bandwright.rules.designs.Anchor;
import bandwright.rules.designs.Side;
import bandwright.rules.designs.TextField;
import bandwright.rules.designs.Texts;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/**
 * Where a design's texts stand and how large they are set. A field of 10 % x, 70 % y, 80 % width and 20 % height of a
 * picture of 200 x 90 mm is a box of 160 x 18 mm, 20 mm from its left edge and 9 mm over its lower one.
 */
final class TextLaw {
    private final Texts texts;
    private final TypeSetting setting;

    TextLaw(Rulebook rules) {
        this.texts = rules.texts();
        this.setting = new TypeSetting(rules.fonts());
    }

    /** The picture with a piece's texts over it. */
    Outcome<PrintedPicture> over(PrintedPicture printed, MatchedLine line, SortedMap<String, String> pieceTexts) {
        List<Lettering> letters = new ArrayList<>();
        List<Length> strokes = new ArrayList<>();
        for (TextField field : texts.of(line.design().name())) {
            String text = pieceTexts.getOrDefault(field.field(), field.defaultText());
            for (Place place : places(field, printed)) {
                Outcome<Optional<SetText>> set = setting.set(field, text, place.box());
                if (set instanceof Outcome.Made<Optional<SetText>> made) {
                    made.value().ifPresent(type -> {
                        Layer.Type layer = new Layer.Type(type.outline(), field.colour(), type.ink(), place.clip());
                        letters.add(new Lettering(field.field(), layer));
                        strokes.add(type.thinnest());
                    });
                } else {
                    return set.then(none -> Outcome.made(printed));
                }
            }
        }
        return Outcome.made(printed.with(letters, strokes.stream().min(Comparator.naturalOrder())));
    }

    /**
     * Where a field is set.
     *
     * @param clip beyond it nothing is printed
     */
    private record Place(Box box, Box clip) {}

    /** A text of a picture moves, scales and is cropped with it; with two pictures it stands on both, or on its side's. */
    private static List<Place> places(TextField field, PrintedPicture printed) {
        Band band = printed.band();
        if (field.anchor() == Anchor.BAND) {
            Box whole = new Box(Length.ZERO, band.bleedBottom(), band.around(), band.up());
            return List.of(new Place(within(whole, field), Box.of(band.around(), band.printHeight())));
        }
        List<PlacedPicture> pictures = printed.fits();
        if (pictures.size() > 1 && field.side().isPresent()) {
            int side = field.side().get() == Side.LEFT ? 0 : 1;
            pictures = List.of(pictures.get(side));
        }
        return pictures.stream()
                .map(placed -> new Place(within(placed.fit().place(), field), placed.box()))
                .toList();
    }

    /** A field's box; its corner is counted from the anchor's upper left one. */
    private static Box within(Box anchor, TextField field) {
        Length width = anchor.width().times(field.width() / 100);
        Length height = anchor.height().times(field.height() / 100);
        Length x = anchor.x().plus(anchor.width().times(field.x() / 100));
        Length top = anchor.top().minus(anchor.height().times(field.y() / 100));
        return new Box(x, top.minus(height), width, height);
    }
}
