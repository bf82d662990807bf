package bandwright.pipeline.load;

import bandwright.pipeline.load.Timetable.Slot;
import java.util.Arrays;
import java.util.List;

/**
 * How good a day is, the most important figure first: how much longer it is than plain list scheduling makes it, what
 * misses the collection, how long it is, when the pieces of each ship-by date are out, how late its first load may be.
 * Less is better.
 */
record Merit(long longer, long late, long end, List<Long> dates, long idle) implements Comparable<Merit> {
    Merit {
        dates = List.copyOf(dates);
    }

    /** @param most the end of the day that must not be exceeded */
    static Merit of(Work work, List<Slot> slots, long most) {
        long end = 0;
        long begin = Long.MAX_VALUE;
        long late = 0;
        Long[] dates = new Long[work.dates()];
        Arrays.fill(dates, 0L);
        for (Slot slot : slots) {
            Work.Link link = work.chains().get(slot.chain()).links().get(slot.link());
            end = Math.max(end, slot.end());
            begin = Math.min(begin, slot.start());
            late += slot.end() > work.collection() - link.rest() ? link.due() : 0;
            for (int date = 0; date < dates.length; date++) {
                if ((link.dates() >> date & 1) == 1) {
                    dates[date] = Math.max(dates[date], slot.end());
                }
            }
        }
        return new Merit(Math.max(0, end - most), late, end, List.of(dates), -begin);
    }

    @Override
    public int compareTo(Merit other) {
        int order = Long.compare(longer, other.longer);
        order = order != 0 ? order : Long.compare(late, other.late);
        order = order != 0 ? order : Long.compare(end, other.end);
        for (int i = 0; order == 0 && i < dates.size(); i++) {
            order = Long.compare(dates.get(i), other.dates.get(i));
        }
        return order != 0 ? order : Long.compare(idle, other.idle);
    }
}
