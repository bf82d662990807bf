package bandwright.pipeline.write.json;

import bandwright.pipeline.rows.From;
import bandwright.pipeline.write.WrittenText;
import bandwright.rules.units.Length;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.util.List;

/** JSON as run.json has it: keys in the order of the calls, lengths in millimetres with two decimals, LF line ends. */
final class JsonOut {
    /** Writes one thing of a list. */
    @FunctionalInterface
    interface Each<T> {
        void write(T thing) throws IOException;
    }

    private final JsonGenerator json;

    JsonOut(OutputStream out) throws IOException {
        Separators separators = Separators.createDefaultInstance()
                .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                .withRootSeparator("");
        DefaultPrettyPrinter printer =
                new DefaultPrettyPrinter(separators).withObjectIndenter(new DefaultIndenter("  ", "\n"));
        json = new JsonFactory().createGenerator(out).setPrettyPrinter(printer);
    }

    void open() throws IOException {
        json.writeStartObject();
    }

    void open(String key) throws IOException {
        json.writeObjectFieldStart(key);
    }

    void close() throws IOException {
        json.writeEndObject();
    }

    void text(String key, String text) throws IOException {
        json.writeStringField(key, WrittenText.unicode(text));
    }

    void whole(String key, int number) throws IOException {
        json.writeNumberField(key, number);
    }

    void decimal(String key, BigDecimal number) throws IOException {
        json.writeNumberField(key, number);
    }

    void mm(String key, Length length) throws IOException {
        decimal(key, length.mm2());
    }

    void flag(String key, boolean value) throws IOException {
        json.writeBooleanField(key, value);
    }

    void none(String key) throws IOException {
        json.writeNullField(key);
    }

    /** A list of objects. */
    <T> void list(String key, List<T> things, Each<T> each) throws IOException {
        json.writeArrayFieldStart(key);
        for (T thing : things) {
            json.writeStartObject();
            each.write(thing);
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    void texts(String key, List<String> texts) throws IOException {
        json.writeArrayFieldStart(key);
        for (String text : texts) {
            json.writeString(WrittenText.unicode(text));
        }
        json.writeEndArray();
    }

    void from(From from) throws IOException {
        json.writeObjectFieldStart("from");
        text("file", from.file());
        if (from.sheet().isPresent()) {
            text("sheet", from.sheet().get());
        }
        whole("row", from.row());
        json.writeEndObject();
    }

    void end() throws IOException {
        json.writeRaw('\n');
        json.flush();
    }
}
