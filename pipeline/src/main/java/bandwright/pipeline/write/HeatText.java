package bandwright.pipeline.write;

import bandwright.rules.Shop;
import bandwright.rules.heat.PressSetting;
import bandwright.rules.units.Temperature;
import bandwright.rules.units.TemperatureUnit;
import bandwright.rules.words.Words;

/** Temperatures and pressing times as they are read at a press. */
public final class HeatText {
    private HeatText() {}

    /** Both scales, the shop's own first: 374 F (190 C). */
    public static String of(Temperature heat, TemperatureUnit first) {
        String celsius = heat.wholeCelsius() + " \u00b0C";
        String fahrenheit = heat.wholeFahrenheit() + " \u00b0F";
        return first == TemperatureUnit.F ? fahrenheit + " (" + celsius + ")" : celsius + " (" + fahrenheit + ")";
    }

    /** How hot a setting is, in both scales; empty where its row doesn't say. */
    public static String of(PressSetting setting, Shop shop) {
        return setting.temperature()
                .map(heat -> of(heat, shop.temperatureUnit()))
                .orElse("");
    }

    /** 150 seconds are 2 min 30 s. */
    public static String time(int seconds) {
        int minutes = seconds / 60;
        int rest = seconds % 60;
        if (minutes == 0) {
            return Words.say("heat.seconds", rest);
        }
        return rest == 0 ? Words.say("heat.minutes", minutes) : Words.say("heat.minutes-seconds", minutes, rest);
    }
}
