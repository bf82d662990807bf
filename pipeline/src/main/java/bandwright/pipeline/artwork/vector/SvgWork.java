package bandwright.pipeline.artwork.vector;

import bandwright.pipeline.artwork.Flaw;
import bandwright.pipeline.artwork.RefusedPicture;
import bandwright.pipeline.limits.Limits;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * How many elements an SVG comes to once every copy, pattern, mask and marker is written out: ten copies of ten copies of
 * a shape are a hundred. Counted without writing them out.
 */
final class SvgWork {
    /** A filter or a mask is a picture of its own and takes as long as so many shapes. [J] */
    private static final long FILTER = 4_000;

    private final Deque<Part> open = new ArrayDeque<>();
    private final Map<String, Part> byId = new HashMap<>();
    private final Map<Part, Long> counted = new HashMap<>();
    private final Set<Part> begun = new HashSet<>();
    private final Part all = new Part();

    /** An element with a name, and what in it has none. */
    private static final class Part {
        long own;
        final List<Part> inside = new ArrayList<>();
        final Map<String, Integer> references = new HashMap<>();
    }

    SvgWork() {
        open.push(all);
    }

    void begin(@Nullable String id) {
        Part part = top();
        if (id != null) {
            part = new Part();
            byId.putIfAbsent(id, part);
            top().inside.add(part);
        }
        part.own++;
        open.push(part);
    }

    void filter() {
        top().own += FILTER;
    }

    void refer(String id) {
        top().references.merge(id, 1, Integer::sum);
    }

    void end() {
        open.pop();
    }

    private Part top() {
        return open.element();
    }

    void requireLittle() throws RefusedPicture {
        if (count(all) > Limits.SVG_ELEMENTS) {
            throw new RefusedPicture(Flaw.TOO_COMPLEX);
        }
    }

    private long count(Part part) throws RefusedPicture {
        Long known = counted.get(part);
        if (known != null) {
            return known;
        }
        if (!begun.add(part) || begun.size() - counted.size() > Limits.SVG_DEPTH * Limits.SVG_USE_DEPTH) {
            throw new RefusedPicture(Flaw.TOO_COMPLEX); // it is a part of itself
        }
        long count = part.own;
        for (Part inside : part.inside) {
            count += count(inside);
        }
        for (Map.Entry<String, Integer> reference : part.references.entrySet()) {
            Part target = byId.get(reference.getKey());
            count += target == null ? 0 : reference.getValue() * count(target);
            count = Math.min(count, Integer.MAX_VALUE); // too many is too many
        }
        counted.put(part, count);
        return count;
    }
}
