package bandwright.rules.spoilage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

final class SpoilageTest {
    @Test
    void fewerThanThirtyPiecesTeachNothing() {
        assertThat(new Spoilage(0.03, 29, 9)).isEqualTo(Spoilage.asSaid(0.03));
        assertThat(new Spoilage(0.03, 29, 9).rate()).isEqualTo(0.03);
        assertThat(new Spoilage(0.03, 30, 9).isLearnt()).isTrue();
    }

    /** Thirty pieces at 3 % are 0.9 spoiled ones: (0.9 + 4) / (30 + 120). */
    @Test
    void whatTheShopSaysCountsAsThirtyPieces() {
        assertThat(new Spoilage(0.03, 120, 4).rate()).isCloseTo(4.9 / 150, within(1e-15));
        assertThat(new Spoilage(0.03, 30, 3).rate()).isCloseTo((0.03 + 0.10) / 2, within(1e-15));
    }

    @Test
    void theIntervalNarrowsAsPiecesAreMade() {
        Spoilage.Interval few = new Spoilage(0.03, 40, 4).interval();
        Spoilage.Interval many = new Spoilage(0.03, 4000, 400).interval();
        assertThat(few.from()).isLessThan(many.from());
        assertThat(few.to()).isGreaterThan(many.to());
        assertThat(many.from()).isGreaterThan(0.088).isLessThan(0.1);
        assertThat(many.to()).isBetween(0.1, 0.11);
    }

    /** Beta(4.9, 145.1), its density added up in four million steps in another language. */
    @Test
    void fourOfAHundredAndTwenty() {
        Spoilage.Interval interval = new Spoilage(0.03, 120, 4).interval();
        assertThat(interval.from()).isCloseTo(0.010606, within(1e-6));
        assertThat(interval.to()).isCloseTo(0.066364, within(1e-6));
    }

    @Test
    void whatIsOnlySaidHasNoInterval() {
        assertThat(Spoilage.asSaid(0.03).interval()).isEqualTo(new Spoilage.Interval(0.03, 0.03));
    }

    @Test
    void aShopThatSpoilsNothingMayStillLearn() {
        assertThat(new Spoilage(0, 50, 0).rate()).isZero();
        assertThat(new Spoilage(0, 50, 0).interval()).isEqualTo(new Spoilage.Interval(0, 0));
        assertThat(new Spoilage(0, 50, 2).rate()).isEqualTo(2 / 80.0);
        assertThat(new Spoilage(1, 50, 50).interval().to()).isLessThan(1);
    }

    @Test
    void impossibleCountsAreRefused() {
        assertThatThrownBy(() -> new Spoilage(0.03, 40, 41)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Spoilage(1.03, 40, 4)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Spoilage(Double.NaN, 40, 4)).isInstanceOf(IllegalArgumentException.class);
    }
}
