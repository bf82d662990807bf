package bandwright.pipeline.load;

import bandwright.pipeline.size.Unit;
import bandwright.rules.heat.HeatSource;
import bandwright.rules.heat.PressSetting;
import java.util.List;

/**
 * What goes into one heat source in one cycle.
 *
 * @param number counted run-wide in starting order, from 1
 * @param machine which of the source's machines, from 1
 * @param startSeconds from the start of the day's work
 * @param endSeconds when the last piece is out
 * @param isFirst whether it is the first piece of its blank, to be looked at before the others are pressed
 */
public record Load(
        int number,
        HeatSource source,
        int machine,
        PressSetting setting,
        int startSeconds,
        int endSeconds,
        List<Unit> units,
        boolean isFirst) {
    public Load {
        units = List.copyOf(units);
    }
}
