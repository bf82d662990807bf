package bandwright.pipeline.write.sheets;

import bandwright.pipeline.artwork.*;
import bandwright.pipeline.size.*;
import bandwright.pipeline.tile.*;
import bandwright.rules.paper.*;
import java.io.*;
import java.nio.file.*;
import java.util.*;
import org.junit.jupiter.api.Test;

class SheetsTest {
    @Test
    void look() throws Exception {
        Path dir = Path.of("/tmp/bw/scratch-sheets");
        ArtworkFile a = DrawnArtwork.jpeg(dir, "terns.jpeg", DrawnArtwork.lighthouse(1200, 537, 1));
        ArtworkFile b = DrawnArtwork.png(dir, "lamp.png", DrawnArtwork.lighthouse(900, 900, 5));
        for (MirrorBy m : MirrorBy.values()) {
            PaperRoom room = GiftShop.letter(GiftShop.printer(m, m == MirrorBy.DRIVER ? 0.99 : 1, 1));
            Transfer mug = GiftShop.covering(a, 212.73, 95.25), coaster = GiftShop.covering(b, 98, 98);
            Sheet one = new Sheet(
                    room,
                    List.of(
                            GiftShop.placed(GiftShop.unit("Q1042", 1, mug, room), 3, 7, 7, Rotation.R90),
                            GiftShop.placed(GiftShop.unit("Q1042", 2, mug, room), 12, 108, 7, Rotation.R270)));
            Sheet two = new Sheet(
                    room,
                    List.of(
                            GiftShop.placed(
                                    GiftShop.unit("STOCK-2026-03-02-LONG-ORDER-4711", 1, coaster, room),
                                    118,
                                    7,
                                    7,
                                    Rotation.R0),
                            GiftShop.placed(GiftShop.unit("0071", 1, coaster, room), 7, 7, 140, Rotation.R180)));
            WrittenSheets.write(new SheetFile("sheets/letter-01.pdf", List.of(two, one)), dir.resolve(m + ".pdf"));
        }
    }
}
