package bandwright.pipeline.ordered;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.Run;
import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.intake.InboxFile;
import bandwright.pipeline.shop.Stall;
import bandwright.pipeline.size.Unit;
import bandwright.rules.orders.OrderField;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each selling site writes its orders in a way of its own. */
final class SitesTest {
    private static final String SITES =
            "site,files,header_row,date_order,decimal,continued,skip_status,text_separator,empty_words,approval";

    @TempDir
    private Path folder;

    private Stall stall = new Stall(Path.of(""));

    @BeforeEach
    void open() {
        stall = new Stall(folder);
    }

    @Test
    void aRowWithoutTheOrdersCellsBelongsToTheOrderAboveIt() throws Exception {
        stall.table("sites.csv", SITES, "Fair,fair*,,,,yes,,,-,");
        stall.orders(
                "fair.csv",
                "Order,Ship By,Status,Buyer,City,SKU,Design,Qty",
                "Q1,2026-03-04,Paid,Ada Tern,Saltby,MUG-11-W,tern,1",
                ",,-,,,MUG-15-W,lamp,2",
                "",
                ",,,,,MUG-11-W,lamp,1",
                "Q2,2026-03-05,Cancelled,Bo Oke,Mörby,MUG-11-W,tern,1",
                ",,,,,MUG-11-W,lamp,3",
                ",,,Cleo Finch,,MUG-11-W,lamp,1");
        Run run = stall.run();
        assertThat(Stall.story(run))
                .containsExactly(
                        "made Q1-1-1 MUG-11-W tern",
                        "made Q1-2-1 MUG-15-W lamp",
                        "made Q1-2-2 MUG-15-W lamp",
                        "made Q1-3-1 MUG-11-W lamp",
                        "held  x1 order-missing",
                        "skipped Q2 x1 cancelled",
                        "skipped Q2 x3 cancelled");
        assertThat(run.units()).allSatisfy(unit -> {
            assertThat(unit.matched().line().shipBy()).contains(LocalDate.of(2026, 3, 4));
            assertThat(unit.matched().line().row().cell(OrderField.BUYER).text())
                    .isEqualTo("Ada Tern");
        });
    }

    @Test
    void aHeldRowOfAnOrdersLaterRowsNamesItsOrder() throws Exception {
        stall.table("sites.csv", SITES, ",,,,,yes,,,,");
        stall.orders("fair.csv", "Order,SKU,Design", "Q1,MUG-11-W,tern", ",MUGG,lamp");
        HeldRow held = stall.held();
        assertThat(held.order()).isEqualTo("Q1");
        assertThat(held.row().cell(OrderField.ORDER).text()).isEqualTo("Q1");
    }

    @Test
    void withoutContinuedEveryRowNamesItsOwnOrder() throws Exception {
        stall.orders("fair.csv", "Order,SKU,Design", "Q1,MUG-11-W,tern", ",MUG-15-W,lamp");
        assertThat(stall.story()).containsExactly("made Q1-1-1 MUG-11-W tern", "held  x1 order-missing");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "dmy | 03/04/2026 | 2026-04-03",
                "mdy | 03/04/2026 | 2026-03-04",
                "ymd | 26/03/04   | 2026-03-04",
                "''  | 13/04/2026 | 2026-04-13",
                "dmy | 4 Mar 2026 | 2026-03-04",
            })
    void datesAreReadInTheOrderOfTheSite(String order, String written, LocalDate day) throws Exception {
        stall.table("sites.csv", SITES, ",,," + order + ",,,,,,");
        stall.orders("fair.csv", "Order,SKU,Design,Ship By", "Q1,MUG-11-W,tern," + written);
        assertThat(stall.run().units())
                .extracting(unit -> unit.matched().line().shipBy().orElseThrow())
                .containsExactly(day);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "''  | 03/04/2026 | '\"03/04/2026\" can be 4 March 2026 or 3 April 2026.'",
                "mdy | 13/04/2026 | '\"13/04/2026\" is no date in the order that sites.csv gives the site; in another it is 13 April 2026.'",
                "dmy | 45/04/2026 | '\"45/04/2026\" is not a date.'",
            })
    void aDateThatCanBeTwoDaysIsHeldWithBoth(String order, String written, String message) throws Exception {
        stall.table("sites.csv", SITES, ",,," + order + ",,,,,,");
        stall.orders("fair.csv", "Order,SKU,Design,Ship By", "Q1,MUG-11-W,tern," + written);
        HeldRow held = stall.held();
        assertThat(held.reason().code()).isEqualTo("date-unclear");
        assertThat(held.reason().message()).isEqualTo(message);
    }

    @Test
    void aFilesSiteIsThePatternsElseTheOneWhoseHeadersMatchBest() throws Exception {
        stall.table(
                "sites.csv", SITES, "Choir Stall,ch?ir*.csv,,,,,,,,", "Harbour,,,,,,,,,", "Quay,,,,,,,,,", ",,,,,,,,,");
        stall.table(
                "order-columns.csv",
                "site,field,header",
                ",order,Order",
                ",sku,SKU",
                ",design,Design",
                "Harbour,order,Ticket",
                "Harbour,sku,Ware",
                "Harbour,design,Motif",
                "Quay,order,Ticket",
                "Quay,sku,Ware");
        stall.orders("Choir May.csv", "Order,SKU,Design", "Q1,MUG-11-W,tern")
                .orders("boats.csv", "Ticket,Ware,Motif", "Q2,MUG-11-W,tern")
                .orders("plain.csv", "Order,SKU,Design", "Q3,MUG-11-W,tern");
        assertThat(stall.run().orders().files())
                .extracting(file -> file.file() + " " + file.site())
                .containsExactly("Choir May.csv Choir Stall", "boats.csv Harbour", "plain.csv ");
    }

    @Test
    void aDroppedHeldFileIsOfTheSiteThatItsRowsCameFrom() throws Exception {
        stall.table("sites.csv", SITES, "Fair,fair*,,dmy,,,,,,", ",,,,,,,,,");
        stall.table(
                "order-columns.csv",
                "site,field,header",
                ",order,Order",
                ",sku,SKU",
                ",design,Design",
                ",ship_by,Ship By",
                "Fair,order,Ticket");
        stall.orders(
                "held.csv",
                "Ticket,SKU,Design,Ship By,ask,reason,cure,from",
                "Q1,MUG-11-W,tern,03/04/2026,,x,y,fair may.csv |  | 7");
        Run run = stall.run();
        assertThat(run.orders().files()).extracting(InboxFile::site).containsExactly("Fair");
        assertThat(run.units()).extracting(Unit::id).containsExactly("Q1-1-1");
        assertThat(run.units().get(0).matched().line().shipBy()).contains(LocalDate.of(2026, 4, 3));
    }

    @Test
    void theDecimalSignOfTheSiteIsUnderstood() throws Exception {
        stall.table("sites.csv", SITES, ",,,,\",\",,,,,");
        stall.orders("fair.csv", "Order;SKU;Design;Qty", "Q1;MUG-11-W;tern;2,0", "Q2;MUG-11-W;tern;2,5");
        assertThat(stall.story())
                .containsExactly(
                        "made Q1-1-1 MUG-11-W tern", "made Q1-1-2 MUG-11-W tern", "held Q2 x0 quantity-unclear");
    }

    @Test
    void anOrderWaitsUntilTheBuyerHasApprovedItsProof() throws Exception {
        stall.table("sites.csv", SITES, ",,,,,,,,,yes");
        stall.orders(
                "fair.csv", "Order,SKU,Design,Approved", "Q1,MUG-11-W,tern,", "Q2,MUG-11-W,tern,yes", "Q3,MUGG,,no");
        Run run = stall.run();
        assertThat(Stall.story(run))
                .containsExactly(
                        "held Q1 x1 waiting-for-approval",
                        "held Q2 x1 waiting-for-approval",
                        "held Q3 x1 blank-unknown");
        assertThat(run.waiting()).hasSize(2);
        HeldRow first = run.held().get(0);
        String code = first.reason().cure().replaceAll(".*write ([0-9A-Z]{5}) in.*", "$1");
        assertThat(first.ask().orElseThrow())
                .startsWith("About your order Q1: ")
                .contains(code);
        assertThat(first.reason().message()).contains(code);

        stall.orders("fair.csv", "Order,SKU,Design,Approved", "Q1,MUG-11-W,tern," + code.toLowerCase(Locale.ROOT));
        assertThat(stall.story()).containsExactly("made Q1-1-1 MUG-11-W tern");
        stall.orders("fair.csv", "Order,SKU,Design,Approved", "Q1,MUG-15-W,tern," + code);
        assertThat(stall.story()).containsExactly("held Q1 x1 waiting-for-approval");
    }

    @Test
    void theSitesOwnWordsForCancelledSkipARowWhateverElseIsWrong() throws Exception {
        stall.table("sites.csv", SITES, ",,,,,,Called off|Refunded,,,");
        stall.orders("fair.csv", "Order,Product,Qty,Status", "Q1,?,none,called OFF", "Q2,?,1,Cancelled");
        assertThat(stall.story()).containsExactly("held Q2 x1 product-unknown", "skipped Q1 x0 cancelled");
    }
}
