package bandwright.pipeline.size;

/** Something that a person should know about a unit that is made all the same: its code and one line. */
public record Note(String code, String message) {}
