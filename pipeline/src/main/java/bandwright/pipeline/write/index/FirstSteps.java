package bandwright.pipeline.write.index;

import bandwright.pipeline.Run;
import bandwright.pipeline.write.SheetFile;
import bandwright.pipeline.write.checklist.PressChecklist;
import bandwright.pipeline.write.picklist.PickList;
import bandwright.pipeline.write.slips.PackingSlips;
import bandwright.pipeline.write.workbook.HeldWorkbook;
import bandwright.pipeline.write.workbook.OrdersWorkbook;
import bandwright.rules.units.Length;
import bandwright.rules.words.Words;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Set;

/**
 * What to do, in the order in which it is done: mend, print, pick, press, pack, ship. A step without work is left out.
 *
 * @param files the names of the files that this run has
 */
record FirstSteps(Run run, Places places, ShipDates dates, Set<String> files) implements Section {
    @Override
    public String name() {
        return "first";
    }

    @Override
    public boolean isEmpty() {
        return false; // at least the list of all rows is there
    }

    @Override
    public void writeTo(Html html) {
        html.open("ol", "class", "steps");
        if (!run.orders().unread().isEmpty()) {
            int unread = run.orders().unread().size();
            step(html, "ask").link("#files", Words.say("index.unread", unread));
            end(html);
        }
        if (!run.owed().stops().isEmpty()) {
            step(html, "stop")
                    .text(Words.say("index.stop-pieces", run.owed().stops().size()))
                    .text(" ");
            file(html, PressChecklist.FILE);
            end(html);
        }
        if (!run.held().isEmpty()) {
            step(html, "mend")
                    .link("#held", Words.say("index.mend-rows", run.held().size()))
                    .text(" ");
            file(html, HeldWorkbook.FILE);
            end(html);
        }
        print(html);
        step(html, "pick", PickList.FILE);
        step(html, "press", PressChecklist.FILE);
        step(html, "pack", PackingSlips.FILE);
        ship(html);
        step(html, "look-up", OrdersWorkbook.FILE);
        html.close("ol");
    }

    private void print(Html html) {
        if (places.files().isEmpty()) {
            return;
        }
        step(html, "print");
        html.open("span", "class", "files");
        for (SheetFile file : places.files()) {
            html.link(file.name(), file.shortName());
            html.text(" ").text(pages(file)).text(" ");
        }
        html.close("span");
        end(html);
    }

    private static String pages(SheetFile file) {
        int pages = file.sheets().size();
        String paper = file.room().paper().name();
        String printer = file.room().printer().id();
        if (!file.room().paper().isRoll()) {
            return Words.say("index.print-on", pages, paper, printer);
        }
        Length all = file.sheets().stream()
                .map(sheet -> sheet.room().page().height())
                .reduce(Length.ZERO, Length::plus);
        BigDecimal metres = BigDecimal.valueOf(all.mm() / 1000).setScale(2, RoundingMode.UP);
        BigDecimal inches = BigDecimal.valueOf(all.inches()).setScale(1, RoundingMode.UP);
        return Words.say("index.print-on-roll", pages, paper, metres, inches, printer);
    }

    private void ship(Html html) {
        if (!dates.isEmpty()) {
            step(html, "ship").link("#dates", dates.summary());
            end(html);
        }
    }

    private void step(Html html, String name, String file) {
        if (files.contains(file)) {
            step(html, name);
            file(html, file);
            end(html);
        }
    }

    private static Html step(Html html, String name) {
        html.open("li").line("strong", Words.say("index." + name)).text(" ");
        return html.open("span").text(Words.say("index." + name + "-how")).text(" ");
    }

    private static void end(Html html) {
        html.close("span").close("li");
    }

    private void file(Html html, String file) {
        if (files.contains(file)) {
            html.link(file, file);
        }
    }
}
