package bandwright.pipeline.write.setup;

import bandwright.pipeline.RunId;
import bandwright.pipeline.write.list.ListPaper;
import bandwright.pipeline.write.list.Pages;
import bandwright.pipeline.write.pdf.PdfFile;
import bandwright.rules.Rulebook;
import bandwright.rules.blanks.Band;
import bandwright.rules.blanks.Blank;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.heat.PressSetting;
import bandwright.rules.heat.Tries;
import bandwright.rules.heat.Try;
import bandwright.rules.heat.TryRange;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.words.Words;
import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * How a shop finds the press setting of one blank on one heat source with few blanks: what to read and fill in, then a
 * transfer for every try. A white mug in a mug press takes three blanks to begin with and five at most.
 */
public final class Trial {
    private final Blank blank;
    private final HeatSource source;
    private final PressSetting setting;
    private final Band band;
    private final Rulebook rules;
    private final PaperRoom room;
    private final SwatchStrip strip;
    private final TrialSheets sheets;
    private final TryRange range;
    private final Tries tries;

    private Trial(Pressed pressed, Rulebook rules, PaperRoom room, SwatchStrip strip) {
        this.blank = pressed.blank();
        this.source = pressed.source();
        this.setting = pressed.setting();
        this.band = pressed.band();
        this.rules = rules;
        this.room = room;
        this.strip = strip;
        this.sheets = new TrialSheets(strip, room, rules.shop());
        this.range = TryRange.of(setting);
        this.tries = Tries.of(range);
    }

    /** What is pressed where, and the setting that counts for it so far. */
    public record Pressed(Blank blank, HeatSource source, PressSetting setting, Band band) {}

    /** Whether the band is large enough for a block of swatches. */
    public static boolean hasRoom(Pressed pressed) {
        return SwatchStrip.of(pressed.blank(), pressed.band()).isPresent();
    }

    /** On the first paper that takes the strip as long as the band, else the first that takes a short one. */
    public static Optional<Trial> of(Pressed pressed, Rulebook rules, List<PaperRoom> rooms) {
        Optional<SwatchStrip> whole = SwatchStrip.of(pressed.blank(), pressed.band());
        return whole.flatMap(
                strip -> first(strip, pressed, rules, rooms).or(() -> first(strip.single(), pressed, rules, rooms)));
    }

    private static Optional<Trial> first(SwatchStrip strip, Pressed pressed, Rulebook rules, List<PaperRoom> rooms) {
        return rooms.stream()
                .map(room -> new Trial(pressed, rules, room, strip))
                .filter(trial -> trial.sheets.fits())
                .findFirst();
    }

    /** The paper's id. */
    public String paper() {
        return room.paper().id();
    }

    /** How many pages of it are transfers: the last ones. */
    public int transferPages() {
        return sheets.pages(transfers().size());
    }

    /** How many blanks the first stage takes. */
    public int firstBlanks() {
        return tries.first().size();
    }

    /** How many it takes at the most. */
    public int mostBlanks() {
        return tries.all().size();
    }

    /** Writes what to do, then the transfers. */
    public void write(MeasuredRow row, OutputStream out) throws IOException {
        String file = "trial-" + blank.sku() + "-" + source.id();
        PDDocument document = PdfFile.create(
                new RunId(LocalDate.EPOCH, 1), file, title(), room.printer().profile());
        OwnFile.mark(document, OwnFile.Kind.TRIAL);
        ListPaper paper = ListPaper.of(rules.shop().unit());
        try (Pages pages = Pages.undated(document, title(), rules.shop().name(), paper)) {
            new TrialSteps(this, pages).write();
            new TrialTable(this, pages).write(row);
            pages.append(sheets.pages(transfers(), title(), document, pages.faces()));
            pages.writeTo(out);
        }
    }

    /** One for every try, and where something is varied a spare. */
    private List<TrialSheets.Transfer> transfers() {
        List<TrialSheets.Transfer> transfers = new ArrayList<>();
        for (Try one : tries.all()) {
            transfers.add(transfer(String.valueOf(one.number()), heat(one), TrialFigures.time(one.seconds())));
        }
        if (!tries.isOne()) {
            transfers.add(transfer(Words.say("trial.spare"), Words.say("trial.spare-heat"), ""));
        }
        return transfers;
    }

    private TrialSheets.Transfer transfer(String number, String heat, String time) {
        String setting = time.isEmpty() ? heat : Words.say("trial.figures", heat, time);
        String what = Words.say("trial.what", blank.sku(), source.id());
        return new TrialSheets.Transfer(
                new Swatches.Name(number, List.of(setting, what)),
                List.of(
                        Words.say("trial.label", number, setting, what),
                        Words.say("trial.what", Words.say("trial.try", number), setting),
                        Words.say("trial.try", number)));
    }

    private String heat(Try one) {
        return one.temperature()
                .map(heat -> figures().heat(heat))
                .orElseGet(() -> Words.say("trial.best-of", 1, tries.first().size()));
    }

    /** Whose figures are tried. */
    String whose() {
        if (range.isListed()) {
            return Words.say("trial.listed");
        }
        return Words.say(setting.isConfirmed() ? "trial.measured" : "checklist.not-confirmed");
    }

    String title() {
        return Words.say("trial.title", blank.sku(), source.id());
    }

    TrialFigures figures() {
        return new TrialFigures(range, rules.shop().temperatureUnit());
    }

    Blank blank() {
        return blank;
    }

    HeatSource source() {
        return source;
    }

    PressSetting setting() {
        return setting;
    }

    Band band() {
        return band;
    }

    Rulebook rules() {
        return rules;
    }

    PaperRoom room() {
        return room;
    }

    SwatchStrip strip() {
        return strip;
    }

    TryRange range() {
        return range;
    }

    Tries tries() {
        return tries;
    }
}
