package bandwright.rules.blanks;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.rules.heat.HeatKind;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.sample.SampleBlank;
import bandwright.rules.sample.SampleHeatSource;
import bandwright.rules.units.Length;
import bandwright.rules.units.LengthUnit;
import java.math.BigDecimal;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class BandSumTest {
    private static final HeatSource PRESS = SampleHeatSource.of(HeatKind.MUG_PRESS)
            .clearance(Length.inches(0.5))
            .source();
    private static final HeatSource OVEN = SampleHeatSource.of(HeatKind.OVEN).source();

    @Test
    void aMugOnAnInchTape() {
        SampleBlank mug = SampleBlank.cylinder(Length.inches(10.5), Length.inches(3.75))
                .handle(Length.inches(1.125))
                .margins(Length.inches(0.125), Length.inches(0.25));
        BandSum sum = sum(mug, PRESS, LengthUnit.IN);
        assertThat(sum.around()).isEqualTo("10 1/2 - 1 1/8 - 2 x 1/2 = 8 3/8 in (212.73 mm)");
        assertThat(sum.up()).isEqualTo("3 3/4 - 1/8 - 1/4 = 3 3/8 in (85.73 mm)");
        assertThat(sum.more()).isEmpty();
    }

    /** A fact of the trade: 10 1/4 in round, 1 in of handle, 1/2 in of clearance. Common practice, no source. */
    @Test
    void anOvenLetsThePrintRunUpToTheHandle() {
        SampleBlank mug =
                SampleBlank.cylinder(Length.inches(10.25), Length.inches(3.75)).handle(Length.inches(1));
        assertThat(sum(mug, PRESS, LengthUnit.IN).around()).startsWith("10 1/4 - 1 - 2 x 1/2 = 8 1/4 in");
        assertThat(sum(mug, OVEN, LengthUnit.IN).around()).startsWith("10 1/4 - 1 = 9 1/4 in");
    }

    @Test
    void millimetresStayMillimetres() {
        SampleBlank mug = SampleBlank.cylinder(Length.mm(257.61), Length.mm(95)).handle(Length.mm(22));
        assertThat(sum(mug, OVEN, LengthUnit.MM).around()).isEqualTo("257.61 - 22 = 235.61 mm");
        assertThat(sum(mug, OVEN, LengthUnit.CM).around()).isEqualTo("25.761 - 2.2 = 23.561 cm");
        // Off the inch tape a shop in inches reads the millimetres that were measured, and the inches beside them.
        assertThat(sum(mug, OVEN, LengthUnit.IN).around()).isEqualTo("257.61 - 22 = 235.61 mm (9.28 in)");
    }

    @Test
    void aCoasterPrintsPastItsEdge() {
        SampleBlank coaster = SampleBlank.flat(Length.mm(95), Length.mm(90))
                .sideMargin(Length.mm(-2.5))
                .margins(Length.mm(-2), Length.mm(-3));
        BandSum sum = sum(coaster, OVEN, LengthUnit.MM);
        assertThat(sum.around()).isEqualTo("95 + 2 x 2.5 = 100 mm");
        assertThat(sum.up()).isEqualTo("90 + 2 + 3 = 95 mm");
    }

    /** The sums of the cone mug were worked by hand. */
    @Test
    void aConeIsLaidFlatInWords() {
        SampleBlank cone = SampleBlank.cone(88, 62, 101)
                .margins(Length.mm(3), Length.mm(8))
                .handle(Length.mm(20));
        HeatSource press = SampleHeatSource.of(HeatKind.MUG_PRESS)
                .clearance(Length.mm(12.7))
                .source();
        BandSum sum = sum(cone, press, LengthUnit.MM);
        assertThat(sum.around()).contains("45.4 gap").endsWith("= 184 mm");
        assertThat(sum.up()).isEqualTo("101.83 - 3 - 8 = 90.83 mm");
        assertThat(String.join(" ", sum.more())).contains("212.21 mm", "155.8 mm", "208.82 x 102.83 mm");
    }

    /** A wall that hardly leans: 257.34 (1 - 26 / 257.32) is what it would be, 200 what the press heats. */
    @Test
    void aConesSumComesToWhatItWouldBeIfNothingCutIt() {
        SampleBlank cone = SampleBlank.cone(82, 81.9, 95).handle(Length.mm(20));
        HeatSource press = SampleHeatSource.of(HeatKind.MUG_PRESS)
                .clearance(Length.mm(3))
                .maxBandWidth(Length.mm(200))
                .source();
        BandSum sum = sum(cone, press, LengthUnit.MM);
        assertThat(sum.around()).contains("(1 - 26 gap").doesNotContain("= 200 mm");
        assertThat(sum.more()).anySatisfy(line -> assertThat(line).contains("leaves 200 of 231.4"));
    }

    @Test
    void aConesSumIsSaidInTheShopsUnitToo() {
        BandSum cup = sum(
                SampleBlank.cone(88, 60, 150),
                SampleHeatSource.of(HeatKind.OVEN).source(),
                LengthUnit.IN);
        assertThat(cup.around()).isEqualTo("232.48 mm (9.15 in), the round half-way up");
    }

    @Test
    void whatAPressCutsAndWhatAWrapAddsAreSaid() {
        SampleBlank tumbler = SampleBlank.cylinder(Length.mm(230), Length.mm(130))
                .overlap(Length.mm(2))
                .bleeds(Length.mm(1), Length.mm(1.5));
        HeatSource low = SampleHeatSource.of(HeatKind.OVEN)
                .maxBandHeight(Length.mm(120.65))
                .source();
        assertThat(sum(tumbler, low, LengthUnit.MM).more())
                .containsExactly(
                        "max_band_height of heat-sources.csv leaves 120.65 of 130 mm.",
                        "A full wrap, with its overlap: 230 + 2 = 232 mm.",
                        "With its bleeds: 120.65 + 1 + 1.5 = 123.15 mm.");
    }

    /** Worked out again from the printed line alone. */
    @ParameterizedTest
    @EnumSource(LengthUnit.class)
    void whatIsPrintedAddsUp(LengthUnit unit) {
        int exact = 0;
        for (long seed = 1; seed <= 300; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            SampleBlank mug = SampleBlank.cylinder(any(random, 200, 100), any(random, 90, 60))
                    .handle(any(random, 15, 20))
                    .margins(any(random, 1, 9), any(random, 1, 9));
            BandSum sum = sum(mug, PRESS, unit);
            for (String line : new String[] {sum.around(), sum.up()}) {
                boolean isExact = line.contains(" = ");
                String[] sides = line.split(" = | is about ", -1);
                BigDecimal left = BigDecimal.ZERO;
                for (String term : sides[0].split(" - ", -1)) {
                    left = left.signum() == 0 ? product(term) : left.subtract(product(term));
                }
                String printed = sides[1].replaceAll(" (in|mm|cm)\\b.*", "");
                if (isExact) {
                    exact++;
                    assertThat(product(printed)).as("seed %d: %s", seed, line).isEqualByComparingTo(left);
                } else {
                    assertThat(product(printed).subtract(left).abs())
                            .as("seed %d: %s", seed, line)
                            .isLessThan(new BigDecimal("0.05"));
                }
            }
        }
        assertThat(exact).isGreaterThan(300);
    }

    private static Length any(SplittableRandom random, int least, int more) {
        int mm = least + random.nextInt(more);
        return switch (random.nextInt(3)) {
            case 0 -> Length.mm(mm);
            case 1 -> Length.inches(Math.round(mm / 25.4 * 64) / 64.0);
            default -> Length.mm(mm + random.nextDouble());
        };
    }

    private static BigDecimal product(String term) {
        String[] factors = term.strip().split(" x ", -1);
        BigDecimal product = BigDecimal.ONE;
        for (String factor : factors) {
            product = product.multiply(number(factor));
        }
        return product;
    }

    private static BigDecimal number(String text) {
        BigDecimal number = BigDecimal.ZERO;
        for (String part : text.split(" ", -1)) {
            String[] fraction = part.split("/", -1);
            number = number.add(
                    fraction.length == 1
                            ? new BigDecimal(part)
                            : new BigDecimal(fraction[0]).divide(new BigDecimal(fraction[1])));
        }
        return number;
    }

    private static BandSum sum(SampleBlank blank, HeatSource source, LengthUnit unit) {
        return BandSum.of(
                blank.blank(), source, BandLaw.of(blank.blank(), source).orElseThrow(), unit);
    }
}
