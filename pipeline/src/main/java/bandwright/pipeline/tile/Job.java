package bandwright.pipeline.tile;

import java.util.ArrayList;
import java.util.List;

/**
 * What is to be laid on the sheets of one room, and nothing else: the search knows sizes and copies, no units.
 *
 * @param width of the field: the room's inside plus the gap
 * @param height of the field: the room's inside plus the gap
 * @param edgeToEdge whether every cut must go edge to edge
 * @param nesting how pictures of cones lie in each other's hollows
 */
record Job(long width, long height, List<Kind> kinds, boolean edgeToEdge, Nesting nesting) {
    Job {
        kinds = List.copyOf(kinds);
    }

    Job(long width, long height, List<Kind> kinds, boolean edgeToEdge) {
        this(width, height, kinds, edgeToEdge, new Nesting(0));
    }

    int pieces() {
        return kinds.stream().mapToInt(Kind::copies).sum();
    }

    int[] copies() {
        return kinds.stream().mapToInt(Kind::copies).toArray();
    }

    double area() {
        return (double) width * height;
    }

    Board board() {
        return edgeToEdge ? new CutBoard(this) : new FreeBoard(this);
    }

    /** The same field with other numbers of copies; kinds keep their place, also those with none left. */
    Job with(int[] copies) {
        List<Kind> left = new ArrayList<>();
        for (int k = 0; k < copies.length; k++) {
            Kind kind = kinds.get(k);
            left.add(new Kind(kind.pattern(), kind.poses(), copies[k]));
        }
        return new Job(width, height, left, edgeToEdge, nesting);
    }
}
