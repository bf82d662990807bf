package bandwright.pipeline.write.list;

import bandwright.pipeline.write.pdf.Canvas;

/** What a block draws with: the page's canvas, the file's faces and its small pictures. */
public record Pen(Canvas canvas, Faces faces, PictureStore pictures) {}
