package bandwright.rules.paper;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A roll of 610 mm with margins of 5 above, 6 on the right, 7 below and 8 on the left; a metre costs 1.90. */
class RollTest {
    @Test
    void beforeItIsCutItIsAsLongAsItsLongestPage() {
        assertThat(room(Optional.empty(), 1).page()).isEqualTo(Box.of(Length.mm(610), Length.mm(2000)));
        PaperRoom room = room(Optional.of(Length.mm(900)), 1);
        assertThat(room.page()).isEqualTo(Box.of(Length.mm(610), Length.mm(900)));
        assertThat(room.inside()).isEqualTo(new Box(Length.mm(8), Length.mm(7), Length.mm(596), Length.mm(888)));
    }

    @Test
    void aMetreCostsWhatTheTableSaysAndAPageByItsLength() {
        PaperRoom page = room(Optional.empty(), 1).cutAfter(Length.mm(1250));
        assertThat(page.cost().orElseThrow()).isEqualByComparingTo("2.375");
    }

    /** 400 mm reach to 407 from below, and the margin above makes it 412. */
    @ParameterizedTest
    @CsvSource({"1, 412", "0.99, 416.17", "1.01, 412", "0.97, 424.75"})
    void thePageIsLongEnoughForAPrinterThatPrintsTooShort(double scale, double length) {
        PaperRoom roll = room(Optional.empty(), scale);
        Length page = Roll.page(roll.paper(), roll.printer(), Length.mm(407));
        assertThat(page).isEqualTo(Length.mm(length));
        assertThat(roll.cutAfter(page).inside().top()).isBetween(Length.mm(407), Length.mm(407.01));
    }

    private static PaperRoom room(Optional<Length> longest, double scale) {
        Paper roll = new Paper(
                "roll",
                "Roll",
                Length.mm(610),
                Optional.empty(),
                longest,
                Length.mm(5),
                Length.mm(6),
                Length.mm(7),
                Length.mm(8),
                Optional.of(new BigDecimal("1.90")),
                "");
        Printer printer = new Printer(
                "wide",
                List.of("roll"),
                Optional.empty(),
                MirrorBy.DRIVER,
                Optional.empty(),
                Optional.empty(),
                1,
                scale,
                "");
        return PaperRoom.of(roll, printer);
    }
}
