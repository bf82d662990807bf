package bandwright.pipeline.write.day;

import bandwright.rules.Shop;
import bandwright.rules.words.Words;
import java.time.LocalTime;

/** Times of a day's plan as a clock on the wall shows them. */
public final class Clock {
    private static final int MINUTE = 60;
    private static final long DAY = 86_400;

    private Clock() {}

    /** To the minute that has begun: a load that starts at 09:10:50 starts at 09:10. */
    public static String at(Shop shop, long seconds) {
        long sinceMidnight = shop.dayStarts().toSecondOfDay() + seconds;
        String time = LocalTime.ofSecondOfDay(Math.floorMod(sinceMidnight, DAY) / MINUTE * MINUTE)
                .toString();
        long days = Math.floorDiv(sinceMidnight, DAY);
        return days == 0 ? time : Words.say("day.days-later", time, days);
    }

    /** To the minute in which it is over: what is done at 15:39:10 is done by 15:40. */
    public static String by(Shop shop, long seconds) {
        return at(shop, -Math.floorDiv(-seconds, MINUTE) * MINUTE);
    }

    /** 1 h 5 min; rounded up to whole minutes. */
    public static String lasting(long seconds) {
        long minutes = -Math.floorDiv(-seconds, MINUTE);
        long hours = minutes / MINUTE;
        return hours == 0 ? Words.say("day.minutes", minutes) : Words.say("day.hours-minutes", hours, minutes % MINUTE);
    }
}
