package bandwright.pipeline.write.slips;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.write.papers.SmallMonday;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a packer must be able to trust on a slip, in small Mondays that go wrong. */
final class SlipStoriesTest {
    @TempDir
    Path folder;

    /** The slips' text of one order file, in reading order, spaces collapsed. */
    private String slips(String orders, String sites) throws IOException {
        SmallMonday monday = new SmallMonday(folder);
        return String.join(
                " ", (sites.isEmpty() ? monday : monday.table("sites.csv", sites)).pages(PackingSlips::new, orders));
    }

    @Test
    void aRowHeldAtTheDoorMakesItsOrderIncompleteOnASiteThatTheFilesNameTells() throws IOException {
        String text = slips(
                "Order,SKU,Design,Qty\nQ1,MUG-11-W,tern,1\nQ1,MUG-11-W,lamp,some\n", "site,files\nharbour,harbour*\n");
        assertThat(text).contains("NOT COMPLETE").contains("lamp");
    }

    @Test
    void aGiftWhoseOnlyMarkedRowIsHeldStillShowsNoPrice() throws IOException {
        String text = slips(
                "Order,SKU,Design,Qty,Gift,Price\nQ1,MUG-11-W,tern,1,,14.25\nQ1,MUG-11-W,lamp,some,yes,15.75\n", "");
        assertThat(text).contains("NOT COMPLETE").doesNotContain("14.25").doesNotContain("15.75");
    }

    @Test
    void aLongGiftMessageRunsOverToTheNextPageAndKeepsItsLastWords() throws IOException {
        String message = "sing on ".repeat(2000) + "farewell";
        String text = slips("Order,SKU,Design,Qty,Gift Message\nQ1,MUG-11-W,tern,1," + message + "\n", "");
        assertThat(text).contains("farewell").contains("page 2 of");
    }

    @Test
    void manyMissingRowsAreAllNamed() throws IOException {
        StringBuilder orders = new StringBuilder("Order,SKU,Design,Qty\nQ1,MUG-11-W,tern,1\n");
        for (int i = 1; i <= 60; i++) {
            orders.append("Q1,NOSUCH-").append(i).append("X,tern,1\n");
        }
        String text = slips(orders.toString(), "");
        for (int i = 1; i <= 60; i++) {
            assertThat(text).contains("NOSUCH-" + i + "X");
        }
    }

    @Test
    void controlCharactersAndTurningMarksLeaveTheWordsReadable() throws IOException {
        String text = slips(
                "Order,Ship To,Street,SKU,Design,Qty\nQ1,Ada\u0007 Fenn\u202Eimore\u200F,\"=1+1\u001B Quay\",MUG-11-W,tern,1\n",
                "");
        assertThat(text).contains("Ada Fennimore").contains("=1+1 Quay").doesNotContain("?");
    }

    @Test
    void aRowThatNamesAProductIsMissingByItsProductsName() throws IOException {
        String text = slips("Order,Product,SKU,Design,Qty\nQ1,,MUG-11-W,tern,1\nQ1,Choir mug with a tern,,,1\n", "");
        assertThat(text).contains("NOT COMPLETE").contains("Choir mug with a tern");
    }

    @Test
    void wordsByWhichASiteSaysNothingAreNotPrinted() throws IOException {
        String text = slips(
                "Order,Ship To,Region,City,SKU,Design,Qty,Gift Message\nQ1,Ada Fennimore,N/A,Saltby,MUG-11-W,tern,1,n/a\n",
                "site,files,empty_words\nharbour,harbour*,N/A\n");
        assertThat(text)
                .contains("Ada Fennimore", "Saltby")
                .doesNotContainIgnoringCase("n/a")
                .doesNotContain("This is a gift");
    }

    @Test
    void theAddressKeepsTheOrderOfTheBuyersColumns() throws IOException {
        String text = slips("""
                Order,Country,Postcode,City,Street,Ship To,SKU,Design,Qty
                Q1,Terra Nova,QM1,Saltby,3 Gannet Steps,Ada Fennimore,MUG-11-W,tern,1
                """, "");
        assertThat(text).containsSubsequence("Terra Nova", "QM1 Saltby", "3 Gannet Steps", "Ada Fennimore");
    }

    @Test
    void aVeryLongOrderNumberLeavesRunAndPageAtTheFoot() throws IOException {
        String text = slips("Order,SKU,Design,Qty\nQ" + "7".repeat(600) + ",MUG-11-W,tern,1\n", "");
        assertThat(text).contains("run 2026-03-02-1", "page 2 of 2").containsPattern("7777\\.\\.\\.");
    }

    @Test
    void aNameLongerThanAPageIsNotCut() throws IOException {
        String word = "x".repeat(9000) + "END";
        String text = slips("Order,Ship To,SKU,Design,Qty\nQ1," + word + ",MUG-11-W,tern,1\n", "");
        assertThat(text.replace(" ", "")).contains("xEND");
    }

    @Test
    void aSheetOfASlipThatCameLooseSaysItsOrderLargeAtItsTop() throws IOException {
        StringBuilder orders = new StringBuilder("Order,SKU,Design,Qty\nQ8,MUG-11-W,lamp,1\n");
        for (int i = 1; i <= 60; i++) {
            orders.append("Q7,MUG-11-W,tern,").append(i % 2 + 1).append('\n');
        }
        List<String> pages = new SmallMonday(folder).pages(PackingSlips::new, orders.toString());
        assertThat(pages).hasSizeGreaterThan(3);
        assertThat(pages.subList(1, pages.size() - 1))
                .allSatisfy(page -> assertThat(page).startsWith("Order Q7 Count Piece"));
        assertThat(pages.get(pages.size() - 1)).startsWith("Order Q8 COMPLETE");
    }

    @Test
    void anOrderOfWhichNothingIsMadeGetsNoSlip() throws IOException {
        String text = slips("Order,SKU,Design,Qty\nQ1,MUG-11-W,tern,1\nQ2,NOSUCH-1X,tern,1\n", "");
        assertThat(text).contains("Order Q1", "page 1 of 1").doesNotContain("Q2");
    }
}
