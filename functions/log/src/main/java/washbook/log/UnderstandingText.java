package washbook.log;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.StringJoiner;
import washbook.functions.Numbers;
import washbook.log.language.Figure;
import washbook.log.language.Language;
import washbook.log.language.Message;
import washbook.log.sheet.AcrossGrid;
import washbook.log.sheet.CellAddress;

/** What was understood of a sheet, in words: the same wherever it is told in one language. */
public final class UnderstandingText {
  /** Characters of row numbers after which the rest is only counted. */
  private static final int MOST_ROW_TEXT = 40;

  private static final List<Column> COLUMNS =
      List.of(
          new Column("blank", "plain", 4),
          new Column("told.head.header", "plain", 22),
          new Column("told.head.taken", "plain", 20),
          new Column("told.head.why", "plain", 32));

  private static final List<Column> BATCHES =
      List.of(
          new Column("told.head.batch", "plain", 22),
          new Column("told.head.rows", "told.rows", 14),
          new Column("told.head.original", "told.original", 10),
          new Column("told.head.from", "plain", 32));

  /** The same of a log that runs across. */
  private static final List<Column> BATCHES_ACROSS =
      List.of(
          BATCHES.get(0),
          new Column("told.head.columns", "told.columns", 14),
          BATCHES.get(2),
          BATCHES.get(3));

  private final Language language;

  private UnderstandingText(Language language) {
    this.language = language;
  }

  /** One part of what is told: a heading with rows and sentences below. */
  public record Section(String heading, List<Rows> rows, List<String> sentences) {}

  /** Rows of cells, to be set in columns or told one after the other. */
  public record Rows(List<Column> columns, List<List<String>> cells) {}

  /**
   * @param title key of what stands above the column
   * @param alone key of how a cell is told without columns
   * @param width characters that are enough for most cells
   */
  public record Column(String title, String alone, int width) {
    /** What stands above the column. */
    public String title(Language language) {
      return Message.of(title).in(language);
    }
  }

  /** Everything about a sheet: a section for each table, then the open questions. */
  public static List<Section> of(Understanding sheet, Language language) {
    return new UnderstandingText(language).sections(sheet);
  }

  private String say(String key, Object... arguments) {
    return Message.of(key, arguments).in(language);
  }

  private List<Section> sections(Understanding sheet) {
    String name = sheet.sheet();
    List<String> leftAlone =
        sheet.leftAlone().stream().map(a -> say("told.of", a.cell(), a.why())).toList();
    if (sheet.isEmpty() && sheet.doubts().isEmpty()) {
      return List.of(new Section(say("told.noLog", name), List.of(), leftAlone));
    }
    List<Section> sections = new ArrayList<>();
    for (LogTable table : sheet.tables()) {
      sections.add(
          new Section(
              say(
                  "told.table", name, sheet.across().map(AcrossGrid::range).orElse(table.range())),
              List.of(columns(sheet, table), batches(sheet, table)),
              sentences(sheet, table)));
    }
    for (StillRun run : sheet.runs()) {
      sections.add(
          new Section(
              say("told.run", name, run.table().range()),
              List.of(columns(sheet, run.table())),
              sentences(sheet, run.table())));
    }
    if (!sheet.doubts().isEmpty()) {
      sections.add(
          new Section(
              say("told.questions", name),
              List.of(),
              sheet.doubts().stream()
                  .map(d -> say("told.of", d.cell(), d.question(language)))
                  .toList()));
    }
    if (!leftAlone.isEmpty()) {
      sections.add(new Section(say("told.alone", name), List.of(), leftAlone));
    }
    return sections;
  }

  /** The same in English as lines. */
  public static String lines(Understanding sheet) {
    return lines(sheet, Language.EN);
  }

  /** The same as lines, for places without columns. */
  public static String lines(Understanding sheet, Language language) {
    return new UnderstandingText(language).lines(of(sheet, language));
  }

  private String lines(List<Section> sections) {
    StringBuilder text = new StringBuilder();
    for (Section section : sections) {
      text.append(section.heading()).append('\n');
      for (Rows rows : section.rows()) {
        rows.cells().forEach(cells -> text.append("  ").append(line(rows, cells)).append('\n'));
      }
      section.sentences().forEach(sentence -> text.append("  ").append(sentence).append('\n'));
    }
    return text.toString();
  }

  private String line(Rows rows, List<String> cells) {
    StringJoiner line = new StringJoiner(", ");
    for (int i = 1; i < cells.size(); i++) {
      if (!cells.get(i).isEmpty()) {
        line.add(say(rows.columns().get(i).alone(), cells.get(i)));
      }
    }
    return say("told.of", cells.get(0), line);
  }

  private Rows columns(Understanding sheet, LogTable table) {
    List<List<String>> cells = new ArrayList<>();
    for (LogColumn column : table.columns()) {
      String role = say("role." + column.role());
      cells.add(
          List.of(
              sheet
                  .across()
                  .map(grid -> String.valueOf(grid.sheetRow(column.column()) + 1))
                  .orElse(CellAddress.letters(column.column())),
              oneLine(column.header()),
              column.unit().isEmpty() ? role : say("told.unit", role, column.unit()),
              column.role() == Role.OTHER ? "" : column.why().in(language)));
    }
    return new Rows(COLUMNS, cells);
  }

  private Rows batches(Understanding sheet, LogTable table) {
    List<List<String>> cells = new ArrayList<>();
    for (Batch batch : table.batches()) {
      boolean known = batch.originalGravity().isPresent();
      cells.add(
          List.of(
              oneLine(batch.name()),
              sheet
                  .across()
                  .map(grid -> letters(grid, batch.rows()))
                  .orElse(rows(batch.rows())),
              known
                  ? new Figure(Numbers.fixed(batch.originalGravity().getAsDouble(), 4)).in(language)
                  : say("told.unknown"),
              batch.originalGravityWhy().in(language)));
    }
    return new Rows(sheet.across().isPresent() ? BATCHES_ACROSS : BATCHES, cells);
  }

  private List<String> sentences(Understanding sheet, LogTable table) {
    List<String> sentences = new ArrayList<>();
    if (sheet.across().isPresent()) {
      sentences.add(say("told.across"));
    }
    table.remarks().forEach(remark -> sentences.add(remark.in(language)));
    if (!table.settled()) {
      sentences.add(say("told.open"));
    }
    return sentences;
  }

  /** The columns of a log that runs across, as {@code B-K}. */
  private static String letters(AcrossGrid grid, int[] rows) {
    IntSummaryStatistics all = Arrays.stream(rows).map(grid::sheetColumn).summaryStatistics();
    return rows.length == 0
        ? ""
        : CellAddress.letters(all.getMin()) + "-" + CellAddress.letters(all.getMax());
  }

  /** Rows as a person counts them: 4-20, or the first few of scattered ones. */
  private String rows(int[] rows) {
    if (rows.length == 0) {
      return say("told.none");
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

  private static String oneLine(String text) {
    return text.strip().replaceAll("\\s+", " ");
  }
}
