package washbook.log.fill;

import java.util.EnumSet;
import java.util.List;
import java.util.function.Function;
import washbook.log.LogColumn;
import washbook.log.LogTable;
import washbook.log.Role;
import washbook.log.language.Language;
import washbook.log.run.RunWords;
import washbook.log.sheet.Grid;
import washbook.log.words.Vocabulary;

/** The language that a log is kept in, told by its words. */
final class LogLanguage {
  /** Rows and columns in which words are looked for when the headers do not settle it. */
  private static final int MOST_ROWS = 60;

  private static final int MOST_COLUMNS = 40;

  private final int[] words = new int[Language.values().length];

  private final Function<String, List<Language>> languages;

  private LogLanguage(Function<String, List<Language>> languages) {
    this.languages = languages;
  }

  /**
   * The language of most words of the headers; of several alike the one of most words around them.
   * Still alike, the user's language if it is one of them, else English.
   */
  static Language of(Grid grid, LogTable table, Language user) {
    return of(grid, table, user, Vocabulary::languages);
  }

  /** The same for a table of jars, whose words are others. */
  static Language ofRun(Grid grid, LogTable table, Language user) {
    return of(grid, table, user, RunWords::languages);
  }

  private static Language of(
      Grid grid, LogTable table, Language user, Function<String, List<Language>> languages) {
    LogLanguage count = new LogLanguage(languages);
    for (LogColumn column : table.columns()) {
      if (column.role() != Role.COMPUTED) {
        count.add(column.header());
      }
    }
    EnumSet<Language> most = count.most();
    if (most.size() > 1) {
      count.addAround(grid, table);
      EnumSet<Language> around = count.most();
      around.retainAll(most);
      most = around.isEmpty() ? most : around;
    }
    return most.size() == 1 ? most.iterator().next() : most.contains(user) ? user : Language.EN;
  }

  private void addAround(Grid grid, LogTable table) {
    int columns = Math.min(grid.columnCount(), MOST_COLUMNS);
    int last = Math.min(table.lastRow(), table.headerRow() + MOST_ROWS);
    for (int row = Math.max(0, table.headerRow() - MOST_ROWS); row <= last; row++) {
      for (int column = 0; column < columns; column++) {
        if (row != table.headerRow()
            && !isOurs(table, column)
            && grid.kind(row, column) == Grid.Kind.TEXT) {
          add(grid.text(row, column));
        }
      }
    }
  }

  private static boolean isOurs(LogTable table, int column) {
    return table.columns().stream()
        .anyMatch(c -> c.column() == column && c.role() == Role.COMPUTED);
  }

  private void add(String text) {
    languages.apply(text).forEach(language -> words[language.ordinal()]++);
  }

  private EnumSet<Language> most() {
    int most = 0;
    for (int count : words) {
      most = Math.max(most, count);
    }
    EnumSet<Language> languages = EnumSet.noneOf(Language.class);
    for (Language language : Language.values()) {
      if (words[language.ordinal()] == most) {
        languages.add(language);
      }
    }
    return languages;
  }
}
