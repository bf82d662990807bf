package bandwright.pipeline.write;

import bandwright.pipeline.tile.Sheet;

/**
 * Where a sheet is found in the run's folder: page 3 of sheets/letter-01.pdf.
 *
 * @param page counted from 1 within its file
 */
public record SheetFile(String file, int page, Sheet sheet) {}
