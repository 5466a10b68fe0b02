package washbook.office.dialog;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import washbook.functions.Numbers;
import washbook.log.LogTable;
import washbook.log.fill.FilledColumn;
import washbook.log.language.Figure;
import washbook.log.language.Language;
import washbook.log.sheet.CellAddress;
import washbook.office.language.OfficeText;

/** The first and the last row of each table that would be filled, with their figures. */
final class FillPreview {
  private final FillTrial trial;
  private final Language language;

  private FillPreview(FillTrial trial, Language language) {
    this.trial = trial;
    this.language = language;
  }

  /** Lines of text. */
  static String of(FillTrial trial, Language language) {
    return new FillPreview(trial, language).text();
  }

  private String text() {
    Map<LogTable, List<FilledColumn>> tables = new LinkedHashMap<>();
    for (FilledColumn column : trial.filling().columns()) {
      tables.computeIfAbsent(column.table(), t -> new ArrayList<>()).add(column);
    }
    StringBuilder text = new StringBuilder();
    tables.forEach(
        (table, columns) -> {
          int first = filledRow(columns, table.firstRow(), table.lastRow(), 1);
          int last = filledRow(columns, table.lastRow(), table.firstRow(), -1);
          if (first >= 0) {
            line(columns, first, text);
            if (last != first) {
              line(columns, last, text);
            }
          }
        });
    return text.isEmpty() ? say("dialog.preview.none") + "\n" : text.toString();
  }

  /** The first row from one to another in which anything is computed, -1 for none. */
  private static int filledRow(List<FilledColumn> columns, int from, int to, int step) {
    for (int row = from; row != to + step; row += step) {
      for (FilledColumn column : columns) {
        if (!Double.isNaN(column.patch().cells().number(row))) {
          return row;
        }
      }
    }
    return -1;
  }

  private void line(List<FilledColumn> columns, int row, StringBuilder text) {
    StringJoiner figures = new StringJoiner("; ");
    for (FilledColumn column : columns) {
      double figure = column.patch().cells().number(row);
      if (!Double.isNaN(figure) && column.patch().decimals() >= 0) {
        figures.add(column.patch().header() + " " + shown(figure, column.patch().decimals()));
      }
    }
    boolean across = trial.understanding().across().isPresent();
    String where =
        trial
            .understanding()
            .across()
            .map(grid -> CellAddress.letters(grid.sheetColumn(row)))
            .orElse(String.valueOf(row + 1));
    text.append(say(across ? "dialog.preview.column" : "dialog.preview.row", where, figures))
        .append('\n');
  }

  private String shown(double figure, int decimals) {
    return new Figure(Numbers.fixed(figure, decimals)).in(language);
  }

  private String say(String key, Object... arguments) {
    return OfficeText.of(key, arguments).in(language);
  }
}
