package bandwright.pipeline.type;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.held.Outcome;
import bandwright.pipeline.held.Reason;
import bandwright.rules.designs.Align;
import bandwright.rules.designs.Anchor;
import bandwright.rules.designs.LetterCase;
import bandwright.rules.designs.TextField;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import bandwright.rules.units.Rgb;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TypeSettingTest {
    private static final Box BOX = new Box(Length.mm(10), Length.mm(5), Length.mm(60), Length.mm(20));

    private final TypeSetting setting = new TypeSetting(List.of());
    private final List<Reason> faults = new ArrayList<>();

    @ParameterizedTest
    @ValueSource(
            strings = {"Ada", "Grý Ångström", "Ιωάννης", "Йорик", "gjpqy", "A", "j", "Łódź Ő ň", "آدا", "שלום", "-", "♥"
            })
    void theInkFillsTheBoxOneWayAndNeverLeavesIt(String text) {
        SetText set = set(field(1, 1000, 0, Align.CENTRE), text).orElseThrow();
        Rectangle2D ink = set.outline().path().getBounds2D(); // with control points: never less than the ink
        assertThat(ink.getMinX()).isGreaterThan(9.0);
        assertThat(ink.getMaxX()).isLessThan(71.0);
        assertThat(set.ink().x().mm()).isGreaterThanOrEqualTo(9.999);
        assertThat(set.ink().right().mm()).isLessThanOrEqualTo(70.001);
        assertThat(set.ink().y().mm()).isGreaterThanOrEqualTo(4.999);
        assertThat(set.ink().top().mm()).isLessThanOrEqualTo(25.001);
        boolean isFull = set.ink().width().mm() > 59.99 || set.ink().height().mm() > 19.99;
        assertThat(isFull).as("as large as the box allows: %s", set.ink()).isTrue();
    }

    @Test
    void theLargestSizeIsKept() {
        SetText set = set(field(1, 12, 0, Align.CENTRE), "Ada").orElseThrow();
        assertThat(set.size().inches() * 72).isBetween(11.999, 12.001);
    }

    @Test
    void aTextThatOnlyFitsTooSmallIsAFault() {
        assertThat(set(field(1, 60, 40, Align.CENTRE), "Bartholomew of the Outer Skerries"))
                .isEmpty();
        assertThat(faults)
                .containsExactly(new TypeReason.TextTooLong("name", "Bartholomew of the Outer Skerries", "40"));
    }

    @Test
    void twoLinesAreTakenWhereTheyAreLarger() {
        Length one = set(field(1, 1000, 0, Align.CENTRE), "Keeper Josiah Brannock")
                .orElseThrow()
                .size();
        Length two = set(field(2, 1000, 0, Align.CENTRE), "Keeper Josiah Brannock")
                .orElseThrow()
                .size();
        assertThat(two.longerThan(one)).isTrue();
    }

    @Test
    void aLargerBoxNeverGivesSmallerType() {
        Length last = Length.ZERO;
        for (int width = 10; width <= 120; width += 10) {
            Box box = Box.of(Length.mm(width), Length.mm(20));
            Length size = set(field(3, 1000, 0, Align.LEFT), "Nether Skerry Rowing Club", box)
                    .orElseThrow()
                    .size();
            assertThat(last.longerThan(size)).as("%d mm", width).isFalse();
            last = size;
        }
    }

    /** Names of any script in boxes of any shape: the ink stays in, and more room never makes type smaller. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void inkStaysInItsBoxAndMoreRoomNeverMakesTypeSmaller(long seed) {
        String[] scraps = {
            "Ada",
            "Grý",
            "Mary-Jane",
            "gjpqy",
            "Ιωάννα",
            "Йорик",
            "שלום",
            "آدا",
            "12",
            "♥",
            "\uD83D\uDC15",
            "(J)",
            "Õ\u0323f",
            "W"
        };
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 12; i++) {
            String text = random.ints(random.nextInt(1, 5), 0, scraps.length)
                    .mapToObj(n -> scraps[n])
                    .collect(Collectors.joining(" "));
            Align align = List.of(Align.LEFT, Align.CENTRE, Align.RIGHT).get(random.nextInt(3));
            TextField field = field(random.nextInt(1, 4), 1000, 0, align);
            Box box = sized(random.nextDouble(5, 150), random.nextDouble(5, 60));
            Box larger = sized(
                    box.width().mm() * random.nextDouble(1, 1.6), box.height().mm() * random.nextDouble(1, 1.6));
            SetText set = set(field, text, box).orElseThrow();
            Rectangle2D ink = Shaping.ink(set.outline().path());
            assertThat(ink.getMinX())
                    .as("seed %d: %s", seed, text)
                    .isGreaterThan(box.x().mm() - 0.002);
            assertThat(ink.getMaxX())
                    .as("seed %d: %s", seed, text)
                    .isLessThan(box.right().mm() + 0.002);
            assertThat(ink.getMinY())
                    .as("seed %d: %s", seed, text)
                    .isGreaterThan(box.y().mm() - 0.002);
            assertThat(ink.getMaxY())
                    .as("seed %d: %s", seed, text)
                    .isLessThan(box.top().mm() + 0.002);
            Length size = set(field, text, larger).orElseThrow().size();
            assertThat(set.size().longerThan(size))
                    .as("seed %d: %s", seed, text)
                    .isFalse();
        }
    }

    @Test
    void linesAreAlignedByTheirInk() {
        assertThat(set(field(1, 12, 0, Align.LEFT), "Ada")
                        .orElseThrow()
                        .ink()
                        .x()
                        .mm())
                .isBetween(9.999, 10.001);
        assertThat(set(field(1, 12, 0, Align.RIGHT), "Ada")
                        .orElseThrow()
                        .ink()
                        .right()
                        .mm())
                .isBetween(69.999, 70.001);
    }

    @Test
    void aCharacterThatNoFontHasIsNamed() {
        assertThat(set(field(1, 60, 0, Align.CENTRE), "Ada \u0917")).isEmpty();
        assertThat(faults).containsExactly(new TypeReason.GlyphMissing("Ada \u0917", 0x917));
    }

    @Test
    void whatOneFontLacksTheWideOneSets() {
        assertThat(set(field(1, 60, 0, Align.CENTRE), "Ada \u2764")).isPresent();
        assertThat(faults).isEmpty();
    }

    @Test
    void nothingIsSetOfNothing() {
        assertThat(set(field(1, 60, 0, Align.CENTRE), "  ")).isEmpty();
        assertThat(faults).isEmpty();
    }

    @Test
    void kerningDrawsLettersTogether() {
        TextField field = field(1, 60, 0, Align.LEFT);
        Length apart = set(field, "A")
                .orElseThrow()
                .ink()
                .width()
                .plus(set(field, "V").orElseThrow().ink().width());
        assertThat(apart.longerThan(set(field, "AV").orElseThrow().ink().width().plus(Length.mm(1))))
                .isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"UPPER,ada o'hara-pell,ADA O'HARA-PELL", "LOWER,ADA,ada", "TITLE,ADA O'HARA-PELL,Ada O'hara-Pell"
            })
    void theCaseOfLettersIsSetAsTheFieldSays(String row) {
        String[] cells = row.split(",", -1);
        Optional<LetterCase> letters = Optional.of(LetterCase.valueOf(cells[0]));
        Outline cased = set(field(letters), cells[1]).orElseThrow().outline();
        Outline typed = set(field(Optional.empty()), cells[2]).orElseThrow().outline();
        assertThat(cased).isEqualTo(typed);
    }

    private static Box sized(double width, double height) {
        return new Box(Length.mm(10), Length.mm(5), Length.mm(width), Length.mm(height));
    }

    private Optional<SetText> set(TextField field, String text) {
        return set(field, text, BOX);
    }

    private Optional<SetText> set(TextField field, String text, Box box) {
        Outcome<Optional<SetText>> outcome = setting.set(field, text, box);
        if (outcome instanceof Outcome.Held<Optional<SetText>> held) {
            faults.add(held.reason());
            return Optional.empty();
        }
        return ((Outcome.Made<Optional<SetText>>) outcome).value();
    }

    private static TextField field(int lines, double most, double least, Align align) {
        return field(lines, most, least, align, Optional.empty());
    }

    private static TextField field(Optional<LetterCase> letters) {
        return field(1, 1000, 0, Align.CENTRE, letters);
    }

    private static TextField field(int lines, double most, double least, Align align, Optional<LetterCase> letters) {
        return new TextField(
                "tern",
                "name",
                Optional.empty(),
                Anchor.BAND,
                0,
                0,
                100,
                100,
                lines,
                "sans",
                Length.inches(most / 72),
                Length.inches(least / 72),
                new Rgb(0, 0, 0),
                align,
                letters,
                Locale.ROOT,
                OptionalInt.empty(),
                true,
                "",
                "");
    }
}
