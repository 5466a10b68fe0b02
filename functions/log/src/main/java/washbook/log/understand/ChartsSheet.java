package washbook.log.understand;

import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;

/** The sheet with charts that the runner adds to a workbook on request. It is no log. */
public final class ChartsSheet {
  public static final String NAME = "Washbook charts";

  /** Stands in its first cell and tells it from a sheet of that name that someone else made. */
  public static final String TITLE = "Washbook charts, drawn from the filled logs of this workbook";

  private ChartsSheet() {}

  public static boolean isOne(Grid grid) {
    return grid.name().equalsIgnoreCase(NAME)
        && grid.kind(0, 0) == Kind.TEXT
        && grid.text(0, 0).equals(TITLE);
  }
}
