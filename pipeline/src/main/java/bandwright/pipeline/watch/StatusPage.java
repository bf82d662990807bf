package bandwright.pipeline.watch;

import bandwright.pipeline.write.index.Html;
import bandwright.pipeline.write.index.Page;
import bandwright.rules.words.Words;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;

/** The page that says how it goes: what needs a person first, then what waits, the newest runs, what was not taken. */
final class StatusPage {
    /** The browser reads it again so often, in seconds. */
    private static final int REFRESH = 15;

    static final int SHOWN = 50;
    private static final DateTimeFormatter MINUTE = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

    private final Status status;
    private final Pace pace;
    private final PastRuns runs;
    private final Leftovers leftovers;
    private final Links links;

    StatusPage(Status status, Pace pace, PastRuns runs, Leftovers leftovers, Asked asked) {
        this.status = status;
        this.pace = pace;
        this.runs = runs;
        this.leftovers = leftovers;
        this.links = new Links(asked);
    }

    /** @param time as {@link #time} says it; without it the page tells whether anything has changed */
    String page(String time) {
        boolean isEnded = status.doing() == Status.Doing.ENDED;
        String title = Words.say(headline());
        Html html = Page.open(title, isEnded ? OptionalInt.empty() : OptionalInt.of(REFRESH));
        html.open("header").line("h1", title);
        html.line("p", Words.say(isEnded ? "status.ended" : "status.as-of", time), "class", "soft");
        figures(html);
        html.close("header").open("main");
        person(html);
        waiting(html);
        runs(html);
        notTaken(html);
        html.close("main");
        return Page.close(html);
    }

    String time() {
        return MINUTE.format(status.at().atZone(status.zone()));
    }

    private String headline() {
        return switch (status.doing()) {
            case ENDED -> "status.nobody";
            case MAKING -> "status.making";
            case WATCHING -> status.stop().isPresent() ? "status.stopped" : "status.watching";
        };
    }

    private void figures(Html html) {
        html.open("dl", "class", "figures");
        figure(html, "status.figure-waiting", status.sightings().size());
        figure(
                html,
                "status.figure-held",
                runs.runs().stream().limit(1).mapToInt(PastRuns.One::held).sum());
        figure(html, "status.figure-not-taken", leftovers.count());
        html.close("dl");
    }

    private static void figure(Html html, String key, int figure) {
        html.open("div")
                .line("dt", Words.say(key))
                .line("dd", Integer.toString(figure))
                .close("div");
    }

    private static void section(Html html, String key) {
        html.open("section").line("h2", Words.say(key));
    }

    private void person(Html html) {
        section(html, "status.person");
        List<PastRuns.One> held =
                runs.runs().stream().filter(run -> run.held() > 0).toList();
        boolean isAllWell = status.stop().isEmpty()
                && status.unplaced().isEmpty()
                && status.printer().isEmpty();
        if (isAllWell && held.isEmpty() && leftovers.count() == 0) {
            html.line("p", Words.say("status.person-none")).close("section");
            return;
        }
        html.open("ul", "class", "rows");
        status.stop().ifPresent(stop -> stop(html, stop));
        for (Unplaced one : status.unplaced().stream().limit(SHOWN).toList()) {
            row(html, Glance.name(one.placing().path()), Words.say("status.unplaced"), one.why());
        }
        for (String line : status.printer()) {
            html.open("li")
                    .line("h3", Words.say("status.printer"))
                    .line("p", line)
                    .close("li");
        }
        for (PastRuns.One run : held) {
            held(html, run);
        }
        if (leftovers.count() > 0) {
            row(html, DropFolder.NOT_TAKEN, Words.say("status.left", leftovers.count()), Words.say("status.left.cure"));
        }
        html.close("ul").close("section");
    }

    private static void held(Html html, PastRuns.One run) {
        html.open("li").open("h3").text(run.name() + " ");
        html.link(Links.encoded(run.name()) + "/held.xlsx", "held.xlsx")
                .close("h3")
                .open("div");
        html.line("p", Words.say("status.held", run.held()));
        html.line("p", Words.say("status.held.cure"), "class", "cure")
                .close("div")
                .close("li");
    }

    private static void stop(Html html, Stop stop) {
        html.open("li").line("h3", Words.say("status.stop")).open("div");
        html.line("p", stop.getMessage());
        stop.lines().stream().limit(SHOWN).forEach(line -> html.line("p", line, "class", "soft"));
        html.line("p", stop.cure(), "class", "cure").close("div").close("li");
    }

    private static void row(Html html, String name, String words, String cure) {
        html.open("li").line("h3", name).open("div").line("p", words);
        html.line("p", cure, "class", "cure").close("div").close("li");
    }

    private void waiting(Html html) {
        section(html, "status.waiting");
        if (status.sightings().isEmpty()) {
            html.line("p", Words.say("status.waiting-none")).close("section");
            return;
        }
        html.open("ul", "class", "rows");
        for (Sighting one : status.sightings().stream().limit(SHOWN).toList()) {
            html.open("li").line("h3", Glance.name(one.path())).open("div").line("p", why(one));
            html.close("div").close("li");
        }
        html.close("ul");
        if (status.sightings().size() > SHOWN) {
            html.line("p", Words.say("status.more", status.sightings().size() - SHOWN), "class", "soft");
        }
        html.close("section");
    }

    private String why(Sighting one) {
        Readiness readiness = one.readiness(pace);
        if (readiness == Readiness.NOT_YET || readiness == Readiness.REFUSED) {
            return Words.say("watch.seen." + one.last().seen().word());
        }
        if (readiness == Readiness.GROWING) {
            return Words.say("status.growing");
        }
        return pace.at().map(time -> Words.say("status.ready-at", time)).orElse(Words.say("status.ready"));
    }

    private void runs(Html html) {
        section(html, "status.runs");
        if (runs.runs().isEmpty()) {
            html.line("p", Words.say("status.runs-none")).close("section");
            return;
        }
        html.open("ul", "class", "rows");
        for (PastRuns.One run : runs.runs()) {
            html.open("li").open("h3").link(Links.encoded(run.name()) + "/index.html", run.name());
            html.close("h3").open("div");
            html.line("p", Words.say("status.run", run.pieces(), run.sheets(), run.held()));
            html.open("p", "class", "soft");
            for (String paper : run.papers()) {
                html.link(Links.encoded(run.name()) + "/" + Links.encoded(paper), paper)
                        .text(" ");
            }
            html.close("p").close("div").close("li");
        }
        html.close("ul").close("section");
    }

    private void notTaken(Html html) {
        if (leftovers.count() == 0) {
            return;
        }
        section(html, "status.not-taken");
        html.open("ul");
        for (String reason : leftovers.reasons()) {
            html.open("li").link(links.toReason(reason), reason).close("li");
        }
        html.close("ul");
        if (leftovers.count() > leftovers.reasons().size()) {
            int more = leftovers.count() - leftovers.reasons().size();
            html.line("p", Words.say("status.more", more), "class", "soft");
        }
        html.close("section");
    }
}
