package bandwright.pipeline.cli;

import bandwright.pipeline.RunId;
import bandwright.pipeline.write.setup.FitStrip;
import bandwright.pipeline.write.setup.OwnFile;
import bandwright.rules.Rulebook;
import bandwright.rules.RulebookFaults;
import bandwright.rules.blanks.Band;
import bandwright.rules.blanks.Blank;
import bandwright.rules.heat.HeatSource;
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
        } catch (AskedBand.Refused e) {
            return wrongUsage(e.line());
        }
    }

    private int strip(Rulebook rules) throws AskedBand.Refused {
        AskedBand asked = AskedBand.find(sku, Optional.ofNullable(heatSource), rules);
        Optional<String> noPaper = Sheets.refusal(rules, Optional.ofNullable(paper));
        if (noPaper.isPresent()) {
            return wrongUsage(noPaper.get());
        }
        Optional<FitStrip> strip = strip(asked.blank(), asked.source(), asked.band(), rules);
        if (strip.isEmpty()) {
            return wrongUsage(Words.say("strip.too-large", asked.blank().sku()));
        }
        return write(strip.get(), asked.blank());
    }

    /** On the first paper that takes it whole; if none does, glued together from the first that there is. */
    private Optional<FitStrip> strip(Blank blank, HeatSource source, Band band, Rulebook rules) {
        List<FitStrip> strips = Sheets.rooms(rules, Optional.ofNullable(paper)).stream()
                .map(room -> FitStrip.of(blank, source, band, room, rules.shop().unit()))
                .filter(strip -> !strip.isTooLarge())
                .toList();
        return strips.stream().filter(strip -> strip.count() == 1).findFirst().or(() -> strips.stream()
                .findFirst());
    }

    private int write(FitStrip strip, Blank blank) {
        Path file = out != null ? out : Path.of(OwnFile.name(OwnFile.Kind.STRIP, blank.sku()));
        if (!OwnFile.mayReplace(file, OwnFile.Kind.STRIP)) {
            return wrongUsage(Words.say("strip.not-ours", file));
        }
        try {
            OwnFile.write(file, to -> strip.write(new RunId(LocalDate.EPOCH, 1), to));
        } catch (IOException e) {
            terminal.complain(Words.say("strip.unwritten", file));
            return ExitCode.NOTHING_PUBLISHED;
        }
        String done = strip.count() == 1
                ? Words.say("strip.done", file, strip.paper())
                : Words.say("strip.done-glued", file, strip.paper(), strip.count());
        terminal.answer(done);
        return ExitCode.DONE;
    }

    private int wrongUsage(String line) {
        terminal.complain(line);
        return ExitCode.WRONG_USAGE;
    }
}
