package bandwright.pipeline.write.list;

import bandwright.pipeline.write.pdf.Canvas;

/** What a block draws with: the page's canvas and the file's faces. */
public record Pen(Canvas canvas, Faces faces) {}
