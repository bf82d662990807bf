package bandwright.rules.heat;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.rules.blanks.BandLaw;
import bandwright.rules.blanks.Blank;
import bandwright.rules.blanks.Material;
import bandwright.rules.heat.HeatChoice.Refusal;
import bandwright.rules.heat.HeatChoice.Why;
import bandwright.rules.sample.SampleBlank;
import bandwright.rules.sample.SampleHeatSource;
import bandwright.rules.sample.SampleSetting;
import bandwright.rules.table.Evidence;
import bandwright.rules.units.Length;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class HeatChoiceTest {
    private static final HeatSource CLAMP =
            SampleHeatSource.of(HeatKind.MUG_PRESS).id("clamp").source();
    private static final HeatSource TUMBLER =
            SampleHeatSource.of(HeatKind.TUMBLER_PRESS).id("tumbler").source();
    private static final HeatSource OVEN =
            SampleHeatSource.of(HeatKind.OVEN).id("oven").source();
    private static final HeatSource FLAT =
            SampleHeatSource.of(HeatKind.FLAT_PRESS).id("flat").source();
    private static final HeatSources ALL = new HeatSources(List.of(CLAMP, TUMBLER, OVEN, FLAT));

    private static SampleBlank mug() {
        return SampleBlank.cylinder(Length.mm(257), Length.mm(95)).sku("MUG").handle(Length.mm(22));
    }

    /** Every material yes in every kind of heat source. */
    private static PressSettings anything() {
        List<PressSetting> rows = new ArrayList<>();
        for (Material material : Material.values()) {
            for (HeatKind kind : HeatKind.values()) {
                rows.add(SampleSetting.yes(material, kind));
            }
        }
        return new PressSettings(rows);
    }

    @Test
    void glassRefusesAPressThatSaysNoAndTakesTheOven() {
        PressSettings settings = new PressSettings(List.of(
                SampleSetting.of(Material.GLASS, HeatKind.MUG_PRESS, Allowed.NO),
                SampleSetting.of(Material.GLASS, HeatKind.TUMBLER_PRESS, Allowed.NO),
                SampleSetting.yes(Material.GLASS, HeatKind.OVEN)));
        HeatChoice choice =
                HeatChoice.among(ALL.list(), mug().of(Material.GLASS).blank(), settings);
        assertThat(choice.chosen().orElseThrow().source()).isEqualTo(OVEN);
        assertThat(choice.refusals())
                .containsExactly(new Refusal(CLAMP, Why.NOT_ALLOWED), new Refusal(TUMBLER, Why.NOT_ALLOWED));
    }

    @Test
    void aWishForThePressIsNotReplacedByTheOven() {
        PressSettings settings = new PressSettings(List.of(
                SampleSetting.of(Material.GLASS, HeatKind.MUG_PRESS, Allowed.NO),
                SampleSetting.yes(Material.GLASS, HeatKind.OVEN)));
        HeatChoice choice =
                HeatChoice.among(List.of(CLAMP), mug().of(Material.GLASS).blank(), settings);
        assertThat(choice.chosen()).isEmpty();
        assertThat(choice.refusals()).containsExactly(new Refusal(CLAMP, Why.NOT_ALLOWED));
    }

    @Test
    void ifListedMeansOnlyWhereARowOfThatVerySkuSaysYes() {
        PressSetting general = SampleSetting.of(Material.METAL, HeatKind.MUG_PRESS, Allowed.IF_LISTED);
        PressSetting listing = SampleSetting.ofSku("mug", HeatKind.MUG_PRESS, Allowed.YES, Evidence.SUPPLIER_LISTING);
        PressSettings both = new PressSettings(List.of(general, listing));
        Blank listed = mug().of(Material.METAL).blank();
        Blank other = mug().of(Material.METAL).sku("CUP").blank();
        assertThat(HeatChoice.among(List.of(CLAMP), listed, both)
                        .chosen()
                        .orElseThrow()
                        .setting())
                .isEqualTo(listing);
        assertThat(HeatChoice.among(List.of(CLAMP), other, both).refusals())
                .containsExactly(new Refusal(CLAMP, Why.NOT_LISTED));
    }

    @Test
    void aRowOfTheSkuThatSaysNoWinsOverItsMaterial() {
        PressSettings settings = new PressSettings(List.of(
                SampleSetting.yes(Material.CERAMIC, HeatKind.MUG_PRESS),
                SampleSetting.ofSku("MUG", HeatKind.MUG_PRESS, Allowed.NO, Evidence.MEASURED)));
        assertThat(HeatChoice.among(List.of(CLAMP), mug().blank(), settings).refusals())
                .containsExactly(new Refusal(CLAMP, Why.NOT_ALLOWED));
    }

    @Test
    void noRowMeansNotAllowedAndSoDoesARowWithoutFigures() {
        PressSettings none = new PressSettings(List.of());
        PressSettings empty =
                new PressSettings(List.of(SampleSetting.withoutFigures(Material.CERAMIC, HeatKind.MUG_PRESS)));
        for (PressSettings settings : List.of(none, empty)) {
            assertThat(HeatChoice.among(List.of(CLAMP), mug().blank(), settings).refusals())
                    .containsExactly(new Refusal(CLAMP, Why.NO_SETTING));
        }
    }

    @Test
    void aRowThatSaysHowHotButNotHowLongIsNoSetting() {
        PressSetting hot = SampleSetting.yes(Material.CERAMIC, HeatKind.MUG_PRESS);
        PressSetting endless = new PressSetting(
                hot.material(),
                hot.kind(),
                "",
                hot.temperature(),
                0,
                UsualRange.NOT_SAID,
                "medium",
                Allowed.YES,
                false,
                "",
                "",
                List.of(),
                Evidence.MEASURED,
                "");
        assertThat(HeatChoice.among(List.of(CLAMP), mug().blank(), new PressSettings(List.of(endless)))
                        .refusals())
                .containsExactly(new Refusal(CLAMP, Why.NO_SETTING));
    }

    @Test
    void aWallMayLeanAsFarAsMaxTaperAndNoFurther() {
        Blank cone = SampleBlank.cone(80, 70, 100).blank();
        double lean = BandLaw.taperDegrees(cone);
        HeatSource takesIt =
                SampleHeatSource.of(HeatKind.TUMBLER_PRESS).maxTaper(lean).source();
        HeatSource refuses = SampleHeatSource.of(HeatKind.TUMBLER_PRESS)
                .maxTaper(Math.nextDown(lean))
                .source();
        assertThat(HeatChoice.among(List.of(takesIt), cone, anything()).chosen())
                .isPresent();
        assertThat(HeatChoice.among(List.of(refuses), cone, anything()).refusals())
                .containsExactly(new Refusal(refuses, Why.LEANS_TOO_MUCH));
    }

    @Test
    void theBlanksOwnListComesBeforeTheTablesOrder() {
        Blank blank = mug().heatSources("oven", "Clamp", "gone").blank();
        assertThat(HeatChoice.candidates(blank, ALL)).containsExactly(OVEN, CLAMP);
        assertThat(HeatChoice.candidates(mug().blank(), ALL)).isEqualTo(ALL.list());
        HeatChoice choice = HeatChoice.among(HeatChoice.candidates(blank, ALL), blank, anything());
        assertThat(choice.chosen().orElseThrow().source()).isEqualTo(OVEN);
        assertThat(choice.refusals()).isEmpty();
    }

    @Test
    void aCoasterGoesUnderAFlatPressOrIntoAnOvenAndAMugNeverUnderAFlatPress() {
        Blank coaster = SampleBlank.flat(Length.mm(95), Length.mm(95)).blank();
        HeatChoice choice = HeatChoice.among(List.of(CLAMP, TUMBLER, FLAT, OVEN), coaster, anything());
        assertThat(choice.chosen().orElseThrow().source()).isEqualTo(FLAT);
        assertThat(choice.refusals())
                .containsExactly(new Refusal(CLAMP, Why.FLAT_NOT_HERE), new Refusal(TUMBLER, Why.FLAT_NOT_HERE));
        assertThat(HeatChoice.among(List.of(OVEN), coaster, anything()).chosen())
                .isPresent();
        assertThat(HeatChoice.among(List.of(FLAT), mug().blank(), anything()).refusals())
                .containsExactly(new Refusal(FLAT, Why.ROUND_NOT_HERE));
    }

    @Test
    void aMugMustFitBetweenTheDiametersBothIncluded() {
        Blank blank =
                SampleBlank.cylinder(Length.mm(82 * Math.PI), Length.mm(95)).blank();
        assertThat(refusedBy(82, 82, blank)).isEmpty();
        assertThat(refusedBy(70, 81.9, blank)).containsExactly(Why.TOO_WIDE);
        assertThat(refusedBy(82.1, 95, blank)).containsExactly(Why.TOO_NARROW);
    }

    @Test
    void bothEndsOfAConeMustFitButOnlyWhereItIsPrinted() {
        SampleBlank cone = SampleBlank.cone(80, 70, 100);
        assertThat(refusedBy(71, 90, cone.blank())).containsExactly(Why.TOO_NARROW);
        assertThat(refusedBy(60, 79, cone.blank())).containsExactly(Why.TOO_WIDE);
        // 15 mm up from the foot the wall is 71.5 mm across, 15 mm below the rim 78.5 mm.
        Blank between = cone.margins(Length.mm(15), Length.mm(15)).blank();
        assertThat(refusedBy(71, 79, between)).isEmpty();
    }

    @Test
    void aPressWithoutALimitOfItsOwnTakesWallsThatLeanLittle() {
        // atan(1.05 / 100) = 0.6016 degrees, atan(1.04 / 100) = 0.5959
        Blank steep = SampleBlank.cone(82.1, 80, 100).blank();
        Blank almost = SampleBlank.cone(82.08, 80, 100).blank();
        for (HeatSource press : List.of(CLAMP, TUMBLER)) {
            assertThat(HeatChoice.among(List.of(press), steep, anything()).refusals())
                    .containsExactly(new Refusal(press, Why.LEANS_TOO_MUCH));
            assertThat(HeatChoice.among(List.of(press), almost, anything()).chosen())
                    .isPresent();
        }
        assertThat(HeatChoice.among(List.of(OVEN), SampleBlank.cone(110, 60, 80).blank(), anything())
                        .chosen())
                .isPresent();
    }

    @Test
    void aLimitInTheTableCountsForAnOvenAndAPressAlike() {
        Blank cone = SampleBlank.cone(88, 62, 101).blank();
        HeatSource shaped = SampleHeatSource.of(HeatKind.MUG_PRESS).maxTaper(8).source();
        HeatSource strict = SampleHeatSource.of(HeatKind.OVEN).maxTaper(7).source();
        assertThat(HeatChoice.among(List.of(shaped), cone, anything()).chosen()).isPresent();
        assertThat(HeatChoice.among(List.of(strict), cone, anything()).refusals())
                .containsExactly(new Refusal(strict, Why.LEANS_TOO_MUCH));
    }

    private static List<Why> refusedBy(double least, double most, Blank blank) {
        HeatSource press = SampleHeatSource.of(HeatKind.OVEN)
                .diameters(Length.mm(least), Length.mm(most))
                .source();
        return HeatChoice.among(List.of(press), blank, anything()).refusals().stream()
                .map(Refusal::why)
                .toList();
    }
}
