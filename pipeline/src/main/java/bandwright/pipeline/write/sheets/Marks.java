package bandwright.pipeline.write.sheets;

import bandwright.pipeline.tile.Placed;
import bandwright.pipeline.tile.Sheet;
import bandwright.pipeline.write.pdf.Canvas;
import bandwright.pipeline.write.pdf.Lettering;
import bandwright.rules.Shop;
import bandwright.rules.paper.MirrorBy;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.paper.Printer;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import bandwright.rules.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What helps the person at the printer and with the scissors, set where the waste has room and else left out. */
final class Marks {
    /** Type sizes that are tried, the best first: 8, 6.5 and 5 pt. [J] */
    private static final List<Length> SIZES = List.of(Length.mm(2.8), Length.mm(2.3), Length.mm(1.8));

    /** How wide running text is set, the widest first; narrower than the first where the page is. */
    private static final List<Length> MEASURES = List.of(
            Length.mm(260), Length.mm(190), Length.mm(130), Length.mm(95), Length.mm(70), Length.mm(50), Length.mm(38));

    /** White that every mark keeps from the next. */
    private static final Length AIR = Length.mm(1.5);

    private final Canvas canvas;
    private final Lettering lettering;
    private final Waste waste;
    private final Shop shop;

    Marks(Canvas canvas, Lettering lettering, Waste waste, Shop shop) {
        this.canvas = canvas;
        this.lettering = lettering;
        this.waste = waste;
        this.shop = shop;
    }

    /** How to print this file: without it a sheet may come out at the wrong size or mirrored twice. */
    void settings(PaperRoom room) {
        String heading = Words.say("sheets.settings");
        List<String> lines = PrintSettings.of(room);
        List<TextBlock> choices = new ArrayList<>();
        SIZES.forEach(size -> choices.add(TextBlock.listed(heading, lines, size)));
        choices.addAll(running(heading + ": " + String.join(" ", lines)));
        setFirstThatFits(choices);
    }

    void mirrorLine(Printer printer) {
        String key = printer.mirror() == MirrorBy.DRIVER ? "sheets.mirror.driver" : "sheets.mirror.file";
        setFirstThatFits(running(Words.say(key)));
    }

    /** Which sheet this is. */
    void sheetLine(String text) {
        List<TextBlock> choices = new ArrayList<>();
        SIZES.forEach(size -> choices.add(TextBlock.wrapped(text, size, MEASURES.get(0))));
        setFirstThatFits(choices);
    }

    private static List<TextBlock> running(String text) {
        List<TextBlock> choices = new ArrayList<>();
        for (Length size : SIZES) {
            MEASURES.forEach(measure -> choices.add(TextBlock.wrapped(text, size, measure)));
        }
        return choices;
    }

    private void setFirstThatFits(List<TextBlock> choices) {
        for (TextBlock block : choices) {
            if (set(block, false) || set(block, true)) {
                return;
            }
        }
    }

    private boolean set(TextBlock block, boolean turned) {
        Length width = turned ? block.height() : block.width();
        Length height = turned ? block.width() : block.height();
        Optional<Box> place = waste.find(width, height);
        place.ifPresent(box -> {
            block.set(canvas, lettering, box, turned);
            waste.take(box.grown(AIR));
        });
        return place.isPresent();
    }

    /** A bar of 100 mm across and one up the page, to be measured before anything is pressed. */
    void bars() {
        bar(false);
        bar(true);
    }

    private void bar(boolean turned) {
        Length width = turned ? RulerBar.DEPTH : RulerBar.LENGTH;
        Length height = turned ? RulerBar.LENGTH : RulerBar.DEPTH;
        waste.find(width, height).ifPresent(box -> {
            RulerBar.draw(canvas, lettering, box, turned);
            waste.take(box.grown(AIR));
        });
    }

    void ticks(Sheet sheet) {
        for (Placed placed : sheet.placed()) {
            if (placed.sector().isPresent()) {
                SectorTicks.draw(canvas, placed, placed.sector().get(), shop.trimBorder(), shop.trimGap(), waste, AIR);
                continue;
            }
            for (Box tick : CornerTicks.of(placed.box(), shop.trimBorder(), shop.trimGap(), waste)) {
                canvas.fill(tick);
                waste.take(tick.grown(AIR.half()));
            }
        }
    }
}
