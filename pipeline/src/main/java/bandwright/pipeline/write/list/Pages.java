package bandwright.pipeline.write.list;

import bandwright.pipeline.RunId;
import bandwright.pipeline.write.pdf.Canvas;
import bandwright.pipeline.write.pdf.PdfFile;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import bandwright.rules.words.Words;
import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

/**
 * A list that grows page by page: blocks are set one under the other, a block that does not fit goes to the next page,
 * a table's head is repeated there, and every page says the run, the date and page x of y.
 */
public final class Pages implements AutoCloseable {
    private static final String BETWEEN = "  \u00b7  ";

    private final PDDocument document;
    private final ListPaper paper;
    private final Faces faces;
    private final PictureStore pictures;
    private final String shop;
    /** The run and the date, on every page; none on pages that belong to no run. */
    private final List<String> stamp;

    private final String title;
    private final List<Leaf> leaves = new ArrayList<>();
    private final List<PDPage> appended = new ArrayList<>();
    private Optional<Block> overleaf = Optional.empty();
    private Optional<Block> tableHead = Optional.empty();
    private boolean isHeadDue;
    private Length y;

    /** One page and what its foot says beside the page's number. */
    private record Leaf(Canvas canvas, String running) {}

    public Pages(RunId run, String file, String title, String shop, ListPaper paper) throws IOException {
        this(PdfFile.create(run, file, title), title, shop, paper, stamp(run));
    }

    private Pages(PDDocument document, String title, String shop, ListPaper paper, List<String> stamp) {
        this.document = document;
        this.faces = new Faces(document);
        this.pictures = new PictureStore(document);
        this.title = title;
        this.shop = shop;
        this.paper = paper;
        this.stamp = List.copyOf(stamp);
        this.y = Length.ZERO;
    }

    /** Pages that belong to no run and no day, in a document that somebody made. */
    public static Pages undated(PDDocument document, String title, String shop, ListPaper paper) {
        return new Pages(document, title, shop, paper, List.of());
    }

    private static List<String> stamp(RunId run) {
        return List.of(Words.say("list.run", run), Words.say("list.date", run.date()));
    }

    public Faces faces() {
        return faces;
    }

    PDDocument document() {
        return document;
    }

    public Length measure() {
        return paper.measure();
    }

    /** Begins a page; {@code running} stands at its foot, and large at the top of the pages that it runs over to. */
    public Pages page(String running) {
        overleaf = overleaf(running);
        leaf(running);
        return this;
    }

    private void leaf(String running) {
        leaves.add(new Leaf(new Canvas(), running));
        y = paper.top();
    }

    /** What stands above the row that follows, and again at the top of each page until {@link #endTable}. */
    public Pages table(Block head) {
        tableHead = Optional.of(head);
        isHeadDue = true;
        return this;
    }

    /** A table that had no row shows no head either. */
    public Pages endTable() {
        tableHead = Optional.empty();
        isHeadDue = false;
        return this;
    }

    /** Sets blocks that must not be parted from each other: a heading and what it heads. */
    public Pages together(Block... blocks) {
        return add(new Stack(List.of(blocks)));
    }

    public Pages add(Block block) {
        Length high = block.height(faces, measure());
        if (block instanceof Gap && isOver(high)) {
            return this; // white space needs no page of its own
        }
        Length room = paper.top().minus(paper.foot()).minus(height(overleaf)).minus(height(tableHead));
        if (high.longerThan(room)) {
            List<Block> parts = block.parts(faces, measure());
            if (parts.size() > 1) {
                parts.forEach(this::add);
                return this;
            }
        }
        ensure(isHeadDue ? high.plus(height(tableHead)) : high);
        if (isHeadDue) {
            setHead();
        }
        set(block);
        return this;
    }

    private Length height(Optional<Block> head) {
        return head.map(block -> block.height(faces, measure())).orElse(Length.ZERO);
    }

    /** Sets a block on a page that has also that much room for what follows: a heading is never the last on its page. */
    public Pages keep(Block block, Length follows) {
        Length both = block.height(faces, measure()).plus(follows);
        if (!both.longerThan(paper.top().minus(paper.foot()))) {
            ensure(both);
        }
        return add(block);
    }

    /** Goes to the next page where less room than that is left. */
    private void ensure(Length high) {
        if (leaves.isEmpty()) {
            page("");
        }
        if (!isOver(high)) {
            return;
        }
        leaf(leaves.get(leaves.size() - 1).running());
        overleaf.ifPresent(this::set);
        setHead();
    }

    /** Whether so much goes to the next page; what stands at the top of one stays there, however high it is. */
    private boolean isOver(Length high) {
        boolean isAtTop = leaves.isEmpty() || y.equals(paper.top());
        return !isAtTop && high.longerThan(y.minus(paper.foot()));
    }

    /** Says on a sheet that came loose what it belongs to; on one line, as a stranger's number may fill a page. */
    private Optional<Block> overleaf(String running) {
        return Optional.of(running)
                .filter(words -> !words.isEmpty())
                .map(words -> Stack.of(Text.of(words, Style.TITLE).onOneLine(faces, measure()), Gap.mm(4)));
    }

    private void setHead() {
        tableHead.ifPresent(this::set);
        isHeadDue = false;
    }

    private void set(Block block) {
        block.draw(new Pen(leaves.get(leaves.size() - 1).canvas(), faces, pictures), paper.left(), y, measure());
        y = y.minus(block.height(faces, measure()));
    }

    /** Pages of another make that follow the list's and count with them. */
    public Pages append(List<PDPage> pages) {
        appended.addAll(pages);
        return this;
    }

    /** How many pages the list has so far. */
    public int count() {
        return leaves.size();
    }

    /** Adds the foot of every page and writes the file. */
    public void writeTo(OutputStream out) throws IOException {
        if (leaves.isEmpty()) {
            page("");
        }
        for (int i = 0; i < leaves.size(); i++) {
            Leaf leaf = leaves.get(i);
            foot(leaf, i + 1);
            document.addPage(leaf.canvas().page(document, paper.width(), paper.height()));
        }
        appended.forEach(document::addPage);
        faces.finish();
        PdfFile.save(document, out);
    }

    private void foot(Leaf leaf, int page) {
        Pen pen = new Pen(leaf.canvas(), faces, pictures);
        Length top = paper.foot().minus(Length.mm(3));
        leaf.canvas().black(0.5).fill(new Box(paper.left(), top, measure(), Length.mm(0.15)));
        Length line = top.minus(Length.mm(1));
        Style style = Style.SMALL.grey();
        Length room = measure().minus(Length.mm(30));
        // Run and date first where there is a stranger's word to shorten: they must stand on every page.
        Text said = Text.of(String.join(BETWEEN, parts(leaf.running())), style);
        if (said.height(faces, room).longerThan(style.leading())) {
            said = Text.of(String.join(BETWEEN, shortened(leaf.running())), style)
                    .onOneLine(faces, room);
        }
        said.draw(pen, paper.left(), line, room);
        Text.right(Words.say("list.page", page, leaves.size() + appended.size()), style)
                .draw(pen, paper.left(), line, measure());
    }

    private List<String> shortened(String running) {
        List<String> parts = new ArrayList<>(stamp);
        parts.add(running.isEmpty() ? shop : running);
        return parts;
    }

    private List<String> parts(String running) {
        List<String> parts = new ArrayList<>(List.of(title));
        if (!running.isEmpty()) {
            parts.add(running);
        }
        if (!shop.isEmpty()) {
            parts.add(shop);
        }
        parts.addAll(stamp);
        return parts;
    }

    @Override
    public void close() throws IOException {
        document.close();
    }
}
