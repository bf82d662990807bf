package bandwright.pipeline.write.sheets;

import bandwright.pipeline.tile.LaidSector;
import bandwright.pipeline.tile.Placed;
import bandwright.pipeline.write.pdf.Canvas;
import bandwright.pipeline.write.pdf.Lettering;
import bandwright.pipeline.write.pdf.Line;
import bandwright.pipeline.write.pdf.OutlineFont;
import bandwright.pipeline.write.pdf.QrMark;
import bandwright.rules.Shop;
import bandwright.rules.paper.FlagLaw;
import bandwright.rules.paper.LeaningFlag;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.awt.geom.AffineTransform;
import java.util.Optional;

/**
 * The flag's ink: the unit's code on the left, its words beside it, the load's number large in the lower right. It is
 * read with the flag's long side lying across, so it is turned where that side stands up the page.
 */
final class Label {
    /** A phone reads 0.4 mm modules at arm's length; below 0.2 mm ink runs together. [J] */
    private static final Length WIDEST_MODULE = Length.mm(0.4);

    private static final Length FINEST_MODULE = Length.mm(0.2);

    /** Type that is still read on soft paper: 1.1 mm is 3.1 pt. [J] */
    private static final Length LEAST_TYPE = Length.mm(1.1);

    private static final Length MOST_TYPE = Length.mm(3);

    /** Baseline to baseline over the type size. */
    private static final double LEADING = 1.16;

    /** How high the load's figures stand in their room; round ones overshoot it a little. */
    private static final double FIGURE_SHARE = 0.94;

    /** The first row is that much larger than the others. */
    private static final double FIRST_ROW = 1.4;

    private final Canvas canvas;
    private final Lettering lettering;
    private final LabelText text;
    private final Length width;
    private final Length height;

    private Label(Canvas canvas, Lettering lettering, LabelText text, Length width, Length height) {
        this.canvas = canvas;
        this.lettering = lettering;
        this.text = text;
        this.width = width;
        this.height = height;
    }

    static void draw(Canvas canvas, Lettering lettering, Placed placed, PaperRoom room, Shop shop) {
        FlagLaw law = FlagLaw.of(shop);
        Optional<LaidSector> sector = placed.sector();
        if (placed.flag().isPresent() && sector.isPresent()) {
            drawLeaning(canvas, lettering, placed, sector.get(), shop);
            return;
        }
        Optional<Box> ink = placed.flag().flatMap(flag -> ink(flag, law, room));
        if (ink.isEmpty()) {
            return;
        }
        Box box = ink.get();
        boolean lies = box.width().compareTo(box.height()) >= 0;
        canvas.save();
        if (lies) {
            canvas.concat(1, 0, 0, 1, box.x(), box.y());
        } else {
            canvas.concat(0, 1, -1, 0, box.right(), box.y());
        }
        Length width = lies ? box.width() : box.height();
        Length height = lies ? box.height() : box.width();
        LabelText text = LabelText.of(placed, shop.unit());
        new Label(canvas, lettering, text, width, height).drawFromCode(law.inset());
        canvas.restore();
    }

    /** On a cone the flag leans with the picture's end; it is read along that end. */
    private static void drawLeaning(Canvas canvas, Lettering lettering, Placed placed, LaidSector sector, Shop shop) {
        FlagLaw law = FlagLaw.of(shop);
        LeaningFlag flag = LeaningFlag.of(sector.sector(), law);
        Length along = law.height().minus(law.inset().times(2));
        Length out = law.depth().minus(law.inset().times(2));
        if (!along.isPositive() || !out.isPositive()) {
            return;
        }
        double half = along.mm() / 2;
        double far = law.depth().mm() - law.inset().mm();
        AffineTransform place = sector.toPaper();
        place.concatenate(new AffineTransform(
                flag.upX(),
                flag.upY(),
                -flag.outX(),
                -flag.outY(),
                flag.x() - half * flag.upX() + far * flag.outX(),
                flag.y() - half * flag.upY() + far * flag.outY()));
        canvas.save().concat(place);
        new Label(canvas, lettering, LabelText.of(placed, shop.unit()), along, out).drawFromCode(law.inset());
        canvas.restore();
    }

    /** The flag less its own inset, as far as it lies inside the paper's margins. */
    private static Optional<Box> ink(Box flag, FlagLaw law, PaperRoom room) {
        Box inside = room.inside();
        Length x = flag.x().plus(law.inset()).atLeast(inside.x());
        Length y = flag.y().plus(law.inset()).atLeast(inside.y());
        Length width = flag.right().minus(law.inset()).atMost(inside.right()).minus(x);
        Length height = flag.top().minus(law.inset()).atMost(inside.top()).minus(y);
        return width.isPositive() && height.isPositive() ? Optional.of(new Box(x, y, width, height)) : Optional.empty();
    }

    /** White paper round the ink serves the code as part of its quiet zone. */
    private void drawFromCode(Length white) {
        Optional<QrMark> found = QrMark.find(text.id());
        Length left = Length.ZERO;
        if (found.isPresent()) {
            QrMark code = found.get();
            Length module = module(code.modules(), white);
            if (module.compareTo(FINEST_MODULE) >= 0) {
                Length side = module.times(code.modules());
                Length quiet = module.times(QrMark.QUIET);
                Length start = quiet.minus(white).atLeast(Length.ZERO);
                code.draw(canvas, side, start, height.minus(side).half());
                left = start.plus(side).plus(quiet);
            }
        }
        drawWords(left);
    }

    /** As large as the flag's depth takes, with what the quiet zone needs beyond the white round the ink. */
    private Length module(int modules, Length white) {
        Length bare = height.times(1.0 / modules);
        Length quiet = height.plus(white.times(2)).times(1.0 / (modules + 2 * QrMark.QUIET));
        Length half = width.half().times(1.0 / modules);
        return bare.atMost(quiet).atMost(half).atMost(WIDEST_MODULE);
    }

    private void drawWords(Length left) {
        int rows = 5;
        while (rows > 1 && LEAST_TYPE.longerThan(type(rows))) {
            rows--;
        }
        Length type = type(rows).atMost(MOST_TYPE);
        Length room = width.minus(left);
        Length firstDepth = type.times(FIRST_ROW * LEADING);
        Line id = new Line(OutlineFont.bold(), text.id(), type.times(FIRST_ROW));
        Length top = height;
        set(id.fittedKeepingEnds(room, LEAST_TYPE), left, top, firstDepth);
        top = top.minus(firstDepth);
        Length depth = type.times(LEADING);
        Length loadRoom = Length.ZERO;
        if (rows > 1) {
            // The load stands beside the last rows; the order's own row keeps the whole width.
            int besideFrom = Math.min(2, rows - 1);
            Length loadDepth = depth.times(rows - besideFrom);
            loadRoom = drawLoad(
                            left,
                            loadDepth,
                            top.minus(depth.times(besideFrom - 1)).minus(loadDepth),
                            type)
                    .plus(type.times(0.5));
        }
        for (int row = 1; row < rows; row++) {
            Length wide = row == 1 && rows > 2 ? room : room.minus(loadRoom);
            set(row(row, type, wide), left, top, depth);
            top = top.minus(depth);
        }
    }

    private Length type(int rows) {
        return height.times(1 / (LEADING * (rows - 1 + FIRST_ROW)));
    }

    private Line row(int row, Length type, Length room) {
        return switch (row) {
            case 1 -> new Line(OutlineFont.regular(), text.piece(), type).fittedKeepingEnds(room, LEAST_TYPE);
            case 2 -> blank(type, room);
            case 3 -> new Line(OutlineFont.regular(), text.size(), type).fitted(room, LEAST_TYPE);
            default -> new Line(OutlineFont.regular(), text.design(), type).fitted(room, LEAST_TYPE);
        };
    }

    private Line blank(Length type, Length room) {
        Line both = new Line(OutlineFont.bold(), text.sku() + " " + text.blankName(), type.times(0.9));
        return both.width().longerThan(room)
                ? new Line(OutlineFont.bold(), text.sku(), type).fitted(room, LEAST_TYPE)
                : both;
    }

    /** Sets the load in the lower right and returns how wide it is. */
    private Length drawLoad(Length left, Length depth, Length bottom, Length type) {
        Length most = width.minus(left).times(0.42);
        Length captionDepth = type.times(LEADING);
        Line caption = new Line(OutlineFont.regular(), text.source(), type.times(0.9)).fitted(most, LEAST_TYPE);
        Length tall =
                depth.minus(captionDepth).atLeast(type.times(OutlineFont.bold().capShare()));
        Line number = new Line(
                        OutlineFont.bold(),
                        text.load(),
                        tall.times(FIGURE_SHARE / OutlineFont.bold().capShare()))
                .fitted(most, LEAST_TYPE);
        if (depth.longerThan(captionDepth)) {
            set(caption, width.minus(caption.width()), bottom.plus(depth), captionDepth);
        }
        Length baseline = bottom.plus(tall.minus(number.capHeight()).half());
        lettering.set(canvas, number, width.minus(number.width()), baseline);
        return number.width().atLeast(caption.width());
    }

    /** Sets a line in a row: its capitals half-way between the row's upper and lower edge. */
    private void set(Line line, Length x, Length top, Length depth) {
        Length baseline = top.minus(depth.half()).minus(line.capHeight().half());
        lettering.set(canvas, line, x, baseline);
    }
}
