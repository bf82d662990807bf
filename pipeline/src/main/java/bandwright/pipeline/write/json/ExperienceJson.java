package bandwright.pipeline.write.json;

import bandwright.pipeline.past.Experience;
import bandwright.pipeline.past.Heating;
import bandwright.pipeline.past.Turnout;
import bandwright.rules.Rulebook;
import bandwright.rules.blanks.Blank;
import bandwright.rules.spoilage.Spoilage;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** {@code experience} of run.json: what earlier runs made of each blank in each heat source, and how it turned out. */
final class ExperienceJson {
    private final JsonOut json;
    private final Experience experience;
    private final double said;

    private record Place(String sku, String source) {}

    private ExperienceJson(JsonOut json, Experience experience, double said) {
        this.json = json;
        this.experience = experience;
        this.said = said;
    }

    static void write(JsonOut json, Experience experience, Rulebook rules) throws IOException {
        List<Place> places = rules.blanks().list().stream()
                .map(Blank::sku)
                .flatMap(sku -> experience.listSources(sku).stream().map(source -> new Place(sku, source)))
                .toList();
        json.list(
                "experience",
                places,
                new ExperienceJson(json, experience, rules.shop().spoilRate())::place);
    }

    private void place(Place place) throws IOException {
        Spoilage spoilage = experience.spoilage(place.sku(), place.source(), said);
        Turnout turnout = experience.made(place.sku(), place.source());
        json.text("blank", place.sku());
        json.text("heat_source", place.source());
        turnout(turnout);
        json.flag("learnt", spoilage.isLearnt());
        json.decimal("spoil_rate", share(spoilage.rate()));
        json.decimal("spoil_rate_from", share(spoilage.interval().from()));
        json.decimal("spoil_rate_to", share(spoilage.interval().to()));
        json.list("reasons", turnout.reasons(), why -> {
            json.text("reason", why.reason());
            json.whole("pieces", why.pieces());
        });
        json.list("settings", experience.listHeatings(place.sku(), place.source()), heating -> {
            setting(heating);
            turnout(experience.madeWith(place.sku(), place.source(), heating));
        });
    }

    private void setting(Heating heating) throws IOException {
        json.decimal("temperature_c", heating.temperature().celsius1());
        json.whole("press_s", heating.seconds());
        json.text("pressure", heating.pressure());
    }

    private void turnout(Turnout turnout) throws IOException {
        json.whole("made", turnout.pieces());
        json.whole("spoiled", turnout.spoiled());
    }

    private static BigDecimal share(double share) {
        return BigDecimal.valueOf(share).setScale(4, RoundingMode.HALF_UP);
    }
}
