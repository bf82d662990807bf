package bandwright.checks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import bandwright.pipeline.ledger.Ledger;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The watcher as a shop has it: a process that gets signals, is killed, loses its share and finds its disk full. */
final class WatchProcessTest {
    private static final int KILLS = 8;

    @TempDir
    private Path folder;

    private WatchedInbox shop;
    private final List<Process> begun = new ArrayList<>();

    @BeforeEach
    void anInbox() throws IOException {
        shop = new WatchedInbox(folder);
    }

    @AfterEach
    void endWhatWasBegun() throws InterruptedException {
        for (Process process : begun) {
            process.destroyForcibly().waitFor();
        }
    }

    @Test
    void askedToStopItFinishesWhatItMakesAndEndsWell() throws Exception {
        Process watcher = start();
        shop.await("the watcher", () -> shop.status().contains("is being watched"));
        for (int order = 1; order <= 3; order++) {
            shop.drop("orders-" + order + ".csv", "Q" + order);
        }
        shop.await("a run in the making", this::isMaking);
        assertThat(WatchedInbox.stop(watcher)).isZero();
        assertThat(shop.runs()).hasSize(1);
        assertThat(shop.done()).containsExactly("orders-1.csv", "orders-2.csv", "orders-3.csv");
        assertThat(shop.status()).contains("Nobody is watching");
        assertThat(WatchedInbox.names(shop.outbox))
                .containsExactlyInAnyOrder(shop.runs().get(0), "ledger.db", "ledger.lock", "status.html");
    }

    @Test
    void killedAnywhereEveryOrderIsMadeOnceAndPutAway() throws Exception {
        for (int kill = 1; kill <= KILLS; kill++) {
            String name = "orders-" + kill + ".csv";
            shop.drop(name, "Q" + kill);
            Process watcher = start();
            // From the first look over the making to the putting away.
            switch (kill % 4) {
                case 0 -> shop.await("a look", () -> shop.status().contains("is being watched"));
                case 1 -> shop.await("a run", () -> shop.status().contains("A run is being made"));
                case 2 ->
                    shop.await(
                            "a run in the making",
                            () -> isMaking() || shop.done().contains(name));
                default -> shop.await("the end of it", () -> shop.done().contains(name));
            }
            Thread.sleep(60L * kill);
            watcher.destroyForcibly().waitFor();
        }
        Process last = start();
        shop.await("all of it", () -> shop.done().size() == KILLS);
        assertThat(WatchedInbox.stop(last)).isZero();
        assertThat(WatchedInbox.names(shop.inbox)).containsExactly(".bandwright-watch.lock", "done");
        try (Ledger ledger = Ledger.look(shop.outbox)) {
            for (int kill = 1; kill <= KILLS; kill++) {
                assertThat(ledger.list("Q" + kill)).as("order Q%d", kill).hasSize(1);
            }
        }
    }

    @Test
    void aSecondWatcherIsRefusedInOneLine() throws Exception {
        Process first = start();
        shop.await("the watcher", () -> shop.status().contains("is being watched"));
        WatchedInbox other = new WatchedInbox(folder, folder.resolve("elsewhere"));
        Process second = other.start();
        begun.add(second);
        assertThat(second.waitFor()).isEqualTo(1);
        assertThat(shop.said().lines().filter(line -> line.startsWith("bandwright: ")))
                .singleElement()
                .asString()
                .contains("Another watcher has the inbox");
        assertThat(first.isAlive()).isTrue();
    }

    @Test
    void aRunBesideItIsWelcome() throws Exception {
        start();
        shop.await("the watcher", () -> shop.status().contains("is being watched"));
        Path orders = Files.writeString(folder.resolve("by-hand.csv"), WatchedInbox.HEADER + "Q7,COAST-S,lamp,1\n");
        String artwork = WholeRun.SAMPLE.resolve("artwork").toString();
        String date = LocalDate.now(ZoneOffset.UTC).minusDays(3).toString();
        shop.drop("orders.csv", "Q8");
        int code = WholeRun.bandwright(
                List.of("-XX:TieredStopAtLevel=1"),
                Map.of(),
                "run",
                orders.toString(),
                "--out",
                shop.outbox.toString(),
                "--artwork",
                artwork,
                "--date",
                date);
        assertThat(code).isZero();
        shop.await("the drop", () -> shop.done().contains("orders.csv"));
        assertThat(shop.runs()).hasSize(2).contains(date + "-1");
    }

    @Test
    void aShareThatGoesAndComesBackIsWatchedOn() throws Exception {
        Process watcher = start();
        shop.await("the watcher", () -> shop.status().contains("is being watched"));
        Path away = folder.resolve("away");
        Files.move(shop.inbox, away);
        shop.await("a word on it", () -> shop.status().contains("isn&#39;t there"));
        Files.writeString(away.resolve("orders.csv"), WatchedInbox.HEADER + "Q1,COAST-S,lamp,1\n");
        assertThat(watcher.isAlive()).isTrue();
        Files.move(away, shop.inbox);
        shop.await("the drop", () -> shop.done().contains("orders.csv"));
        shop.await("the good word", () -> shop.status().contains("is being watched"));
        assertThat(WatchedInbox.stop(watcher)).isZero();
    }

    @Test
    void aFullDiskIsSaidAndWhenThereIsRoomItGoesOn() throws Exception {
        Path disk = Files.createDirectory(folder.resolve("disk"));
        assumeTrue(mounted(disk), "needs leave to mount a small disk in memory, as root has it");
        try {
            WatchedInbox small = new WatchedInbox(folder, disk.resolve("outbox"));
            Process watcher = small.start();
            begun.add(watcher);
            small.await("the watcher", () -> small.status().contains("is being watched"));
            Path ballast = fill(disk);
            small.drop("orders.csv", "Q1");
            small.await("a word on it", () -> small.status().contains("is full"));
            assertThat(small.runs()).isEmpty();
            assertThat(small.inbox.resolve("orders.csv")).exists();
            Files.delete(ballast);
            small.await("the drop", () -> small.done().contains("orders.csv"));
            small.await("the good word", () -> small.status().contains("is being watched"));
            assertThat(small.runs()).hasSize(1);
            assertThat(WatchedInbox.stop(watcher)).isZero();
        } finally {
            endWhatWasBegun();
            new ProcessBuilder("umount", disk.toString()).start().waitFor();
        }
    }

    private boolean isMaking() throws IOException {
        return WatchedInbox.names(shop.outbox).stream().anyMatch(name -> name.startsWith(".making-2"));
    }

    private Process start() throws IOException {
        Process watcher = shop.start();
        begun.add(watcher);
        return watcher;
    }

    private static boolean mounted(Path disk) throws IOException, InterruptedException {
        if (!Programs.has("mount")) {
            return false;
        }
        Process mount = new ProcessBuilder("mount", "-t", "tmpfs", "-o", "size=4m", "tmpfs", disk.toString())
                .redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .start();
        return mount.waitFor(10, TimeUnit.SECONDS) && mount.exitValue() == 0;
    }

    /** Takes all the room there is, to the last page. */
    private static Path fill(Path disk) throws IOException {
        Path ballast = disk.resolve("ballast");
        try (var out = Files.newOutputStream(ballast)) {
            for (int size : new int[] {1 << 16, 1 << 12}) {
                write(out, size);
            }
        }
        return ballast;
    }

    private static void write(OutputStream out, int size) {
        try {
            while (true) {
                out.write(new byte[size]);
            }
        } catch (IOException full) {
            return;
        }
    }
}
