package bandwright.pipeline.print;

import bandwright.pipeline.Run;
import bandwright.pipeline.RunId;
import bandwright.pipeline.ledger.Handover;
import bandwright.pipeline.ledger.Handover.State;
import bandwright.pipeline.ledger.Handovers;
import bandwright.pipeline.ledger.Ledger;
import bandwright.pipeline.outbox.OutboxFault;
import bandwright.pipeline.write.SheetFile;
import bandwright.pipeline.write.SheetFiles;
import bandwright.rules.paper.MirrorBy;
import bandwright.rules.words.Words;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;

/**
 * Gives a run's sheets to the system's queues, each file once. Two calls round publishing: {@link #promise} before, so
 * that nothing is forgotten by a program that is stopped in between, and {@link #send} after.
 *
 * <p>Never twice wins over surely once: the ledger hears of a file before the system does. Whatever stops the program
 * after that, the file is not sent again; {@link #leftovers} tells a person to look.
 */
public final class HandOver {
    private final Handovers entries;
    private final Path outbox;
    private final Lp lp;

    public HandOver(Ledger ledger, Path outbox, Lp lp) {
        this.entries = ledger.handovers();
        this.outbox = outbox;
        this.lp = lp;
    }

    /** Tells, once, of what an earlier run was to hand over when it was stopped. */
    public void leftovers(Consumer<Handed> told) {
        for (Handover left : entries.left()) {
            Path place = outbox.resolve(left.run()).resolve(left.file());
            String key = left.state() == State.WAITING ? "print.left-waiting" : "print.left-sending";
            told.accept(needsAPerson(key, place, queue(left.queue()), jobsOf(left.queue())));
            entries.told(left.run(), left.file());
        }
    }

    /** Before the run is published. */
    public void promise(Run run) {
        List<Handover> files = files(run).stream()
                .map(file -> new Handover(run.id().toString(), file.name(), queueOf(file), State.WAITING))
                .toList();
        if (!files.isEmpty()) {
            entries.promise(run.id(), files);
        }
    }

    /**
     * After the run is published in that folder. Whatever goes wrong, the run stays.
     *
     * @param told hears a line for each file
     */
    public void send(Run run, Path folder, Consumer<Handed> told) {
        try {
            for (SheetFile file : files(run)) {
                if (!send(run.id(), file, folder, told)) {
                    files(run).forEach(left -> entries.told(run.id().toString(), left.name()));
                    return;
                }
            }
        } catch (OutboxFault e) {
            told.accept(needsAPerson("print.no-ledger", folder.resolve("sheets")));
        }
    }

    /** Whether there is any use in trying the next one. */
    private boolean send(RunId run, SheetFile file, Path folder, Consumer<Handed> told) {
        Path place = folder.resolve(file.name());
        if (!entries.begin(run, file.name())) {
            told.accept(needsAPerson("print.begun", place));
            return true;
        }
        if (hasSeveralLengths(file)) {
            told.accept(needsAPerson("print.roll", place));
            entries.told(run.toString(), file.name());
            return true;
        }
        Answer answer = lp.hand(PrintJob.of(run, file, folder));
        if (answer.kind() == Answer.Kind.TAKEN) {
            entries.sent(run, file.name(), answer.said()); // before anything else can stop us
        }
        String queue = queueOf(file);
        told.accept(
                switch (answer.kind()) {
                    case TAKEN -> taken(file, place, answer.said());
                    case REFUSED -> needsAPerson("print.refused", place, queue(queue), answer.said());
                    case UNCLEAR -> needsAPerson("print.unclear", place, queue(queue), jobsOf(queue));
                    case NO_LP -> needsAPerson("print.no-lp", folder.resolve("sheets"));
                });
        entries.told(run.toString(), file.name());
        return answer.kind() != Answer.Kind.NO_LP;
    }

    private static Handed taken(SheetFile file, Path place, String job) {
        boolean driverMirrors = file.room().printer().mirror() == MirrorBy.DRIVER;
        return new Handed(
                Words.say(
                        driverMirrors ? "print.taken-driver-mirrors" : "print.taken",
                        place,
                        queue(queueOf(file)),
                        job.isEmpty() ? Words.say("print.no-job") : job),
                false);
    }

    /** A job has one size of paper, so pages of a roll that are cut after different lengths can't be one. */
    private static boolean hasSeveralLengths(SheetFile file) {
        return file.sheets().stream()
                        .map(sheet -> sheet.room().page())
                        .distinct()
                        .count()
                > 1;
    }

    private static List<SheetFile> files(Run run) {
        return SheetFiles.of(run.tiled()).files();
    }

    private static String queueOf(SheetFile file) {
        return file.room().printer().queue().orElse("");
    }

    private static String queue(String queue) {
        return queue.isEmpty() ? Words.say("print.default-queue") : Words.say("print.queue", queue);
    }

    /** As lpstat wants the queue whose jobs it lists; of all queues if it isn't named. */
    private static String jobsOf(String queue) {
        return queue.isEmpty() ? "" : " " + queue;
    }

    private static Handed needsAPerson(String key, Object... about) {
        return new Handed(Words.say(key, about), true);
    }
}
