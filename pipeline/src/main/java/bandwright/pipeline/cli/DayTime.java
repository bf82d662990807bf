package bandwright.pipeline.cli;

import bandwright.rules.words.Words;
import java.time.DateTimeException;
import java.time.LocalTime;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A time of day on the command line, as ISO 8601 writes it: 07:30. */
final class DayTime implements ITypeConverter<LocalTime> {
    @Override
    public LocalTime convert(String text) {
        try {
            return LocalTime.parse(text);
        } catch (DateTimeException e) {
            throw new TypeConversionException(Words.say("watch.no-time", text));
        }
    }
}
