package bandwright.pipeline.watch;

import bandwright.pipeline.outbox.Outbox;
import bandwright.pipeline.write.json.RunJsonBack;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The newest runs of the outbox, whoever made them, as their folders say. */
record PastRuns(List<One> runs) {
    static final PastRuns NONE = new PastRuns(List.of());
    /** A week of the busy [our judgement]. */
    private static final int SHOWN = 7;

    /** Papers in the order in which a day needs them. */
    private static final List<String> PAPERS =
            List.of("held.xlsx", "sheets", "press-checklist.pdf", "pick-list.pdf", "packing-slips.pdf");

    /** @param papers names of its files that a person opens, index.html apart */
    record One(String name, int pieces, int sheets, int held, List<String> papers) {
        One {
            papers = List.copyOf(papers);
        }
    }

    PastRuns {
        runs = List.copyOf(runs);
    }

    /** Of a run that can't be read, as somebody deletes it just now, nothing is said. */
    static PastRuns of(Path outbox) {
        List<One> runs = new ArrayList<>();
        try {
            for (Path folder : Outbox.runs(outbox).stream().limit(SHOWN).toList()) {
                if (Files.exists(folder.resolve("run.json"))) {
                    runs.add(one(folder));
                }
            }
        } catch (IOException | UncheckedIOException e) {
            return new PastRuns(runs);
        }
        return new PastRuns(runs);
    }

    private static One one(Path folder) throws IOException {
        RunJsonBack run = RunJsonBack.read(folder.resolve("run.json"));
        List<String> papers = new ArrayList<>();
        for (String paper : PAPERS) {
            papers.addAll(files(folder, paper));
        }
        return new One(
                Glance.name(folder),
                run.all("units.id").size(),
                run.all("sheets.page").size(),
                run.all("held.code").size(),
                papers);
    }

    /** The file of that name, or the files in the folder of that name; nothing where neither is there. */
    private static List<String> files(Path folder, String name) throws IOException {
        Path place = folder.resolve(name);
        if (!Files.isDirectory(place)) {
            return Files.exists(place) ? List.of(name) : List.of();
        }
        try (Stream<Path> files = Files.list(place)) {
            return files.map(file -> name + "/" + Glance.name(file)).sorted().toList();
        }
    }
}
