package bandwright.pipeline.write.setup;

import bandwright.pipeline.write.HeatText;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.heat.TryRange;
import bandwright.rules.units.Temperature;
import bandwright.rules.units.TemperatureUnit;
import bandwright.rules.words.Words;
import java.util.OptionalInt;

/** Temperatures and times of a trial in words: both scales, the shop's own first, and neither outside of the range. */
record TrialFigures(TryRange range, TemperatureUnit unit) {
    /** Degrees Celsius of a machine before it is switched on. [J] */
    private static final double COLD = 20;

    private static final int HALF_A_MINUTE = 30;

    /** 374 F (190 C). */
    String heat(Temperature heat) {
        String celsius = Words.say("trial.celsius", range.whole(heat, TemperatureUnit.C));
        String fahrenheit = Words.say("trial.fahrenheit", range.whole(heat, TemperatureUnit.F));
        return unit == TemperatureUnit.F
                ? Words.say("trial.both", fahrenheit, celsius)
                : Words.say("trial.both", celsius, fahrenheit);
    }

    /** Between what the tries lie, or that nothing is varied. */
    String rangeWords() {
        String usual = Words.say("trial.figures", heat(range.usual()), time(range.usualSeconds()));
        boolean isOneHeat = range.least().equals(range.most());
        boolean isOneTime = range.leastSeconds() == range.mostSeconds();
        if (isOneHeat && isOneTime) {
            return Words.say("trial.range-one", usual);
        }
        String heats =
                isOneHeat ? heat(range.usual()) : Words.say("trial.from-to", heat(range.least()), heat(range.most()));
        String times = isOneTime
                ? time(range.usualSeconds())
                : Words.say("trial.from-to", time(range.leastSeconds()), time(range.mostSeconds()));
        return Words.say("trial.range", heats, times, usual);
    }

    static String time(int seconds) {
        return HeatText.time(seconds);
    }

    /**
     * How long a machine takes to heat up that much, begun half minutes, as if it heated as fast then as while it warms up;
     * empty where its row doesn't say how long that is.
     */
    OptionalInt heatingSeconds(HeatSource source, double degrees) {
        double all = range.usual().celsius() - COLD;
        if (source.warmUpSeconds() == 0 || all <= 0) {
            return OptionalInt.empty();
        }
        double seconds = source.warmUpSeconds() * degrees / all;
        return OptionalInt.of((int) Math.ceil(seconds / HALF_A_MINUTE) * HALF_A_MINUTE);
    }
}
