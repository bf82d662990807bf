package bandwright.rules.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class BoxTest {
    private static Box box(double x, double y, double width, double height) {
        return new Box(Length.mm(x), Length.mm(y), Length.mm(width), Length.mm(height));
    }

    @Test
    void boxesThatOnlyTouchDoNotOverlap() {
        Box left = box(0, 0, 10, 10);
        assertThat(left.overlaps(box(10, 0, 10, 10))).isFalse();
        assertThat(left.overlaps(box(0, 10, 10, 10))).isFalse();
        assertThat(left.overlaps(box(9.999999, 9.999999, 10, 10))).isTrue();
        assertThat(box(2, 2, 1, 1).overlaps(left)).isTrue();
    }

    @Test
    void aBoxContainsWhatReachesItsEdges() {
        Box page = box(0, 0, 100, 50);
        assertThat(page.contains(page)).isTrue();
        assertThat(page.contains(box(90, 40, 10, 10))).isTrue();
        assertThat(page.contains(box(90, 40, 10, 10.000001))).isFalse();
        assertThat(page.contains(box(-0.000001, 0, 10, 10))).isFalse();
    }

    @Test
    void aBorderGrowsABoxOnAllSides() {
        assertThat(box(10, 20, 30, 40).grown(Length.mm(2))).isEqualTo(box(8, 18, 34, 44));
        assertThat(box(10, 20, 30, 40).shifted(Length.mm(-1), Length.mm(5))).isEqualTo(box(9, 25, 30, 40));
    }

    @Test
    void aBoxIsNeverLessThanNothing() {
        assertThatThrownBy(() -> box(0, 0, -1, 5)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> box(0, 0, 1, 1).grown(Length.mm(-1))).isInstanceOf(IllegalArgumentException.class);
    }
}
