package bandwright.pipeline.cli;

import bandwright.rules.units.TimeText;
import bandwright.rules.words.Words;
import java.time.Duration;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** How long to wait, as the tables write times: 30 s, 5 min. */
final class WaitText implements ITypeConverter<Duration> {
    @Override
    public Duration convert(String text) {
        return Duration.ofSeconds(
                TimeText.parse(text).orElseThrow(() -> new TypeConversionException(Words.say("watch.no-wait", text))));
    }
}
