package bandwright.pipeline.ordered;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.Conservation;
import bandwright.pipeline.RowEnd;
import bandwright.pipeline.RowFate;
import bandwright.pipeline.RowFates;
import bandwright.pipeline.Run;
import bandwright.pipeline.shop.Stall;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Whatever a weekend's rows say, each ends in exactly one way, and its pieces add up. */
final class EveryRowEndsOnceTest {
    private static final List<String> ORDERS = List.of("Q1", "Q2", "Q3", "STOCK", "", "-");
    private static final List<String> SKUS = List.of("", "", "MUG-11-W", "white mug", "MUG-15-W", "MUGG", "PAIR-1");
    private static final List<String> DESIGNS = List.of("", "", "tern", "lamp", "choir", "puffin", "tern.jpg");
    private static final List<String> PRODUCTS =
            List.of("", "Tern mug", "Keepers' pair", "Tea and tides", "Tide table", "Any mug", "Turn mug");
    private static final List<String> VARIATIONS =
            List.of("", "Size: 15 oz", "Size: 11 oz / Handle: Pink", "Size", "x: y, z; Size=15 oz");
    private static final List<String> QUANTITIES = List.of("1", "1", "2", "3", "6", "0", "2.5", "");
    private static final List<String> WORDS = List.of(
            "",
            "",
            "-",
            "Ada",
            "Name: Ada",
            "Name: Ada, Ben",
            "Name: Ada, Ben, Cleo",
            "Year: 1912",
            "&lt;Ada&gt;",
            "Name: Bartholomew Oke the elder",
            "Date: 3 May; Name: Bo");
    private static final List<String> STATUSES = List.of("", "", "", "Paid", "Cancelled");
    private static final List<String> DAYS = List.of("", "2026-03-04", "03/04/2026", "soon");

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void everyRowEndsOnceAndItsPiecesAddUp(long seed) throws Exception {
        SplittableRandom random = new SplittableRandom(seed);
        Run run = weekend(folder, random).run();
        assertThat(Conservation.check(run)).as("seed %d", seed).isEmpty();
        int ordered = 0;
        int ended = 0;
        for (RowFate fate : RowFates.of(run)) {
            ordered += fate.ordered();
            ended += fate.units().size() + fate.heldPieces() + fate.skippedPieces();
        }
        assertThat(ended).as("seed %d", seed).isEqualTo(ordered);
        assertThat(run.held()).as("seed %d", seed).allSatisfy(held -> {
            assertThat(held.reason().message()).isNotBlank().doesNotContain("\n", "{0}", "{1}");
            assertThat(held.reason().cure()).isNotBlank().doesNotContain("\n", "{0}", "{1}");
            assertThat(held.pieces()).isNotNegative();
        });
        List<String> ids = run.units().stream().map(unit -> unit.id()).toList();
        assertThat(ids).as("seed %d", seed).doesNotHaveDuplicates();
    }

    /** A check that can't fail proves nothing. */
    @Test
    void theRandomRowsEndInEveryWay() throws Exception {
        Set<RowEnd> ends = EnumSet.noneOf(RowEnd.class);
        Set<String> codes = new TreeSet<>();
        for (long seed = 1; seed <= 12; seed++) {
            Run run = weekend(folder.resolve("seed-" + seed), new SplittableRandom(seed))
                    .run();
            RowFates.of(run).forEach(fate -> ends.add(fate.end()));
            run.held().forEach(held -> codes.add(held.reason().code()));
            run.skipped().forEach(skipped -> codes.add(skipped.code()));
        }
        assertThat(ends).containsExactlyInAnyOrder(RowEnd.values());
        assertThat(codes)
                .contains(
                        "order-missing",
                        "product-unknown",
                        "product-tie",
                        "personalisation-unread",
                        "texts-not-dealt",
                        "text-missing",
                        "text-too-long",
                        "order-incomplete",
                        "not-drinkware",
                        "cancelled");
    }

    private static Stall weekend(Path folder, SplittableRandom random) throws IOException {
        Stall stall = new Stall(folder);
        stall.table(
                "products.csv",
                "site,product,variation,blank,design,count,texts",
                ",Tern mug,,MUG-11-W,tern,,",
                ",Keepers' pair,,MUG-11-W,lamp,,",
                ",Keepers' pair,,MUG-15-W,tern,,",
                ",PAIR-1,,MUG-11-W,choir,2,",
                ",Tea and tides,,MUG-11-W,tern,,",
                ",Tea and tides,,,,2,",
                ",Tide table,,,,,",
                ",Any mug,Size=11 oz,MUG-11-W,,,",
                ",Any mug,Handle=Pink,MUG-11-PK,,,",
                ",Any mug,Size=15 oz,MUG-15-W,,,");
        stall.table(
                "texts.csv",
                "design,field,max_chars,required,default",
                "lamp,name,12,yes,",
                "lamp,date,,,",
                "choir,year,4,,1912");
        stall.table("shop.csv", "key,value", "incomplete_order," + (random.nextBoolean() ? "make" : "wait"));
        String continued = random.nextBoolean() ? "yes" : "";
        stall.table(
                "sites.csv",
                "site,files,continued,skip_status,text_separator,empty_words",
                ",," + continued + ",Cancelled,\",\",-");
        for (int file = 0; file < 2; file++) {
            List<String> rows = new ArrayList<>(
                    List.of("Order,SKU,Design,Product,Variation,Qty,Personalisation,Status,Ship By,Site"));
            int count = 10 + random.nextInt(30);
            for (int i = 0; i < count; i++) {
                rows.add(row(random));
            }
            stall.orders("file-" + file + ".csv", rows.toArray(String[]::new));
        }
        return stall;
    }

    private static String row(SplittableRandom random) {
        if (random.nextInt(12) == 0) {
            return "";
        }
        List<List<String>> columns = List.of(
                ORDERS, SKUS, DESIGNS, PRODUCTS, VARIATIONS, QUANTITIES, WORDS, STATUSES, DAYS, List.of("", "Fair"));
        return columns.stream()
                .map(words -> '"' + words.get(random.nextInt(words.size())) + '"')
                .collect(Collectors.joining(","));
    }
}
