package bandwright.pipeline.size;

import bandwright.pipeline.held.Outcome;
import bandwright.pipeline.match.MatchedLine;
import bandwright.pipeline.pixels.Sights;
import bandwright.pipeline.size.SizeReason.ContrastLow;
import bandwright.pipeline.size.SizeReason.ContrastLow.Cure;
import bandwright.pipeline.size.colour.ColourShift;
import bandwright.pipeline.size.colour.GamutLoss;
import bandwright.pipeline.size.colour.Print;
import bandwright.pipeline.size.colour.TextContrast;
import bandwright.rules.Shop;
import bandwright.rules.colour.ColourName;
import bandwright.rules.colour.SeenBase;
import bandwright.rules.paper.Printer;
import bandwright.rules.paper.PrinterProfile;
import bandwright.rules.units.Rgb;
import bandwright.rules.words.Words;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a print will look like on its blank, and what a shop puts up with: how far its colours shift, how little its letters
 * stand out. Strictly beyond a limit it is told or held. A picture that can't be looked at is not judged.
 */
final class ColourLaw {
    /** Letters that stand out by less are as good as not there. [J] */
    private static final double VANISHING = 1.5;

    /** More of what is inked being out of a printer's reach is told. [J] */
    private static final double LOST = 0.05;

    private final Shop shop;
    private final Sights sights;
    private final Map<OnBase, Optional<ColourShift>> shifts = new HashMap<>();
    private final Map<ByProfile, Optional<Note>> losses = new HashMap<>();

    ColourLaw(Shop shop, Sights sights) {
        this.shop = shop;
        this.sights = sights;
    }

    private record OnBase(List<Layer> layers, Rgb base) {}

    private record ByProfile(List<Layer> layers, PrinterProfile printer) {}

    /**
     * What is known of a print that may be made.
     *
     * @param shift empty where a picture can't be looked at
     */
    record Judged(Optional<BigDecimal> shift, List<Note> notes) {}

    Outcome<Judged> judged(MatchedLine line, PrintedPicture printed, Printer printer) {
        SeenBase base = SeenBase.judged(line.blank());
        List<Layer> layers = printed.pictures();
        List<Note> notes = new ArrayList<>();
        for (PrintedPicture.Lettering text : printed.letterings()) {
            Optional<TextContrast> contrast = contrast(text, layers, base.colour());
            Optional<SizeReason> hold = contrast.flatMap(found -> hold(text, found, base));
            if (hold.isPresent()) {
                return Outcome.held(hold.get());
            }
            contrast.flatMap(found -> note(text, found, base)).ifPresent(notes::add);
        }
        Optional<ColourShift> shift = shift(layers, base.colour());
        shift.flatMap(found -> note(found, base)).ifPresent(notes::add);
        printer.profile()
                .flatMap(profile -> losses.computeIfAbsent(
                        new ByProfile(layers, profile), any -> note(layers, printer.id(), profile)))
                .ifPresent(notes::add);
        return Outcome.made(new Judged(shift.map(ColourShift::mean), onceEach(notes)));
    }

    /** Several texts that stand out little are one note; a text that stands twice is told of once. */
    private static List<Note> onceEach(List<Note> notes) {
        Map<String, Note> once = new LinkedHashMap<>();
        for (Note note : notes.stream().distinct().toList()) {
            once.merge(note.code(), note, (one, more) -> new Note(one.code(), one.message() + " " + more.message()));
        }
        return List.copyOf(once.values());
    }

    private Optional<ColourShift> shift(List<Layer> layers, Rgb base) {
        if (base.equals(Rgb.WHITE)) {
            return Optional.of(ColourShift.NONE); // no picture need be looked at to know that
        }
        return shifts.computeIfAbsent(
                new OnBase(layers, base), any -> print(layers).map(print -> ColourShift.of(print, base)));
    }

    private Optional<Note> note(List<Layer> layers, String printer, PrinterProfile profile) {
        return print(layers).flatMap(print -> {
            double share = GamutLoss.share(print, profile).orElse(0);
            return share > LOST
                    ? Optional.of(new Note("gamut", Words.say("note.gamut", Figures.percent(share), printer)))
                    : Optional.empty();
        });
    }

    private Optional<TextContrast> contrast(PrintedPicture.Lettering text, List<Layer> layers, Rgb base) {
        boolean isAsked = Math.max(shop.contrastNote(), shop.contrastHold()) > 1; // no ratio is lower
        return isAsked ? print(layers).flatMap(print -> TextContrast.of(text.type(), print, base)) : Optional.empty();
    }

    private Optional<Print> print(List<Layer> layers) {
        return Print.of(layers, sights::of); // not kept: the views are, as long as memory is plenty
    }

    private Optional<SizeReason> hold(PrintedPicture.Lettering text, TextContrast contrast, SeenBase base) {
        if (contrast.ratio() >= shop.contrastHold()) {
            return Optional.empty();
        }
        return Optional.of(new ContrastLow(
                text.field(),
                ColourName.of(text.type().colour()),
                ground(contrast, base),
                contrast.ratio(),
                shop.contrastHold(),
                contrast.ratio() < VANISHING,
                cure(contrast),
                base.isWhite()));
    }

    private Cure cure(TextContrast contrast) {
        double dark = contrast.ratioOfBlack();
        double light = contrast.ratioOfNoInk();
        if (Math.max(dark, light) < shop.contrastHold()) {
            return Cure.NO_INK;
        }
        return dark >= light ? Cure.DARKER : Cure.LIGHTER;
    }

    private Optional<Note> note(PrintedPicture.Lettering text, TextContrast contrast, SeenBase base) {
        if (contrast.ratio() >= shop.contrastNote()) {
            return Optional.empty();
        }
        return Optional.of(new Note(
                "contrast",
                Words.say(
                        "note.contrast",
                        ColourName.of(text.type().colour()),
                        text.field(),
                        ground(contrast, base),
                        Figures.numberDown(contrast.ratio()),
                        Figures.number(shop.contrastNote()))));
    }

    /** What letters stand on, in words. */
    private static String ground(TextContrast contrast, SeenBase base) {
        return contrast.isBare() ? base(base) : Words.say("size.ground.print", ColourName.of(contrast.ground()));
    }

    private static String base(SeenBase base) {
        String key =
                switch (base.when()) {
                    case ALWAYS -> "size.ground.base";
                    case COLD -> "size.ground.cold";
                    case HOT -> "size.ground.hot";
                    case EMPTY -> "size.ground.empty";
                    case FILLED -> "size.ground.filled";
                };
        return Words.say(key, ColourName.of(base.colour()));
    }

    private Optional<Note> note(ColourShift shift, SeenBase base) {
        if (shift.mean().doubleValue() <= shop.colourNote()) {
            return Optional.empty();
        }
        String said =
                Words.say("note.colour", base(base), shift.mean().toPlainString(), Figures.number(shop.colourNote()));
        String lost = shift.lost().map(ColourLaw::lost).orElse("");
        String unsure = base.isSure() ? "" : " " + Words.say("size.colour.unsure");
        return Optional.of(new Note("colour", said + lost + unsure));
    }

    private static String lost(ColourShift.Lost lost) {
        return " " + Words.say("size.colour.lost", named(lost.one()), named(lost.other()));
    }

    private static String named(Rgb colour) {
        return Words.say("size.colour.named", ColourName.of(colour), colour.hex());
    }
}
