package bandwright.pipeline.tile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import bandwright.pipeline.size.Transfer;
import bandwright.pipeline.size.Unit;
import bandwright.rules.Shop;
import bandwright.rules.blanks.Sector;
import bandwright.rules.paper.Cutting;
import bandwright.rules.paper.FlagLaw;
import bandwright.rules.paper.LeaningFlag;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/** Cones' pictures on sheets, measured with the JTS Topology Suite, which knows nothing of how they were laid. */
class ConeTilingTest {
    private static final GeometryFactory SHAPES = new GeometryFactory();
    private static final int FINE = 400;
    private static final double HAIR = 0.001;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void aSectorsAreaAndBoxAreThoseOfItsShape(long seed) {
        Sector sector = anySector(new SplittableRandom(seed));
        Polygon shape = shape(sector, new AffineTransform());
        assertThat(shape.getArea()).as("seed %d", seed).isCloseTo(sector.area(), within(sector.area() * 1e-4));
        Box box = sector.box();
        assertThat(shape.getEnvelopeInternal().getMinX()).isCloseTo(0, within(0.01));
        assertThat(shape.getEnvelopeInternal().getMinY()).isCloseTo(0, within(0.01));
        assertThat(shape.getEnvelopeInternal().getMaxX()).isCloseTo(box.width().mm(), within(0.01));
        assertThat(shape.getEnvelopeInternal().getMaxY()).isCloseTo(box.height().mm(), within(0.01));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void everyPieceKeepsItsDistanceAndLiesOnThePaper(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        boolean hasFlag = seed % 4 != 0;
        Shop shop = hasFlag ? TilingShop.scissors() : TilingShop.noFlag(Length.mm(4));
        checkRandomJob(random, shop, seed);
    }

    @Test
    void onATrimmerEveryBoxIsCutOut() {
        Shop shop = TilingShop.shop(Length.mm(2), Length.mm(4), Length.mm(14), Length.mm(30), Cutting.TRIMMER);
        checkRandomJob(new SplittableRandom(77), shop, 77);
    }

    private static void checkRandomJob(SplittableRandom random, Shop shop, long seed) {
        PaperRoom room = TilingShop.thirteenByNineteen();
        List<Unit> units = new ArrayList<>();
        for (int kind = 0; kind < 4; kind++) {
            Optional<Sector> sector = random.nextInt(4) > 0 ? Optional.of(anySector(random)) : Optional.empty();
            Box size = TilingShop.mm(60 + random.nextInt(160), 50 + random.nextInt(60));
            int copies = 1 + random.nextInt(5);
            for (int i = 0; i < copies; i++) {
                units.add(TilingShop.unit("Q" + kind + "-" + i, transfer(size, sector), List.of(room)));
            }
        }
        Tiled tiled = Tiling.all(TilingShop.loads(units, 3), TilingShop.rules(shop));
        assertThat(tiled.sheets().stream()
                        .flatMap(sheet -> sheet.placed().stream())
                        .map(Placed::unit))
                .as("seed %d", seed)
                .containsExactlyInAnyOrderElementsOf(units);
        assertThat(tiled.sheets()).hasSizeGreaterThanOrEqualTo(tiled.atLeast());
        tiled.sheets()
                .forEach(sheet ->
                        assertThat(faults(sheet, shop)).as("seed %d", seed).isEmpty());
    }

    /** One above the other, the lower end of the upper one's inner arc meets the outer arc of the one below. */
    @ParameterizedTest
    @CsvSource({"90, 70, 150", "92, 60, 110", "85, 75, 180"})
    void equalSectorsStackAsCloseAsTheirArcsAllow(double rim, double foot, double height) {
        double slant = Math.hypot(height, (rim - foot) / 2);
        double outer = slant * rim / (rim - foot);
        double inner = outer - slant;
        double half = Math.PI * rim / outer / 2;
        Sector sector = new Sector(Length.mm(inner), Length.mm(outer), Length.mm((inner + outer) / 2), half, true);
        double pitch = Math.sqrt(outer * outer - Math.pow(inner * Math.sin(half), 2)) - inner * Math.cos(half);
        BentShape shape = BentShape.of(sector, Rotation.R0, 0);
        double best = new Nesting(0)
                .offsets(shape, shape).stream()
                        .filter(offset -> offset.dx() == 0 && offset.dy() > 0)
                        .mapToDouble(offset -> offset.dy() / 1e6)
                        .min()
                        .orElseThrow();
        assertThat(best).isBetween(pitch, pitch + 0.15);
        assertThat(best).isLessThan(sector.box().height().mm() - 2);
    }

    @Test
    void twoConesShareASheetThatTheirBoxesWouldNot() {
        Sector sector = mug();
        double gap = 4;
        // One box and one pitch, with the gap, and 3 mm to spare: two boxes would need 10 mm more.
        double pitch = new Nesting(4_000_000)
                .offsets(BentShape.of(sector, Rotation.R0, 0), BentShape.of(sector, Rotation.R0, 0)).stream()
                        .filter(offset -> offset.dx() == 0 && offset.dy() > 0)
                        .mapToDouble(offset -> offset.dy() / 1e6)
                        .min()
                        .orElseThrow();
        double high = sector.box().height().mm() + pitch + 3;
        assertThat(high).isLessThan(2 * sector.box().height().mm() + gap);
        PaperRoom room = TilingShop.room(
                "pad",
                Length.mm(sector.box().width().mm() + 40),
                Length.mm(high + 20),
                Length.mm(10),
                Optional.empty());
        Shop shop = TilingShop.scissors();
        List<Unit> units = List.of(
                TilingShop.unit("A", transfer(sector.box(), Optional.of(sector)), List.of(room)),
                TilingShop.unit("B", transfer(sector.box(), Optional.of(sector)), List.of(room)));
        Tiled tiled = Tiling.all(TilingShop.loads(units, 1), TilingShop.rules(shop));
        assertThat(tiled.sheets()).hasSize(1);
        assertThat(faults(tiled.sheets().get(0), shop)).isEmpty();
    }

    @Test
    void theCheckSeesWhatIsTooNear() {
        Shop shop = TilingShop.noFlag(Length.mm(4));
        PaperRoom room = TilingShop.thirteenByNineteen();
        Sector sector = mug();
        Unit unit = TilingShop.unit("A", transfer(sector.box(), Optional.of(sector)), List.of(room));
        Box one = sector.box().shifted(Length.mm(10), Length.mm(10));
        Box near = one.shifted(Length.ZERO, Length.mm(98));
        Placed below = new Placed(unit, 1, one, Rotation.R0, Optional.empty());
        Placed above = new Placed(unit, 1, near, Rotation.R0, Optional.empty());
        assertThat(faults(new Sheet(room, List.of(below, above)), shop)).isNotEmpty();
        Placed off = new Placed(unit, 1, one.shifted(Length.mm(-8), Length.ZERO), Rotation.R0, Optional.empty());
        assertThat(faults(new Sheet(room, List.of(off)), shop)).isNotEmpty();
    }

    private static List<String> faults(Sheet sheet, Shop shop) {
        List<String> faults = new ArrayList<>();
        Geometry inside = rectangle(sheet.room().inside()).buffer(HAIR);
        Geometry page = rectangle(sheet.room().page()).buffer(HAIR);
        double gap = shop.trimGap().mm() - HAIR;
        double border = shop.trimBorder().mm() - HAIR;
        List<Placed> placed = sheet.placed();
        for (int i = 0; i < placed.size(); i++) {
            Geometry picture = picture(placed.get(i));
            if (!inside.contains(picture)) {
                faults.add(placed.get(i).unit().id() + " in the margin");
            }
            Optional<Geometry> flag = flag(placed.get(i), shop);
            if (flag.isPresent() && !page.contains(flag.get())) {
                faults.add(placed.get(i).unit().id() + " has its flag off the page");
            }
            for (int j = 0; j < placed.size(); j++) {
                if (i == j) {
                    continue;
                }
                String pair = placed.get(i).unit().id() + " and "
                        + placed.get(j).unit().id();
                Geometry other = picture(placed.get(j));
                if (picture.distance(other) < gap) {
                    faults.add(pair + " are " + picture.distance(other) + " mm apart");
                }
                if (flag.isPresent() && flag.get().distance(other) < border) {
                    faults.add(pair + ": flag on picture");
                }
                Optional<Geometry> otherFlag = flag(placed.get(j), shop);
                if (flag.isPresent()
                        && otherFlag.isPresent()
                        && flag.get().buffer(-HAIR).intersects(otherFlag.get())) {
                    faults.add(pair + ": flag on flag");
                }
            }
        }
        return faults;
    }

    private static Geometry picture(Placed placed) {
        return placed.sector()
                .<Geometry>map(laid -> shape(laid.sector(), laid.toPaper()))
                .orElseGet(() -> rectangle(placed.box()));
    }

    private static Optional<Geometry> flag(Placed placed, Shop shop) {
        if (placed.flag().isEmpty() || placed.sector().isEmpty()) {
            return placed.flag().map(ConeTilingTest::rectangle);
        }
        LaidSector laid = placed.sector().get();
        LeaningFlag flag = LeaningFlag.of(laid.sector(), FlagLaw.of(shop));
        double[][] ways = {{0, -0.5}, {1, -0.5}, {1, 0.5}, {0, 0.5}, {0, -0.5}};
        double[] xy = new double[10];
        for (int i = 0; i < 5; i++) {
            xy[2 * i] = flag.x() + ways[i][0] * flag.depth() * flag.outX() + ways[i][1] * flag.height() * flag.upX();
            xy[2 * i + 1] =
                    flag.y() + ways[i][0] * flag.depth() * flag.outY() + ways[i][1] * flag.height() * flag.upY();
        }
        return Optional.of(polygon(xy, laid.toPaper()));
    }

    private static Polygon rectangle(Box box) {
        double x = box.x().mm();
        double y = box.y().mm();
        double right = box.right().mm();
        double top = box.top().mm();
        return polygon(new double[] {x, y, right, y, right, top, x, top, x, y}, new AffineTransform());
    }

    /** By the picture's own coordinates, along its upper edge and back along the lower one. */
    private static Polygon shape(Sector sector, AffineTransform map) {
        double width = 2 * sector.halfRadians() * sector.middle().mm();
        double height = sector.outer().minus(sector.inner()).mm();
        double[] xy = new double[4 * (FINE + 1) + 2];
        for (int i = 0; i <= FINE; i++) {
            double u = width * i / FINE;
            xy[2 * i] = sector.x(u, height);
            xy[2 * i + 1] = sector.y(u, height);
            int back = 2 * FINE + 1 - i;
            xy[2 * back] = sector.x(u, 0);
            xy[2 * back + 1] = sector.y(u, 0);
        }
        xy[xy.length - 2] = xy[0];
        xy[xy.length - 1] = xy[1];
        return polygon(xy, map);
    }

    private static Polygon polygon(double[] xy, AffineTransform map) {
        double[] mapped = new double[xy.length];
        map.transform(xy, 0, mapped, 0, xy.length / 2);
        Coordinate[] corners = new Coordinate[xy.length / 2];
        for (int i = 0; i < corners.length; i++) {
            corners[i] = new Coordinate(mapped[2 * i], mapped[2 * i + 1]);
        }
        corners[corners.length - 1] = corners[0];
        return SHAPES.createPolygon(corners);
    }

    private static Transfer transfer(Box size, Optional<Sector> sector) {
        return new Transfer(size.width(), size.height(), List.of(), sector);
    }

    private static Sector mug() {
        return new Sector(Length.mm(248.83), Length.mm(341.67), Length.mm(295.25), Math.toRadians(20.446), true);
    }

    private static Sector anySector(SplittableRandom random) {
        double inner = 100 + 400 * random.nextDouble();
        double outer = inner + 50 + 60 * random.nextDouble();
        double width = 100 + 120 * random.nextDouble();
        double middle = (inner + outer) / 2;
        return new Sector(
                Length.mm(inner), Length.mm(outer), Length.mm(middle), width / middle / 2, random.nextBoolean());
    }
}
