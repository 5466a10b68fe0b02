package washbook.log.understand;

import java.util.Arrays;
import java.util.function.Predicate;
import washbook.log.language.Language;
import washbook.log.language.Message;
import washbook.log.sheet.Grid;

/** A sheet of the season's file, which lists the batches of many logs. It is no log. */
public final class SeasonSheet {
  /** Begins the title in all languages, so that other sheets are told from ours at once. */
  private static final String BEGIN = "Washbook";

  private SeasonSheet() {}

  /** Stands in the first cell of the table; the other sheets go on after a colon. */
  public static String title(Language language) {
    return Message.of("season.title").in(language);
  }

  public static boolean isOne(Grid grid) {
    String first = grid.text(0, 0);
    return isTitle(first) || isFurther(first);
  }

  /** Whether a sheet that begins with this text is the season's table. */
  public static boolean isTitle(String first) {
    return first.startsWith(BEGIN) && any(first::equals);
  }

  /** Whether a sheet that begins with this text is one of the other sheets of ours. */
  public static boolean isFurther(String first) {
    return first.startsWith(BEGIN) && any(title -> first.startsWith(title + ": "));
  }

  private static boolean any(Predicate<String> test) {
    return Arrays.stream(Language.values()).map(SeasonSheet::title).anyMatch(test);
  }
}
