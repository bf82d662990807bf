package bandwright.pipeline.cli;

import bandwright.pipeline.RunId;
import bandwright.pipeline.write.setup.OwnFile;
import bandwright.pipeline.write.setup.RulerPage;
import bandwright.rules.Rulebook;
import bandwright.rules.RulebookFaults;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.paper.Printer;
import bandwright.rules.words.Words;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code bandwright ruler}: a page that tells what a printer really does, and what to type in of what it tells. */
@Command(name = "ruler", mixinStandardHelpOptions = true)
final class RulerCommand implements Callable<Integer> {
    private static final Pattern MEASURED =
            Pattern.compile("\\s*(\\d+(?:[.,]\\d+)?)\\s*(?:mm)?\\s*[xX\u00D7]\\s*(\\d+(?:[.,]\\d+)?)\\s*(?:mm)?\\s*");

    /** No printer is that far off; a slip of the hand is. [J] */
    private static final double MOST_OFF = 0.05;

    private static final BigDecimal MM_AN_INCH = new BigDecimal("25.4");

    @Option(names = "--printer", paramLabel = "ID", descriptionKey = "ruler.printer")
    private @Nullable String printer;

    @Option(names = "--paper", paramLabel = "ID", descriptionKey = "ruler.paper")
    private @Nullable String paper;

    @Option(names = "--measured", paramLabel = "ACROSSxALONG", descriptionKey = "ruler.measured")
    private @Nullable String measured;

    @Option(names = "--rules", paramLabel = "DIR", descriptionKey = "run.rules")
    private @Nullable Path rulesFolder;

    @Option(names = "--out", paramLabel = "FILE", descriptionKey = "ruler.out")
    private @Nullable Path out;

    private final Terminal terminal;

    RulerCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() {
        try {
            return ruler(Rulebook.read(Optional.ofNullable(rulesFolder)));
        } catch (RulebookFaults e) {
            e.faults().forEach(fault -> terminal.complain(fault.line()));
            terminal.complain(Words.say("cli.rulebook-unusable", e.faults().size()));
            return ExitCode.NOTHING_PUBLISHED;
        }
    }

    private int ruler(Rulebook rules) {
        String id = printer != null ? printer : rules.shop().printer();
        Optional<Printer> wanted = rules.printers().find(id);
        if (wanted.isEmpty()) {
            List<String> ids = rules.printers().list().stream().map(Printer::id).toList();
            return wrongUsage(Words.say("ruler.no-such-printer", id, Sheets.nearest(id, ids)));
        }
        Optional<String> noPaper = Sheets.refusal(rules, Optional.ofNullable(paper));
        if (noPaper.isPresent()) {
            return wrongUsage(noPaper.get());
        }
        Optional<PaperRoom> room = Sheets.rooms(rules, Optional.ofNullable(paper)).stream()
                .filter(one -> Sheets.takes(wanted.get(), one.paper()))
                .map(one -> PaperRoom.of(one.paper(), wanted.get()))
                .findFirst();
        if (room.isEmpty()) {
            return wrongUsage(Words.say("ruler.no-paper", wanted.get().id()));
        }
        return measured != null ? scales(room.get(), measured) : write(room.get());
    }

    private int write(PaperRoom room) {
        Path file = out != null
                ? out
                : Path.of(OwnFile.name(OwnFile.Kind.RULER, room.printer().id()));
        if (!OwnFile.mayReplace(file, OwnFile.Kind.RULER)) {
            return wrongUsage(Words.say("strip.not-ours", file));
        }
        try {
            OwnFile.write(file, to -> RulerPage.write(room, command(room), new RunId(LocalDate.EPOCH, 1), to));
        } catch (IOException e) {
            terminal.complain(Words.say("strip.unwritten", file));
            return ExitCode.NOTHING_PUBLISHED;
        }
        terminal.answer(
                Words.say("ruler.done", file, room.paper().id(), room.printer().id(), command(room)));
        return ExitCode.DONE;
    }

    /** What the measured lengths are typed in behind: the same printer, tables and paper again. */
    private String command(PaperRoom room) {
        StringBuilder command = new StringBuilder(
                "bandwright ruler --printer " + quoted(room.printer().id()));
        if (paper != null) {
            command.append(" --paper ").append(quoted(paper));
        }
        if (rulesFolder != null) {
            command.append(" --rules ").append(quoted(rulesFolder.toString()));
        }
        return command.append(" --measured").toString();
    }

    private static String quoted(String word) {
        return word.contains(" ") ? "\"" + word + "\"" : word;
    }

    private int scales(PaperRoom room, String text) {
        int across = RulerPage.barMm(room.page().width());
        int along = RulerPage.barMm(room.page().height());
        Matcher matcher = MEASURED.matcher(text);
        if (!matcher.matches()) {
            return wrongUsage(Words.say("ruler.unclear", text, across, along));
        }
        BigDecimal x = new BigDecimal(matcher.group(1).replace(',', '.'));
        BigDecimal y = new BigDecimal(matcher.group(2).replace(',', '.'));
        if (areInches(x, across) && areInches(y, along)) {
            return wrongUsage(Words.say("ruler.inches", text, inMm(x), inMm(y), across, along));
        }
        if (isFarOff(x, across) || isFarOff(y, along)) {
            return wrongUsage(Words.say("ruler.far-off", text, across, along));
        }
        terminal.answer(Words.say(
                "ruler.scales",
                room.printer().id(),
                scale(x, across).toPlainString(),
                scale(y, along).toPlainString()));
        return ExitCode.DONE;
    }

    private static boolean areInches(BigDecimal measured, int bar) {
        return !isFarOff(measured.multiply(MM_AN_INCH), bar);
    }

    private static String inMm(BigDecimal inches) {
        return inches.multiply(MM_AN_INCH).setScale(1, RoundingMode.HALF_UP).toPlainString();
    }

    private static boolean isFarOff(BigDecimal measured, int bar) {
        return Math.abs(measured.doubleValue() / bar - 1) > MOST_OFF;
    }

    private static BigDecimal scale(BigDecimal measured, int bar) {
        return measured.divide(BigDecimal.valueOf(bar), 4, RoundingMode.HALF_UP);
    }

    private int wrongUsage(String line) {
        terminal.complain(line);
        return ExitCode.WRONG_USAGE;
    }
}
