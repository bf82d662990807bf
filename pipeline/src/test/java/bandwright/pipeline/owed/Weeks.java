package bandwright.pipeline.owed;

import bandwright.pipeline.Run;
import bandwright.pipeline.intake.InboxFault;
import bandwright.pipeline.shop.Stall;
import bandwright.rules.RulebookFaults;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** One shop's weeks: what is in the inbox changes, the outbox remembers. */
final class Weeks {
    private static final LocalDate MONDAY = LocalDate.of(2026, 3, 2);

    private final Stall stall;
    private int week;

    Weeks(Path folder) {
        this.stall = new Stall(folder);
    }

    /** Puts a table of the shop's own into its rulebook. */
    Weeks table(String name, String text) throws IOException {
        stall.table(name, text);
        return this;
    }

    Path outbox() {
        return stall.outbox();
    }

    /** The next week's run over CSV files, each with its name in front: {@code "harbour.csv", "Order,SKU\n..."}. */
    Run run(String... namesAndTexts) throws IOException, InboxFault, RulebookFaults {
        stall.empty();
        for (int i = 0; i < namesAndTexts.length; i += 2) {
            stall.orders(namesAndTexts[i], namesAndTexts[i + 1]);
        }
        return again();
    }

    /** The next week's run over what an earlier one held, with one cell mended. */
    Run runMended(Run earlier, String faulty, String right) throws IOException, InboxFault, RulebookFaults {
        stall.dropMended(earlier, faulty, right);
        return again();
    }

    /** The next week's run over the same inbox. */
    Run again() throws IOException, InboxFault, RulebookFaults {
        return stall.publish(MONDAY.plusWeeks(week++));
    }

    void spoil(String... ids) {
        stall.spoil(ids);
    }

    /** What became of the rows of a run, and what was stopped, in words that a test can read. */
    static List<String> story(Run run) {
        List<String> story = new ArrayList<>();
        for (String line : Stall.story(run)) {
            boolean isMade = line.startsWith("made ");
            story.add(isMade ? line.substring(0, line.indexOf(' ', "made ".length())) : line);
        }
        run.owed().stops().forEach(stop -> story.add("stop " + stop.printed().id()));
        return story;
    }
}
