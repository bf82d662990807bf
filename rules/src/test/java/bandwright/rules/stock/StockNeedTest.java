package bandwright.rules.stock;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StockNeedTest {
    private static StockNeed need(int pieces, int spares, int count, int reorderAt, int pack) {
        LocalDate day = LocalDate.of(2026, 2, 27);
        return new StockNeed(
                pieces,
                spares,
                Optional.of(new StockCount("MUG-11-W", day, count, OptionalInt.of(reorderAt), pack, "")));
    }

    @ParameterizedTest
    @CsvSource({
        // pieces, spares, count: short pieces, short spares, left
        "40, 3, 50, 0, 0, 10",
        "40, 3, 43, 0, 0, 3",
        "40, 3, 41, 0, 2, 1",
        "40, 3, 40, 0, 3, 0",
        "40, 3, 38, 2, 3, 0",
        "40, 3, 0, 40, 3, 0",
        "40, 0, 38, 2, 0, 0",
        "0, 0, 5, 0, 0, 5"
    })
    void whatIsMissingIsPartedIntoPiecesAndSpares(
            int pieces, int spares, int count, int shortPieces, int shortSpares, int left) {
        StockNeed need = need(pieces, spares, count, 0, 1);
        assertThat(need.shortPieces()).isEqualTo(shortPieces);
        assertThat(need.shortSpares()).isEqualTo(shortSpares);
        assertThat(need.left()).isEqualTo(left);
    }

    @ParameterizedTest
    @CsvSource({
        // pieces, count, level, pack: packs
        "9, 120, 48, 36, 0",
        "72, 120, 48, 36, 1", // exactly at the level: 48 are left, one pack lifts them over it
        "71, 120, 48, 36, 0",
        "100, 120, 48, 36, 1",
        "120, 120, 48, 36, 2",
        "130, 120, 48, 36, 2", // 49 to be over the level and 10 that are missing now
        "130, 120, 48, 12, 5"
    })
    void wholePacksLiftTheShelfOverItsLevel(int pieces, int count, int level, int pack, int packs) {
        assertThat(need(pieces, 0, count, level, pack).packsToOrder()).isEqualTo(packs);
    }

    @Test
    void aBlankThatNobodyCountsIsNeverShort() {
        StockNeed need = new StockNeed(10, 1, Optional.empty());
        assertThat(need.take()).isEqualTo(11);
        assertThat(need.shortPieces() + need.shortSpares() + need.packsToOrder())
                .isZero();
    }
}
