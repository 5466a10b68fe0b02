package washbook.log;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;
import washbook.log.sheet.CellAddress;

/** What was understood of a sheet, in words: the same wherever it is told. */
public final class UnderstandingText {
  /** Characters of row numbers after which the rest is only counted. */
  private static final int MOST_ROW_TEXT = 40;

  private static final List<Column> COLUMNS =
      List.of(
          new Column("", "", 4),
          new Column("Header", "", 22),
          new Column("Taken for", "", 20),
          new Column("Why", "", 32));

  private static final List<Column> BATCHES =
      List.of(
          new Column("Batch", "", 22),
          new Column("Rows", "rows ", 14),
          new Column("Original", "original gravity ", 10),
          new Column("Where from", "", 32));

  private UnderstandingText() {}

  /** One part of what is told: a heading with rows and sentences below. */
  public record Section(String heading, List<Rows> rows, List<String> sentences) {}

  /** Rows of cells, to be set in columns or told one after the other. */
  public record Rows(List<Column> columns, List<List<String>> cells) {}

  /**
   * @param title above the column
   * @param label before a cell that is told without columns, "" for none
   * @param width characters that are enough for most cells
   */
  public record Column(String title, String label, int width) {}

  /** Everything about a sheet: a section for each table, then the open questions. */
  public static List<Section> of(Understanding sheet) {
    String name = "Sheet " + sheet.sheet();
    List<String> leftAlone =
        sheet.leftAlone().stream().map(a -> a.cell() + ": " + a.why()).toList();
    if (sheet.isEmpty() && sheet.doubts().isEmpty()) {
      return List.of(new Section(name + ": no log found.", List.of(), leftAlone));
    }
    List<Section> sections = new ArrayList<>();
    for (LogTable table : sheet.tables()) {
      sections.add(
          new Section(
              name + ", table " + table.range(),
              List.of(columns(table), batches(table)),
              sentences(table)));
    }
    for (StillRun run : sheet.runs()) {
      sections.add(
          new Section(
              name + ", still run " + run.table().range(),
              List.of(columns(run.table())),
              sentences(run.table())));
    }
    if (!sheet.doubts().isEmpty()) {
      sections.add(
          new Section(
              "Open questions on sheet " + sheet.sheet(),
              List.of(),
              sheet.doubts().stream().map(d -> d.cell() + ": " + d.question()).toList()));
    }
    if (!leftAlone.isEmpty()) {
      sections.add(new Section("Left alone on sheet " + sheet.sheet(), List.of(), leftAlone));
    }
    return sections;
  }

  /** The same as lines, for places without columns. */
  public static String lines(Understanding sheet) {
    StringBuilder text = new StringBuilder();
    for (Section section : of(sheet)) {
      text.append(section.heading()).append('\n');
      for (Rows rows : section.rows()) {
        rows.cells().forEach(cells -> text.append("  ").append(line(rows, cells)).append('\n'));
      }
      section.sentences().forEach(sentence -> text.append("  ").append(sentence).append('\n'));
    }
    return text.toString();
  }

  private static String line(Rows rows, List<String> cells) {
    StringJoiner line = new StringJoiner(", ", cells.get(0) + ": ", "");
    for (int i = 1; i < cells.size(); i++) {
      if (!cells.get(i).isEmpty()) {
        line.add(rows.columns().get(i).label() + cells.get(i));
      }
    }
    return line.toString();
  }

  private static Rows columns(LogTable table) {
    List<List<String>> cells = new ArrayList<>();
    for (LogColumn column : table.columns()) {
      String unit = column.unit().isEmpty() ? "" : " in " + column.unit();
      cells.add(
          List.of(
              CellAddress.letters(column.column()),
              oneLine(column.header()),
              words(column.role()) + unit,
              column.role() == Role.OTHER ? "" : column.why()));
    }
    return new Rows(COLUMNS, cells);
  }

  private static Rows batches(LogTable table) {
    List<List<String>> cells = new ArrayList<>();
    for (Batch batch : table.batches()) {
      boolean known = batch.originalGravity().isPresent();
      cells.add(
          List.of(
              oneLine(batch.name()),
              rows(batch.rows()),
              known
                  ? String.format(Locale.ROOT, "%.4f", batch.originalGravity().getAsDouble())
                  : "unknown",
              batch.originalGravityWhy()));
    }
    return new Rows(BATCHES, cells);
  }

  private static List<String> sentences(LogTable table) {
    List<String> sentences = new ArrayList<>(table.remarks());
    if (!table.settled()) {
      sentences.add("Nothing is filled in here before the questions below are answered.");
    }
    return sentences;
  }

  /** Rows as a person counts them: 4-20, or the first few of scattered ones. */
  private static String rows(int[] rows) {
    if (rows.length == 0) {
      return "none";
    }
    StringJoiner parts = new StringJoiner(", ");
    int[] sorted = rows.clone();
    Arrays.sort(sorted);
    int start = 0;
    for (int i = 1; i <= sorted.length; i++) {
      if (i == sorted.length || sorted[i] != sorted[i - 1] + 1) {
        int first = sorted[start] + 1;
        int last = sorted[i - 1] + 1;
        parts.add(first == last ? "" + first : first + "-" + last);
        start = i;
      }
      if (parts.length() > MOST_ROW_TEXT) {
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
}
