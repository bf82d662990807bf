package bandwright.pipeline.load;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.intake.OrderLine;
import bandwright.pipeline.match.MatchedLine;
import bandwright.pipeline.match.TestShop;
import bandwright.pipeline.owed.OwedLine;
import bandwright.pipeline.past.Past;
import bandwright.pipeline.pixels.Sights;
import bandwright.pipeline.size.Sizing;
import bandwright.pipeline.size.Unit;
import bandwright.rules.blanks.Form;
import bandwright.rules.blanks.Material;
import bandwright.rules.designs.Fit;
import bandwright.rules.units.Length;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The clamp takes one piece: 20 s in, 180 s, 10 s out. The oven holds six places. All are warm after 600 s. */
class LoadingTest {
    private static final LocalDate MONDAY = LocalDate.of(2026, 3, 2);
    /** Stands for a row without a ship-by date. */
    private static final LocalDate NEVER = LocalDate.MAX;

    private final TestShop shop = TestShop.ofTheTrust();

    @BeforeEach
    void addBlanks() {
        Form form = new Form.Cylinder(Length.mm(240), Length.mm(100));
        shop.blanks.add(TestShop.blank("BIG", Material.GLASS, form, 30, 0, List.of(), 4));
        shop.blanks.add(TestShop.blank("HUGE", Material.GLASS, form, 30, 0, List.of(), 9));
    }

    @Test
    void aClampPressesOnePieceAfterTheOtherOnceItIsWarm() {
        List<Load> loads = load(line("Q1", "MUG", "clamp", 3, MONDAY));
        assertThat(loads).extracting(Load::number).containsExactly(1, 2, 3);
        assertThat(loads).extracting(Load::startSeconds).containsExactly(600, 810, 1020);
        assertThat(loads).extracting(Load::endSeconds).containsExactly(810, 1020, 1230);
        assertThat(loads).allMatch(load -> load.machine() == 1);
    }

    @Test
    void anOvenIsFilledByPlaces() {
        List<Load> loads = load(line("Q1", "BIG", "oven", 2, MONDAY), line("Q2", "GLASS", "oven", 4, MONDAY));
        assertThat(loads)
                .extracting(LoadingTest::orders)
                .containsExactly(List.of("Q1", "Q2", "Q2"), List.of("Q1", "Q2", "Q2"));
    }

    @Test
    void aPieceLargerThanAWholeLoadGoesAlone() {
        List<Load> loads = load(line("Q1", "HUGE", "oven", 2, MONDAY), line("Q2", "GLASS", "oven", 1, MONDAY));
        assertThat(loads).extracting(LoadingTest::orders).containsExactly(List.of("Q1"), List.of("Q1"), List.of("Q2"));
    }

    @Test
    void piecesOfUnlikeSettingsNeverShareALoad() {
        List<Load> loads = load(line("Q1", "GLASS", "oven", 1, MONDAY), line("Q2", "TUMBLER", "oven", 1, MONDAY));
        assertThat(loads).hasSize(2);
    }

    @Test
    void whatShipsFirstIsPressedFirstAndWhatHasNoDateLast() {
        List<Load> loads = load(
                line("Q1", "MUG", "clamp", 1, NEVER),
                line("Q2", "MUG", "clamp", 1, MONDAY.plusDays(2)),
                line("Q3", "GLASS", "oven", 1, MONDAY),
                line("Q4", "MUG", "clamp", 1, MONDAY.plusDays(1)));
        assertThat(loads)
                .extracting(LoadingTest::orders)
                .containsExactly(List.of("Q3"), List.of("Q4"), List.of("Q2"), List.of("Q1"));
    }

    @Test
    void onOneDateASettingIsKeptUntilItsPiecesAreDone() {
        List<Load> loads = load(
                line("Q1", "GLASS", "oven", 7, MONDAY),
                line("Q2", "TUMBLER", "oven", 7, MONDAY),
                line("Q3", "GLASS", "oven", 5, MONDAY));
        assertThat(loads)
                .extracting(load -> load.units().get(0).matched().blank().sku())
                .containsExactly("GLASS", "GLASS", "TUMBLER", "TUMBLER");
    }

    @Test
    void ordersOfOneDateGoByTheirNumbers() {
        List<Load> loads = load(line("Q10", "MUG", "clamp", 1, MONDAY), line("Q9", "MUG", "clamp", 1, MONDAY));
        assertThat(loads).extracting(LoadingTest::orders).containsExactly(List.of("Q9"), List.of("Q10"));
    }

    @Test
    void nothingToPressIsNoLoad() {
        assertThat(loads(List.of())).isEmpty();
    }

    private static List<String> orders(Load load) {
        return load.units().stream().map(unit -> unit.matched().line().order()).toList();
    }

    private List<Load> load(MatchedLine... lines) {
        return loads(units(List.of(lines)));
    }

    private List<Load> loads(List<Unit> units) {
        return Loading.all(units, shop.rules(), Past.NONE, MONDAY).loads();
    }

    private List<Unit> units(List<MatchedLine> lines) {
        return Sizing.each(
                        lines.stream().map(OwedLine::whole).toList(),
                        shop.rules(),
                        new Sights(),
                        Optional.empty(),
                        Set.of())
                .made();
    }

    private MatchedLine line(String order, String sku, String source, int quantity, LocalDate shipBy) {
        OrderLine line = TestShop.line(
                "", order, "1", sku, "heron", quantity, "", Optional.of(shipBy).filter(date -> !date.equals(NEVER)));
        return shop.matched(
                line,
                sku,
                source,
                TestShop.design("heron", "heron.png", Fit.CONTAIN),
                TestShop.artwork("heron.png", 2000, 1000));
    }
}
