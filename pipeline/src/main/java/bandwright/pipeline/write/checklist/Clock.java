package bandwright.pipeline.write.checklist;

import bandwright.pipeline.load.Load;
import bandwright.rules.Shop;
import bandwright.rules.heat.PressSetting;
import bandwright.rules.units.TemperatureUnit;
import bandwright.rules.words.Words;
import java.time.LocalTime;

/** Times and temperatures as they are read at a press. */
public final class Clock {
    private Clock() {}

    /** When a load starts, to the minute that has begun: 09:10. */
    static String at(Shop shop, Load load) {
        LocalTime start = shop.dayStarts().plusSeconds(load.startSeconds());
        return start.withSecond(0).toString();
    }

    /** Both scales, the shop's own first: 374 F (190 C). */
    public static String heat(PressSetting setting, Shop shop) {
        return setting.temperature()
                .map(heat -> {
                    String celsius = heat.wholeCelsius() + " \u00b0C";
                    String fahrenheit = heat.wholeFahrenheit() + " \u00b0F";
                    return shop.temperatureUnit() == TemperatureUnit.F
                            ? fahrenheit + " (" + celsius + ")"
                            : celsius + " (" + fahrenheit + ")";
                })
                .orElse("");
    }

    /** 150 seconds are 2 min 30 s. */
    public static String time(int seconds) {
        int minutes = seconds / 60;
        int rest = seconds % 60;
        if (minutes == 0) {
            return Words.say("checklist.seconds", rest);
        }
        return rest == 0
                ? Words.say("checklist.minutes", minutes)
                : Words.say("checklist.minutes-seconds", minutes, rest);
    }
}
