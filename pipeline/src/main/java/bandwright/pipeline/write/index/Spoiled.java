package bandwright.pipeline.write.index;

import bandwright.pipeline.past.Comparison;
import bandwright.pipeline.past.Experience;
import bandwright.pipeline.past.Heating;
import bandwright.pipeline.past.Turnout;
import bandwright.pipeline.write.HeatText;
import bandwright.pipeline.write.ShareText;
import bandwright.rules.Rulebook;
import bandwright.rules.blanks.Blank;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.spoilage.Spoilage;
import bandwright.rules.words.Words;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Which blanks were spoiled in which heat source, how often and why, and whether another setting spoils fewer. */
record Spoiled(Experience experience, Rulebook rules) implements Section {
    /** A blank in a heat source; an empty id stands for those that the ledger didn't keep. */
    private record Place(Blank blank, String source) {}

    @Override
    public String name() {
        return "spoiled";
    }

    @Override
    public boolean isEmpty() {
        return places().isEmpty();
    }

    private List<Place> places() {
        List<Place> places = new ArrayList<>();
        for (Blank blank : rules.blanks().list()) {
            List<String> sources = new ArrayList<>(experience.listSources(blank.sku()));
            sources.add("");
            for (String source : sources) {
                if (experience.made(blank.sku(), source).spoiled() > 0) {
                    places.add(new Place(blank, source));
                }
            }
        }
        return places;
    }

    @Override
    public void writeTo(Html html) {
        double said = rules.shop().spoilRate();
        html.line("p", Words.say("index.spoiled-how", ShareText.of(said)), "class", "lead");
        Table table = Table.open(
                html,
                "index.spoiled",
                "index.blank",
                "index.source",
                "index.number",
                "index.spoiled-number",
                "index.spoiled-share",
                "index.spoiled-reasons");
        List<String> comparisons = new ArrayList<>();
        for (Place place : places()) {
            String sku = place.blank().sku();
            Turnout turnout = experience.made(sku, place.source());
            table.row(
                    name(place.blank()),
                    source(place.source()),
                    Integer.toString(turnout.pieces()),
                    Integer.toString(turnout.spoiled()),
                    place.source().isEmpty() ? "" : share(experience.spoilage(sku, place.source(), said)),
                    reasons(turnout));
            Comparison.of(experience, sku, place.source())
                    .forEach(comparison -> comparisons.add(words(place, comparison)));
        }
        table.close();
        if (!comparisons.isEmpty()) {
            html.line("h3", Words.say("index.spoiled-settings")).open("ul");
            comparisons.forEach(comparison -> html.line("li", comparison));
            html.close("ul").line("p", Words.say("index.spoiled-care"));
        }
    }

    private static String name(Blank blank) {
        return Words.say("index.blank-name", blank.sku(), blank.name());
    }

    private String source(String id) {
        return id.isEmpty()
                ? Words.say("index.spoiled-source-lost")
                : rules.heatSources().find(id).map(HeatSource::name).orElse(id);
    }

    private static String share(Spoilage spoilage) {
        return spoilage.isLearnt()
                ? Words.say(
                        "index.spoiled-between",
                        ShareText.of(spoilage.interval().from()),
                        ShareText.of(spoilage.interval().to()))
                : Words.say("index.spoiled-few", ShareText.of(spoilage.rate()));
    }

    private static String reasons(Turnout turnout) {
        return turnout.reasons().stream()
                .map(why -> Words.say("index.spoiled-reason", why.reason(), why.pieces()))
                .collect(Collectors.joining(", "));
    }

    private String words(Place place, Comparison comparison) {
        long hundredths = Math.round(comparison.chance() * 100);
        String cases = hundredths == 0 ? Words.say("index.spoiled-seldom") : Long.toString(hundredths);
        return Words.say(
                "index.spoiled-compare",
                name(place.blank()),
                source(place.source()),
                comparison.usualTurnout().pieces(),
                setting(comparison.usual()),
                comparison.usualTurnout().spoiled(),
                comparison.otherTurnout().pieces(),
                setting(comparison.other()),
                comparison.otherTurnout().spoiled(),
                Words.say(comparison.isCertain() ? "index.spoiled-certain" : "index.spoiled-uncertain", cases));
    }

    private String setting(Heating heating) {
        String heat = HeatText.of(heating.temperature(), rules.shop().temperatureUnit());
        String time = HeatText.time(heating.seconds());
        return heating.pressure().isEmpty()
                ? Words.say("index.spoiled-setting-plain", heat, time)
                : Words.say("index.spoiled-setting", heat, time, heating.pressure());
    }
}
