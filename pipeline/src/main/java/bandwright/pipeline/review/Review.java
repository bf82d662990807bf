package bandwright.pipeline.review;

import bandwright.pipeline.artwork.ArtworkShelf;
import bandwright.pipeline.artwork.Found;
import bandwright.pipeline.intake.listing.ProductTies;
import bandwright.pipeline.match.WhyNot;
import bandwright.rules.Rulebook;
import bandwright.rules.blanks.BandLaw;
import bandwright.rules.blanks.Blank;
import bandwright.rules.designs.Design;
import bandwright.rules.heat.HeatChoice;
import bandwright.rules.paper.Printer;
import bandwright.rules.words.Words;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Looks through a sound rulebook for what an order would stumble over, and for what nobody has confirmed: listings that
 * tie, pictures that are missing, blanks that no heat source takes, general press settings, printers never measured.
 */
public final class Review {
    private final Rulebook rules;
    private final List<Finding> findings = new ArrayList<>();

    private Review(Rulebook rules) {
        this.rules = rules;
    }

    /** What is found, in the order of the tables. */
    public static List<Finding> of(Rulebook rules, ArtworkShelf shelf) {
        Review review = new Review(rules);
        review.blanks();
        review.settings();
        review.designs(shelf);
        review.ties();
        review.printers();
        return List.copyOf(review.findings);
    }

    /** The same but for the pictures, where nobody says where they are. */
    public static List<Finding> withoutPictures(Rulebook rules) {
        Review review = new Review(rules);
        review.blanks();
        review.settings();
        review.ties();
        review.printers();
        return List.copyOf(review.findings);
    }

    private void mend(String key, Object... about) {
        findings.add(new Finding(Words.say(key, about), true));
    }

    private void unconfirmed(String key, Object... about) {
        findings.add(new Finding(Words.say(key, about), false));
    }

    private HeatChoice choice(Blank blank) {
        return HeatChoice.among(HeatChoice.candidates(blank, rules.heatSources()), blank, rules.pressSettings());
    }

    private void blanks() {
        for (Blank blank : rules.blanks().list()) {
            HeatChoice choice = choice(blank);
            if (choice.chosen().isEmpty()) {
                String why = choice.refusals().stream()
                        .map(refusal ->
                                refusal.source().id() + ": " + WhyNot.of(refusal.why(), blank, refusal.source()))
                        .collect(Collectors.joining("; "));
                mend("check.no-heat-source", blank.sku(), why);
            } else if (BandLaw.of(blank, choice.chosen().get().source()).isEmpty()) {
                mend(
                        "check.band-empty",
                        blank.sku(),
                        choice.chosen().get().source().id());
            }
        }
    }

    /** Those that a run would take first, each with the blanks that it stands in for. */
    private void settings() {
        Map<String, Set<String>> general = new LinkedHashMap<>();
        for (Blank blank : rules.blanks().list()) {
            choice(blank)
                    .chosen()
                    .filter(chosen -> !chosen.setting().isConfirmed())
                    .ifPresent(chosen -> {
                        String what = Words.say(
                                "check.material-and-kind",
                                blank.material().word(),
                                chosen.source().kind().word());
                        general.computeIfAbsent(what, any -> new LinkedHashSet<>())
                                .add(blank.sku());
                    });
        }
        general.forEach((what, skus) -> unconfirmed("check.not-confirmed", what, String.join(", ", skus)));
    }

    private void designs(ArtworkShelf shelf) {
        for (String name : rules.designs().names()) {
            for (Design design : rules.designs().variants(name)) {
                picture(design.name(), design.artwork(), shelf);
                design.artwork2().ifPresent(second -> picture(design.name(), second, shelf));
            }
        }
    }

    private void picture(String design, String picture, ArtworkShelf shelf) {
        Found found = shelf.find(picture);
        if (found instanceof Found.Missing missing) {
            String near = missing.nearest().stream()
                    .findFirst()
                    .map(name -> Words.say("check.artwork-near", name))
                    .orElse(Words.say("check.artwork-put"));
            mend("check.artwork-missing", design, picture, near);
        } else if (!(found instanceof Found.Picture)) {
            mend("check.artwork-unreadable", design, picture);
        }
    }

    private void ties() {
        ProductTies.of(rules.products())
                .forEach(tie -> mend(
                        "check.tie",
                        tie.one().row(),
                        tie.other().row(),
                        tie.one().product()));
    }

    private void printers() {
        for (Printer printer : rules.printers().list()) {
            if (printer.scaleX() == 1 && printer.scaleY() == 1) {
                unconfirmed("check.scale", printer.id());
            }
        }
    }
}
