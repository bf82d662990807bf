package bandwright.pipeline.tile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Pictures in plain rows across a page, the highest row first, and every kind turned so that its own rows take the least:
 * 24 mug wraps on a roll of 610 mm stand in four rows of six. First fit by decreasing height: E. Coffman, M. Garey,
 * D. Johnson, R. Tarjan, "Performance bounds for level-oriented two-dimensional packing algorithms", SIAM J. Computing 9,
 * 1980. It can be cut edge to edge, and is never higher than one picture a row.
 */
final class Rows {
    private final Job job;
    private final int[] copies;
    private final List<Row> rows = new ArrayList<>();
    private final List<Layout.Spot> spots = new ArrayList<>();
    private long high;

    private Rows(Job job, int[] copies) {
        this.job = job;
        this.copies = copies;
    }

    /** Where the row begins up the page, and how far it is filled. */
    private record Row(long y, long filled) {}

    /** A picture of that kind and pose with its border and flag. */
    private record Piece(int kind, int pose, Span foot) {}

    /** So many copies of each kind; empty where they are higher than the page. */
    static Optional<Layout> of(Job job, int[] copies) {
        Rows rows = new Rows(job, copies);
        IntStream.range(0, copies.length)
                .filter(kind -> copies[kind] > 0)
                .mapToObj(rows::piece)
                .sorted(Comparator.comparingLong((Piece piece) -> piece.foot().height())
                        .reversed()
                        .thenComparingInt(Piece::kind))
                .forEach(rows::lay);
        return rows.high > job.height() ? Optional.empty() : Optional.of(new Layout(rows.spots));
    }

    private Piece piece(int kind) {
        List<Pose> poses = job.kinds().get(kind).poses();
        return IntStream.range(0, poses.size())
                .mapToObj(pose -> new Piece(kind, pose, poses.get(pose).foot()))
                .min(Comparator.comparingLong(this::height))
                .orElseThrow();
    }

    /** Of the rows that all copies of a kind take by themselves. */
    private long height(Piece piece) {
        long aRow = job.width() / piece.foot().width();
        if (aRow == 0) {
            return Long.MAX_VALUE;
        }
        return (copies[piece.kind()] + aRow - 1) / aRow * piece.foot().height();
    }

    private void lay(Piece piece) {
        for (int i = 0; i < copies[piece.kind()]; i++) {
            lay(piece, rowFor(piece));
        }
    }

    private int rowFor(Piece piece) {
        for (int r = 0; r < rows.size(); r++) {
            if (rows.get(r).filled() + piece.foot().width() <= job.width()) {
                return r;
            }
        }
        rows.add(new Row(high, 0));
        high += piece.foot().height();
        return rows.size() - 1;
    }

    private void lay(Piece piece, int r) {
        Row row = rows.get(r);
        Span foot = piece.foot();
        spots.add(new Layout.Spot(piece.kind(), piece.pose(), row.filled() - foot.x0(), row.y() - foot.y0()));
        rows.set(r, new Row(row.y(), row.filled() + foot.width()));
    }
}
