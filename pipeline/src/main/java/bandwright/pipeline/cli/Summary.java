package bandwright.pipeline.cli;

import bandwright.pipeline.Run;
import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.intake.InboxFile;
import bandwright.pipeline.rows.From;
import bandwright.rules.words.Words;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** A run in the few lines that a person reads on the terminal, and in the exit code that a script reads. */
record Summary(Run run) {
    static Summary of(Run run) {
        return new Summary(run);
    }

    int exitCode() {
        return run.held().isEmpty() && run.orders().unread().isEmpty() ? ExitCode.DONE : ExitCode.NEEDS_A_PERSON;
    }

    /** One line for each file without orders that could be read, and for each hidden sheet, which may hold some. */
    List<String> refusals() {
        Stream<InboxFile> hidden = run.orders().files().stream().filter(file -> file.state() == InboxFile.State.HIDDEN);
        return Stream.concat(run.orders().unread().stream(), hidden)
                .distinct()
                .map(file -> where(file) + ": " + file.message())
                .toList();
    }

    List<String> heldLines() {
        return run.held().stream().map(Summary::line).toList();
    }

    /** The same, by what they are held for. */
    SortedMap<String, List<String>> heldByCode() {
        SortedMap<String, List<String>> lines = new TreeMap<>();
        for (HeldRow held : run.held()) {
            lines.computeIfAbsent(held.reason().code(), code -> new ArrayList<>())
                    .add(line(held));
        }
        return lines;
    }

    String published(Path folder) {
        return Words.say("cli.published", folder, counts());
    }

    String wouldBe() {
        return Words.say("cli.dry-run", counts());
    }

    private String counts() {
        return Words.say(
                "cli.counts",
                counted("cli.piece", "cli.pieces", run.units().size()),
                counted("cli.sheet", "cli.sheets", run.tiled().sheets().size()),
                run.held().size(),
                run.skipped().size());
    }

    /** One of them, or so many. */
    private static String counted(String one, String many, int count) {
        return count == 1 ? Words.say(one) : Words.say(many, count);
    }

    private static String where(InboxFile file) {
        return file.file() + file.sheet().map(sheet -> ", " + sheet).orElse("");
    }

    private static String line(HeldRow held) {
        From from = held.row().from();
        return from.file() + from.sheet().map(sheet -> ", " + sheet).orElse("") + Words.say("cli.at-row", from.row())
                + ", " + held.column() + ": " + held.reason().message() + " "
                + held.reason().cure();
    }
}
