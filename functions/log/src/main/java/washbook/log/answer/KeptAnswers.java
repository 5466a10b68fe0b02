package washbook.log.answer;

import java.util.stream.Collectors;
import washbook.log.language.ToldException;
import washbook.log.understand.LogMap;

/**
 * Answers that a document keeps about its own log: a custom property whose text is a map. The menu
 * in the office writes it, and everything that reads the document uses it.
 */
public final class KeptAnswers {
  /** The name of the custom property, in every language. */
  public static final String PROPERTY = "Washbook answers";

  private KeptAnswers() {}

  /** The text of the property: the map's statements without remarks. */
  public static String text(LogMap map) {
    return map.print()
        .lines()
        .filter(line -> !line.isBlank() && !line.startsWith("#"))
        .collect(Collectors.joining("\n"));
  }

  /**
   * The map that a property's text holds.
   *
   * @throws ToldException with the number of the line and what is wrong there
   */
  public static LogMap read(String text) {
    return LogMap.parse(text);
  }
}
