package washbook.log.understand;

import java.util.Arrays;
import java.util.Locale;
import washbook.log.language.Language;
import washbook.log.language.Message;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;

/** The sheet with charts that the runner adds to a workbook on request. It is no log. */
public final class ChartsSheet {
  public static final String NAME = "Washbook charts";

  private ChartsSheet() {}

  /** Stands in its first cell and tells it from a sheet of that name that someone else made. */
  public static String title(Language language) {
    return Message.of("charts.title").in(language);
  }

  public static boolean isOne(Grid grid) {
    return grid.name().toLowerCase(Locale.ROOT).startsWith(NAME.toLowerCase(Locale.ROOT))
        && grid.kind(0, 0) == Kind.TEXT
        && Arrays.stream(Language.values())
            .map(ChartsSheet::title)
            .anyMatch(grid.text(0, 0)::equals);
  }
}
