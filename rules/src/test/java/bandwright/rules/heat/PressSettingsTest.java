package bandwright.rules.heat;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.rules.blanks.Blank;
import bandwright.rules.blanks.Material;
import bandwright.rules.sample.SampleBlank;
import bandwright.rules.sample.SampleSetting;
import bandwright.rules.table.Evidence;
import bandwright.rules.units.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

class PressSettingsTest {
    private static final PressSetting GENERAL = SampleSetting.yes(Material.CERAMIC, HeatKind.MUG_PRESS);
    private static final PressSetting LISTING =
            SampleSetting.ofSku("Mug 11", HeatKind.MUG_PRESS, Allowed.YES, Evidence.SUPPLIER_LISTING);
    private static final PressSetting GUESS =
            SampleSetting.ofSku("MUG 15", HeatKind.MUG_PRESS, Allowed.YES, Evidence.FROM_MEMORY);
    private static final PressSettings SETTINGS =
            new PressSettings(List.of(GENERAL, SampleSetting.yes(Material.CERAMIC, HeatKind.OVEN), LISTING, GUESS));

    private static Blank mug(String sku) {
        return SampleBlank.cylinder(Length.mm(257), Length.mm(95)).sku(sku).blank();
    }

    @Test
    void theRowOfASkuWinsWholeWhereverItStandsInTheTable() {
        assertThat(SETTINGS.find(mug("MUG  11"), HeatKind.MUG_PRESS)).contains(LISTING);
        assertThat(SETTINGS.find(mug("MUG 12"), HeatKind.MUG_PRESS)).contains(GENERAL);
    }

    @Test
    void aRowOfASkuSpeaksForItsOwnKindOfHeatSourceOnly() {
        assertThat(SETTINGS.find(mug("MUG 11"), HeatKind.OVEN).orElseThrow().sku())
                .isEmpty();
        assertThat(SETTINGS.find(mug("MUG 11"), HeatKind.TUMBLER_PRESS)).isEmpty();
    }

    @Test
    void bothTheGeneralRowAndTheSkusRowSpeakAboutABlank() {
        assertThat(SETTINGS.about(mug("MUG 11"), HeatKind.MUG_PRESS)).containsExactly(GENERAL, LISTING);
        assertThat(SETTINGS.about(mug("MUG 12"), HeatKind.MUG_PRESS)).containsExactly(GENERAL);
    }

    @Test
    void onlyAListingOrAMeasurementOfThatVeryBlankIsConfirmed() {
        assertThat(LISTING.isConfirmed()).isTrue();
        assertThat(GENERAL.isConfirmed()).isFalse();
        assertThat(GUESS.isConfirmed()).isFalse();
    }
}
