package washbook.runner.report;

import java.util.ArrayList;
import java.util.List;
import washbook.log.language.Language;
import washbook.runner.language.Wording;

/**
 * Words in files of comma-separated values. In English the heads are the names that programs know
 * from the JSON report; in another language they are for people. Kinds, codes and numbers are the
 * same in all languages.
 */
public final class CsvHeads {
  /** The kind of the last line. */
  public static final String SAFETY = "safety";

  private CsvHeads() {}

  static List<String> of(List<String> columns, Wording words) {
    List<String> heads = new ArrayList<>(columns);
    if (words.language() != Language.EN) {
      heads.replaceAll(column -> words.say("csv." + column));
    }
    return heads;
  }

  public static String of(OverviewColumn column, Wording words) {
    return words.language() == Language.EN ? column.word() : column.head(words);
  }

  /** What stands in a cell. */
  public static String value(OverviewColumn column, OverviewLine line, Wording words) {
    return column.isNumber() || column.isDate() ? column.text(line) : column.shown(line, words);
  }

  /** Whether a file that begins like this has these columns, in any language. */
  static boolean begin(String file, List<String> columns) {
    for (Language language : Language.values()) {
      if (file.startsWith(String.join(",", of(columns, new Wording(language))))) {
        return true;
      }
    }
    return false;
  }
}
