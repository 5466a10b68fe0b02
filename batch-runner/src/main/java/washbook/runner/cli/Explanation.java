package washbook.runner.cli;

import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;
import picocli.CommandLine.Help;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Help.Column;
import picocli.CommandLine.Help.Column.Overflow;
import picocli.CommandLine.Help.TextTable;
import washbook.log.Batch;
import washbook.log.Doubt;
import washbook.log.LogColumn;
import washbook.log.LogTable;
import washbook.log.Role;
import washbook.log.Understanding;
import washbook.log.sheet.CellAddress;

/** Prints what was understood of a sheet. */
final class Explanation {
  private final PrintStream out;

  Explanation(PrintStream out) {
    this.out = out;
  }

  void print(Understanding sheet) {
    if (sheet.tables().isEmpty() && sheet.doubts().isEmpty()) {
      out.println("Sheet " + sheet.sheet() + ": no log found.");
      out.println();
      return;
    }
    for (LogTable table : sheet.tables()) {
      out.println("Sheet " + sheet.sheet() + ", table " + table.range());
      columns(table);
      batches(table.batches());
      remarks(table);
      out.println();
    }
    if (!sheet.doubts().isEmpty()) {
      out.println("Open questions on sheet " + sheet.sheet());
      for (Doubt doubt : sheet.doubts()) {
        out.print(indented(doubt.cell() + ": " + doubt.question()));
      }
      out.println();
    }
  }

  private void columns(LogTable table) {
    TextTable text = table(4, 22, 20, 32);
    text.addRowValues("", "Header", "Taken for", "Why");
    for (LogColumn use : table.columns()) {
      String unit = use.unit().isEmpty() ? "" : " in " + use.unit();
      text.addRowValues(
          CellAddress.letters(use.column()),
          oneLine(use.header()),
          words(use.role()) + unit,
          use.role() == Role.OTHER ? "" : use.why());
    }
    out.print(text);
  }

  private void batches(List<Batch> batches) {
    TextTable text = table(22, 14, 10, 32);
    text.addRowValues("Batch", "Rows", "Original", "Where from");
    for (Batch batch : batches) {
      boolean known = !Double.isNaN(batch.originalGravity());
      text.addRowValues(
          oneLine(batch.name()),
          rows(batch.rows()),
          known ? String.format(Locale.ROOT, "%.4f", batch.originalGravity()) : "unknown",
          batch.originalGravityWhy());
    }
    out.print(text);
  }

  private void remarks(LogTable table) {
    for (String remark : table.remarks()) {
      out.print(indented(remark));
    }
    if (!table.settled()) {
      out.print(indented("Nothing is filled in here before the questions below are answered."));
    }
  }

  /** Rows as a person counts them: 4-20, or the first few of scattered ones. */
  private static String rows(int[] rows) {
    if (rows.length == 0) {
      return "none";
    }
    StringJoiner parts = new StringJoiner(", ");
    int[] sorted = rows.clone();
    java.util.Arrays.sort(sorted);
    int start = 0;
    for (int i = 1; i <= sorted.length; i++) {
      if (i == sorted.length || sorted[i] != sorted[i - 1] + 1) {
        int first = sorted[start] + 1;
        int last = sorted[i - 1] + 1;
        parts.add(first == last ? "" + first : first + "-" + last);
        start = i;
      }
      if (parts.length() > 40) {
        return parts + " ... (" + rows.length + ")";
      }
    }
    return parts.toString();
  }

  private static String words(Role role) {
    return role.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static String oneLine(String text) {
    return text.strip().replaceAll("\\s+", " ");
  }

  private static String indented(String text) {
    TextTable table = table(80);
    table.addRowValues(text);
    return table.toString();
  }

  private static TextTable table(int... widths) {
    Column[] columns = new Column[widths.length];
    for (int i = 0; i < widths.length; i++) {
      columns[i] = new Column(widths[i] + 2, 2, Overflow.WRAP);
    }
    return TextTable.forColumns(Help.defaultColorScheme(Ansi.OFF), columns);
  }
}
