package washbook.log;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import washbook.functions.Numbers;
import washbook.log.language.Figure;
import washbook.log.language.Language;
import washbook.log.language.Message;
import washbook.log.sheet.AcrossGrid;
import washbook.log.sheet.CellAddress;

/** What was understood of a sheet, in words: the same wherever it is told in one language. */
public final class UnderstandingText {
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
  private final Map<LogTable, RowAccount> accounts;

  private UnderstandingText(Language language, Map<LogTable, RowAccount> accounts) {
    this.language = language;
    this.accounts = accounts;
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

  /**
   * Everything about a sheet: a section for each table, then the open questions.
   *
   * @param accounts of the rows of its tables, as far as they are known
   */
  public static List<Section> of(
      Understanding sheet, Map<LogTable, RowAccount> accounts, Language language) {
    return new UnderstandingText(language, accounts).sections(sheet);
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
              say("told.table", name, sheet.range(table)),
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

  /** The same in English as lines, without accounts. */
  public static String lines(Understanding sheet) {
    return lines(sheet, Map.of(), Language.EN);
  }

  /** The same as lines, for places without columns. */
  public static String lines(
      Understanding sheet, Map<LogTable, RowAccount> accounts, Language language) {
    UnderstandingText text = new UnderstandingText(language, accounts);
    return text.lines(text.sections(sheet));
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
              sheet.across().map(grid -> letters(grid, batch.rows())).orElse(rows(batch.rows())),
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
    if (accounts.containsKey(table)) {
      sentences.add(accounts.get(table).told().in(language));
    }
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

  private String rows(int[] rows) {
    BitSet set = new BitSet();
    for (int row : rows) {
      set.set(row);
    }
    return rows.length == 0 ? say("told.none") : RowAccount.shown(set);
  }

  private static String oneLine(String text) {
    return text.strip().replaceAll("\\s+", " ");
  }
}
