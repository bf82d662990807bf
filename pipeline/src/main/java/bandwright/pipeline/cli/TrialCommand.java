package bandwright.pipeline.cli;

import bandwright.pipeline.write.setup.MeasuredRow;
import bandwright.pipeline.write.setup.OwnFile;
import bandwright.pipeline.write.setup.Trial;
import bandwright.rules.Rulebook;
import bandwright.rules.RulebookFaults;
import bandwright.rules.table.TableKind;
import bandwright.rules.words.Words;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code bandwright trial}: swatches and a table by which a shop finds a press setting with few blanks. */
@Command(name = "trial", mixinStandardHelpOptions = true)
final class TrialCommand implements Callable<Integer> {
    @Parameters(paramLabel = "SKU", descriptionKey = "band.sku")
    private String sku = "";

    @Option(names = "--heat-source", paramLabel = "ID", descriptionKey = "trial.heat-source")
    private @Nullable String heatSource;

    @Option(names = "--rules", paramLabel = "DIR", descriptionKey = "run.rules")
    private @Nullable Path rulesFolder;

    @Option(names = "--paper", paramLabel = "ID", descriptionKey = "trial.paper")
    private @Nullable String paper;

    @Option(names = "--out", paramLabel = "FILE", descriptionKey = "trial.out")
    private @Nullable Path out;

    private final Terminal terminal;

    TrialCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        try {
            return trial(Rulebook.read(Optional.ofNullable(rulesFolder)));
        } catch (RulebookFaults e) {
            e.faults().forEach(fault -> terminal.complain(fault.line()));
            terminal.complain(Words.say("cli.rulebook-unusable", e.faults().size()));
            return ExitCode.NOTHING_PUBLISHED;
        } catch (AskedBand.Refused e) {
            terminal.complain(e.line());
            return ExitCode.WRONG_USAGE;
        }
    }

    private int trial(Rulebook rules) throws AskedBand.Refused {
        AskedBand asked = AskedBand.find(sku, Optional.ofNullable(heatSource), rules);
        Optional<String> noPaper = Sheets.refusal(rules, Optional.ofNullable(paper));
        if (noPaper.isPresent()) {
            throw new AskedBand.Refused(noPaper.get());
        }
        Trial.Pressed pressed = new Trial.Pressed(asked.blank(), asked.source(), asked.setting(), asked.band());
        if (!Trial.hasRoom(pressed)) {
            throw new AskedBand.Refused(Words.say(
                    "trial.too-small", asked.blank().sku(), asked.source().id()));
        }
        Optional<Trial> trial = Trial.of(pressed, rules, Sheets.rooms(rules, Optional.ofNullable(paper)));
        if (trial.isEmpty()) {
            throw new AskedBand.Refused(
                    Words.say("trial.too-large", asked.blank().sku()));
        }
        return write(trial.get(), asked);
    }

    private int write(Trial trial, AskedBand asked) throws AskedBand.Refused {
        Path file = out != null
                ? out
                : Path.of(OwnFile.name(OwnFile.Kind.TRIAL, asked.blank().sku()));
        if (!OwnFile.mayReplace(file, OwnFile.Kind.TRIAL)) {
            throw new AskedBand.Refused(Words.say("strip.not-ours", file));
        }
        try {
            MeasuredRow row = MeasuredRow.of(
                    asked.setting(),
                    asked.blank().sku(),
                    Rulebook.file(Optional.ofNullable(rulesFolder), TableKind.PRESS_SETTINGS));
            OwnFile.write(file, to -> trial.write(row, to));
        } catch (IOException e) {
            terminal.complain(Words.say("strip.unwritten", file));
            return ExitCode.NOTHING_PUBLISHED;
        }
        terminal.answer(Words.say(
                "trial.done", file, trial.firstBlanks(), trial.mostBlanks(), trial.transferPages(), trial.paper()));
        return ExitCode.DONE;
    }
}
