package bandwright.pipeline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands of a shop that sets itself up, and measures. */
final class SetUpCommandsTest {
    private static final Path SAMPLE = Path.of("..", "inbox-sample");

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int bandwright(String... words) {
        return Main.run(new PrintWriter(out), new PrintWriter(err), false, words);
    }

    private String rules(String table, String text) throws IOException {
        Path rules = Files.createDirectories(folder.resolve("rules"));
        Files.writeString(rules.resolve(table), text);
        return rules.toString();
    }

    @Test
    void bandWritesTheSumOutForEveryHeatSource() {
        assertThat(bandwright("band", "11 oz white mug")).isZero();
        assertThat(out.toString())
                .startsWith("MUG-11-W, ")
                .contains("257.61 - 22 - 2 x 12.7 = 210.21 mm")
                .contains("257.61 - 22 = 235.61 mm")
                .contains("clamp (Mug press), which a run takes first:")
                .contains("flat (Flat press): out of reach; round blanks don't go into this kind of heat source")
                .contains("bandwright strip MUG-11-W");
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void bandSaysWhichSourceAConeIsOutOfReachOf() {
        assertThat(bandwright("band", "CONE-12-W")).isZero();
        assertThat(out.toString())
                .contains("clamp (Mug press): out of reach; the band is 63.53 mm across at its narrowest")
                .contains("238.7 x 108.51 mm of paper");
    }

    @Test
    void anUnknownBlankIsWrongUsageWithTheNearestName() {
        assertThat(bandwright("band", "MUG-11-X")).isEqualTo(2);
        assertThat(err.toString()).hasLineCount(1).contains("Did you mean MUG-11-F?");
        assertThat(out.toString()).isEmpty();
    }

    @Test
    void bandOfAFaultyRulebookNamesEveryFault() throws IOException {
        String rules = rules("printers.csv", "id,papers,mirror\ndesk,letter,sideways\n");
        assertThat(bandwright("band", "MUG-11-W", "--rules", rules)).isEqualTo(1);
        assertThat(err.toString()).contains("printers.csv, row 2, column mirror");
    }

    @Test
    void checkOfTheBuiltInRulebookHasNothingToMendButMuchToConfirm() {
        assertThat(bandwright("check")).isZero();
        assertThat(out.toString())
                .contains("NOT CONFIRMED, general settings for glass (oven): STEIN-16-F, MUG-11-F")
                .contains("printers.csv: desk was never measured")
                .endsWith("Nothing to mend." + System.lineSeparator());
    }

    @Test
    void checkOfTheSampleNamesItsHeldRowsAndWritesNothing() {
        String outbox = folder.resolve("outbox").toString();
        assertThat(bandwright("check", SAMPLE.toString(), "--out", outbox)).isEqualTo(3);
        assertThat(out.toString())
                .contains("Did you mean MUG-11-W?")
                .contains("blank-unknown: 1 row(s) held")
                .containsPattern("blank-unknown: 1 row\\(s\\) held\\R  .*MUG-11-WH.*\\R.*design-unknown: 1 row")
                .contains("5 to mend.");
        assertThat(folder.resolve("outbox")).doesNotExist();
    }

    @Test
    void checkNamesMissingPicturesOfDesignsThatNobodyHasOrderedYet() throws IOException {
        String rules = rules(
                "designs.csv",
                "design,artwork,artwork_2,placement\nlamp,storm-lamp.png,,\npair,tern.jpg,tren.jpg,two-sided\n");
        int code = bandwright(
                "check",
                "--rules",
                rules,
                "--artwork",
                SAMPLE.resolve("artwork").toString());
        assertThat(code).isEqualTo(3);
        assertThat(out.toString())
                .contains(
                        "designs.csv: pair wants tren.jpg, which the artwork folder doesn't have. Did you mean tern.jpg?")
                .doesNotContain("lamp wants");
    }

    @Test
    void checkNamesBlanksThatNothingPresses() throws IOException {
        String rules = rules("blanks.csv", """
                sku,name,material,shape,circumference,height,base_colour,heat_sources,evidence
                GLASS-1,Glass mug,glass,cylinder,260 mm,95 mm,#FFFFFF,clamp,measured
                """);
        assertThat(bandwright("check", "--rules", rules)).isEqualTo(3);
        assertThat(out.toString())
                .contains("no heat source takes GLASS-1. clamp: ")
                .contains("1 to mend.");
    }

    @Test
    void checkFindsListingsThatTieBeforeAnOrderDoes() throws IOException {
        String rules = rules("products.csv", """
                site,product,variation,blank,design,count,texts
                ,Tern mug,Size=15 oz,MUG-15-W,tern,1,
                ,Tern mug,Handle=Pink,MUG-11-PK,tern,1,
                ,Choir mug,Size=15 oz,MUG-15-W,choir,1,
                ,Choir mug,Size=11 oz,MUG-11-W,choir,1,
                """);
        assertThat(bandwright("check", "--rules", rules)).isEqualTo(3);
        assertThat(out.toString())
                .contains("rows 2 and 3 fit some orders of \"Tern mug\" equally well")
                .doesNotContain("Choir");
    }

    @Test
    void checkOfAFaultyRulebookEndsWithOne() throws IOException {
        String rules = rules("printers.csv", "id,papers,mirror\ndesk,letter,sideways\n");
        assertThat(bandwright("check", "--rules", rules)).isEqualTo(1);
        assertThat(err.toString())
                .contains("printers.csv, row 2, column mirror")
                .contains("1 fault(s)");
    }
}
