package bandwright.pipeline.watch;

import static bandwright.pipeline.watch.DropStall.names;
import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.RunId;
import bandwright.pipeline.ledger.Handover;
import bandwright.pipeline.ledger.Ledger;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Days at the drop folder, told with a clock of their own. */
final class WatchTest {
    private static final String HEADER = "Order,SKU,Design,Qty";
    private static final String COASTER = "Q1,COAST-S,lamp,1";

    @TempDir
    private Path folder;

    private DropStall stall;

    @BeforeEach
    void aDropFolder() throws IOException {
        stall = new DropStall(folder);
    }

    @AfterEach
    void goHome() {
        stall.close();
    }

    @Test
    void aDropIsTakenWhenItHasBeenQuietAndPutAwayWithItsRun() throws Exception {
        stall.drop("orders.csv", HEADER, COASTER);
        stall.look();
        stall.look();
        assertThat(stall.runs()).as("whole, but something more may land").isEmpty();
        stall.look();
        assertThat(stall.runs()).containsExactly("2026-03-02-1");
        assertThat(names(stall.inbox)).containsExactly(".bandwright-watch.lock", "done");
        assertThat(names(stall.inbox.resolve("done/2026-03-02-1"))).containsExactly("orders.csv");
        assertThat(stall.said).containsExactly("run 2026-03-02-1");
    }

    @Test
    void sheetsThatMayNotHaveBeenPrintedNeedAPersonInTheStatus() throws Exception {
        stall.drop("orders.csv", HEADER, COASTER);
        stall.looks();
        assertThat(stall.status()).doesNotContain("<h3>Printer</h3>");
        try (Ledger ledger = Ledger.open(stall.outbox)) {
            RunId run = new RunId(LocalDate.of(2026, 3, 2), 1);
            ledger.handovers()
                    .promise(
                            run,
                            List.of(new Handover(run.toString(), "sheets/letter-01.pdf", "", Handover.State.WAITING)));
        }
        stall.drop("more.csv", HEADER, "Q2,COAST-S,lamp,1");
        stall.looks();
        assertThat(stall.status()).contains("<h3>Printer</h3>", "letter-01.pdf");
    }

    @Test
    void whatLandsTogetherBecomesOneRunAndFilesOfOneNameTwo() throws Exception {
        stall.drop("a.csv", HEADER, COASTER);
        stall.drop("b.csv", HEADER, "Q2,COAST-S,lamp,1");
        Path sub = Files.createDirectory(stall.inbox.resolve("market"));
        Files.writeString(sub.resolve("a.csv"), HEADER + "\nQ3,COAST-S,lamp,1\n");
        stall.looks();
        assertThat(stall.runs()).containsExactly("2026-03-02-1", "2026-03-02-2");
        assertThat(names(stall.inbox.resolve("done/2026-03-02-1"))).containsExactly("a.csv", "b.csv");
        assertThat(names(stall.inbox.resolve("done/2026-03-02-2"))).containsExactly("market");
    }

    @Test
    void aFileThatGrowsIsWaitedFor() throws Exception {
        Path file = stall.drop("orders.csv", HEADER, COASTER);
        for (int order = 2; order < 8; order++) {
            stall.look();
            Files.writeString(file, Files.readString(file) + "Q" + order + ",COAST-S,lamp,1\n");
        }
        assertThat(stall.runs()).isEmpty();
        stall.looks();
        String run = Files.readString(stall.outbox.resolve("2026-03-02-1/run.json"));
        assertThat(run).contains("Q7-1-1");
    }

    @Test
    void aPartialWorkbookWaitsAndIsRefusedWhenNothingMoreComes() throws Exception {
        byte[] whole = Files.readAllBytes(Path.of("..", "inbox-sample", "weekend-orders.xlsx"));
        Path cut = Files.write(stall.inbox.resolve("cut.xlsx"), Arrays.copyOf(whole, 3000));
        stall.looks();
        assertThat(cut).exists();
        assertThat(stall.status()).contains("cut.xlsx", "Its end is missing");
        stall.wait(Duration.ofMinutes(10));
        stall.look();
        assertThat(names(stall.inbox.resolve("not-taken"))).containsExactly("cut.xlsx", "cut.xlsx.why.txt");
        assertThat(stall.said).containsExactly("cut.xlsx: not taken. Its end is missing, and nothing more came.");
    }

    @Test
    void namesOfTheMomentAreLeftAlone() throws Exception {
        stall.drop("orders.csv.part", HEADER, COASTER);
        stall.drop("~$orders.xlsx", "x");
        stall.drop(".~lock.orders.ods#", "x");
        stall.drop("later.csv", HEADER, COASTER);
        stall.drop("later.csv.crdownload", "x");
        stall.looks();
        stall.wait(Duration.ofHours(1));
        stall.looks();
        assertThat(stall.runs()).isEmpty();
        assertThat(names(stall.inbox)).contains("orders.csv.part", "~$orders.xlsx", "later.csv");
        assertThat(stall.said).isEmpty();
    }

    @Test
    void theSameFileDroppedTwiceIsKnownByItsContent() throws Exception {
        stall.drop("orders.csv", HEADER, COASTER);
        stall.looks();
        stall.drop("copy of orders.csv", HEADER, COASTER);
        stall.looks();
        assertThat(stall.runs()).containsExactly("2026-03-02-1");
        assertThat(stall.inbox.resolve("not-taken/copy of orders.csv.why.txt"))
                .content()
                .contains("the same file as one of run 2026-03-02-1");
        stall.drop("other.csv", HEADER, COASTER, "");
        stall.looks();
        assertThat(stall.inbox.resolve("not-taken/other.csv.why.txt"))
                .as("not the same letters, and yet nothing new")
                .content()
                .contains("Nothing in it is new");
    }

    @Test
    void twinsThatLandTogetherAreOne() throws Exception {
        stall.drop("a.csv", HEADER, COASTER);
        stall.drop("b.csv", HEADER, COASTER);
        stall.looks();
        assertThat(names(stall.inbox.resolve("done/2026-03-02-1"))).containsExactly("a.csv");
        assertThat(stall.inbox.resolve("not-taken/b.csv.why.txt")).content().contains("the same as a.csv");
        assertThat(Files.readString(stall.outbox.resolve("2026-03-02-1/run.json")))
                .contains("\"a.csv\"")
                .doesNotContain("\"b.csv\"");
    }

    @Test
    void aFileWhoseHeldRowsCanBeMadeByNowIsTakenAgain() throws Exception {
        stall.restartWithoutArtwork();
        stall.drop("orders.csv", HEADER, COASTER);
        stall.looks();
        assertThat(names(stall.outbox.resolve("2026-03-02-1"))).contains("held.xlsx");
        Path artwork = Files.createDirectories(stall.inbox.resolve("artwork"));
        try (var pictures = Files.list(Path.of("..", "inbox-sample", "artwork"))) {
            for (Path picture : pictures.filter(Files::isRegularFile).toList()) {
                Files.copy(picture, artwork.resolve(picture.getFileName().toString()));
            }
        }
        stall.drop("orders.csv", HEADER, COASTER);
        stall.looks();
        assertThat(names(stall.inbox.resolve("done/2026-03-02-2"))).containsExactly("orders.csv");
        assertThat(artwork).isNotEmptyDirectory();
    }

    @Test
    void whatWasPublishedAndNotPutAwayIsPutAwayAtTheNextStart() throws Exception {
        stall.drop("orders.csv", HEADER, COASTER);
        stall.looks();
        // As if the process had been killed between the two.
        Files.move(stall.inbox.resolve("done/2026-03-02-1/orders.csv"), stall.inbox.resolve("orders.csv"));
        stall.restart();
        stall.looks();
        assertThat(stall.runs()).containsExactly("2026-03-02-1");
        assertThat(names(stall.inbox.resolve("done/2026-03-02-1"))).containsExactly("orders.csv");
        assertThat(names(stall.inbox.resolve("not-taken"))).isEmpty();
    }

    @Test
    void aFaultyRulebookStopsTheTakingUntilItIsMended() throws Exception {
        Path shop = stall.tables.resolve("shop.csv");
        Files.writeString(shop, "key,value,note\nunit,furlong,\n");
        stall.drop("orders.csv", HEADER, COASTER);
        stall.looks();
        assertThat(stall.runs()).isEmpty();
        assertThat(stall.inbox.resolve("orders.csv")).exists();
        assertThat(stall.said).hasSize(2).anyMatch(line -> line.contains("furlong"));
        assertThat(stall.status()).contains("Nothing is taken just now", "furlong", "shop.csv");
        Files.writeString(shop, "key,value,note\nunit,mm,mended\n");
        stall.looks();
        assertThat(stall.runs()).containsExactly("2026-03-02-1");
        assertThat(stall.status()).contains("The inbox is being watched").doesNotContain("furlong");
        assertThat(stall.said).contains("It goes on: drops are taken again.");
    }

    @Test
    void aShareThatVanishesIsWaitedFor() throws Exception {
        stall.look();
        Path away = folder.resolve("away");
        Files.move(stall.inbox, away);
        stall.looks();
        assertThat(stall.status()).contains("inbox isn&#39;t there").doesNotContain("is being watched");
        Files.move(away, stall.inbox);
        stall.drop("orders.csv", HEADER, COASTER);
        stall.looks();
        assertThat(stall.runs()).containsExactly("2026-03-02-1");
        assertThat(stall.said).hasSize(3);
    }

    @Test
    void anOutboxWhoseLedgerIsGoneMakesNothingAnew() throws Exception {
        stall.drop("orders.csv", HEADER, COASTER);
        stall.looks();
        Path away = folder.resolve("away");
        Files.move(stall.outbox, away);
        Files.createDirectory(stall.outbox); // what an unmounted share leaves
        stall.drop("orders.csv", HEADER, COASTER);
        stall.looks();
        assertThat(stall.runs()).isEmpty();
        assertThat(stall.status()).contains("The ledger in");
        Files.delete(stall.outbox.resolve("status.html"));
        Files.delete(stall.outbox);
        Files.move(away, stall.outbox);
        stall.looks();
        assertThat(names(stall.inbox.resolve("not-taken"))).contains("orders.csv");
    }

    @Test
    void aDroppedFolderWithPicturesIsARunOfItsOwn() throws Exception {
        stall.restartWithoutArtwork();
        Path drop = Files.createDirectories(stall.inbox.resolve("choir"));
        Path pictures = Files.createDirectory(drop.resolve("artwork"));
        for (String name : new String[] {"storm-lamp.png", "storm-lamp-square.png"}) {
            Files.copy(Path.of("..", "inbox-sample", "artwork", name), pictures.resolve(name));
        }
        Files.writeString(drop.resolve("orders.csv"), HEADER + "\n" + COASTER + "\n");
        stall.looks();
        assertThat(names(stall.outbox.resolve("2026-03-02-1")))
                .contains("sheets")
                .doesNotContain("held.xlsx");
        assertThat(stall.inbox.resolve("done/2026-03-02-1/choir/artwork/storm-lamp-square.png"))
                .exists();
    }

    @Test
    void linksPipesAndOtherFilesAreNoDrops() throws Exception {
        Path secret = Files.writeString(folder.resolve("secret.csv"), HEADER + "\n" + COASTER);
        Files.createSymbolicLink(stall.inbox.resolve("link.csv"), secret);
        stall.drop("picture.png", "?");
        Files.createDirectory(stall.inbox.resolve("empty"));
        stall.looks();
        stall.wait(Duration.ofMinutes(10));
        stall.look();
        assertThat(stall.runs()).isEmpty();
        assertThat(names(stall.inbox.resolve("not-taken")))
                .containsExactly(
                        "empty", "empty.why.txt", "link.csv", "link.csv.why.txt", "picture.png", "picture.png.why.txt");
        assertThat(secret).exists();
    }

    @Test
    void outboxAndRulebookInsideTheInboxAreNoDrops() throws Exception {
        Path inbox = folder.resolve("all-in-one");
        DropStall inside = new DropStall(Files.createDirectory(inbox));
        inside.close();
        Asked asked = new Asked(
                inbox,
                inbox.resolve("outbox"),
                Optional.of(inbox.resolve("tables")),
                Optional.empty(),
                Optional.empty(),
                false,
                new Pace(Duration.ofSeconds(5), Duration.ZERO, Optional.empty()));
        assertThat(new Glance(inbox, asked.reserved())
                        .look(Map.of(), Instant.EPOCH)
                        .keySet())
                .containsExactly(inbox.resolve("inbox"));
    }

    @Test
    void atATimeOfDayTheNightsDropsBecomeOneRun() throws Exception {
        stall.restartAt(LocalTime.of(9, 5));
        stall.drop("a.csv", HEADER, COASTER);
        stall.looks();
        stall.drop("b.csv", HEADER, "Q2,COAST-S,lamp,1");
        stall.looks();
        assertThat(stall.runs()).isEmpty();
        assertThat(stall.status()).contains("goes into the run of 09:05");
        stall.wait(Duration.ofMinutes(5));
        stall.looks();
        assertThat(names(stall.inbox.resolve("done/2026-03-02-1"))).containsExactly("a.csv", "b.csv");
    }

    @Test
    void theStatusNamesNoBuyerAndIsPrivate() throws Exception {
        stall.drop(
                "orders.csv",
                "Order,SKU,Design,Qty,Buyer,Street",
                "Q1,COAST-S,lamp,1,Ada Marsh,2 Tern Row",
                "Q2,COAST-S,lamp,many,Ben Oar,3 Gull Lane");
        stall.looks();
        assertThat(stall.status())
                .contains("1 pieces on 1 sheets, 1 held", "2026-03-02-1/index.html", "2026-03-02-1/held.xlsx")
                .doesNotContain("Ada", "Tern Row", "Ben", "Gull Lane", "Q2");
        assertThat(String.join("\n", stall.said)).doesNotContain("Ada", "Ben", "Gull");
        if (Files.getFileStore(folder).supportsFileAttributeView("posix")) {
            for (String name : new String[] {
                "status.html", "ledger.db", "ledger.lock", "2026-03-02-1/run.json", "2026-03-02-1/held.xlsx"
            }) {
                assertThat(rights(stall.outbox.resolve(name))).as(name).isEqualTo("rw-------");
            }
            assertThat(rights(stall.outbox.resolve("2026-03-02-1"))).isEqualTo("rwx------");
            assertThat(rights(stall.outbox.resolve("2026-03-02-1/sheets"))).isEqualTo("rwx------");
            assertThat(rights(stall.inbox.resolve("done"))).isEqualTo("rwx------");
        }
    }

    @Test
    void theTimeOnTheStatusSaysThatItLives() throws Exception {
        stall.look();
        assertThat(stall.status()).contains("As of 2026-03-02 09:00");
        stall.wait(Duration.ofMinutes(7));
        stall.look();
        assertThat(stall.status()).contains("As of 2026-03-02 09:07");
        stall.close();
        assertThat(stall.status()).contains("Nobody is watching", "It was stopped on 2026-03-02 09:07");
    }

    private static String rights(Path path) throws IOException {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(path));
    }
}
