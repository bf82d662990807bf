package bandwright.pipeline.type;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Font;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.text.Bidi;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Texts of several fonts and directions, measured on their ink. */
class MixedTypeTest {
    private static final FontRenderContext PLAIN = new FontRenderContext(null, true, true);

    private final TypeCase fonts = new TypeCase(List.of());

    /** The wide font is made as large as lets its small letters, or its capitals, be as high. */
    @ParameterizedTest
    @ValueSource(strings = {"sans", "sans-bold", "serif", "serif-italic", "mono"})
    void aLetterFromTheWideFontIsAsHighAsItsNeighbours(String id) {
        // Armenian is in the wide font only; a text without it shows what is high.
        assertThat(fonts.chain(id, "x").get(0).canDisplay('\u0570')).isFalse();
        Font wide = wideOf(id, "xx");
        Font wideForCapitals = wideOf(id, "XX");
        assertThat(height(wide, "x")).isCloseTo(height(fonts.chain(id, "x").get(0), "x"), within(1.5));
        assertThat(height(wideForCapitals, "H"))
                .isCloseTo(height(fonts.chain(id, "H").get(0), "H"), within(1.5));
    }

    @Test
    void mixedTextLooksOfOneSize() {
        // The serif's small letters are much lower than the wide font's: o and the Armenian o, side by side.
        Shape mixed = new Shaping(fonts.chain("serif", "o\u0585")).line("o\u0585", false);
        List<Rectangle2D> inks = inks(mixed);
        assertThat(inks).hasSize(2);
        assertThat(inks.get(1).getHeight()).isCloseTo(inks.get(0).getHeight(), within(18.0));
        double unmatched = height(fonts.chain("wide", "x").get(0), "\u0585");
        assertThat(unmatched)
                .as("and it would be seen")
                .isGreaterThan(height(fonts.chain("serif", "x").get(0), "o") + 60);
    }

    /** A mark that the wanted font lacks takes its letter with it, so that it stands over it. */
    @Test
    void aLetterAndItsMarkAreOfOneFont() {
        Font sans = fonts.chain("sans", "x").get(0);
        int mark = lackingMark(sans);
        String text = "x" + Character.toString(mark);
        Shaping shaping = new Shaping(fonts.chain("sans", text));
        assertThat(shaping.missing(text)).isEmpty();
        assertThat(shaping.fonts(text)).hasSize(1).doesNotContain(sans);
    }

    private int lackingMark(Font sans) {
        Font wide = wideOf("sans", "x");
        return IntStream.concat(IntStream.range(0x300, 0x370), IntStream.range(0x1DC0, 0x20F1))
                .filter(c -> Character.getType(c) == Character.NON_SPACING_MARK)
                .filter(c -> !sans.canDisplay(c) && wide.canDisplay(c))
                .findFirst()
                .orElseThrow();
    }

    /** Letters of one box each, told apart by their widths, stand in the order of the bidirectional algorithm. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "\u05D0\u05D1\u05D2",
                "ab \u05D0\u05D1",
                "\u05D0\u05D1 ab",
                "\u05D0\u05D1 12 \u05D2",
                "a (\u05D0\u05D1) b",
                "\u05D0\u05D1 (ab) \u05D2",
                "12 \u05D0\u05D1",
                "\u05D0-12",
                "ab \u05D0\u05D1 12 \u05D2\u05D3 cd"
            })
    void hebrewStandsInTheOrderThatTheJdksReferenceGives(String text) {
        Font font = fonts.chain("wide", text).get(0);
        Shaping shaping = new Shaping(List.of(font));
        // Without kerning each glyph's ink begins where the advances before it end.
        double x = 0;
        Path2D path = new Path2D.Double();
        for (String glyph : visual(text)) {
            GlyphVector one = font.createGlyphVector(PLAIN, glyph);
            Shape reference = AffineTransform.getTranslateInstance(x, 0).createTransformedShape(one.getOutline());
            path.append(reference, false);
            x += one.getGlyphPosition(1).getX();
        }
        Shape set = shaping.line(text, Shaping.isRightToLeft(text));
        assertThat(apart(set, path)).as(text).isLessThan(0.01);
        if (visual(text).size() > 1 && !String.join("", visual(text)).equals(text)) {
            Shape asTyped = font.createGlyphVector(PLAIN, text).getOutline();
            assertThat(apart(set, asTyped)).as("the order as typed is another").isGreaterThan(0.05);
        }
    }

    /** By java.text.Bidi; brackets in a right-to-left run are mirrored. */
    private static List<String> visual(String text) {
        Bidi bidi = new Bidi(text, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
        byte[] levels = new byte[text.length()];
        Character[] letters = new Character[text.length()];
        for (int i = 0; i < text.length(); i++) {
            levels[i] = (byte) bidi.getLevelAt(i);
            char c = text.charAt(i);
            letters[i] = levels[i] % 2 == 0 ? c : c == '(' ? ')' : c == ')' ? '(' : c;
        }
        Bidi.reorderVisually(levels, 0, letters, 0, letters.length);
        return Arrays.stream(letters).map(String::valueOf).toList();
    }

    /** Unicode's presentation forms draw each letter as it is joined: the first, the middle ones, the last. */
    @ParameterizedTest
    @CsvSource({"\u0628\u0628\u0628, \uFE91\uFE92\uFE90", "\u0645\u062D\u0645\u062F, \uFEE3\uFEA4\uFEE4\uFEAA"})
    void arabicIsJoined(String text, String forms) {
        Shaping shaping = new Shaping(fonts.chain("sans", text));
        Shape set = shaping.line(text, true);
        assertThat(apart(set, shaping.line(forms, true))).isLessThan(0.01);
        // A joiner's opposite parts them: the test can tell.
        String parted = String.join("\u200C", text.split(""));
        assertThat(apart(set, shaping.line(parted, true))).isGreaterThan(0.2);
    }

    /** A line of a right-to-left text that begins with a Latin word runs right to left all the same. */
    @Test
    void everyLineRunsAsTheWholeTextDoes() {
        String line = "Ada \u05E9\u05DC\u05D5\u05DD";
        Shaping shaping = new Shaping(fonts.chain("sans", line));
        assertThat(Shaping.isRightToLeft("\u05E9\u05DC\u05D5\u05DD " + line)).isTrue();
        assertThat(Shaping.isRightToLeft(line)).isFalse();
        assertThat(apart(shaping.line(line, true), shaping.line(line, false))).isGreaterThan(0.05);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\u2665",
                "\u2764",
                "\u2764\uFE0F",
                "\u2605",
                "\u266A",
                "\u2693",
                "\u2615",
                "\uD83D\uDE00",
                "\uD83C\uDF81",
                "\uD83C\uDF82",
                "\uD83D\uDC1F",
                "\uD83D\uDC15",
                "\uD83D\uDC99",
                "\u2B50",
                "\uD83D\uDC4D"
            })
    void heartsStarsNotesAndCommonEmojiAreSet(String sign) {
        String text = "Ada " + sign;
        Shaping shaping = new Shaping(fonts.chain("serif", text));
        assertThat(shaping.missing(text)).isEmpty();
        double name = Shaping.ink(shaping.line("Ada", false)).getWidth();
        Rectangle2D both = Shaping.ink(shaping.line(text, false));
        assertThat(both.getWidth()).isGreaterThan(name + 300);
        double alone = height(shaping, sign);
        assertThat(alone).as("of the letters' size").isBetween(350.0, 900.0);
    }

    /** What no bundled font has, what a program lost, and what means something in one font only. */
    @ParameterizedTest
    @CsvSource({
        "\u2728, 2728, SPARKLES",
        "\uD83C\uDF40, 1F340, FOUR LEAF CLOVER",
        "\uFFFD, FFFD, REPLACEMENT CHARACTER",
        "\uF004, F004, PRIVATE USE AREA F004",
        "\u0E01, E01, THAI CHARACTER KO KAI"
    })
    void othersAreHeldWithTheSignAndItsName(String sign, String code, String name) {
        String text = "Ada " + sign;
        OptionalInt missing = new Shaping(fonts.chain("sans", text)).missing(text);
        assertThat(missing).hasValue(Integer.parseInt(code, 16));
        assertThat(new TypeReason.GlyphMissing(text, missing.getAsInt()).message())
                .contains(sign, name);
    }

    /** A sign that asks for its drawing in colour, as telephones write it, is the plain one. */
    @Test
    void aHeartInColourIsAHeart() {
        Shaping shaping = new Shaping(fonts.chain("sans", "\u2665"));
        Shape coloured = shaping.line("\u2665\uFE0F", false);
        assertThat(apart(coloured, shaping.line("\u2665", false))).isLessThan(0.001);
    }

    private Font wideOf(String id, String text) {
        return fonts.chain(id, text).stream()
                .filter(font -> font.getFontName(Locale.ROOT).equals("DejaVu Sans"))
                .findFirst()
                .orElseThrow();
    }

    private static double height(Font font, String letter) {
        return height(new Shaping(List.of(font)), letter);
    }

    private static double height(Shaping shaping, String letter) {
        return Shaping.ink(shaping.line(letter, false)).getHeight();
    }

    /** The boxes of the single inks, from left to right; those that overlap are one. */
    private static List<Rectangle2D> inks(Shape shape) {
        List<Rectangle2D> boxes = new ArrayList<>();
        Path2D part = new Path2D.Double();
        double[] p = new double[6];
        for (var path = shape.getPathIterator(null, 0.1); !path.isDone(); path.next()) {
            int kind = path.currentSegment(p);
            if (kind == PathIterator.SEG_MOVETO) {
                part = new Path2D.Double();
                part.moveTo(p[0], p[1]);
            } else if (kind == PathIterator.SEG_LINETO) {
                part.lineTo(p[0], p[1]);
            } else {
                boxes.add(part.getBounds2D());
            }
        }
        boxes.sort(Comparator.comparing(Rectangle2D::getMinX));
        List<Rectangle2D> joined = new ArrayList<>();
        for (Rectangle2D box : boxes) {
            int last = joined.size() - 1;
            if (last >= 0 && joined.get(last).intersects(box)) {
                joined.set(last, joined.get(last).createUnion(box));
            } else {
                joined.add(box);
            }
        }
        return joined;
    }

    /** The share of the ink that only one of them has, both brought to one corner. */
    private static double apart(Shape one, Shape other) {
        Area a = atCorner(one);
        Area both = atCorner(one);
        Area b = atCorner(other);
        a.exclusiveOr(b);
        both.add(b);
        return size(a) / size(both);
    }

    private static Area atCorner(Shape shape) {
        Rectangle2D ink = Shaping.ink(shape);
        return new Area(AffineTransform.getTranslateInstance(-ink.getMinX(), -ink.getMinY())
                .createTransformedShape(shape));
    }

    private static double size(Area area) {
        double sum = 0;
        double[] p = new double[6];
        double x = 0;
        double y = 0;
        double startX = 0;
        double startY = 0;
        for (var path = area.getPathIterator(null, 0.1); !path.isDone(); path.next()) {
            int kind = path.currentSegment(p);
            double nextX = kind == PathIterator.SEG_CLOSE ? startX : p[0];
            double nextY = kind == PathIterator.SEG_CLOSE ? startY : p[1];
            if (kind == PathIterator.SEG_MOVETO) {
                startX = nextX;
                startY = nextY;
            } else {
                sum += (x * nextY - nextX * y) / 2;
            }
            x = nextX;
            y = nextY;
        }
        return Math.abs(sum);
    }
}
