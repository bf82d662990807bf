package bandwright.pipeline.write.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A run.json read back: its values by their paths, in their order. {@code all("units.id")} are the ids of all units;
 * {@code all("rows.read")} is one number. Lists leave no mark in a path, nor does null.
 */
public final class RunJsonBack {
    private final Map<String, List<String>> values = new LinkedHashMap<>();

    private RunJsonBack() {}

    public static RunJsonBack read(Path file) throws IOException {
        RunJsonBack back = new RunJsonBack();
        try (JsonParser json = new JsonFactory().createParser(file.toFile())) {
            json.nextToken();
            back.take(json, "");
        }
        return back;
    }

    private void take(JsonParser json, String path) throws IOException {
        JsonToken token = json.currentToken();
        if (token == null) {
            throw new IOException("run.json ends early");
        }
        if (token == JsonToken.START_OBJECT) {
            while (json.nextToken() == JsonToken.FIELD_NAME) {
                String key = json.currentName();
                json.nextToken();
                take(json, path.isEmpty() ? key : path + "." + key);
            }
        } else if (token == JsonToken.START_ARRAY) {
            while (json.nextToken() != JsonToken.END_ARRAY) {
                take(json, path);
            }
        } else if (token != JsonToken.VALUE_NULL) {
            values.computeIfAbsent(path, key -> new ArrayList<>()).add(json.getText());
        }
    }

    public List<String> all(String path) {
        return List.copyOf(values.getOrDefault(path, List.of()));
    }

    public int sum(String path) {
        return all(path).stream().mapToInt(Integer::parseInt).sum();
    }
}
