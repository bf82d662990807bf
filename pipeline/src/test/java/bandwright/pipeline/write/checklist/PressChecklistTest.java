package bandwright.pipeline.write.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.load.Load;
import bandwright.pipeline.size.Unit;
import bandwright.rules.RulebookFaults;
import bandwright.rules.blanks.Blank;
import bandwright.rules.heat.Caution;
import bandwright.rules.heat.CautionStep;
import bandwright.rules.heat.Cautions;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PressChecklistTest {
    private static final String SETTINGS =
            "material,heat_kind,sku,temperature,time,pressure,allowed,gloves,peel,rest,cautions,evidence,note\n";

    @TempDir
    Path folder;

    private Monday mixed() throws IOException, RulebookFaults {
        return Monday.of(
                folder,
                Optional.empty(),
                "Q1042,MUG-11-W,wide.png,3,2026-03-03",
                "Q1043,MUG-11-GL,wide.png,2,2026-03-04",
                "Q1044,STEIN-16-F,wide.png,2,2026-03-05",
                "Q1045,COAST-S,square.png,5,2026-03-06",
                "Q1046,TUM-20-W,square.png,2,2026-03-07",
                "Q1047,MUG-15-W,wide.png,2,2026-03-08",
                "Q1048,MUG-11-F,wide.png,1,2026-03-09");
    }

    @Test
    void everyPieceStandsOnceAndInTheOrderOfTheLoads() throws IOException, RulebookFaults {
        Monday monday = mixed();
        String text = monday.text();
        List<String> ids = monday.run().loads().stream()
                .flatMap(load -> load.units().stream())
                .map(Unit::id)
                .toList();
        assertThat(ids).hasSize(17);
        assertThat(text).containsSubsequence(ids);
        assertThat(ids).allSatisfy(id -> assertThat(text.split(Pattern.quote(" " + id + " "), -1))
                .as(id)
                .hasSize(2));
    }

    @Test
    void everyCautionStandsBeforeTheFirstPieceThatItConcerns() throws IOException, RulebookFaults {
        Monday monday = mixed();
        String text = monday.text();
        int checked = 0;
        for (Load load : monday.run().loads()) {
            for (Unit unit : load.units()) {
                int piece = text.indexOf(" " + unit.id() + " ");
                for (Caution caution : applying(monday, unit)) {
                    assertThat(text.indexOf(caution.text()))
                            .as(caution.code() + " before " + unit.id())
                            .isBetween(0, piece);
                    checked++;
                }
            }
        }
        assertThat(checked).isGreaterThan(300);
    }

    private static List<Caution> applying(Monday monday, Unit unit) {
        Blank blank = unit.matched().blank();
        return monday.rules().cautions().list().stream()
                .filter(caution ->
                        Cautions.applies(caution, blank, unit.matched().source().kind()))
                .toList();
    }

    @Test
    void cautionsOfAStepStandAfterTheStepBeforeAndAheadOfWhatIsDone() throws IOException, RulebookFaults {
        Monday monday = Monday.of(folder, Optional.empty(), "Q1044,STEIN-16-F,wide.png,1,2026-03-05");
        List<String> order = new ArrayList<>();
        Unit unit = monday.run().units().get(0);
        for (CautionStep step : CautionStep.values()) {
            if (step != CautionStep.DAY) {
                order.add(" " + step.name() + " ");
            }
            applying(monday, unit).stream()
                    .filter(caution -> caution.step() == step)
                    .forEach(caution -> order.add(caution.text()));
            if (step == CautionStep.PEEL) {
                order.add("Peel: " + unit.matched().setting().peel());
            }
        }
        assertThat(monday.text()).containsSubsequence(order);
    }

    @Test
    void cautionsOfGlassAreInFullAgainAtEveryGlassSeries() throws IOException, RulebookFaults {
        // Four steins fill the oven, the first one goes before them; what is left is a load of its own, later in the
        // day.
        String text = Monday.of(
                        folder,
                        Optional.empty(),
                        "Q1044,STEIN-16-F,wide.png,5,2026-03-03",
                        "Q1042,MUG-11-W,wide.png,9,2026-03-04",
                        "Q1048,STEIN-16-F,wide.png,1,2026-03-05")
                .text();
        String water = "! No cold water, no wet cloth and no cold metal on hot glass: it can shatter.";
        assertThat(text)
                .containsSubsequence("GLASS: it can crack", water, " Q1044-1-1 ", " Q1042-1-5 ", water, " Q1048-1-1 ");
        assertThat(text.split("GLASS: it can crack", -1)).hasSize(2);
    }

    @Test
    void noTableSwitchesTheWordsBeforeTheFirstGlassOff() throws IOException, RulebookFaults {
        Path tables = Files.createDirectories(folder.resolve("tables"));
        Files.writeString(
                tables.resolve("cautions.csv"),
                "code,applies_to,step,text,evidence\nlook,all,prepare,Look at it.,from memory\n");
        Files.writeString(
                tables.resolve("press-settings.csv"),
                SETTINGS + "glass,oven,,180 C,12 min,sleeve,yes,yes,,,,common practice,\n");
        Monday monday = Monday.of(folder, Optional.of(tables), "Q1044,STEIN-16-F,wide.png,1,2026-03-05");
        assertThat(monday.text())
                .containsSubsequence(
                        "The supplier's listing and the maker's manual win over every figure here.",
                        "GLASS: it can crack or shatter.",
                        "No clamp press",
                        "No cold water",
                        " Q1044-1-1 ");
    }

    @Test
    void withoutGlassNothingIsSaidOfGlass() throws IOException, RulebookFaults {
        Monday monday = Monday.of(folder, Optional.empty(), "Q1042,MUG-11-W,wide.png,1,2026-03-03");
        assertThat(monday.text().toLowerCase(Locale.ROOT)).doesNotContain("glass");
    }

    @Test
    void bothScalesSayOneTemperature() throws IOException, RulebookFaults {
        Matcher heat = Pattern.compile("(\\d+) \u00b0F \\((\\d+) \u00b0C\\)").matcher(mixed().text());
        int found = 0;
        while (heat.find()) {
            double celsius = (Integer.parseInt(heat.group(1)) - 32) / 1.8;
            assertThat(celsius).isBetween(Integer.parseInt(heat.group(2)) - 0.6, Integer.parseInt(heat.group(2)) + 0.6);
            found++;
        }
        assertThat(found).isGreaterThan(6);
    }

    @Test
    void generalSettingsAreNotConfirmedAndLeaveRoomForTheListing() throws IOException, RulebookFaults {
        Monday monday = Monday.of(folder, Optional.empty(), "Q1042,MUG-11-W,wide.png,1,2026-03-03");
        assertThat(monday.text())
                .containsSubsequence(
                        "NOT CONFIRMED", "MUG-11-W: look up the supplier's listing", "temperature ____", "time ____");
    }

    @Test
    void aListingOfThisVeryBlankIsConfirmed() throws IOException, RulebookFaults {
        Path tables = Files.createDirectories(folder.resolve("tables"));
        Files.writeString(
                tables.resolve("press-settings.csv"),
                SETTINGS + ",mug press,MUG-11-W,195 C,200 s,medium,yes,yes,hot,,,supplier listing,\n"
                        + "ceramic,mug press,,190 C,3 min,medium,yes,,hot,,,common practice,\n");
        Monday listed = Monday.of(folder, Optional.of(tables), "Q1042,MUG-11-W,wide.png,1,2026-03-03");
        assertThat(listed.text())
                .contains("(195 \u00b0C)", "3 min 20 s", "For MUG-11-W: from the supplier's listing.")
                .doesNotContain("NOT CONFIRMED");
        Monday both = Monday.of(
                folder,
                Optional.of(tables),
                "Q1042,MUG-11-W,wide.png,1,2026-03-03",
                "Q1043,MUG-15-W,wide.png,1,2026-03-04");
        assertThat(both.text()).contains("NOT CONFIRMED", "MUG-15-W: look up").doesNotContain("MUG-11-W: look up");
    }

    @Test
    void aMeasuredSettingSaysThatItWasMeasuredHere() throws IOException, RulebookFaults {
        Path tables = Files.createDirectories(folder.resolve("tables"));
        Files.writeString(
                tables.resolve("press-settings.csv"),
                SETTINGS + ",mug press,MUG-11-W,190 C,3 min,medium,yes,yes,hot,,,measured,\n"
                        + "ceramic,mug press,,190 C,3 min,medium,yes,,hot,,,common practice,\n");
        String text = Monday.of(
                        folder,
                        Optional.of(tables),
                        "Q1042,MUG-11-W,wide.png,1,2026-03-03",
                        "Q1043,MUG-15-W,wide.png,1,2026-03-04")
                .text();
        assertThat(text).contains("For MUG-11-W: measured in this shop.").doesNotContain("MUG-15-W: measured");
    }

    @Test
    void glovesAskedForByTheRowThatDoesNotCountAreAskedForAllTheSame() throws IOException, RulebookFaults {
        Path tables = Files.createDirectories(folder.resolve("tables"));
        String listed = ",mug press,MUG-11-W,195 C,200 s,medium,yes,no,hot,,,supplier listing,\n";
        Files.writeString(
                tables.resolve("press-settings.csv"),
                SETTINGS + listed + "ceramic,mug press,,190 C,3 min,medium,yes,yes,hot,,,common practice,\n");
        String line = "Q1042,MUG-11-W,wide.png,1,2026-03-03";
        String gloves = "Heat-proof gloves, from loading until the piece is cold.";
        assertThat(Monday.of(folder, Optional.of(tables), line).text()).contains(gloves);
        Files.writeString(tables.resolve("press-settings.csv"), SETTINGS + listed);
        assertThat(Monday.of(folder, Optional.of(tables), line).text()).doesNotContain(gloves);
    }

    @Test
    void nothingIsPromisedThatNobodyMeasured() throws IOException, RulebookFaults {
        assertThat(mixed().text().toLowerCase(Locale.ROOT))
                .doesNotContain("no gloves", "without gloves", "dishwasher safe", "food safe", "microwave safe")
                .doesNotContain("stays cool", "is safe");
    }

    @Test
    void aSeriesThatComesAgainPointsToItsFirstLoad() throws IOException, RulebookFaults {
        String text = Monday.of(
                        folder,
                        Optional.empty(),
                        "Q1042,MUG-11-W,wide.png,2,2026-03-03",
                        "Q1045,COAST-S,square.png,1,2026-03-04",
                        "Q1046,MUG-11-PK,wide.png,1,2026-03-05")
                .text();
        assertThat(text)
                .containsSubsequence(
                        "Loads 1 to 2",
                        " Q1042-1-2 ",
                        " Q1045-1-1 ",
                        "MUG-11-PK: look up the supplier's listing",
                        "as at load 1 above",
                        " Q1046-1-1 ");
    }

    @Test
    void machinesThatOverloadTheirCircuitAreNamedWithTheirSum() throws IOException, RulebookFaults {
        String both = Monday.of(
                        folder,
                        Optional.empty(),
                        "Q1044,STEIN-16-F,wide.png,1,2026-03-05",
                        "Q1045,COAST-S,square.png,1,2026-03-04")
                .text();
        // The oven's 1600 W and the flat press's 1400 W, against 80 % of 120 V x 20 A.
        assertThat(both).contains("3000 W together", "1920 W continuously", "never heat them at the same time");
        String one = Monday.of(folder, Optional.empty(), "Q1044,STEIN-16-F,wide.png,1,2026-03-05")
                .text();
        assertThat(one).contains("1600 W of the 1920 W").doesNotContain("at the same time");
        assertThat(one).contains("Local codes and a licensed electrician decide.");
    }

    @Test
    void aLongIdStandsOnOneLine() throws IOException, RulebookFaults {
        String order = "TERN-COLONY-2026-SPRING-00017";
        Monday monday = Monday.of(folder, Optional.empty(), order + ",MUG-11-W,wide.png,1,2026-03-03");
        assertThat(monday.text()).contains(" " + order + "-1-1 ");
    }

    @Test
    void hundredsOfPiecesStayUsable() throws IOException, RulebookFaults {
        Monday monday = Monday.of(folder, Optional.empty(), "Q1042,MUG-11-W,wide.png,300,2026-03-03");
        assertThat(monday.pages()).isLessThan(14);
    }

    @Test
    void theSameRunGivesTheSameBytes() throws IOException, RulebookFaults {
        Monday monday = mixed();
        assertThat(monday.pdf()).isEqualTo(monday.pdf());
    }
}
