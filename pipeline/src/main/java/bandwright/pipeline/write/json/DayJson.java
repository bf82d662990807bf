package bandwright.pipeline.write.json;

import bandwright.pipeline.load.Handling;
import bandwright.pipeline.load.MachineDay;
import bandwright.pipeline.load.PressDay;
import bandwright.pipeline.load.WhatIf;
import java.io.IOException;
import java.util.Locale;

/** The plan of the day in run.json: when it ends and could end at the earliest, machines, hands, what-ifs. */
final class DayJson {
    private DayJson() {}

    static void write(JsonOut json, PressDay day) throws IOException {
        json.open("day");
        json.whole("end_s", day.endSeconds());
        json.whole("end_at_least_s", day.atLeastSeconds());
        json.list("machines", day.machines(), machine -> machine(json, machine));
        json.list("hands", day.hands(), handling -> handling(json, handling));
        json.list("what_if", day.whatIfs(), whatIf -> whatIf(json, whatIf));
        json.close();
    }

    private static void machine(JsonOut json, MachineDay machine) throws IOException {
        json.text("heat_source", machine.source().id());
        json.whole("machine", machine.machine());
        json.whole("on_s", machine.on());
        json.whole("off_s", machine.off());
    }

    private static void handling(JsonOut json, Handling handling) throws IOException {
        json.whole("person", handling.person());
        json.text("does", handling.kind().name().toLowerCase(Locale.ROOT));
        json.whole("load", handling.load());
        json.whole("start_s", handling.from());
        json.whole("end_s", handling.to());
    }

    private static void whatIf(JsonOut json, WhatIf whatIf) throws IOException {
        json.text("with", whatIf.what().word());
        json.text("heat_source", whatIf.source().map(source -> source.id()).orElse(""));
        json.whole("end_s", whatIf.endSeconds());
    }
}
