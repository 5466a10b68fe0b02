package washbook.runner.cli;

import java.io.PrintStream;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Help;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Help.Column;
import picocli.CommandLine.Help.Column.Overflow;
import picocli.CommandLine.Help.TextTable;
import washbook.log.LogTable;
import washbook.log.RowAccount;
import washbook.log.Understanding;
import washbook.log.UnderstandingText;
import washbook.log.language.Language;

/** Prints what was understood of a sheet, set in columns. */
final class Explanation {
  private static final int LINE = 80;

  private final PrintStream out;
  private final Language language;

  Explanation(PrintStream out, Language language) {
    this.out = out;
    this.language = language;
  }

  /**
   * @param accounts what became of the rows of its tables
   */
  void print(Understanding sheet, Map<LogTable, RowAccount> accounts) {
    for (UnderstandingText.Section section : UnderstandingText.of(sheet, accounts, language)) {
      out.println(section.heading());
      section.rows().forEach(this::print);
      for (String sentence : section.sentences()) {
        TextTable text = table(LINE);
        text.addRowValues(sentence);
        out.print(text);
      }
      out.println();
    }
  }

  private void print(UnderstandingText.Rows rows) {
    TextTable text =
        table(rows.columns().stream().mapToInt(UnderstandingText.Column::width).toArray());
    text.addRowValues(
        rows.columns().stream().map(column -> column.title(language)).toArray(String[]::new));
    for (List<String> cells : rows.cells()) {
      text.addRowValues(cells.toArray(new String[0]));
    }
    out.print(text);
  }

  private static TextTable table(int... widths) {
    Column[] columns = new Column[widths.length];
    for (int i = 0; i < widths.length; i++) {
      columns[i] = new Column(widths[i] + 2, 2, Overflow.WRAP);
    }
    return TextTable.forColumns(Help.defaultColorScheme(Ansi.OFF), columns);
  }
}
