package bandwright.rules.paper;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PaperRoomTest {
    /** 300 x 500 mm with margins of 5 above, 6 on the right, 7 below and 8 on the left. */
    private static final Paper PAPER = new Paper(
            "sample",
            "Sample",
            Length.mm(300),
            Optional.of(Length.mm(500)),
            Optional.empty(),
            Length.mm(5),
            Length.mm(6),
            Length.mm(7),
            Length.mm(8),
            Optional.empty(),
            "");

    private static Printer printer(MirrorBy mirror, double scaleX, double scaleY) {
        return new Printer(
                "desk",
                List.of("sample"),
                Optional.empty(),
                mirror,
                Optional.empty(),
                Optional.empty(),
                scaleX,
                scaleY,
                "");
    }

    private static Box edges(double left, double bottom, double right, double top) {
        return new Box(Length.mm(left), Length.mm(bottom), Length.mm(right - left), Length.mm(top - bottom));
    }

    @Test
    void aTruePrinterReachesEverythingButTheMargins() {
        PaperRoom room = PaperRoom.of(PAPER, printer(MirrorBy.FILE, 1, 1));
        assertThat(room.page()).isEqualTo(edges(0, 0, 300, 500));
        assertThat(room.inside()).isEqualTo(edges(8, 7, 294, 495));
        assertThat(PaperRoom.of(PAPER, printer(MirrorBy.DRIVER, 1, 1)).inside()).isEqualTo(room.inside());
    }

    @Test
    void aPrinterThatPrintsTooSmallReachesNeitherTheRightEdgeNorTheTop() {
        // A page of 300 x 500 printed at 0.97 and 0.98 ends at 291 and at 490.
        assertThat(PaperRoom.of(PAPER, printer(MirrorBy.FILE, 0.97, 0.98)).inside())
                .isEqualTo(edges(8, 7, 291, 490));
    }

    @Test
    void afterTheDriversFlipItIsTheLeftEdgeThatIsOutOfReach() {
        // 300 - 291 = 9 on the left; the top is where it was.
        assertThat(PaperRoom.of(PAPER, printer(MirrorBy.DRIVER, 0.97, 0.98)).inside())
                .isEqualTo(edges(9, 7, 294, 490));
    }

    @Test
    void whatTheMarginsCoverAnywayCostsNothing() {
        assertThat(PaperRoom.of(PAPER, printer(MirrorBy.FILE, 0.99, 0.995)).inside())
                .isEqualTo(edges(8, 7, 294, 495));
        assertThat(PaperRoom.of(PAPER, printer(MirrorBy.DRIVER, 1.02, 1.02)).inside())
                .isEqualTo(edges(8, 7, 294, 495));
    }

    @Test
    void marginsThatMeetLeaveNoRoom() {
        Paper narrow = new Paper(
                "narrow",
                "Narrow",
                Length.mm(10),
                Optional.of(Length.mm(10)),
                Optional.empty(),
                Length.mm(6),
                Length.mm(6),
                Length.mm(6),
                Length.mm(6),
                Optional.empty(),
                "");
        Box inside = PaperRoom.of(narrow, printer(MirrorBy.FILE, 1, 1)).inside();
        assertThat(inside.width()).isEqualTo(Length.ZERO);
        assertThat(inside.height()).isEqualTo(Length.ZERO);
    }
}
