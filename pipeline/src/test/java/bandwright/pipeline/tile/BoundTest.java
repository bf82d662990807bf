package bandwright.pipeline.tile;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.rules.paper.FlagLaw;
import bandwright.rules.units.Length;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class BoundTest {
    @Test
    void threePicturesOfMoreThanHalfASheetNeedThreeSheets() {
        // By area two sheets would do: 3 x 0.55 = 1.65.
        assertThat(Bound.sheets(job(200, 200, kind(148, 148, 3)))).isEqualTo(3);
    }

    @Test
    void exactlyFullSheetsAreNotRoundedUp() {
        assertThat(Bound.sheets(job(200, 300, kind(100, 100, 18)))).isEqualTo(3);
        assertThat(Bound.sheets(job(200, 300, kind(100, 100, 19)))).isEqualTo(4);
    }

    @Test
    void aPictureThatFitsOnlyOneWayCountsThatWay() {
        // 210 x 60 on 100 x 300 stands upright only; one a column, one column: four sheets, by area two.
        assertThat(Bound.sheets(job(100, 300, kind(210, 60, 4)))).isEqualTo(4);
    }

    @Test
    void noPicturesNeedNoSheet() {
        assertThat(Bound.sheets(new Job(1000, 1000, List.of(), false))).isZero();
    }

    @Test
    void whatFitsIntoALengthNeverCountsMoreThanOne() {
        SplittableRandom random = new SplittableRandom(7);
        for (int round = 0; round < 20_000; round++) {
            long length = random.nextLong(10, 400);
            long threshold = random.nextLong(1, length / 2 + 1);
            int parts = random.nextInt(1, 31);
            long left = length;
            double[] sums = new double[3];
            while (left > 0) {
                long x = random.nextLong(1, left + 1);
                left -= x;
                sums[0] += Bound.threshold(x, threshold, length);
                sums[1] += Bound.rounding(x, threshold, length);
                sums[2] += Bound.parts(x, parts, length);
            }
            String as = "round " + round + " length " + length + " threshold " + threshold + " parts " + parts;
            assertThat(sums[0]).as(as).isLessThan(1 + 1e-9);
            assertThat(sums[1]).as(as).isLessThan(1 + 1e-9);
            assertThat(sums[2]).as(as).isLessThan(1 + 1e-9);
        }
    }

    private static Job job(double width, double height, Sized... sizes) {
        PoseLaw law = new PoseLaw(
                TilingShop.room("sheet", Length.mm(width), Length.mm(height), Length.ZERO, Optional.empty()),
                FlagLaw.of(TilingShop.noFlag(Length.ZERO)),
                Length.ZERO);
        List<Kind> kinds = List.of(sizes).stream()
                .map(size -> new Kind(
                        FlatPattern.straight(size.width(), size.height()),
                        Pose.of(FlatPattern.straight(size.width(), size.height()), law),
                        size.copies()))
                .toList();
        return new Job(law.fieldWidth(), law.fieldHeight(), kinds, false);
    }

    private record Sized(Length width, Length height, int copies) {}

    private static Sized kind(double width, double height, int copies) {
        return new Sized(Length.mm(width), Length.mm(height), copies);
    }
}
