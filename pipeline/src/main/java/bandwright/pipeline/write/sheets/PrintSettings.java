package bandwright.pipeline.write.sheets;

import bandwright.rules.paper.MirrorBy;
import bandwright.rules.paper.Paper;
import bandwright.rules.paper.PaperRoom;
import bandwright.rules.units.LengthUnit;
import bandwright.rules.words.Words;
import java.util.List;

/** How the print dialogue is to be set, one sentence each: scale, paper, mirror, colour. */
public final class PrintSettings {
    private PrintSettings() {}

    /** One sentence each. */
    public static List<String> of(PaperRoom room) {
        boolean driverFlips = room.printer().mirror() == MirrorBy.DRIVER;
        boolean profiled = room.printer().profile().isPresent();
        return List.of(
                Words.say("sheets.settings.scale"),
                paper(room),
                Words.say(driverFlips ? "sheets.settings.mirror.driver" : "sheets.settings.mirror.file"),
                Words.say(profiled ? "sheets.settings.colour.profile" : "sheets.settings.colour.driver"));
    }

    private static String paper(PaperRoom room) {
        Paper paper = room.paper();
        return Words.say(
                paper.isRoll() ? "sheets.settings.paper.roll" : "sheets.settings.paper",
                paper.name().isBlank() ? paper.id() : paper.name(),
                LabelText.number(room.page().width(), LengthUnit.MM),
                LabelText.number(room.page().height(), LengthUnit.MM),
                LabelText.number(room.page().width(), LengthUnit.IN),
                LabelText.number(room.page().height(), LengthUnit.IN),
                room.printer().id());
    }
}
