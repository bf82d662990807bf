package bandwright.pipeline.size;

import bandwright.pipeline.artwork.ArtworkFile;
import bandwright.pipeline.held.Outcome;
import bandwright.pipeline.match.MatchedLine;
import bandwright.pipeline.owed.OwedLine;
import bandwright.pipeline.pixels.Sights;
import bandwright.pipeline.size.PrintedPicture.PlacedPicture;
import bandwright.rules.Rulebook;
import bandwright.rules.blanks.Band;
import bandwright.rules.blanks.BandLaw;
import bandwright.rules.blanks.BandLimit;
import bandwright.rules.blanks.Blank;
import bandwright.rules.blanks.PlacementLaw;
import bandwright.rules.heat.HeatChoice;
import bandwright.rules.heat.HeatKind;
import bandwright.rules.paper.FlagLaw;
import bandwright.rules.paper.Footprint;
import bandwright.rules.paper.PaperChoice;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import bandwright.rules.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;

/** How large a row's picture is printed, how it lies in its band, and on which papers: for one row, whatever its quantity. */
final class SizeLaw {
    /** A picture this many times as long as wide is a line, not a picture. [J] */
    private static final int SLIMMEST = 1000;

    /** Strokes thinner than that don't hold on a rough surface. Common practice, no source. */
    private static final Length HOLDS = Length.mm(0.25);

    private final Rulebook rules;
    private final PictureLimits limits;
    private final FlagLaw flag;
    private final PaperChoice papers;
    private final TextLaw type;
    private final ColourLaw colours;
    private final Sights sights;

    SizeLaw(Rulebook rules, Sights sights, Optional<String> paper) {
        this.sights = sights;
        this.rules = rules;
        this.limits = new PictureLimits(rules.shop());
        this.flag = FlagLaw.of(rules.shop());
        this.papers = PaperChoice.of(rules, paper);
        this.type = new TextLaw(rules);
        this.colours = new ColourLaw(rules.shop(), sights);
    }

    /** Begins to look at those pictures that will be looked at whatever comes, beside what else is to do. */
    void begin(List<OwedLine> lines) {
        sights.begin(lines.stream()
                .flatMap(line -> line.matched().artworks().stream())
                .filter(SizeLaw::changesColours)
                .distinct()
                .toList());
    }

    /** @param texts of one piece, by field */
    Outcome<Sized> of(MatchedLine line, SortedMap<String, String> texts) {
        return band(line).then(band -> picture(line, band)
                .then(picture -> type.over(picture, line, texts))
                .then(printed -> rooms(line, printed).then(rooms -> colours.judged(
                                line, printed, rooms.get(0).printer())
                        .then(judged -> Outcome.made(sized(line, printed, rooms, judged))))));
    }

    private Sized sized(MatchedLine line, PrintedPicture printed, List<PaperRoom> rooms, ColourLaw.Judged judged) {
        return new Sized(
                printed.band(),
                printed.transfer(),
                rooms,
                printed.ppi(),
                judged.shift(),
                notes(line, printed, judged.notes()));
    }

    private static Outcome<Band> band(MatchedLine line) {
        String sku = line.blank().sku();
        Optional<Band> band = BandLaw.of(line.blank(), line.source());
        if (band.isEmpty()) {
            return Outcome.held(new SizeReason.BandEmpty(sku, line.source().id()));
        }
        return Outcome.made(band.get());
    }

    private Outcome<PrintedPicture> picture(MatchedLine line, Band band) {
        List<Box> boxes = PlacementLaw.boxes(
                line.design().placement(), band, line.blank().form().isFlat());
        if (boxes.isEmpty()) {
            return Outcome.held(new SizeReason.SidesEmpty(
                    line.blank().sku(),
                    line.source().id(),
                    line.design().name(),
                    line.design().placement(),
                    band.around(),
                    band.circumference()));
        }
        Optional<SizeReason> damaged = line.artworks().stream()
                .filter(sights::isDamaged)
                .map(file -> (SizeReason) new SizeReason.PictureDamaged(file.name()))
                .findFirst();
        if (damaged.isPresent()) {
            return Outcome.held(damaged.get());
        }
        Optional<SizeReason> slim = line.artworks().stream()
                .filter(SizeLaw::isSlim)
                .map(file -> (SizeReason) new SizeReason.TooSlim(file.name(), file.shownWidth(), file.shownHeight()))
                .findFirst();
        if (slim.isPresent()) {
            return Outcome.held(slim.get());
        }
        PrintedPicture printed = PrintedPicture.of(band, line.design(), boxes, line.artworks());
        Optional<SizeReason> hold = printed.fits().stream()
                .flatMap(placed -> limits.hold(line, placed).stream())
                .findFirst();
        return hold.isPresent() ? Outcome.held(hold.get()) : Outcome.made(printed);
    }

    private static boolean isSlim(ArtworkFile artwork) {
        int width = artwork.shownWidth();
        int height = artwork.shownHeight();
        return Math.max(width, height) / Math.max(1, Math.min(width, height)) >= SLIMMEST;
    }

    private Outcome<List<PaperRoom>> rooms(MatchedLine line, PrintedPicture printed) {
        Transfer transfer = printed.transfer();
        PaperChoice.Answer answer = transfer.sector()
                .map(papers::forPicture)
                .orElseGet(() -> papers.forPicture(transfer.width(), transfer.height()));
        if (answer.rooms().isEmpty()) {
            return Outcome.held(new SizeReason.TooLargeForPaper(
                    line.blank().sku(),
                    needed(transfer).width(),
                    needed(transfer).height(),
                    answer.largest()));
        }
        return Outcome.made(answer.rooms());
    }

    /** Picture and the flag's ink. */
    private Box needed(Transfer transfer) {
        return transfer.sector()
                .map(sector -> Footprint.bent(sector, flag))
                .orElseGet(() -> Footprint.straight(transfer.width(), transfer.height(), flag))
                .inked();
    }

    private List<Note> notes(MatchedLine line, PrintedPicture printed, List<Note> ofColours) {
        List<Note> notes = new ArrayList<>(limits.notes(printed.fits()));
        printed.fits().stream()
                .flatMap(placed -> tint(placed).stream())
                .findFirst()
                .ifPresent(notes::add);
        notes.addAll(ofColours);
        for (BandLimit limit : printed.band().limitedBy()) {
            notes.add(new Note("limited", limited(limit, line)));
        }
        printed.cutText().ifPresent(cut -> notes.add(new Note("text-cut", Words.say("note.text-cut", cut.mm2()))));
        printed.thinnest()
                .filter(HOLDS::longerThan)
                .ifPresent(stroke ->
                        notes.add(new Note("hairline", Words.say("note.hairline", stroke.mm2(), HOLDS.mm2()))));
        if (!line.setting().isConfirmed()) {
            String material = line.blank().material().word();
            String kind = line.source().kind().word();
            notes.add(new Note("not-confirmed", Words.say("note.not-confirmed", material, kind)));
        }
        return List.copyOf(notes);
    }

    private Optional<Note> tint(PlacedPicture placed) {
        if (!changesColours(placed.artwork())) {
            return Optional.empty();
        }
        Box place = placed.fit().place();
        return sights.of(placed.artwork())
                .flatMap(sight -> Tint.of(sight, place, place.shared(placed.box())))
                .map(Tint::note);
    }

    /** When it is saved; of the other kinds somebody chose what is nearly white. */
    private static boolean changesColours(ArtworkFile artwork) {
        return switch (artwork.kind()) {
            case JPEG, WEBP -> true;
            case PNG, TIFF, GIF, SVG, PDF -> false;
        };
    }

    private String limited(BandLimit limit, MatchedLine line) {
        String side =
                switch (limit.column()) {
                    case MAX_BAND_HEIGHT -> Words.say("size.limited.height");
                    case MAX_BAND_WIDTH -> Words.say("size.limited.width");
                };
        return Words.say(
                        "note.limited",
                        source(line.source().kind()),
                        side,
                        limit.given().mm2(),
                        limit.wanted().mm2())
                + other(limit.column(), line);
    }

    private static String source(HeatKind kind) {
        return switch (kind) {
            case MUG_PRESS, TUMBLER_PRESS, FLAT_PRESS -> Words.say("size.limited.press");
            case OVEN -> Words.say("size.limited.oven");
        };
    }

    /** The first heat source that takes the blank and does not cut its band there. */
    private String other(BandLimit.Column column, MatchedLine line) {
        Blank blank = line.blank();
        return HeatChoice.candidates(blank, rules.heatSources()).stream()
                .filter(source -> HeatChoice.among(List.of(source), blank, rules.pressSettings())
                        .chosen()
                        .isPresent())
                .filter(source -> BandLaw.of(blank, source).stream()
                        .anyMatch(band -> band.limitedBy().stream().noneMatch(limit -> limit.column() == column)))
                .findFirst()
                .map(source -> Words.say("size.limited.other", source.id()))
                .orElse("");
    }
}
