package bandwright.pipeline.cli;

import bandwright.pipeline.RunId;
import bandwright.pipeline.match.WhyNot;
import bandwright.pipeline.write.setup.FitStrip;
import bandwright.pipeline.write.setup.OwnFile;
import bandwright.rules.Rulebook;
import bandwright.rules.RulebookFaults;
import bandwright.rules.blanks.Band;
import bandwright.rules.blanks.BandLaw;
import bandwright.rules.blanks.Blank;
import bandwright.rules.heat.HeatChoice;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.table.Nearest;
import bandwright.rules.words.Words;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code bandwright strip}: the band of a blank on plain paper, to be wrapped round it before one is spent. */
@Command(name = "strip", mixinStandardHelpOptions = true)
final class StripCommand implements Callable<Integer> {
    @Parameters(paramLabel = "SKU", descriptionKey = "band.sku")
    private String sku = "";

    @Option(names = "--heat-source", paramLabel = "ID", descriptionKey = "strip.heat-source")
    private @Nullable String heatSource;

    @Option(names = "--rules", paramLabel = "DIR", descriptionKey = "run.rules")
    private @Nullable Path rulesFolder;

    @Option(names = "--paper", paramLabel = "ID", descriptionKey = "strip.paper")
    private @Nullable String paper;

    @Option(names = "--out", paramLabel = "FILE", descriptionKey = "strip.out")
    private @Nullable Path out;

    private final Terminal terminal;

    StripCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        try {
            return strip(Rulebook.read(Optional.ofNullable(rulesFolder)));
        } catch (RulebookFaults e) {
            e.faults().forEach(fault -> terminal.complain(fault.line()));
            terminal.complain(Words.say("cli.rulebook-unusable", e.faults().size()));
            return ExitCode.NOTHING_PUBLISHED;
        }
    }

    private int strip(Rulebook rules) {
        Optional<Blank> blank = rules.blanks().find(sku);
        if (blank.isEmpty()) {
            return wrongUsage(BandCommand.unknown(sku, rules));
        }
        Optional<HeatSource> wish = Optional.ofNullable(heatSource).flatMap(rules.heatSources()::find);
        if (heatSource != null && wish.isEmpty()) {
            List<String> ids =
                    rules.heatSources().list().stream().map(HeatSource::id).toList();
            String near = Nearest.of(heatSource, ids).orElse(String.join(", ", ids));
            return wrongUsage(Words.say("strip.no-such-source", heatSource, near));
        }
        HeatChoice choice = HeatChoice.among(
                wish.map(List::of).orElseGet(() -> HeatChoice.candidates(blank.get(), rules.heatSources())),
                blank.get(),
                rules.pressSettings());
        if (choice.chosen().isEmpty()) {
            HeatChoice.Refusal first = choice.refusals().get(0);
            String why = WhyNot.of(first.why(), blank.get(), first.source());
            return wrongUsage(
                    Words.say("strip.refused", blank.get().sku(), first.source().id(), why));
        }
        HeatSource source = choice.chosen().get().source();
        Optional<Band> band = BandLaw.of(blank.get(), source);
        if (band.isEmpty()) {
            return wrongUsage(Words.say("check.band-empty", blank.get().sku(), source.id()));
        }
        Optional<PaperRoom> room = Sheets.rooms(rules, Optional.ofNullable(paper)).stream()
                .filter(one -> FitStrip.fits(band.get(), one))
                .findFirst();
        if (room.isEmpty()) {
            return wrongUsage(Words.say("strip.too-large", blank.get().sku()));
        }
        return write(blank.get(), source, band.get(), room.get(), rules);
    }

    private int write(Blank blank, HeatSource source, Band band, PaperRoom room, Rulebook rules) {
        Path file = out != null ? out : Path.of(OwnFile.name("strip", blank.sku()));
        if (!OwnFile.mayReplace(file)) {
            return wrongUsage(Words.say("strip.not-ours", file));
        }
        try {
            RunId day = new RunId(LocalDate.EPOCH, 1);
            OwnFile.write(
                    file,
                    to -> FitStrip.write(blank, source, band, room, rules.shop().unit(), day, to));
        } catch (IOException e) {
            terminal.complain(Words.say("strip.unwritten", file));
            return ExitCode.NOTHING_PUBLISHED;
        }
        terminal.answer(Words.say("strip.done", file, room.paper().id()));
        return ExitCode.DONE;
    }

    private int wrongUsage(String line) {
        terminal.complain(line);
        return ExitCode.WRONG_USAGE;
    }
}
