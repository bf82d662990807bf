package bandwright.pipeline.write.sheets;

/** Where a sheet stands: its file, with slashes, and its page, counted from 1. */
public record SheetPage(String file, int page) {}
