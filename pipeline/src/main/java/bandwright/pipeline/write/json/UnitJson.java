package bandwright.pipeline.write.json;

import bandwright.pipeline.intake.OrderLine;
import bandwright.pipeline.size.Note;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.tile.LaidSector;
import bandwright.pipeline.tile.Placed;
import bandwright.pipeline.tile.Sheet;
import bandwright.pipeline.tile.Tiled;
import bandwright.pipeline.write.WrittenText;
import bandwright.rules.blanks.Band;
import bandwright.rules.paper.MirrorBy;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;

/** Writes the entries of {@code units}: what each is, how large, and where it lies on the printed paper. */
final class UnitJson {
    private record Spot(int sheet, boolean mirrored, Placed placed) {}

    private final JsonOut json;
    private final Map<String, Spot> spots = new HashMap<>();

    UnitJson(JsonOut json, Tiled tiled) {
        this.json = json;
        int index = 0;
        for (Sheet sheet : tiled.sheets()) {
            boolean mirrored = sheet.room().printer().mirror() == MirrorBy.FILE;
            for (Placed placed : sheet.placed()) {
                spots.put(placed.unit().id(), new Spot(index, mirrored, placed));
            }
            index++;
        }
    }

    void write(Unit unit) throws IOException {
        ordered(unit);
        band(unit.band());
        quality(unit);
        Spot spot = spots.get(unit.id());
        if (spot == null) {
            throw new IllegalStateException(unit.id() + " is on no sheet");
        }
        spot(spot);
    }

    private void ordered(Unit unit) throws IOException {
        OrderLine line = unit.matched().line();
        json.text("id", unit.id());
        json.text("site", line.site());
        json.text("order", line.order());
        json.text("line", line.line());
        json.whole("piece", unit.piece());
        json.from(line.row().from());
        json.text("blank", unit.matched().blank().sku());
        json.text("design", unit.matched().design().name());
        json.open("texts");
        for (Map.Entry<String, String> text : unit.texts().entrySet()) {
            json.text(WrittenText.unicode(text.getKey()), text.getValue());
        }
        json.close();
        json.text("heat_source", unit.matched().source().id());
    }

    private void band(Band band) throws IOException {
        json.mm("band_width_mm", band.around());
        json.mm("band_height_mm", band.up());
        json.mm("overlap_mm", band.overlap());
        json.mm("bleed_top_mm", band.bleedTop());
        json.mm("bleed_bottom_mm", band.bleedBottom());
        json.texts(
                "limited_by",
                band.limitedBy().stream().map(limit -> limit.column().key()).toList());
    }

    private void quality(Unit unit) throws IOException {
        if (unit.ppi().isPresent()) {
            json.whole("ppi", unit.ppi().getAsInt());
        } else {
            json.none("ppi"); // vector
        }
        if (unit.colourShift().isPresent()) {
            json.decimal("colour_shift", unit.colourShift().get());
        } else {
            json.none("colour_shift"); // a picture that can't be looked at
        }
        json.texts("notes", unit.notes().stream().map(Note::code).toList());
    }

    private void spot(Spot spot) throws IOException {
        Placed placed = spot.placed();
        json.whole("sheet", spot.sheet());
        json.mm("x_mm", placed.box().x());
        json.mm("y_mm", placed.box().y());
        json.mm("w_mm", placed.box().width());
        json.mm("h_mm", placed.box().height());
        json.whole("rotation", placed.rotation().degrees());
        json.flag("mirrored", spot.mirrored());
        json.whole("load", placed.load());
        if (placed.sector().isPresent()) {
            sector(placed.sector().get());
        }
    }

    private void sector(LaidSector sector) throws IOException {
        json.open("sector");
        json.mm("apex_x_mm", sector.apexX());
        json.mm("apex_y_mm", sector.apexY());
        json.mm("inner_radius_mm", sector.sector().inner());
        json.mm("outer_radius_mm", sector.sector().outer());
        json.decimal("start_deg", sector.startDegrees());
        json.decimal("sweep_deg", sector.sweepDegrees());
        json.flag("rim_is_outer", sector.sector().rimIsOuter());
        json.close();
    }
}
