package bandwright.pipeline.print;

import bandwright.pipeline.RunId;
import bandwright.pipeline.write.SheetFile;
import bandwright.rules.paper.MirrorBy;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.paper.Printer;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A file of sheets as a job of the system's queue: once, one page a sheet of paper, on one side, at true size.
 *
 * <p>What the queue is set to by itself is overruled where it would spoil paper. The attributes are those of RFC 8011,
 * section 5.2 (copies, job-sheets, media, number-up, sides), and of PWG 5100.13 (print-scaling); mirror is an option of
 * the filters that CUPS prints PDF with.
 *
 * @param place where the file lies
 * @param title by which it is found in the queue: 2026-03-02-1 letter-01.pdf
 */
record PrintJob(Path place, String title, PaperRoom room) {
    static PrintJob of(RunId run, SheetFile file, Path folder) {
        Path place = folder.resolve(file.name()).toAbsolutePath();
        return new PrintJob(place, run + " " + file.shortName(), file.room());
    }

    /** The words behind lp; no shell ever reads them. */
    List<String> words() {
        Printer printer = room.printer();
        List<String> words = new ArrayList<>();
        printer.queue().ifPresent(queue -> words.addAll(List.of("-d", queue)));
        words.addAll(List.of("-t", title, "-n", "1"));
        List<String> options = new ArrayList<>(List.of(
                "print-scaling=none",
                "media=" + MediaName.of(room),
                "sides=one-sided",
                "number-up=1",
                "job-sheets=none"));
        if (printer.mirror() == MirrorBy.FILE) {
            options.add("mirror=false"); // mirrored already: a queue that always mirrors must not undo it
        }
        options.forEach(option -> words.addAll(List.of("-o", option)));
        words.addAll(List.of("--", place.toString()));
        return words;
    }
}
