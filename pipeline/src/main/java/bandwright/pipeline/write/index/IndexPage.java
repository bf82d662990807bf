package bandwright.pipeline.write.index;

import bandwright.pipeline.Run;
import bandwright.pipeline.write.OutFile;
import bandwright.pipeline.write.thumb.Thumbnails;
import bandwright.rules.Rulebook;
import bandwright.rules.words.Words;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/**
 * The run at a glance, opened first: index.html. One file that works from the disk, without network and without script;
 * buyers' names and addresses are not in it.
 */
public final class IndexPage {
    /** The name in the run's folder. */
    public static final String FILE = "index.html";

    private final Run run;
    private final Rulebook rules;
    private final Pictures pictures;
    private final List<Section> sections;

    private IndexPage(Run run, Rulebook rules, Thumbnails thumbnails, Set<String> files) {
        this.run = run;
        this.rules = rules;
        this.pictures = new Pictures(thumbnails, rules.shop());
        Places places = new Places(run);
        ProofLinks proofs = new ProofLinks(run, rules, files);
        ShipDates dates = ShipDates.of(run);
        this.sections = List.of(
                new FirstSteps(run, places, dates, files),
                new HeldRows(run.held(), proofs),
                dates,
                new PressDayPart(run, rules.shop()),
                new SheetGallery(places, pictures),
                new PieceCards(run.id(), run.units(), rules.shop(), places, pictures, proofs),
                new Unconfirmed(run.units()),
                new Confirmed(run.units(), rules.shop()),
                new Spoiled(run.past().experience(), rules),
                new FilesRead(run.orders().files()));
    }

    /**
     * The page of a run.
     *
     * @param files the names of the other files in the run's folder: what is not there is not linked
     */
    public static OutFile file(Run run, Rulebook rules, Thumbnails thumbnails, Collection<String> files) {
        return new OutFile(FILE, out -> {
            String page = new IndexPage(run, rules, thumbnails, Set.copyOf(files)).page();
            out.write(page.getBytes(StandardCharsets.UTF_8));
        });
    }

    private String page() {
        String title = Words.say("index.title", run.id());
        Html html = Page.open(title, OptionalInt.empty());
        header(html, title);
        nav(html);
        html.open("main");
        pictures.store(html, run.units());
        for (Section section : sections) {
            if (!section.isEmpty()) {
                html.open("section", "id", section.name()).line("h2", heading(section));
                section.writeTo(html);
                html.close("section");
            }
        }
        html.close("main");
        return Page.close(html);
    }

    private static String heading(Section section) {
        return Words.say("index." + section.name());
    }

    private void header(Html html, String title) {
        html.open("header");
        if (!rules.shop().name().isEmpty()) {
            html.line("p", rules.shop().name(), "class", "shop");
        }
        html.line("h1", title).open("dl", "class", "figures");
        figure(html, "index.figure-pieces", run.units().size());
        figure(html, "index.figure-sheets", run.tiled().sheets().size());
        figure(html, "index.figure-loads", run.loads().size());
        figure(html, "index.figure-held", run.held().size());
        figure(html, "index.figure-skipped", run.skipped().size());
        html.close("dl").close("header");
    }

    private static void figure(Html html, String key, int figure) {
        html.open("div")
                .line("dt", Words.say(key))
                .line("dd", Integer.toString(figure))
                .close("div");
    }

    private void nav(Html html) {
        html.open("nav", "aria-label", Words.say("index.on-this-page")).open("ul");
        for (Section section : sections) {
            if (!section.isEmpty()) {
                html.open("li").link("#" + section.name(), heading(section)).close("li");
            }
        }
        html.close("ul").close("nav");
    }
}
