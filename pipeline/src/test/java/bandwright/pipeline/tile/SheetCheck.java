package bandwright.pipeline.tile;

import bandwright.rules.Shop;
import bandwright.rules.paper.Cutting;
import bandwright.rules.paper.FlagLaw;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.units.Box;
import bandwright.rules.units.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * Looks at sheets with a ruler, knowing nothing of how they were found: every pair of pictures, every flag, every
 * margin, and on a trimmer every cut. Returns what is wrong.
 */
final class SheetCheck {
    private final Shop shop;
    private final FlagLaw law;
    private final List<String> wrong = new ArrayList<>();

    private SheetCheck(Shop shop) {
        this.shop = shop;
        this.law = FlagLaw.of(shop);
    }

    static List<String> faults(List<Sheet> sheets, Shop shop) {
        SheetCheck check = new SheetCheck(shop);
        sheets.forEach(check::sheet);
        return check.wrong;
    }

    private void sheet(Sheet sheet) {
        if (sheet.placed().isEmpty()) {
            wrong.add("an empty sheet");
        }
        List<Placed> all = sheet.placed();
        for (int i = 0; i < all.size(); i++) {
            alone(sheet, all.get(i));
            for (int j = 0; j < all.size(); j++) {
                if (i != j) {
                    pair(all.get(i), all.get(j));
                }
            }
        }
        if (shop.cutting() == Cutting.TRIMMER) {
            List<Box> feet = sheet.placed().stream().map(this::foot).toList();
            if (!canBeCut(feet)) {
                wrong.add("no edge to edge cuts part " + feet);
            }
        }
    }

    private void alone(Sheet sheet, Placed placed) {
        Box upright = placed.unit().transfer().box();
        Box box = placed.box();
        boolean swaps = placed.rotation().degrees() % 180 == 90;
        require(box.width().equals(swaps ? upright.height() : upright.width()), placed, "another width");
        require(box.height().equals(swaps ? upright.width() : upright.height()), placed, "another height");
        require(sheet.room().inside().contains(box), placed, "in the margin");
        require(
                placed.unit().rooms().stream().anyMatch(room -> isOf(room, sheet.room())),
                placed,
                "on a paper that it may not be on");
        require(placed.flag().isPresent() == law.hasFlag(), placed, "flag or no flag");
        placed.flag().ifPresent(flag -> flag(sheet, placed, flag));
    }

    /** Of a roll the unit knows the longest page, and the sheet is one that was cut. */
    private static boolean isOf(PaperRoom room, PaperRoom page) {
        return page.paper().isRoll() ? page.equals(room.cutAfter(page.page().height())) : page.equals(room);
    }

    private void flag(Sheet sheet, Placed placed, Box flag) {
        require(sheet.room().page().contains(flag), placed, "flag off the page");
        Box box = placed.box();
        Box inside = sheet.room().inside();
        boolean upOrDown = placed.rotation().swapsSides();
        Length middle = upOrDown
                ? flag.x().plus(flag.right()).minus(box.x()).minus(box.right())
                : flag.y().plus(flag.top()).minus(box.y()).minus(box.top());
        require(Math.abs(middle.nanometres()) <= 1, placed, "flag not at mid-height");
        require((upOrDown ? flag.height() : flag.width()).equals(law.depth()), placed, "flag's depth");
        require((upOrDown ? flag.width() : flag.height()).equals(law.height()), placed, "flag's height");
        Length outwards =
                switch (placed.rotation()) {
                    case R0 -> flag.x().minus(box.right());
                    case R90 -> flag.y().minus(box.top());
                    case R180 -> box.x().minus(flag.right());
                    case R270 -> box.y().minus(flag.top());
                };
        require(outwards.equals(law.border()), placed, "flag does not begin at the cut line");
        Length room =
                switch (placed.rotation()) {
                    case R0 -> inside.right().minus(box.right());
                    case R90 -> inside.top().minus(box.top());
                    case R180 -> box.x().minus(inside.x());
                    case R270 -> box.y().minus(inside.y());
                };
        require(room.compareTo(law.inkReach()) >= 0, placed, "flag's ink in the margin");
        Length low = upOrDown ? flag.x().minus(inside.x()) : flag.y().minus(inside.y());
        Length high =
                upOrDown ? inside.right().minus(flag.right()) : inside.top().minus(flag.top());
        require(!low.plus(law.inset()).isNegative(), placed, "flag's ink in the margin");
        require(!high.plus(law.inset()).isNegative(), placed, "flag's ink in the margin");
    }

    private void pair(Placed placed, Placed other) {
        boolean apart = apart(placed.box(), other.box(), shop.trimGap());
        require(apart, placed, "nearer than the gap to " + other.unit().id());
        placed.flag().ifPresent(flag -> {
            require(
                    !flag.overlaps(other.box().grown(shop.trimBorder())),
                    placed,
                    "flag on " + other.unit().id());
            other.flag()
                    .ifPresent(others -> require(
                            !flag.overlaps(others),
                            placed,
                            "flag on the flag of " + other.unit().id()));
        });
    }

    private static boolean apart(Box a, Box b, Length gap) {
        return gap.compareTo(b.x().minus(a.right())) <= 0
                || gap.compareTo(a.x().minus(b.right())) <= 0
                || gap.compareTo(b.y().minus(a.top())) <= 0
                || gap.compareTo(a.y().minus(b.top())) <= 0;
    }

    /** What must not be cut through: the picture, and the flag's paper up to the picture. */
    private Box foot(Placed placed) {
        Box box = placed.box();
        if (placed.flag().isEmpty()) {
            return box;
        }
        Box flag = placed.flag().get();
        Length x = box.x().atMost(flag.x());
        Length y = box.y().atMost(flag.y());
        return new Box(
                x,
                y,
                box.right().atLeast(flag.right()).minus(x),
                box.top().atLeast(flag.top()).minus(y));
    }

    private static boolean canBeCut(List<Box> feet) {
        if (feet.size() <= 1) {
            return true;
        }
        for (Box first : feet) {
            List<Box> left = feet.stream()
                    .filter(b -> b.right().compareTo(first.right()) <= 0)
                    .toList();
            List<Box> right = feet.stream()
                    .filter(b -> b.x().compareTo(first.right()) >= 0)
                    .toList();
            if (left.size() + right.size() == feet.size() && !right.isEmpty()) {
                return canBeCut(left) && canBeCut(right);
            }
            List<Box> below = feet.stream()
                    .filter(b -> b.top().compareTo(first.top()) <= 0)
                    .toList();
            List<Box> above =
                    feet.stream().filter(b -> b.y().compareTo(first.top()) >= 0).toList();
            if (below.size() + above.size() == feet.size() && !above.isEmpty()) {
                return canBeCut(below) && canBeCut(above);
            }
        }
        return false;
    }

    private void require(boolean holds, Placed placed, String fault) {
        if (!holds) {
            wrong.add(placed.unit().id() + ": " + fault + " " + placed.box() + " " + placed.rotation());
        }
    }
}
