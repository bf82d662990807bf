package bandwright.pipeline.write.json;

import bandwright.pipeline.RowCounts;
import bandwright.pipeline.Run;
import bandwright.pipeline.held.HeldRow;
import bandwright.pipeline.held.SkippedRow;
import bandwright.pipeline.intake.InboxFile;
import bandwright.pipeline.load.Load;
import bandwright.pipeline.size.Unit;
import bandwright.pipeline.write.OutFile;
import bandwright.pipeline.write.Output;
import bandwright.pipeline.write.SheetFiles;
import bandwright.pipeline.write.SheetPage;
import bandwright.rules.Rulebook;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.units.Temperature;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Optional;

/** run.json: the whole run for machines, schema 1. Nothing of a buyer stands in it but what a held row's message quotes. */
public final class RunJson implements Output {
    /** Keys may be added to a schema; one that changes or goes makes a new number. */
    static final int SCHEMA = 1;

    public static final String FILE = "run.json";

    @Override
    public List<OutFile> files(Run run, Rulebook rules) {
        return List.of(new OutFile(FILE, out -> write(run, rules, out)));
    }

    private static void write(Run run, Rulebook rules, OutputStream out) throws IOException {
        JsonOut json = new JsonOut(out);
        UnitJson units = new UnitJson(json, run.tiled());
        json.open();
        json.whole("schema", SCHEMA);
        json.text("run", run.id().toString());
        json.text("date", run.id().date().toString());
        rows(json, RowCounts.of(run));
        json.list("sheets", SheetFiles.of(run.tiled()).pages(), sheet -> sheet(json, sheet));
        json.whole("sheets_at_least", run.tiled().atLeast());
        json.list("files", run.orders().files(), file -> file(json, file));
        json.list("units", run.units(), units::write);
        json.list("loads", run.loads(), load -> load(json, load));
        DayJson.write(json, run.day());
        json.list("held", run.held(), held -> held(json, held));
        json.list("skipped", run.skipped(), skipped -> skipped(json, skipped));
        ExperienceJson.write(json, run.past().experience(), rules);
        json.close();
        json.end();
    }

    private static void rows(JsonOut json, RowCounts rows) throws IOException {
        json.open("rows");
        json.whole("read", rows.read());
        json.whole("made", rows.made());
        json.whole("part", rows.part());
        json.whole("held", rows.held());
        json.whole("skipped", rows.skipped());
        json.whole("empty", rows.empty());
        json.close();
    }

    private static void sheet(JsonOut json, SheetPage sheet) throws IOException {
        PaperRoom room = sheet.sheet().room();
        json.text("file", sheet.file());
        json.whole("page", sheet.page());
        json.text("paper", room.paper().id());
        json.text("printer", room.printer().id());
        json.mm("width_mm", room.page().width());
        json.mm("height_mm", room.page().height());
    }

    private static void file(JsonOut json, InboxFile file) throws IOException {
        json.text("file", file.file());
        if (file.sheet().isPresent()) {
            json.text("sheet", file.sheet().get());
        }
        json.text("site", file.site());
        json.whole("rows", file.rows());
        json.text("state", file.state().word());
        json.text("message", file.message());
    }

    private static void load(JsonOut json, Load load) throws IOException {
        json.whole("load", load.number());
        json.text("heat_source", load.source().id());
        json.whole("machine", load.machine());
        Optional<Temperature> temperature = load.setting().temperature();
        if (temperature.isPresent()) {
            json.decimal("temperature_c", temperature.get().celsius1());
        } else {
            json.none("temperature_c");
        }
        json.whole("positions", load.source().positions());
        json.whole("press_s", load.setting().timeSeconds());
        json.whole("start_s", load.startSeconds());
        json.whole("end_s", load.endSeconds());
        json.texts("units", load.units().stream().map(Unit::id).toList());
        json.flag("first", load.isFirst());
    }

    private static void held(JsonOut json, HeldRow held) throws IOException {
        json.from(held.row().from());
        json.text("order", held.order());
        json.whole("pieces", held.pieces());
        json.text("column", held.column());
        json.text("code", held.reason().code());
        json.text("message", held.reason().message());
        json.text("cure", held.reason().cure());
    }

    private static void skipped(JsonOut json, SkippedRow skipped) throws IOException {
        json.from(skipped.row().from());
        json.text("order", skipped.order());
        json.whole("pieces", skipped.pieces());
        json.text("code", skipped.code());
        json.text("message", skipped.message());
    }
}
