package bandwright.pipeline.cli;

import bandwright.pipeline.match.WhyNot;
import bandwright.rules.Rulebook;
import bandwright.rules.blanks.Band;
import bandwright.rules.blanks.BandLaw;
import bandwright.rules.blanks.Blank;
import bandwright.rules.heat.HeatChoice;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.heat.PressSetting;
import bandwright.rules.words.Words;
import java.util.List;
import java.util.Optional;

/** The blank, heat source and band that somebody named. */
record AskedBand(Blank blank, HeatSource source, PressSetting setting, Band band) {
    /** What was asked for can't be: one line with its cure. */
    static final class Refused extends Exception {
        private static final long serialVersionUID = 1;

        Refused(String line) {
            super(line);
        }

        String line() {
            return String.valueOf(getMessage());
        }
    }

    /** On that heat source, or on the one that a run takes first. */
    static AskedBand find(String sku, Optional<String> heatSource, Rulebook rules) throws Refused {
        Optional<Blank> found = rules.blanks().find(sku);
        if (found.isEmpty()) {
            throw new Refused(BandCommand.unknown(sku, rules));
        }
        Blank blank = found.get();
        HeatChoice choice = HeatChoice.among(sources(blank, heatSource, rules), blank, rules.pressSettings());
        if (choice.chosen().isEmpty()) {
            HeatChoice.Refusal first = choice.refusals().get(0);
            String why = WhyNot.of(first.why(), blank, first.source());
            throw new Refused(
                    Words.say("strip.refused", blank.sku(), first.source().id(), why));
        }
        HeatSource source = choice.chosen().get().source();
        Optional<Band> band = BandLaw.of(blank, source);
        if (band.isEmpty()) {
            throw new Refused(Words.say("check.band-empty", blank.sku(), source.id()));
        }
        return new AskedBand(blank, source, choice.chosen().get().setting(), band.get());
    }

    private static List<HeatSource> sources(Blank blank, Optional<String> asked, Rulebook rules) throws Refused {
        if (asked.isEmpty()) {
            return HeatChoice.candidates(blank, rules.heatSources());
        }
        Optional<HeatSource> wish = rules.heatSources().find(asked.get());
        if (wish.isEmpty()) {
            List<String> ids =
                    rules.heatSources().list().stream().map(HeatSource::id).toList();
            throw new Refused(Words.say("strip.no-such-source", asked.get(), Sheets.nearest(asked.get(), ids)));
        }
        return List.of(wish.get());
    }
}
