package bandwright.pipeline.cli;

import bandwright.rules.words.Words;
import java.time.DateTimeException;
import java.time.LocalDate;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** A day on the command line, as ISO 8601 writes it: 2026-03-02. */
final class DayText implements ITypeConverter<LocalDate> {
    @Override
    public LocalDate convert(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException e) {
            throw new TypeConversionException(Words.say("cli.no-date", text));
        }
    }
}
