package bandwright.pipeline.write.proofs;

import bandwright.pipeline.pixels.Sights;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.type.Captions;
import bandwright.pipeline.write.thumb.FlatPicture;
import bandwright.rules.blanks.Blank;
import bandwright.rules.blanks.Body;
import bandwright.rules.blanks.Form;
import bandwright.rules.colour.SeenBase;
import bandwright.rules.units.Rgb;
import bandwright.rules.words.Words;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The pieces of one order as they will look, one under the other, each from three sides on each base it is seen on. */
final class ProofPicture {
    private static final Color GROUND = new Color(241, 241, 238);
    private static final Color DARK = new Color(45, 45, 48);
    private static final Color QUIET = new Color(105, 105, 108);

    /** Of one view in pixels, while there are few pieces. */
    private static final int CELL_WIDTH = 296;

    private static final int VIEW_HEIGHT = 220;
    private static final int EDGE = 36;
    private static final int HEAD = 84;
    private static final int FOOT = 48;
    private static final int CAPTION = 46;
    private static final int LABEL = 34;
    private static final int GAP = 26;

    /** Of more pieces each is smaller, so that all together stay within what a screen and a letter can take. */
    private static final int FULL_SIZE = 12;

    private static final double LEAST_SCALE = 0.3;

    /** Of the flat picture, for one of the view: what is looked up four times a pixel needs no more. */
    private static final double FINER = 2;

    /** A dot at half height between two facts. */
    private static final String SEPARATOR = "  \u00B7  ";

    private final List<ProofPiece> pieces;
    private final Sights sights;
    private final Captions captions;
    private final double scale;

    ProofPicture(List<ProofPiece> pieces, Sights sights, Captions captions) {
        this.pieces = pieces;
        this.sights = sights;
        this.captions = captions;
        this.scale = Math.max(LEAST_SCALE, Math.sqrt(Math.min(1, (double) FULL_SIZE / lines())));
    }

    private int lines() {
        return pieces.stream()
                .mapToInt(piece -> SeenBase.of(piece.unit().matched().blank()).size())
                .sum();
    }

    BufferedImage draw(String order) {
        int columns = Math.max(1, (int) Math.round(Math.sqrt((double) pieces.size() / FULL_SIZE)));
        int rows = (pieces.size() + columns - 1) / columns;
        int blockWidth = pixels(3 * CELL_WIDTH);
        int[] tops = new int[rows + 1];
        for (int row = 0; row < rows; row++) {
            int highest = 0;
            for (ProofPiece piece : row(row, columns)) {
                highest = Math.max(highest, height(piece));
            }
            tops[row + 1] = tops[row] + highest;
        }
        int width = 2 * EDGE + columns * blockWidth + (columns - 1) * GAP;
        BufferedImage image = new BufferedImage(width, HEAD + tops[rows] + FOOT, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        Smooth.on(g);
        g.setColor(GROUND);
        g.fillRect(0, 0, image.getWidth(), image.getHeight());
        words(g, Words.say("proofs.order", order), true, 26, EDGE, 52, DARK);
        words(g, estimate(), false, 15, EDGE, image.getHeight() - 20, QUIET);
        g.dispose();
        for (int i = 0; i < pieces.size(); i++) {
            int left = EDGE + i % columns * (blockWidth + GAP);
            piece(image, pieces.get(i), left, HEAD + tops[i / columns], blockWidth);
        }
        return image;
    }

    private String estimate() {
        boolean isSure = pieces.stream()
                .flatMap(piece -> SeenBase.of(piece.unit().matched().blank()).stream())
                .allMatch(SeenBase::isSure);
        return Words.say("proofs.estimate") + (isSure ? "" : " " + Words.say("proofs.unsure"));
    }

    private List<ProofPiece> row(int row, int columns) {
        return pieces.subList(row * columns, Math.min(pieces.size(), (row + 1) * columns));
    }

    private int pixels(double length) {
        return (int) Math.round(length * scale);
    }

    private int height(ProofPiece piece) {
        int views = SeenBase.of(piece.unit().matched().blank()).size();
        return pixels(CAPTION) + views * pixels(VIEW_HEIGHT + LABEL) + GAP;
    }

    private void piece(BufferedImage image, ProofPiece piece, int left, int top, int width) {
        Graphics2D g = image.createGraphics();
        Smooth.on(g);
        g.setColor(new Color(222, 222, 218));
        g.fillRect(left, top, width, 1);
        int baseline = top + pixels(CAPTION * 0.72);
        words(g, caption(piece), true, 18 * scale, left, baseline, DARK);
        piece.code().ifPresent(code -> {
            String words = Words.say("proofs.code", code);
            double across = captions.line(words, true, 18 * scale).getBounds2D().getMaxX();
            words(g, words, true, 18 * scale, left + width - across, baseline, DARK);
        });
        int y = top + pixels(CAPTION);
        for (SeenBase base : SeenBase.of(piece.unit().matched().blank())) {
            views(image, g, piece.unit(), base, left, y);
            y += pixels(VIEW_HEIGHT + LABEL);
        }
        g.dispose();
    }

    private static String caption(ProofPiece piece) {
        StringBuilder words = new StringBuilder(piece.unit().matched().blank().name());
        piece.unit().texts().values().stream().filter(text -> !text.isBlank()).forEach(text -> words.append(SEPARATOR)
                .append(text.strip()));
        if (piece.count() > 1) {
            words.append(SEPARATOR).append(Words.say("proofs.pieces", piece.count()));
        }
        return words.toString();
    }

    private void views(BufferedImage image, Graphics2D g, Unit unit, SeenBase base, int left, int top) {
        Blank blank = unit.matched().blank();
        Optional<Body> body = Body.of(blank, unit.band());
        if (body.isPresent()) {
            double perMm = Math.min(
                    pixels(VIEW_HEIGHT - 16) / CupWall.height(body.get()),
                    pixels(CELL_WIDTH * 0.56) / CupWall.width(body.get()));
            double y = top + (pixels(VIEW_HEIGHT) - CupWall.height(body.get()) * perMm) / 2;
            double rim = y + CupWall.rimBelowTop(body.get()) * perMm;
            CupView cup = cup(unit, base, body.get(), rim, perMm);
            int cell = 0;
            for (Body.From from : Body.From.values()) {
                int middle = left + pixels(CELL_WIDTH * (cell + 0.5));
                cup.draw(image, middle, rim, perMm, from);
                label(g, label(from, blank, base), middle, top);
                cell++;
            }
        } else if (blank.form() instanceof Form.Flat flat) {
            double perMm = Math.min(
                    pixels(VIEW_HEIGHT - 16) / flat.height().mm(),
                    pixels(3 * CELL_WIDTH - 40) / flat.width().mm());
            FlatView view = new FlatView(blank, flat, picture(unit, base, perMm), base.colour());
            double middle = left + pixels(1.5 * CELL_WIDTH);
            view.draw(
                    image,
                    middle - view.width() * perMm / 2,
                    top + (pixels(VIEW_HEIGHT) - view.height() * perMm) / 2,
                    perMm);
            label(g, base(base), middle, top);
        }
    }

    private CupView cup(Unit unit, SeenBase base, Body body, double rim, double perMm) {
        Blank blank = unit.matched().blank();
        // A drink stands in the cup, not in its handle.
        Rgb bare = base.when() == SeenBase.When.FILLED ? blank.baseColour() : base.colour();
        Optional<Rgb> handle =
                blank.hasHandle() ? Optional.of(blank.handleColour().orElse(bare)) : Optional.empty();
        return new CupView(
                body,
                new CupWall(body, rim, perMm),
                picture(unit, base, perMm),
                base.colour(),
                handle,
                blank.insideColour().orElse(base.colour()));
    }

    private FlatPicture picture(Unit unit, SeenBase base, double perMm) {
        return FlatPicture.of(unit.transfer(), base.colour(), FINER * perMm, sights);
    }

    private static String label(Body.From from, Blank blank, SeenBase base) {
        String ending = from.name().toLowerCase(Locale.ROOT).replace('_', '-');
        String side = Words.say("proofs.from." + (blank.hasHandle() ? ending : "seam." + ending));
        return base(base).isEmpty() ? side : side + ", " + base(base);
    }

    private static String base(SeenBase base) {
        return base.when() == SeenBase.When.ALWAYS
                ? ""
                : Words.say("proofs.when." + base.when().name().toLowerCase(Locale.ROOT));
    }

    private void label(Graphics2D g, String text, double middle, int top) {
        double width = captions.line(text, false, 15 * scale).getBounds2D().getWidth();
        words(g, text, false, 15 * scale, middle - width / 2, top + pixels(VIEW_HEIGHT + LABEL * 0.6), QUIET);
    }

    private void words(Graphics2D g, String text, boolean isBold, double size, double x, double y, Color colour) {
        Shape line = captions.line(text, isBold, size);
        g.setColor(colour);
        g.translate(x, y);
        g.fill(line);
        g.translate(-x, -y);
    }
}
