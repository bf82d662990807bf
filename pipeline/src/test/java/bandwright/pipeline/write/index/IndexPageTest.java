package bandwright.pipeline.write.index;

import static org.assertj.core.api.Assertions.assertThat;

import bandwright.pipeline.GiftShop;
import bandwright.pipeline.Run;
import bandwright.pipeline.RunMaker;
import bandwright.pipeline.intake.InboxFile;
import bandwright.pipeline.intake.OrderLine;
import bandwright.pipeline.intake.Orders;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.tile.Placed;
import bandwright.pipeline.write.OutFile;
import bandwright.pipeline.write.thumb.Thumbnails;
import bandwright.rules.units.Box;
import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The page as text: what is linked, what is said, and that a stranger's text stays text. */
final class IndexPageTest {
    private static final List<String> FILES = List.of(
            "sheets/letter-01.pdf",
            "press-checklist.pdf",
            "pick-list.pdf",
            "packing-slips.pdf",
            "held.xlsx",
            "orders.xlsx",
            "run.json");
    private static final Offset<Double> CLOSE = Offset.offset(0.02);
    private static final String HOSTILE = "\"'><script>alert(1)</script><img src=x onerror=alert(2)>&lt;\u202E";

    @Test
    void everyUnitEverySheetAndEveryHeldRowIsLinked() throws IOException {
        Run run = RunMaker.weekend().run();
        String page = page(run, FILES);

        assertThat(run.units()).hasSize(3);
        for (Unit unit : run.units()) {
            assertThat(page).containsOnlyOnce("id=\"unit-" + unit.id() + "\"");
            assertThat(page).contains("href=\"#unit-" + unit.id() + "\"");
        }
        assertThat(page).contains("href=\"sheets/letter-01.pdf#page=1\"", "href=\"sheets/letter-01.pdf#page=2\"");
        assertThat(page).contains("id=\"held-1\"", "id=\"held-2\"").doesNotContain("id=\"held-3\"");
        assertThat(page)
                .contains("The artwork folder has no &quot;storm-lamp.jpg&quot;.", "Put it there.")
                .contains("orders.xlsx, Orders, row 4, column Artwork");
    }

    @Test
    void everyLinkLeadsSomewhere() throws IOException {
        String page = page(RunMaker.weekend().run(), FILES);

        assertThat(all(page, " href=\"#([^\"]*)\"")).isNotEmpty().allSatisfy(anchor -> assertThat(page)
                .containsOnlyOnce(" id=\"" + anchor + "\""));
        assertThat(all(page, "<a href=\"([^#\"][^\"#]*)")).isNotEmpty().isSubsetOf(FILES);
    }

    @ParameterizedTest
    @ValueSource(strings = {"press-checklist.pdf", "pick-list.pdf", "packing-slips.pdf", "held.xlsx", "orders.xlsx"})
    void aFileThatThisRunDoesNotHaveIsNotLinked(String missing) throws IOException {
        List<String> rest = FILES.stream().filter(file -> !file.equals(missing)).toList();

        assertThat(page(RunMaker.weekend().run(), FILES)).contains("href=\"" + missing + "\"");
        assertThat(page(RunMaker.weekend().run(), rest)).doesNotContain("href=\"" + missing + "\"");
    }

    @Test
    void whateverIsWrittenInARowStaysText() throws IOException {
        String hostile = page(written(HOSTILE), FILES);
        String harmless = page(written("Ada"), FILES);

        assertThat(hostile)
                .contains("&lt;script&gt;alert(1)&lt;/script&gt;")
                .contains("&amp;lt;")
                .doesNotContain("\u202E");
        assertThat(all(hostile, "<([a-z0-9]+|/[a-z0-9]+|!)[ >]"))
                .isEqualTo(all(harmless, "<([a-z0-9]+|/[a-z0-9]+|!)[ >]"));
        assertThat(hostile).doesNotContain("<script", "onerror=\"");
    }

    @Test
    void nothingIsFetchedOrRun() throws IOException {
        String page = page(RunMaker.weekend().run(), FILES);

        assertThat(page)
                .contains("default-src &#39;none&#39;")
                .doesNotContain("http://", "https://", "<script", "url(");
    }

    @Test
    void lateAndDueOrdersAreNamedWithTheirDaysHeldOnesToo() throws IOException {
        RunMaker maker = RunMaker.weekend();
        maker.lines.replaceAll(line -> shipped(line, line.order().equals("0071") ? "2026-03-01" : "2026-03-03"));

        String page = page(maker.run(), FILES);

        assertThat(page)
                .contains("<a href=\"#dates\">late 1, due tomorrow 1</a>")
                .containsPattern("Late: 2026-03-01</h3>\\s*<p>0071 \\(held\\)</p>")
                .containsPattern("Due tomorrow: 2026-03-03</h3>\\s*<p>Q1042</p>")
                .doesNotContain("Due today:");
    }

    @Test
    void aFileThatCouldNotBeReadIsNamedWithItsCure() throws IOException {
        Run run = RunMaker.weekend().run();
        List<InboxFile> files = new ArrayList<>(run.orders().files());
        files.add(new InboxFile(
                "tides.xlsx", Optional.empty(), "", 0, InboxFile.State.UNREADABLE, "It has a password: take it off."));
        Orders orders = new Orders(
                files,
                run.orders().lines(),
                run.orders().held(),
                run.orders().skipped(),
                run.orders().empty());

        String page = page(
                new Run(
                        run.id(),
                        orders,
                        run.past(),
                        run.owed(),
                        run.units(),
                        run.waiting(),
                        run.held(),
                        run.skipped(),
                        run.day(),
                        run.tiled(),
                        run.sights()),
                FILES);

        assertThat(page).contains("Files that could not be read: 1.", "tides.xlsx", "It has a password: take it off.");
    }

    @Test
    void picturesLieOnASheetAsTheyArePrintedFlippedThenTurned() throws IOException {
        Run run = RunMaker.weekend().run();
        Placed placed = run.tiled().sheets().get(0).placed().get(0);
        AffineTransform drawn =
                transform(all(page(run, FILES), " transform=\"([^\"]*)\"").get(0));
        double paper = run.tiled().sheets().get(0).room().page().height().mm();
        Box box = placed.box();
        // Flipped, the upper left corner is at the upper right; turned by 90 degrees, at the upper left of the box.
        Point2D corner = drawn.transform(new Point2D.Double(0, 0), null);
        Point2D right = drawn.transform(
                new Point2D.Double(placed.unit().transfer().width().mm(), 0), null);

        assertThat(corner.getX()).isCloseTo(box.x().mm(), CLOSE);
        assertThat(corner.getY()).isCloseTo(paper - box.top().mm(), CLOSE);
        assertThat(right.getX()).isCloseTo(box.x().mm(), CLOSE);
        assertThat(right.getY()).isCloseTo(paper - box.y().mm(), CLOSE);
    }

    @Test
    void writingItTwiceGivesTheSameBytes() throws IOException {
        OutFile file = file(RunMaker.weekend().run(), FILES);

        assertThat(text(file))
                .isEqualTo(text(file))
                .isEqualTo(page(RunMaker.weekend().run(), FILES));
    }

    @Test
    void aRunWithNothingMadeStillSaysWhatToDo() throws IOException {
        RunMaker maker = new RunMaker();
        maker.hold(GiftShop.row(GiftShop.from(2), GiftShop.HEADER, "Q1046", "MUG-11-W", "storm-lamp.jpg", "1"), 1);

        String page = page(maker.placed().run(), List.of("held.xlsx", "orders.xlsx"));

        assertThat(page).contains("Held rows: 1.").doesNotContain("id=\"sheets\"", "id=\"pieces\"", "letter-01");
    }

    private static Run written(String text) {
        RunMaker maker = new RunMaker();
        maker.line(
                GiftShop.row(GiftShop.from(2), GiftShop.HEADER, "Q1042", "MUG-11-W", "tern.jpg", "1", text), 1, 1, 0);
        maker.hold(GiftShop.row(GiftShop.from(3), GiftShop.HEADER, text, "MUG-11-W", text, "1"), 1);
        return maker.placed().run();
    }

    private static OrderLine shipped(OrderLine line, String day) {
        return new OrderLine(
                line.row(),
                line.site(),
                line.order(),
                line.line(),
                line.orderDate(),
                Optional.of(LocalDate.parse(day)),
                line.quantity(),
                line.items(),
                line.wording(),
                line.heatSource(),
                line.gift(),
                line.approved());
    }

    /** An SVG transformation as its steps say, the first one outermost. */
    private static AffineTransform transform(String text) {
        AffineTransform all = new AffineTransform();
        Matcher step = Pattern.compile("(\\w+)\\(([-0-9.]+)(?: ([-0-9.]+))?\\)").matcher(text);
        while (step.find()) {
            double first = Double.parseDouble(step.group(2));
            switch (step.group(1)) {
                case "rotate" -> all.rotate(Math.toRadians(first));
                case "scale" -> all.scale(first, Double.parseDouble(step.group(3)));
                default -> all.translate(first, Double.parseDouble(step.group(3)));
            }
        }
        return all;
    }

    private static List<String> all(String page, String pattern) {
        return Pattern.compile(pattern)
                .matcher(page)
                .results()
                .map(match -> match.group(1))
                .toList();
    }

    private static OutFile file(Run run, List<String> files) {
        return IndexPage.file(run, GiftShop.rules(), Thumbnails.of(run), files);
    }

    private static String page(Run run, List<String> files) throws IOException {
        return text(file(run, files));
    }

    private static String text(OutFile file) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        file.body().writeTo(out);
        return out.toString(StandardCharsets.UTF_8);
    }
}
