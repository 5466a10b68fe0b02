package washbook.log.sheet;

import java.util.List;

/** All columns to be put into one sheet of a workbook. */
public record SheetPatch(String sheet, List<ColumnPatch> columns) {}
