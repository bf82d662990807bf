package bandwright.pipeline.write.list;

import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.util.ArrayList;
import java.util.List;

/** Cells side by side on their columns, a hairline below: one row of a table. */
public record Row(List<Length> columns, List<Block> cells, Length padding, Length line) implements Block {
    private static final Length GUTTER = Length.mm(3);
    private static final Length HAIR = Length.mm(0.15);
    private static final Length STRONG = Length.mm(0.5);

    public Row {
        columns = List.copyOf(columns);
        cells = List.copyOf(cells);
        if (columns.size() != cells.size()) {
            throw new IllegalArgumentException(cells.size() + " cells on " + columns.size() + " columns");
        }
    }

    /** A row of a table's body. */
    public static Row of(List<Length> columns, List<Block> cells) {
        return new Row(columns, cells, Length.mm(1.2), HAIR);
    }

    /** The row that names the columns. */
    public static Row head(List<Length> columns, List<Block> names) {
        return new Row(columns, names, Length.mm(1), STRONG);
    }

    /** Cells without a line, for a layout that is no table. */
    public static Row plain(List<Length> columns, List<Block> cells) {
        return new Row(columns, cells, Length.ZERO, Length.ZERO);
    }

    @Override
    public Length height(Faces faces, Length width) {
        Length baseline = firstBaseline(faces, width);
        Length highest = Length.ZERO;
        for (int i = 0; i < cells.size(); i++) {
            Length drop = drop(baseline, i, faces);
            highest = highest.atLeast(drop.plus(cells.get(i).height(faces, inside(i))));
        }
        return highest.plus(padding.times(2)).plus(line);
    }

    @Override
    public void draw(Pen pen, Length x, Length top, Length width) {
        Length baseline = firstBaseline(pen.faces(), width);
        Length at = x;
        for (int i = 0; i < cells.size(); i++) {
            Length drop = drop(baseline, i, pen.faces());
            cells.get(i).draw(pen, at, top.minus(padding).minus(drop), inside(i));
            at = at.plus(columns.get(i));
        }
        if (line.isPositive()) {
            Length foot = top.minus(height(pen.faces(), width));
            pen.canvas().black(line.longerThan(HAIR) ? 1 : 0.5).fill(new Box(x, foot, width, line));
        }
    }

    /** The lowest of the cells' first baselines: all the cells that have one stand on it. */
    @Override
    public Length firstBaseline(Faces faces, Length width) {
        Length lowest = Length.ZERO;
        for (int i = 0; i < cells.size(); i++) {
            lowest = lowest.atLeast(cells.get(i).firstBaseline(faces, inside(i)));
        }
        return lowest;
    }

    /** Rows one under the other, each with a stretch of every cell; the line stands below the last. */
    @Override
    public List<Block> parts(Faces faces, Length width) {
        List<List<Block>> bites = new ArrayList<>();
        int most = 0;
        for (int i = 0; i < cells.size(); i++) {
            bites.add(Bites.of(cells.get(i), faces, inside(i)));
            most = Math.max(most, bites.get(i).size());
        }
        List<Block> rows = new ArrayList<>();
        for (int part = 0; part < most; part++) {
            int at = part;
            List<Block> stretch = bites.stream()
                    .map(cell -> at < cell.size() ? cell.get(at) : new Gap(Length.ZERO))
                    .toList();
            boolean isLast = part == most - 1;
            rows.add(new Row(columns, stretch, isLast ? padding : Length.ZERO, isLast ? line : Length.ZERO));
        }
        return rows;
    }

    private Length drop(Length baseline, int cell, Faces faces) {
        Length own = cells.get(cell).firstBaseline(faces, inside(cell));
        return own.isZero() ? Length.ZERO : baseline.minus(own);
    }

    private Length inside(int column) {
        boolean isLast = column == columns.size() - 1;
        return isLast ? columns.get(column) : columns.get(column).minus(GUTTER);
    }
}
