package bandwright.rules.table;

/** A constant that people write in a cell by its word: "mug press", "colour-changing". */
public interface Word {
    String word();
}
