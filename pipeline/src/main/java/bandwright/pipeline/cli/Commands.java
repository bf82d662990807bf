package bandwright.pipeline.cli;

import picocli.CommandLine;
import picocli.CommandLine.IFactory;

/** Makes the commands, each with the terminal that it speaks to. */
record Commands(Terminal terminal) implements IFactory {
    @Override
    public <K> K create(Class<K> kind) throws Exception {
        if (kind == RunCommand.class) {
            return kind.cast(new RunCommand(terminal));
        }
        if (kind == WatchCommand.class) {
            return kind.cast(new WatchCommand(terminal));
        }
        if (kind == SpoiledCommand.class) {
            return kind.cast(new SpoiledCommand(terminal));
        }
        if (kind == ForgetCommand.class) {
            return kind.cast(new ForgetCommand(terminal));
        }
        if (kind == FindCommand.class) {
            return kind.cast(new FindCommand(terminal));
        }
        if (kind == BandCommand.class) {
            return kind.cast(new BandCommand(terminal));
        }
        if (kind == CheckCommand.class) {
            return kind.cast(new CheckCommand(terminal));
        }
        if (kind == StripCommand.class) {
            return kind.cast(new StripCommand(terminal));
        }
        if (kind == TrialCommand.class) {
            return kind.cast(new TrialCommand(terminal));
        }
        if (kind == RulerCommand.class) {
            return kind.cast(new RulerCommand(terminal));
        }
        if (kind == DayText.class) {
            return kind.cast(new DayText());
        }
        if (kind == DayTime.class) {
            return kind.cast(new DayTime());
        }
        if (kind == WaitText.class) {
            return kind.cast(new WaitText());
        }
        return CommandLine.defaultFactory().create(kind);
    }
}
