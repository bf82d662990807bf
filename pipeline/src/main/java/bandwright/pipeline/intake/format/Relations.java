package bandwright.pipeline.intake.format;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import javax.xml.stream.XMLStreamException;

/**
 * Which parts of a package belong to a part, by id and by type (ECMA-376 Part 2, 8.5): the workbook's "rId1" is
 * {@code xl/worksheets/sheet1.xml}. Targets outside the package are left alone.
 */
final class Relations {
    private record Relation(String type, String part) {}

    private final Map<String, Relation> byId = new LinkedHashMap<>();

    private Relations() {}

    /** Those of that part; of the package itself where it is empty. */
    static Relations of(Zip zip, String part) throws IOException, XMLStreamException, Unreadable {
        Relations all = new Relations();
        int slash = part.lastIndexOf('/') + 1;
        String folder = part.substring(0, slash);
        String list = folder + "_rels/" + part.substring(slash) + ".rels";
        if (!zip.has(list)) {
            return all;
        }
        try (Xml xml = zip.xml(list)) {
            while (xml.next()) {
                if (xml.starts("Relationship") && !xml.attribute("TargetMode").equals("External")) {
                    String type = xml.attribute("Type");
                    all.byId.put(
                            xml.attribute("Id"),
                            new Relation(
                                    type.substring(type.lastIndexOf('/') + 1),
                                    resolved(folder, xml.attribute("Target"))));
                }
            }
        }
        return all;
    }

    /** The first of that type, which is the last word of its URI. */
    Optional<String> findByType(String type) {
        return byId.values().stream()
                .filter(r -> r.type().equals(type))
                .map(Relation::part)
                .findFirst();
    }

    Optional<String> findSheet(String id) {
        return Optional.ofNullable(byId.get(id))
                .filter(r -> r.type().equals("worksheet"))
                .map(Relation::part);
    }

    private static String resolved(String folder, String target) {
        String path = target.replace('\\', '/');
        Deque<String> steps = new ArrayDeque<>();
        for (String step : (path.startsWith("/") ? path : folder + path).split("/", -1)) {
            if (step.equals("..")) {
                steps.pollLast();
            } else if (!step.isEmpty() && !step.equals(".")) {
                steps.addLast(step);
            }
        }
        return String.join("/", steps);
    }
}
