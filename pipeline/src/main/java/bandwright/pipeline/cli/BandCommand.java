package bandwright.pipeline.cli;

import bandwright.pipeline.match.WhyNot;
import bandwright.rules.Rulebook;
import bandwright.rules.RulebookFaults;
import bandwright.rules.blanks.Band;
import bandwright.rules.blanks.BandLaw;
import bandwright.rules.blanks.BandSum;
import bandwright.rules.blanks.Blank;
import bandwright.rules.heat.HeatChoice;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.table.Nearest;
import bandwright.rules.words.Words;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code bandwright band}: the printable band of a blank on every heat source, the sum written out. */
@Command(name = "band", mixinStandardHelpOptions = true)
final class BandCommand implements Callable<Integer> {
    @Parameters(paramLabel = "SKU", descriptionKey = "band.sku")
    private String sku = "";

    @Option(names = "--rules", paramLabel = "DIR", descriptionKey = "run.rules")
    private @Nullable Path rulesFolder;

    private final Terminal terminal;

    BandCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        try {
            Rulebook rules = Rulebook.read(Optional.ofNullable(rulesFolder));
            Optional<Blank> blank = rules.blanks().find(sku);
            if (blank.isEmpty()) {
                terminal.complain(unknown(sku, rules));
                return ExitCode.WRONG_USAGE;
            }
            say(blank.get(), rules);
            return ExitCode.DONE;
        } catch (RulebookFaults e) {
            e.faults().forEach(fault -> terminal.complain(fault.line()));
            terminal.complain(Words.say("cli.rulebook-unusable", e.faults().size()));
            return ExitCode.NOTHING_PUBLISHED;
        }
    }

    /** That no blank goes by that name, with the nearest one. */
    static String unknown(String sku, Rulebook rules) {
        List<String> skus = rules.blanks().list().stream().map(Blank::sku).toList();
        return Nearest.of(sku, skus)
                .map(near -> Words.say("cli.no-such-blank-near", sku, near))
                .orElse(Words.say("cli.no-such-blank", sku));
    }

    private void say(Blank blank, Rulebook rules) {
        terminal.answer(Words.say("cli.band-blank", blank.sku(), blank.name()));
        Optional<HeatSource> chosen = HeatChoice.among(
                        HeatChoice.candidates(blank, rules.heatSources()), blank, rules.pressSettings())
                .chosen()
                .map(HeatChoice.Chosen::source);
        for (HeatSource source : rules.heatSources().list()) {
            HeatChoice choice = HeatChoice.among(List.of(source), blank, rules.pressSettings());
            if (choice.chosen().isEmpty()) {
                String why = WhyNot.of(choice.refusals().get(0).why(), blank, source);
                terminal.answer(Words.say("cli.band-refused", source.id(), source.name(), why));
                continue;
            }
            String key = chosen.filter(source::equals).isPresent() ? "cli.band-chosen" : "cli.band-source";
            terminal.answer(Words.say(key, source.id(), source.name()));
            Optional<Band> band = BandLaw.of(blank, source);
            band.map(found -> BandSum.of(blank, source, found, rules.shop().unit()))
                    .ifPresentOrElse(this::say, () -> terminal.answer(Words.say("cli.band-empty")));
        }
        terminal.answer(Words.say(next(blank, chosen), blank.sku()));
    }

    private static String next(Blank blank, Optional<HeatSource> chosen) {
        if (chosen.isEmpty()) {
            return "cli.band-next-none";
        }
        return BandLaw.of(blank, chosen.get()).isPresent() ? "cli.band-next" : "cli.band-next-empty";
    }

    private void say(BandSum sum) {
        terminal.answer(Words.say("cli.band-around", sum.around()));
        terminal.answer(Words.say("cli.band-up", sum.up()));
        sum.more().forEach(line -> terminal.answer(Words.say("cli.band-more", line)));
    }
}
