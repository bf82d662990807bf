package bandwright.pipeline.write;

import bandwright.pipeline.tile.Sheet;

/** Where a sheet is found in the run's folder: its file, with slashes, and its page, counted from 1. */
public record SheetPage(String file, int page, Sheet sheet) {}
