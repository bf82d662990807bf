package bandwright.rules;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.rules.heat.HeatSource;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReferencesTest {
    @TempDir
    Path folder;

    private SmallTables own() {
        return new SmallTables(folder);
    }

    @Test
    void aReferenceOfAnOwnTableToNothingIsAFault() throws Exception {
        own().plus("press-settings.csv", ",oven,KEEPER-12,200 C,14 min,yes,,glas,measured")
                .plus("products.csv", ",Pint,,STORM-PINT,turn,,")
                .plus("texts.csv", "lamp,name,serif-italics,,");
        assertThat(own().faultLines())
                .satisfiesExactly(
                        line -> assertThat(line)
                                .contains("press-settings.csv, row 8, column cautions", "Did you mean glass?"),
                        line -> assertThat(line)
                                .contains("press-settings.csv, row 8, column sku", "Did you mean KEEPER-11?"),
                        line -> assertThat(line)
                                .contains("products.csv, row 3, column design", "designs.csv has no \"turn\""),
                        line -> assertThat(line)
                                .contains("texts.csv, row 3, column font", "Did you mean serif-italic?"));
    }

    @Test
    void builtInRowsThatReferToNothingAreLeftOut() throws Exception {
        Rulebook rules = own().with(
                        "blanks.csv", "sku,material,shape,top_diameter,height", "TERN-15,ceramic,cylinder,86 mm,120 mm")
                .with("designs.csv", "design,artwork", "choir,choir.png")
                .with("heat-sources.csv", "id,kind,pieces_per_load", "big-oven,oven,12")
                .read();
        assertThat(rules.stock().list()).isEmpty();
        assertThat(rules.products()).isEmpty();
        assertThat(rules.texts().list()).isEmpty();
        assertThat(rules.pressSettings().list()).hasSize(5).allMatch(setting -> setting.sku()
                .isEmpty());
    }

    @Test
    void aListOfABuiltInRowLosesOnlyWhatIsMissing() throws Exception {
        Rulebook rules = own().with("papers.csv", "id,width,height", "A4,210 mm,297 mm")
                .with("heat-sources.csv", "id,kind", "oven,oven")
                .read();
        assertThat(rules.printers().find("desk").orElseThrow().papers()).containsExactly("A4");
        assertThat(rules.blanks().find("KEEPER-11").orElseThrow().heatSources()).containsExactly("oven");
        assertThat(rules.shop().papers()).containsExactly("A4");
    }

    @Test
    void whatFallsTakesOthersWithIt() throws Exception {
        // Without a4 and roll the wide printer falls; an own shop that names it then refers to nothing.
        own().with("papers.csv", "id,width,height", "letter,8.5 in,11 in")
                .with("shop.csv", "key,value", "printer,wide");
        assertThat(own().faultLines())
                .singleElement()
                .asString()
                .contains("shop.csv, row 2", "printers.csv has no \"wide\"");
        // The built-in heat sources on a circuit that is gone fall, and the blanks lose them.
        own().with("papers.csv", SmallTables.text("papers.csv"))
                .with("shop.csv", "")
                .with("circuits.csv", "id,volts,amperes", "attic,120,15");
        Rulebook rules = own().read();
        assertThat(rules.heatSources().list()).extracting(HeatSource::id).containsExactly("oven");
        assertThat(rules.blanks().find("KEEPER-11").orElseThrow().heatSources()).containsExactly("oven");
    }

    @Test
    void aBuiltInTableThatLosesEveryRowIsAFault() throws Exception {
        own().with("papers.csv", "id,width,height", "banner,20 in,30 in");
        assertThat(own().faultLines()).singleElement().asString().contains("printers.csv", "beside your own");
    }
}
