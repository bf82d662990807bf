package bandwright.rules.table;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.rules.units.Length;
import bandwright.rules.units.LengthUnit;
import bandwright.rules.units.Rgb;
import bandwright.rules.units.ShopUnits;
import bandwright.rules.units.TemperatureUnit;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class CellTest {
    private static final ShopUnits INCHES = ShopUnits.BUILT_IN;
    private static final ShopUnits METRIC = new ShopUnits(LengthUnit.MM, TemperatureUnit.C);
    private final Faults faults = new Faults();

    private Cell cell(String text, ShopUnits units) {
        return new Cell(new Place("blanks.csv", 2, "height"), text, units, faults);
    }

    private Cell cell(String text) {
        return cell(text, INCHES);
    }

    private String cure() {
        assertThat(faults.sorted()).hasSize(1);
        return faults.sorted().get(0).cure();
    }

    private String fault() {
        assertThat(faults.sorted()).hasSize(1);
        return faults.sorted().get(0).line();
    }

    /** 1 in = 25.4 mm (international yard, 1959), so every one of these is exact in nanometres. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            quoteCharacter = '~',
            value = {
                "9 7/8 in; 250825000",
                "9.875 in; 250825000",
                "9.875\"; 250825000",
                "9.875; 250825000",
                "10-1/4 inches; 260350000",
                "9⅞ in; 250825000",
                "1/64 in; 396875",
                "7/8 in; 22225000",
                "260 mm; 260000000",
                "260mm; 260000000",
                "26 cm; 260000000",
                ".5 in; 12700000",
                "0.1 mm; 100000",
                "0 in; 0",
                "0; 0",
                "-2 mm; -2000000",
                "−2 mm; -2000000",
                "8 1/4 In.; 209550000"
            })
    void aLengthIsReadExactly(String text, long nanometres) {
        Plausible any = new Plausible(0, 1000, Plausible.Sign.ANY);
        assertThat(cell(text).length(any)).contains(new Length(nanometres));
        assertThat(faults.sorted()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "NaN",
                "1e999",
                "Infinity",
                "9,5 mm",
                "1,000 mm",
                "ten",
                "1/0 in",
                "9 feet",
                "3'",
                "mm",
                "--2 mm",
                "9 7/8 1/2 in",
                "99999999999999 mm",
                "999999 in",
                "0x10",
                "1 in in",
                "=1+1",
                "\u0000",
                "٣ mm",
                "1/2/3 in"
            })
    void aTextThatIsNoLengthHasACure(String text) {
        assertThat(cell(text).length(Plausible.SIZE)).isEmpty();
        assertThat(cure()).isNotBlank();
    }

    @Test
    void aLengthKeepsItsSign() {
        assertThat(cell("-3 mm").length(Plausible.MARGIN)).isEmpty();
        assertThat(cell("0 mm").length(Plausible.SIZE)).isEmpty();
        assertThat(faults.sorted()).hasSize(2);
        assertThat(cell("-3 mm").length(Plausible.EDGE)).contains(Length.mm(-3));
    }

    @Test
    void aBareNumberInAnInchShopThatCanOnlyBeMillimetresIsAskedBack() {
        assertThat(cell("260").length(Plausible.CIRCUMFERENCE)).isEmpty();
        assertThat(fault()).contains("260 means 260 in here (6604 mm)").contains("Did you mean 260 mm?");
    }

    @Test
    void aBareNumberInAMillimetreShopThatCanOnlyBeInchesIsAskedBack() {
        assertThat(cell("8.25", METRIC).length(Plausible.CIRCUMFERENCE)).isEmpty();
        assertThat(fault()).contains("8.25 means 8.25 mm here").contains("Did you mean 8.25 in?");
    }

    @Test
    void aBareNumberThatMakesSenseIsInTheShopsUnit() {
        assertThat(cell("9 7/8").length(Plausible.CIRCUMFERENCE)).contains(Length.mm(250.825));
        assertThat(cell("260", METRIC).length(Plausible.CIRCUMFERENCE)).contains(Length.mm(260));
        assertThat(cell("26", new ShopUnits(LengthUnit.CM, TemperatureUnit.C)).length(Plausible.CIRCUMFERENCE))
                .contains(Length.mm(260));
        assertThat(faults.sorted()).isEmpty();
    }

    @Test
    void aBareNumberThatMakesSenseInNoUnitIsAFault() {
        assertThat(cell("99999").length(Plausible.CIRCUMFERENCE)).isEmpty();
        assertThat(cure()).isEqualTo("Check the number, and write its unit in the cell.");
    }

    @Test
    void everyLengthReadsBackAsPrinted() {
        long seed = 20260302;
        SplittableRandom random = new SplittableRandom(seed);
        Plausible any = new Plausible(0, 1e9, Plausible.Sign.ANY);
        for (int i = 0; i < 5_000; i++) {
            Length length = new Length(random.nextLong(-9_000_000_000L, 9_000_000_000L));
            assertThat(cell(length.toString(), METRIC).length(any))
                    .as("seed %d, try %d: %s", seed, i, length)
                    .contains(length);
        }
    }

    @ParameterizedTest
    @CsvSource({"60 pt, 21166667", "60, 21166667", "72 pt, 25400000", "20 mm, 20000000", "3/4 in, 19050000"})
    void aTypePointIsASeventySecondOfAnInch(String text, long nanometres) {
        assertThat(cell(text).typeSize()).contains(new Length(nanometres));
    }

    @ParameterizedTest
    @ValueSource(strings = {"big", "60 px", "0 pt", "-3 pt", "1e9"})
    void aTextThatIsNoTypeSizeHasACure(String text) {
        assertThat(cell(text).typeSize()).isEmpty();
        assertThat(cure()).isNotBlank();
    }

    @ParameterizedTest
    @CsvSource({
        "3 min, 180",
        "90 s, 90",
        "90s, 90",
        "1 h, 3600",
        "1 h 30 min, 5400",
        "1h30min, 5400",
        "1.5 min, 90",
        "0, 0",
        "0 s, 0",
        "2 Min., 120"
    })
    void aTimeIsReadInSeconds(String text, int seconds) {
        assertThat(cell(text).seconds()).isEqualTo(seconds);
        assertThat(faults.sorted()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "3",
                "3:30",
                "soon",
                "-3 min",
                "3 min soon",
                "0.5 s",
                "25 h",
                "3 weeks",
                "min",
                "1e3 s",
                "999999 h 1 h"
            })
    void aTextThatIsNoTimeHasACure(String text) {
        assertThat(cell(text).seconds()).isZero();
        assertThat(cure()).isNotBlank();
    }

    @Test
    void aBareTimeIsAskedForItsUnit() {
        cell("180").seconds();
        assertThat(cure()).isEqualTo("Write 180 s, 180 min or 180 h, whichever it is.");
    }

    @ParameterizedTest
    @CsvSource({
        "190 C, 190",
        "190C, 190",
        "190 °C, 190",
        "374 F, 190",
        "374, 190",
        "374 °f, 190",
        "374℉, 190",
        "60 C, 60",
        "500 F, 260"
    })
    void aTemperatureIsKeptInCelsius(String text, double celsius) {
        assertThat(cell(text).temperature().orElseThrow().celsius())
                .isCloseTo(celsius, org.assertj.core.data.Offset.offset(1e-9));
    }

    @ParameterizedTest
    @ValueSource(strings = {"hot", "190 K", "NaN C", "-190 C", "0", "1e3 F", "1000 F", "20 C"})
    void aTextThatIsNoPressTemperatureHasACure(String text) {
        assertThat(cell(text).temperature()).isEmpty();
        assertThat(cure()).isNotBlank();
    }

    @Test
    void aTemperatureInTheWrongUnitIsAskedBack() {
        cell("375", METRIC).temperature();
        assertThat(cure()).startsWith("Check the unit: did you mean F?");
    }

    /** Copied from a listing in Celsius into a shop that reads Fahrenheit: 88 C would ruin the blank. */
    @ParameterizedTest
    @ValueSource(strings = {"180", "190", "200", "220"})
    void aBareCelsiusFigureInAFahrenheitShopIsAskedBack(String text) {
        assertThat(cell(text).temperature()).isEmpty();
        assertThat(cure()).startsWith("Check the unit: did you mean C?");
    }

    @Test
    void aLowTemperatureWithItsUnitIsTaken() {
        assertThat(cell("190 F").temperature()).isPresent();
        assertThat(cell("100", METRIC).temperature()).isPresent();
        assertThat(faults.sorted()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"20 %, 20", "20, 20", "20%, 20", "12.5 %, 12.5", "0, 0"})
    void aPercentageIsRead(String text, double percent) {
        assertThat(cell(text).percent(0, 100)).contains(percent);
    }

    @ParameterizedTest
    @CsvSource({"3 %, 0.03", "3, 0.03", "35%, 0.35", "0, 0"})
    void aShareIsReadInPercent(String text, double share) {
        assertThat(cell(text).share(100)).contains(share);
    }

    @Test
    void aBareShareOfOneIsAskedBack() {
        assertThat(cell("0.03").share(100)).isEmpty();
        assertThat(cure()).contains("3 %");
    }

    @Test
    void theBoundsOfANumberAreIncluded() {
        assertThat(cell("1").integer(1, 10)).contains(1);
        assertThat(cell("10").integer(1, 10)).contains(10);
        assertThat(cell("0.5").number("", 0.5, 2)).contains(0.5);
        assertThat(cell("2").number("", 0.5, 2)).contains(2.0);
        assertThat(cell("1 1/2").number("", 0.5, 2)).contains(1.5);
        assertThat(cell("100 %").percent(0, 100)).contains(100.0);
        assertThat(cell("1").share(100)).contains(0.01);
        assertThat(faults.sorted()).isEmpty();
    }

    @Test
    void aNumberInAnotherUnitIsAskedBack() {
        assertThat(cell("120 A").number("v", 1, 1000)).isEmpty();
        assertThat(cell("3 mm").integer(1, 10)).isEmpty();
        assertThat(cell("20 mm").percent(0, 100)).isEmpty();
        assertThat(faults.sorted()).hasSize(3);
    }

    @Test
    void numbersKeepTheirBounds() {
        assertThat(cell("3.0").integer(1, 10)).contains(3);
        assertThat(cell("120 V").number("v", 1, 1000)).contains(120.0);
        assertThat(cell("2.5").integer(1, 10)).isEmpty();
        assertThat(cell("11").integer(1, 10)).isEmpty();
        assertThat(cell("NaN").number("", 0, 1)).isEmpty();
        assertThat(cell("1e999").number("", 0, 1)).isEmpty();
        assertThat(faults.sorted()).hasSize(4);
    }

    @Test
    void aColourIsReadAsOnTheWeb() {
        assertThat(cell("#1A2b3C").colour()).contains(new Rgb(0x1A, 0x2B, 0x3C));
        assertThat(cell("#f0c").colour()).contains(new Rgb(255, 0, 0xCC));
        assertThat(cell("#1b7").colour()).contains(new Rgb(0x11, 0xBB, 0x77));
        assertThat(cell("1A2B3C").colour()).isEmpty();
        assertThat(cure()).contains("#1A2B3C");
    }

    @Test
    void datesAndClocksAreRead() {
        assertThat(cell("2026-03-02").date()).contains(java.time.LocalDate.of(2026, 3, 2));
        assertThat(cell("9:05").clock()).contains(java.time.LocalTime.of(9, 5));
        assertThat(faults.sorted()).isEmpty();
        assertThat(cell("02/03/2026").date()).isEmpty();
        assertThat(cell("2026-02-30").date()).isEmpty();
        assertThat(cell("24:00").clock()).isEmpty();
        assertThat(faults.sorted()).hasSize(3);
    }

    @Test
    void aWordIsFoundWhateverItsCapitalsAndSpaces() {
        assertThat(cell(" From  MEMORY ").word(Evidence.values())).contains(Evidence.FROM_MEMORY);
        assertThat(cell("").word(Evidence.values())).isEmpty();
        assertThat(faults.sorted()).isEmpty();
    }

    @Test
    void anUnknownWordNamesTheNearestAndAll() {
        assertThat(cell("from memroy").word(Evidence.values())).isEmpty();
        assertThat(cure())
                .contains("Did you mean from memory?")
                .contains("measured, supplier listing, common practice, from memory");
    }

    @Test
    void aMessageIsOneLineWhateverTheCellHolds() {
        cell("a\nb\u001b[31m\u202e" + "x".repeat(500)).colour();
        assertThat(fault()).doesNotContain("\n", "\u001b", "\u202e").hasSizeLessThan(300);
    }
}
