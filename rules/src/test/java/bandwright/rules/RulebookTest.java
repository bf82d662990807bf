package bandwright.rules;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.rules.blanks.Blank;
import bandwright.rules.blanks.Form;
import bandwright.rules.blanks.Material;
import bandwright.rules.designs.Align;
import bandwright.rules.designs.Anchor;
import bandwright.rules.designs.Design;
import bandwright.rules.designs.Fit;
import bandwright.rules.designs.Placement;
import bandwright.rules.designs.TextField;
import bandwright.rules.heat.Covering;
import bandwright.rules.heat.HeatKind;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.table.Fault;
import bandwright.rules.units.Length;
import bandwright.rules.units.LengthUnit;
import bandwright.rules.units.Rgb;
import java.awt.color.ColorSpace;
import java.awt.color.ICC_Profile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RulebookTest {
    @TempDir
    Path folder;

    private SmallTables own() {
        return new SmallTables(folder);
    }

    @Test
    void aBlankIsReadAsMeasured() throws Exception {
        Blank mug = SmallTables.builtIn().blanks().find("White 11").orElseThrow();
        assertThat(mug.sku()).isEqualTo("KEEPER-11");
        assertThat(mug.material()).isEqualTo(Material.CERAMIC);
        assertThat(mug.form()).isEqualTo(new Form.Cylinder(Length.mm(82).times(Math.PI), Length.mm(95)));
        assertThat(mug.heatSources()).containsExactly("clamp", "oven");
        assertThat(mug.handleWidth()).isEqualTo(Length.mm(22));
    }

    @Test
    void emptyCellsOfABlankHaveTheirDefaults() throws Exception {
        Blank coaster = SmallTables.builtIn().blanks().find("TIDE-COASTER").orElseThrow();
        assertThat(coaster.name()).isEqualTo("TIDE-COASTER");
        assertThat(coaster.ovenPlaces()).isEqualTo(1);
        assertThat(coaster.baseColour()).isEqualTo(Rgb.WHITE);
        assertThat(coaster.topMargin()).isEqualTo(Length.mm(-2));
        assertThat(List.of(coaster.handleWidth(), coaster.wrapOverlap(), coaster.bleedTop(), coaster.bleedBottom()))
                .containsOnly(Length.ZERO);
        assertThat(coaster.cost()).isEmpty();
    }

    @Test
    void emptyCellsOfAHeatSourceHaveTheirDefaults() throws Exception {
        HeatSource flat = SmallTables.builtIn().heatSources().find("flat").orElseThrow();
        assertThat(List.of(flat.machines(), flat.positions())).containsOnly(1);
        assertThat(flat.turnSeconds()).isZero();
        assertThat(flat.covering()).isEqualTo(Covering.NONE);
        assertThat(flat.maxTaper()).isEmpty();
        HeatSource clamp = SmallTables.builtIn().heatSources().find("clamp").orElseThrow();
        assertThat(clamp.piecesPerLoad()).isEqualTo(1);
        assertThat(clamp.name()).isEqualTo("clamp");
        assertThat(clamp.warmUpSeconds()).isEqualTo(600);
    }

    @Test
    void emptyCellsOfDesignsTextsAndPrintersHaveTheirDefaults() throws Exception {
        Rulebook rules = SmallTables.builtIn();
        Design lamp = rules.designs().variants("lamp").get(0);
        assertThat(lamp.placement()).isEqualTo(Placement.ALL_ROUND);
        assertThat(lamp.fit()).isEqualTo(Fit.COVER);
        assertThat(lamp.cropCentreX()).isEqualTo(50);
        assertThat(rules.designs().variants("Tern")).hasSize(2);
        assertThat(rules.designs().variants("Tern").get(0).cropCentreY()).isEqualTo(40);
        TextField name = rules.texts().of("lamp").get(0);
        assertThat(name.align()).isEqualTo(Align.CENTRE);
        assertThat(name.anchor()).isEqualTo(Anchor.PICTURE);
        assertThat(name.side()).isEmpty();
        assertThat(name.maxChars()).isEmpty();
        assertThat(name.required()).isTrue();
        assertThat(name.maxSize()).isEqualTo(Length.inches(60.0 / 72));
        assertThat(rules.printers().list().get(0).profile()).isEmpty();
        assertThat(rules.printers().list().get(0).scaleX()).isEqualTo(1);
    }

    @Test
    void aShopWithoutKeysHasTheBuiltInValues() throws Exception {
        Shop shop = own().with("shop.csv", "").read().shop();
        assertThat(shop.unit()).isEqualTo(LengthUnit.IN);
        assertThat(shop.papers()).containsExactly("letter");
        assertThat(shop.printer()).isEqualTo("desk");
        assertThat(shop.dayStarts()).isEqualTo(LocalTime.of(9, 0));
        assertThat(List.of(shop.stretchNote(), shop.stretchHold(), shop.cropNote(), shop.cropHold(), shop.spoilRate()))
                .containsExactly(0.03, 0.10, 0.15, 0.35, 0.03);
        assertThat(List.of(shop.ppiNote(), shop.ppiHold(), shop.contrastNote(), shop.contrastHold()))
                .containsExactly(200.0, 100.0, 3.0, 2.0);
        assertThat(List.of(shop.trimBorder(), shop.trimGap(), shop.flagDepth(), shop.flagHeight()))
                .containsExactly(Length.mm(2), Length.mm(4), Length.mm(14), Length.mm(30));
        assertThat(List.of(shop.people(), shop.maxQuantity(), shop.keepBuyerDays()))
                .containsExactly(1, 500, 90);
        assertThat(shop.artworkByName()).isTrue();
        assertThat(shop.timeZone()).isEmpty();
    }

    @Test
    void theKeysOfAShopAreRead() throws Exception {
        Shop shop = own().with(
                        "shop.csv",
                        "KEY,value",
                        "unit,mm",
                        "paper,A4|letter",
                        "printer,wide",
                        "time_zone,Europe/London",
                        "Spoil_Rate,5 %",
                        "trim_gap,0",
                        "flag_height,0",
                        "artwork_by_name,no",
                        "cutting,trimmer")
                .read()
                .shop();
        assertThat(shop.papers()).containsExactly("a4", "letter");
        assertThat(shop.printer()).isEqualTo("wide");
        assertThat(shop.timeZone()).contains(ZoneId.of("Europe/London"));
        assertThat(shop.spoilRate()).isEqualTo(0.05);
        assertThat(shop.trimGap()).isEqualTo(Length.ZERO);
        assertThat(shop.artworkByName()).isFalse();
    }

    @Test
    void wrongKeysOfAShopAreNamed() throws Exception {
        own().with(
                        "shop.csv",
                        "key,value",
                        "trim_gab,4 mm",
                        "unit,in",
                        "UNIT,mm",
                        "time_zone,Europe/Londn",
                        "stock,hodl");
        assertThat(own().faultLines())
                .satisfiesExactly(
                        line -> assertThat(line).contains("row 2", "Did you mean trim_gap?"),
                        line -> assertThat(line).contains("\"unit\" stands in row 4 and in row 3"),
                        line -> assertThat(line).contains("row 5", "Did you mean Europe/London?"),
                        line -> assertThat(line).contains("row 6", "Did you mean hold?", "note, hold, ignore"));
    }

    @Test
    void aProductMeansWhatItsPairsSay() throws Exception {
        var product = SmallTables.builtIn().products().get(0);
        assertThat(product.variation()).isEqualTo(Map.of("Size", "11 oz", "Handle", "White"));
        assertThat(product.texts()).isEqualTo(Map.of("name", "Ada"));
        assertThat(product.count()).isEqualTo(1);
    }

    @Test
    void aReferenceByAliasIsWrittenAsTheSku() throws Exception {
        Rulebook rules = SmallTables.builtIn();
        assertThat(rules.stock().list().get(0).sku()).isEqualTo("KEEPER-11");
        Blank mug = rules.blanks().find("KEEPER-11").orElseThrow();
        assertThat(rules.pressSettings().find(mug, HeatKind.OVEN).orElseThrow().isConfirmed())
                .isTrue();
    }

    @Test
    void tenFaultsOfATableAreTenFaults() throws Exception {
        own().with(
                        "papers.csv",
                        "id,name,width,height,margin_top,cost,colr",
                        "letter,,8.5 in,eleven,,,",
                        "Letter,,8.5 in,11 in,,,",
                        ",,8.5 in,11 in,,,",
                        "a4,,,11 in,,,",
                        "c,,216,279,,,",
                        "d,,8.5 in,11 in,-1 in,$2,",
                        "e,,8.5 in,11 in,,,,,extra",
                        "",
                        "f,,8.5 in,1 in,2 in,,");
        assertThat(own().faults())
                .extracting(fault -> fault.place().row(), fault -> fault.place().column())
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(1, "colr"),
                        org.assertj.core.groups.Tuple.tuple(2, "height"),
                        org.assertj.core.groups.Tuple.tuple(3, "id"),
                        org.assertj.core.groups.Tuple.tuple(4, "id"),
                        org.assertj.core.groups.Tuple.tuple(5, "width"),
                        org.assertj.core.groups.Tuple.tuple(6, "height"),
                        org.assertj.core.groups.Tuple.tuple(6, "width"),
                        org.assertj.core.groups.Tuple.tuple(7, "cost"),
                        org.assertj.core.groups.Tuple.tuple(7, "margin_top"),
                        org.assertj.core.groups.Tuple.tuple(8, ""),
                        org.assertj.core.groups.Tuple.tuple(10, "height"));
    }

    @Test
    void faultsOfSeveralTablesComeAtOnceAndSorted() throws Exception {
        own().plus("papers.csv", "letter,,8.5 in,11 in")
                .plus("circuits.csv", "side,,", "bench,1,1")
                .plus("blanks.csv", "X,,,,blob");
        assertThat(own().faults().stream().map(fault -> fault.place().file()).distinct())
                .containsExactly("blanks.csv", "circuits.csv", "papers.csv");
        assertThat(own().faults())
                .isSortedAccordingTo(
                        (a, b) -> a.place().file().compareTo(b.place().file()));
    }

    @Test
    void theMarkOfUtf8AndWholeEmptyRowsAndFoldedHeadersDoNoHarm() throws Exception {
        Rulebook rules = own().with("circuits.csv", "\uFEFF ID , Volts,AMPERES", ",,", "", "\"side\nroom\",230,16")
                .with("heat-sources.csv", "id,kind,circuit", "o,oven,Side Room")
                .read();
        assertThat(rules.circuits()).hasSize(1);
        assertThat(rules.heatSources().list().get(0).circuit()).isEqualTo("side\nroom");
    }

    @Test
    void formFaultsOfAFileAreFaults() throws Exception {
        Files.write(folder.resolve("stock.csv"), "sku,note\nKEEPER-11,caf\u00e9".getBytes(StandardCharsets.ISO_8859_1));
        own().with("texts.csv", "design,field", "lamp,\"name")
                .with("fonts.csv", "id;file", "a;b")
                .with("circuits.csv", "id,volts,Volts,amperes")
                .with("blankz.csv", "sku")
                .with("zzzzzzzzzzzzzzz.csv", "sku")
                .with("readme.txt", "no table");
        assertThat(own().faultLines())
                .satisfiesExactly(
                        line -> assertThat(line).contains("blankz.csv", "Did you mean blanks.csv?"),
                        line -> assertThat(line).contains("circuits.csv, row 1, column volts", "twice"),
                        line -> assertThat(line).contains("fonts.csv, row 1", "commas"),
                        line -> assertThat(line).contains("stock.csv", "Line 2", "CSV UTF-8"),
                        line -> assertThat(line).contains("texts.csv, row 2", "quotation mark"),
                        line -> assertThat(line).contains("zzz", "shop.csv, blanks.csv"));
    }

    @Test
    void aFolderThatIsNotThereIsAFault() {
        assertThat(new SmallTables(folder.resolve("nowhere")).faultLines())
                .singleElement()
                .asString()
                .contains("nowhere", "--rules");
    }

    @Test
    void tablesThatAShopNeedsMustHaveRows() throws Exception {
        own().with("papers.csv", "id,name,width").with("stock.csv", "sku").with("texts.csv", "");
        assertThat(own().faults()).anySatisfy(fault -> assertThat(fault.line()).contains("papers.csv", "no rows"));
        assertThat(own().faults())
                .noneSatisfy(fault -> assertThat(fault.place().file()).isIn("stock.csv", "texts.csv"));
    }

    @Test
    void whatWasMeasuredOfABlankMustFitTogether() throws Exception {
        own().with(
                        "blanks.csv",
                        "sku,aliases,material,shape,circumference,top_diameter,bottom_diameter,height,width,handle_width,heat_sources,top_margin",
                        "A,,ceramic,cylinder,10 1/4 in,3 in,,4 in,,,,",
                        "B,,ceramic,cylinder,,,,4 in,,,,",
                        "C,,ceramic,cone,,88 mm,,4 in,,,,",
                        "D,,ceramic,cylinder,9 in,,,4 in,,230 mm,,",
                        "E,a,ceramic,flat,,,,4 in,,,,",
                        "F,,wood,flat,,,,4 in,4 in,,clamp,",
                        "G,,wood,cylinder,9 in,,,4 in,,,flat,",
                        "H,,wood,cylinder,9 in,,,0,,,,-2 mm",
                        "OK,,ceramic,cylinder,10 1/4 in,3.25 in,,4 in,,1 in,,");
        assertThat(own().faultLines())
                .satisfiesExactly(
                        line -> assertThat(line).contains("row 2, column top_diameter", "more than 1 %"),
                        line -> assertThat(line).contains("row 3, column circumference", "tape"),
                        line -> assertThat(line).contains("row 4, column bottom_diameter"),
                        line -> assertThat(line).contains("row 5, column handle_width", "228.60 mm"),
                        line -> assertThat(line).contains("row 6, column aliases", "in row 6 and in row 2"),
                        line -> assertThat(line).contains("row 6, column width"),
                        line -> assertThat(line).contains("row 7, column heat_sources", "flat"),
                        line -> assertThat(line).contains("row 8, column heat_sources", "round"),
                        line -> assertThat(line).contains("row 9, column height"),
                        line -> assertThat(line).contains("row 9, column top_margin", "minus"));
    }

    @Test
    void aSettingThatAllowsPressingSaysHowHotAndHowLongAndStandsOnce() throws Exception {
        own().plus(
                        "press-settings.csv",
                        "metal,oven,,,,yes,,,",
                        "metal,mug press,,,,no,,,",
                        "metal,mug press,,190 C,3 min,yes,,,",
                        ",oven,,190 C,3 min,yes,,,",
                        "polymer,oven,,375 C,3,yes,,,",
                        ",oven,KEEPER-11,190 C,3 min,,,,");
        assertThat(own().faultLines())
                .satisfiesExactly(
                        line -> assertThat(line).contains("row 8, column temperature", "how hot"),
                        line -> assertThat(line).contains("row 8, column time", "how long"),
                        line -> assertThat(line).contains("in row 10 and in row 9"),
                        line -> assertThat(line).contains("row 11, column material"),
                        line -> assertThat(line).contains("row 12, column temperature", "did you mean F?"),
                        line -> assertThat(line).contains("row 12, column time", "3 min"),
                        line -> assertThat(line).contains("row 13, column allowed"),
                        line -> assertThat(line).contains("row 13, column sku", "in row 13 and in row 7"));
    }

    @Test
    void fontsAndProfilesLieBesideTheTables() throws Exception {
        Files.writeString(folder.resolve("harbour.ttf"), "x");
        Files.write(
                folder.resolve("ink.icc"),
                ICC_Profile.getInstance(ColorSpace.CS_sRGB).getData());
        Files.write(
                folder.resolve("grey.icc"),
                ICC_Profile.getInstance(ColorSpace.CS_GRAY).getData());
        Files.writeString(folder.resolve("note.icc"), "x");
        own().with(
                        "fonts.csv",
                        "id,file",
                        "harbour,harbour.ttf",
                        "far,../far.ttf",
                        "sans,harbour.ttf",
                        "root,/etc/hostname")
                .with(
                        "printers.csv",
                        "id,papers,mirror,colour,icc_profile",
                        "a,a4,file,profile,ink.icc",
                        "b,a4,file,profile,",
                        "c,a4,file,profile,no.icc",
                        "d,a4,file,profile,note.icc",
                        "e,a4,file,profile,grey.icc")
                .with("shop.csv", "");
        assertThat(own().faults())
                .extracting(fault -> fault.place().file() + " " + fault.place().row())
                .containsExactly(
                        "fonts.csv 3",
                        "fonts.csv 4",
                        "fonts.csv 5",
                        "printers.csv 3",
                        "printers.csv 4",
                        "printers.csv 5",
                        "printers.csv 6");
    }

    @Test
    void aQueueHasANameAsSystemsAllowIt() throws Exception {
        own().with(
                        "printers.csv",
                        "id,papers,queue,mirror",
                        "a,a4,harbour_2,file",
                        "b,a4,,file",
                        "c,a4,tide@printserver,file")
                .with("shop.csv", "");
        assertThat(own().read().printers().list())
                .extracting(printer -> printer.queue().orElse("the default"))
                .containsExactly("harbour_2", "the default", "tide@printserver");

        own().with("printers.csv", "id,papers,queue,mirror", "a,a4,-o raw,file", "b,a4,by the door,file");
        assertThat(own().faultLines())
                .hasSize(2)
                .allMatch(line -> line.contains("queue") && line.contains("lpstat -e"));
    }

    @Test
    void aCautionAppliesToWordsThatExist() throws Exception {
        own().with(
                        "cautions.csv",
                        "code,applies_to,step,text",
                        "glass,material:glas,press,Careful",
                        "lid,lid,prepare,Off with it",
                        "x,parts:lid,prepare,Off with it",
                        "y,material:glass&kind:oven,press,Careful");
        assertThat(own().faults()).extracting(fault -> fault.place().row()).containsExactly(2, 3, 4);
    }

    @Test
    void oneHeaderIsOneField() throws Exception {
        own().with(
                        "order-columns.csv",
                        "site,field,header",
                        ",order,Order No.",
                        ",sku,order no",
                        ",ordr,X",
                        "Tern shop,sku,Y");
        assertThat(own().faultLines())
                .satisfiesExactly(
                        line -> assertThat(line).contains("row 3, column header", "row 2"),
                        line -> assertThat(line).contains("row 4, column field", "Did you mean order?"),
                        line -> assertThat(line).contains("row 5, column site", "sites.csv has no"));
    }

    @Test
    void everyFaultHasACureAndIsOneLine() throws Exception {
        own().plus("blanks.csv", "a\u0007b,,,tin,blob,1e9,,,x").plus("stock.csv", "nobody,yesterday,-3");
        assertThat(own().faults()).hasSizeGreaterThan(4).extracting(Fault::line).noneMatch(line -> line.contains("\n"));
    }
}
