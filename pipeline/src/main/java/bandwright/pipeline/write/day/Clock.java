package bandwright.pipeline.write.day;

import bandwright.rules.Shop;
import bandwright.rules.words.Words;
import java.time.LocalTime;

/** Times of a day's plan as a clock on the wall shows them. */
public final class Clock {
    private static final int MINUTE = 60;
    private static final long DAY = 86_400;

    private Clock() {}

    /** To the minute that has begun: a load that starts at 09:10:50 starts at 09:10. Says which day if it isn't this one. */
    public static String at(Shop shop, long seconds) {
        long days = Math.floorDiv(shop.dayStarts().toSecondOfDay() + seconds, DAY);
        String time = hand(shop, seconds);
        if (days == 0) {
            return time;
        }
        return days == 1 ? Words.say("day.next-day", time) : Words.say("day.days-later", time, days);
    }

    /** What the clock's hands show, whatever day it is. */
    public static String hand(Shop shop, long seconds) {
        long sinceMidnight = Math.floorMod(shop.dayStarts().toSecondOfDay() + seconds, DAY);
        return LocalTime.ofSecondOfDay(sinceMidnight / MINUTE * MINUTE).toString();
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
