package bandwright.rules.blanks;

import bandwright.rules.table.Evidence;
import bandwright.rules.table.Faults;
import bandwright.rules.table.Names;
import bandwright.rules.table.Once;
import bandwright.rules.table.Plausible;
import bandwright.rules.table.Row;
import bandwright.rules.table.Table;
import bandwright.rules.units.Length;
import bandwright.rules.units.Rgb;
import bandwright.rules.units.ShopUnits;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** blanks.csv: every kind of blank that the shop decorates, found by its sku or an alias. */
public final class Blanks {
    private final List<Blank> all;
    private final Map<String, Blank> byName = new LinkedHashMap<>();

    public Blanks(List<Blank> all) {
        this.all = List.copyOf(all);
        for (Blank blank : this.all) {
            byName.put(Names.fold(blank.sku()), blank);
        }
        for (Blank blank : this.all) {
            blank.aliases().forEach(alias -> byName.putIfAbsent(Names.fold(alias), blank));
        }
    }

    public List<Blank> list() {
        return all;
    }

    public Optional<Blank> find(String skuOrAlias) {
        return Optional.ofNullable(byName.get(Names.fold(skuOrAlias)));
    }

    /** Reads blanks.csv. */
    public static Blanks read(Table table, ShopUnits units, Faults faults) {
        Once names = new Once();
        return new Blanks(table.read(units, faults, row -> blank(row, names)));
    }

    private static Blank blank(Row row, Once names) {
        String sku = row.cell("sku").needed().text();
        names.take(row, "sku", sku);
        // An alias that only repeats its own row's sku or another of its aliases does no harm.
        List<String> aliases = row.cell("aliases").list().stream()
                .filter(alias -> !Names.same(alias, sku))
                .toList();
        aliases.stream().map(Names::fold).distinct().forEach(alias -> names.take(row, "aliases", alias));
        Form form = FormRow.read(row);
        Plausible margin = form.isFlat() ? Plausible.EDGE : Plausible.MARGIN;
        Length handle = row.cell("handle_width").length(Plausible.HANDLE).orElse(Length.ZERO);
        FormRow.checkHandle(row, form, handle);
        return new Blank(
                sku,
                aliases,
                row.text("name").isEmpty() ? sku : row.text("name"),
                row.cell("material").needed().word(Material.values()).orElse(Material.CERAMIC),
                form,
                row.cell("top_margin").length(margin).orElse(Length.ZERO),
                row.cell("bottom_margin").length(margin).orElse(Length.ZERO),
                row.cell("side_margin").length(margin).orElse(Length.ZERO),
                handle,
                row.cell("wrap_overlap").length(Plausible.SMALL).orElse(Length.ZERO),
                row.cell("bleed_top").length(Plausible.SMALL).orElse(Length.ZERO),
                row.cell("bleed_bottom").length(Plausible.SMALL).orElse(Length.ZERO),
                row.cell("base_colour").colour().orElse(Rgb.WHITE),
                row.cell("hot_colour").colour(),
                row.cell("handle_colour").colour(),
                row.cell("inside_colour").colour(),
                row.cell("finish").word(Finish.values()).orElse(Finish.GLOSS),
                row.cell("backing").word(Backing.values()).orElse(Backing.OPAQUE),
                row.cell("parts").list(),
                row.cell("heat_sources").list(),
                row.cell("oven_places").integer(1, 1000).orElse(1),
                row.text("shelf"),
                row.cell("cost").cost(),
                row.text("care"),
                row.cell("evidence").word(Evidence.values()).orElse(Evidence.FROM_MEMORY),
                row.text("note"));
    }
}
