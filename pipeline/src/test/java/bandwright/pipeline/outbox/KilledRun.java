package bandwright.pipeline.outbox;

import bandwright.pipeline.RunId;
import bandwright.pipeline.write.OutFile;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.CountDownLatch;

/** A run in a process of its own that stops at a named moment, says so, and waits to be killed. */
final class KilledRun {
    static final RunId ID = new RunId(LocalDate.of(2026, 3, 2), 1);
    static final List<String> FILES = List.of("run.json", "sheets/a4-01.pdf", "sheets/a4-02.pdf");
    static final int BYTES = 300_000;

    private KilledRun() {}

    public static void main(String[] args) {
        String moment = args[1];
        Outbox outbox = Outbox.open(Path.of(args[0]), Integer.parseInt(args[2]), line -> {});
        stopAt("opened", moment);
        List<OutFile> files = FILES.stream()
                .map(name -> new OutFile(name, out -> write(out, name, moment)))
                .toList();
        outbox.publish(ID, files, new NoRecord(), folder -> {
            stopAt("read back", moment);
            return List.of();
        });
        stopAt("published", moment);
    }

    private static void write(OutputStream out, String name, String moment) throws IOException {
        out.write(new byte[BYTES / 2]);
        out.flush();
        stopAt(name, moment);
        out.write(new byte[BYTES / 2]);
    }

    private static void stopAt(String here, String moment) {
        if (here.equals(moment)) {
            System.out.println("at " + moment);
            try {
                new CountDownLatch(1).await();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
    }
}
