package bandwright.pipeline.write;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.GiftShop;
import bandwright.pipeline.tile.Sheet;
import bandwright.pipeline.tile.Tiled;
import bandwright.rules.paper.MirrorBy;
import bandwright.rules.paper.PaperRoom;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class SheetFilesTest {
    @Test
    void eachPrinterAndPaperHasAFileCountedPerPaper() {
        Sheet desk = new Sheet(GiftShop.ROOM, List.of());
        Sheet attic = new Sheet(PaperRoom.of(GiftShop.LETTER, GiftShop.printer("attic", MirrorBy.DRIVER)), List.of());
        Sheet tabloid = new Sheet(
                PaperRoom.of(GiftShop.paper("13/19", 330, 483), GiftShop.printer("desk", MirrorBy.FILE)), List.of());

        assertThat(SheetFiles.of(new Tiled(List.of(desk, desk, attic, tabloid, desk), 1))
                        .pages())
                .extracting(sheet -> sheet.file() + " " + sheet.page())
                .containsExactly(
                        "sheets/letter-01.pdf 1",
                        "sheets/letter-01.pdf 2",
                        "sheets/letter-02.pdf 1",
                        "sheets/13_19-01.pdf 1",
                        "sheets/letter-01.pdf 3");
    }

    @Test
    void aFileEndsAtAThousandPages() {
        Tiled many = new Tiled(Collections.nCopies(1_001, new Sheet(GiftShop.ROOM, List.of())), 1);

        SheetPage last = SheetFiles.of(many).pages().get(1_000);
        assertThat(last.file()).isEqualTo("sheets/letter-02.pdf");
        assertThat(last.page()).isEqualTo(1);
    }
}
