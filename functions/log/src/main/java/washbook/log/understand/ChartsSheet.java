package washbook.log.understand;

import java.util.Arrays;
import java.util.Locale;
import java.util.function.Predicate;
import washbook.log.language.Language;
import washbook.log.language.Message;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;

/** The sheet with charts that the runner adds to a workbook on request. It is no log. */
public final class ChartsSheet {
  /** Begins the title in all languages, so that other sheets are told from ours at once. */
  private static final String BEGIN = "Washbook";

  private ChartsSheet() {}

  /** What a new one is called; in English as every one was in earlier versions. */
  public static String name(Language language) {
    return Message.of("charts.name").in(language);
  }

  /** Stands in its first cell and tells it from a sheet of that name that someone else made. */
  public static String title(Language language) {
    return Message.of("charts.title").in(language);
  }

  /** Whether this is one of ours, in whatever language it was made. */
  public static boolean isOne(Grid grid) {
    return grid.kind(0, 0) == Kind.TEXT
        && grid.text(0, 0).startsWith(BEGIN)
        && any(language -> grid.text(0, 0).equals(title(language)))
        && any(language -> isNamed(grid, name(language)));
  }

  /** A further one has a number behind the name. */
  private static boolean isNamed(Grid grid, String name) {
    return grid.name().toLowerCase(Locale.ROOT).startsWith(name.toLowerCase(Locale.ROOT));
  }

  private static boolean any(Predicate<Language> test) {
    return Arrays.stream(Language.values()).anyMatch(test);
  }
}
