package bandwright.pipeline.write.checklist;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.load.Load;
import bandwright.rules.RulebookFaults;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the checklist says of the day: the day of the trust's gift shop begins at 09:00. */
class PressDayTest {
    private static final LocalTime NINE = LocalTime.of(9, 0);

    @TempDir
    Path folder;

    private Monday withShop(String keys, String... orders) throws IOException, RulebookFaults {
        Path tables = Files.createDirectories(folder.resolve("tables"));
        Files.writeString(tables.resolve("shop.csv"), "key,value\n" + keys);
        return Monday.of(folder, Optional.of(tables), orders);
    }

    private static String by(int seconds) {
        return NINE.plusSeconds(seconds + 59L).withSecond(0).toString();
    }

    @Test
    void whatShipsByADateIsSaidToBePressedWhenItsLastPieceIsOut() throws IOException, RulebookFaults {
        Monday monday = withShop(
                "first_alone,no\n", "Q1042,MUG-11-W,wide.png,3,2026-03-03", "Q1043,MUG-11-W,wide.png,4,2026-03-05");
        List<Load> loads = monday.run().loads();
        // The row of ceramic in a mug press: 5 to 10 min on a dry rack.
        assertThat(monday.text())
                .contains(
                        "ships by 2026-03-03 is pressed by "
                                + by(loads.get(2).endSeconds()) + "; the last of it may be handled at "
                                + by(loads.get(2).endSeconds() + 600),
                        "The last piece is out by " + by(loads.get(6).endSeconds()));
    }

    @Test
    void ordersThatShipTodayAndAreNotReadyForTheCollectionAreNamed() throws IOException, RulebookFaults {
        String[] orders = {
            "Q1042,MUG-11-W,wide.png,1,2026-03-02",
            "Q1043,MUG-11-W,wide.png,8,2026-03-02",
            "Q1044,MUG-11-W,wide.png,1,2026-03-09"
        };
        assertThat(withShop("collection,09:30\n", orders).text())
                .contains("NOT READY when parcels are fetched at 09:30: Q1043.");
        assertThat(withShop("collection,12:00\n", orders).text())
                .contains("fetched at 12:00: all 9 pieces that ship today can be handled by then")
                .doesNotContain("NOT READY");
    }

    @Test
    void nothingIsInAMachineDuringABreak() throws IOException, RulebookFaults {
        Monday monday = withShop("breaks,09:20-09:40\n", "Q1042,MUG-11-W,wide.png,6,2026-03-03");
        assertThat(monday.run().loads()).allMatch(load -> load.endSeconds() <= 1200 || load.startSeconds() >= 2400);
        assertThat(monday.text())
                .containsSubsequence(" Q1042-1-2 ", "09:20 Break until 09:40.", "from 09:40", " Q1042-1-3 ");
    }

    @Test
    void theBatchWaitsUntilItsFirstPieceCanBeLookedAt() throws IOException, RulebookFaults {
        List<Load> loads =
                withShop("", "Q1044,STEIN-16-F,wide.png,3,2026-03-05").run().loads();
        assertThat(loads).extracting(Load::isFirst).containsExactly(true, false);
        // Glass in an oven is peeled when hand-warm and rests 15 min.
        assertThat(loads.get(1).startSeconds()).isEqualTo(loads.get(0).endSeconds() + 900);
    }

    @Test
    void withoutFirstAloneAllGoTogether() throws IOException, RulebookFaults {
        List<Load> loads = withShop("first_alone,no\n", "Q1044,STEIN-16-F,wide.png,3,2026-03-05")
                .run()
                .loads();
        assertThat(loads).singleElement().matches(load -> load.units().size() == 3 && !load.isFirst());
    }

    @Test
    void whatHandsDoStandsInTheOrderOfTheClock() throws IOException, RulebookFaults {
        String text = withShop(
                        "",
                        "Q1042,MUG-11-W,wide.png,6,2026-03-03",
                        "Q1043,MUG-11-GL,wide.png,3,2026-03-03",
                        "Q1046,TUM-20-W,square.png,3,2026-03-03")
                .text();
        Matcher line = Pattern.compile("(\\d\\d:\\d\\d) (?:Switch o|Take load|Turn load)|from (\\d\\d:\\d\\d)")
                .matcher(text.substring(text.indexOf("Before you start")));
        List<String> times = new ArrayList<>();
        while (line.find()) {
            times.add(line.group(1) != null ? line.group(1) : line.group(2));
        }
        assertThat(times).hasSizeGreaterThan(15).isSorted();
        assertThat(text).contains("Switch on: Mug press.", "Switch off: Mug press.", "Turn load ", "Take load ");
    }

    @Test
    void theEndOfTheDayNamesHeatersWhatCoolsAndWhatToCount() throws IOException, RulebookFaults {
        String text = withShop("", "Q1042,MUG-11-W,wide.png,1,2026-03-03").text();
        assertThat(text)
                .containsSubsequence(
                        " Q1042-1-1 ",
                        "When the last piece is out",
                        "Every heater is off and unplugged: Mug press.",
                        "Still too hot to handle: load 1 until ",
                        "stock.csv: MUG-11-W.");
    }

    @Test
    void onePressMoreIsWorkedOutNotGuessed() throws IOException, RulebookFaults {
        Monday monday = withShop("first_alone,no\n", "Q1042,MUG-11-W,wide.png,20,2026-03-03");
        // 600 s to warm up and 20 x 240 s on one press, 10 x 240 s and a handling of the other's on each of two.
        assertThat(monday.run().day().endSeconds()).isEqualTo(5400);
        int withTwo = monday.run().day().whatIfs().get(0).endSeconds();
        assertThat(withTwo).isBetween(3000, 3100);
        assertThat(monday.text()).contains("One more Mug press would have the last piece out by " + by(withTwo));
    }
}
