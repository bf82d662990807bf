package bandwright.pipeline.write.index;

/** A part of the page under a heading of its own; one without anything in it is left out, and so is its link. */
interface Section {
    /** Its anchor; its heading is {@code index.} and this. */
    String name();

    boolean isEmpty();

    /** What stands under the heading. */
    void writeTo(Html html);
}
