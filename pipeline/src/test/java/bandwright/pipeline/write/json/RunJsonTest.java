package bandwright.pipeline.write.json;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.GiftShop;
import bandwright.pipeline.RunMaker;
import bandwright.pipeline.rows.From;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RunJsonTest {
    @Test
    void aUnitIsWrittenAsTheSchemaHasIt() throws IOException {
        assertThat(json(RunMaker.weekend())).contains("""
                        {
                            "id": "Q1042-1-1",
                            "site": "",
                            "order": "Q1042",
                            "line": "1",
                            "piece": 1,
                            "from": {
                              "file": "orders.xlsx",
                              "sheet": "Orders",
                              "row": 2
                            },
                            "blank": "MUG-11-W",
                            "design": "tern.jpg",
                            "texts": {
                              "name": "Ada"
                            },
                            "heat_source": "clamp",
                            "band_width_mm": 212.73,
                            "band_height_mm": 95.25,
                            "overlap_mm": 0.00,
                            "bleed_top_mm": 0.00,
                            "bleed_bottom_mm": 0.00,
                            "limited_by": [ ],
                            "ppi": 312,
                            "colour_shift": null,
                            "notes": [ "crop" ],
                            "sheet": 0,
                            "x_mm": 6.35,
                            "y_mm": 40.00,
                            "w_mm": 95.25,
                            "h_mm": 212.73,
                            "rotation": 90,
                            "mirrored": true,
                            "load": 1
                          }""");
    }

    @Test
    void rowsSheetsAndLoadsAreWrittenInTheOrderOfTheSchema() throws IOException {
        String json = json(RunMaker.weekend());

        assertThat(json)
                .containsSubsequence(
                        "\"schema\": 1",
                        "\"run\": \"2026-03-02-1\"",
                        "\"date\": \"2026-03-02\"",
                        "\"rows\"",
                        "\"read\": 5",
                        "\"sheets\"",
                        "\"file\": \"sheets/letter-01.pdf\"",
                        "\"width_mm\": 215.90",
                        "\"sheets_at_least\": 1",
                        "\"files\"",
                        "\"state\": \"read\"",
                        "\"units\"",
                        "\"loads\"",
                        "\"temperature_c\": 190.6",
                        "\"press_s\": 180",
                        "\"held\"",
                        "\"column\": \"Artwork\"",
                        "\"skipped\"");
        assertThat(json).endsWith("}\n").doesNotContain("\r");
    }

    @Test
    void aRowOfACsvHasNoSheet() throws IOException {
        From csv = new From("choir.csv", Optional.empty(), 2);
        String json = json(new RunMaker().hold(GiftShop.row(csv, GiftShop.HEADER, "Q1"), 1));

        assertThat(json).contains("choir.csv").doesNotContain("\"sheet\"");
    }

    @Test
    void halfACharacterIsReplacedAndNotFatal() throws IOException {
        String json = json(new RunMaker().hold(GiftShop.row(GiftShop.from(2), GiftShop.HEADER, "Q\uD83D"), 1));

        assertThat(json).contains("\"order\": \"Q\uFFFD\"");
    }

    private static String json(RunMaker maker) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new RunJson().files(maker.run(), GiftShop.rules()).get(0).body().writeTo(out);
        return out.toString(StandardCharsets.UTF_8);
    }
}
