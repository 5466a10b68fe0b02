package washbook.log.understand;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import washbook.log.Doubt;
import washbook.log.Role;
import washbook.log.Understanding;
import washbook.log.language.Language;
import washbook.log.language.ToldException;
import washbook.log.layout.Header;
import washbook.log.sheet.AcrossGrid;

/**
 * What a person says about logs where they do not say it themselves.
 *
 * <p>As text a map has one statement a line, {@code key = value}; {@code #} begins a comment and
 * {@code [table]} a new table. Keys:
 *
 * <ul>
 *   <li>{@code sheet} its name; left out, the statements hold for every sheet
 *   <li>{@code header row} counted as the sheet shows it; left out, they hold for every table
 *   <li>{@code last row} of the table; {@code ignore} yes leaves the table alone
 *   <li>{@code column C} a role, or role {@code in} unit: {@code GRAVITY in BRIX}, {@code
 *       VOLUME_SO_FAR in L} for running totals of jars
 *   <li>{@code row 5} likewise, in a log that runs across
 *   <li>{@code temperature} of all readings: {@code 68 F}; {@code corrected} yes or no; {@code
 *       calibration} of the instrument: {@code 60 F}; {@code offset} of it in SG
 *   <li>{@code original gravity} or {@code original gravity of Plum 3}: {@code 1.085 SG}
 *   <li>{@code volume} at the start: {@code 25 L}; {@code batch} its name; {@code refractometer
 *       factor}; {@code sugar readings} before or after, for rows with a reading and an addition
 *   <li>{@code sugar added at row 10}, as the sheet counts: {@code 1.2 KG}, or {@code 2 LB}; {@code
 *       by the rise} where the readings before and after it tell how much; {@code 0 KG} where none
 *       was added, whatever a note or a rise says. {@code batch from row 10}: the name of another
 *       batch that begins there
 *   <li>of a still run: {@code run} yes or no; {@code charge} what was put in: {@code 25 L}, its
 *       {@code charge strength}: {@code 10 ABV}; {@code volumes at 20} yes where jars are volumes
 *       at 20 °C already; {@code pressure} at the still in hPa
 *   <li>{@code limit} when a batch is worth a warning: {@code warmest=28}, as the option says them;
 *       {@code warnings} no where none are to stand in its notes
 *   <li>{@code wash} what ferments: a kind, as {@code SUGAR}, or a yield in % of theory
 * </ul>
 *
 * @param tables in the order of the text
 */
public record LogMap(List<TableMap> tables) {
  private static final LogMap NONE = new LogMap(List.of());

  public LogMap {
    tables = List.copyOf(tables);
  }

  /** A map that says nothing. */
  public static LogMap none() {
    return NONE;
  }

  /**
   * Reads a map from its text.
   *
   * @throws ToldException with the number of the line and what is wrong there
   */
  public static LogMap parse(String text) {
    return new LogMap(new MapParser().parse(text));
  }

  /** What was understood, as a map to edit, its comments in English. */
  public static String write(List<Understanding> sheets) {
    return write(sheets, Language.EN);
  }

  /**
   * What was understood, as a map to edit; questions stand in it as comments.
   *
   * @param language of the comments
   */
  public static String write(List<Understanding> sheets, Language language) {
    return new MapPrinter(language).print(sheets);
  }

  /**
   * This map with an answer to a question.
   *
   * @param sheet the sheet that is asked about
   * @param lines statements about the table, or about the whole sheet where the question is
   */
  public LogMap with(String sheet, Doubt doubt, List<String> lines) {
    return with(sheet, doubt.headerRow(), lines);
  }

  /**
   * This map with more statements.
   *
   * @param sheet the sheet that they are about
   * @param headerRow the row of the headers of their table from 0, -1 for the whole sheet
   */
  public LogMap with(String sheet, int headerRow, List<String> lines) {
    List<TableMap> others = new ArrayList<>(tables);
    TableMap said = null;
    for (TableMap table : tables) {
      boolean ofTable = table.headerRow() == headerRow && table.sheet().equals(sheet);
      if (ofTable) {
        said = table;
        others.remove(table);
      } else if (said == null && table.headerRow() < 0 && table.isFor(sheet)) {
        said = table;
      }
    }
    StringBuilder text = new StringBuilder(said == null ? "" : MapPrinter.print(said));
    text.append("sheet = ").append(sheet).append('\n');
    if (headerRow >= 0) {
      text.append("header row = ").append(headerRow + 1).append('\n');
    }
    lines.forEach(line -> text.append(line).append('\n'));
    others.addAll(new MapParser().parse(text.toString()));
    return new LogMap(others);
  }

  /** The text of this map, its comment in English. */
  public String print() {
    return print(Language.EN);
  }

  /**
   * The text of this map, which {@link #parse} reads back as an equal one.
   *
   * @param language of the comment at its head
   */
  public String print(Language language) {
    return new MapPrinter(language).print(this);
  }

  /** Whether it says nothing. */
  public boolean isSilent() {
    return tables.stream().allMatch(TableMap::saysNothing);
  }

  /** Whether it says nothing about a sheet. */
  boolean isSilentAbout(String sheet) {
    return tables.stream().noneMatch(table -> table.isFor(sheet) && !table.saysNothing());
  }

  /** Rows of which it speaks without naming a table of the sheet, from 0. */
  Set<Integer> rowsOfAnyTable(String sheet) {
    Set<Integer> rows = new TreeSet<>();
    for (TableMap table : tables) {
      if (table.isFor(sheet) && table.headerRow() < 0) {
        rows.addAll(table.feeds().sugar().keySet());
        rows.addAll(table.feeds().batches().keySet());
      }
    }
    return rows;
  }

  /**
   * The same about the turned sheet of a log that runs across; empty where it says what only a log
   * that runs down has.
   */
  Optional<LogMap> turned(AcrossGrid grid) {
    return tables.stream().allMatch(t -> !t.isFor(grid.name()) || t.mayTurn(grid))
        ? Optional.of(new LogMap(tables.stream().map(table -> table.turned(grid)).toList()))
        : Optional.empty();
  }

  /** Whether a log without headers of a sheet is to be left alone. */
  boolean ignores(String sheet) {
    return tables.stream().anyMatch(t -> t.isFor(sheet) && t.ignored());
  }

  /** Names of the sheets that something is said about, tables to be left alone apart. */
  public List<String> sheets() {
    return tables.stream()
        .filter(table -> !table.ignored() && !table.sheet().isEmpty())
        .map(TableMap::sheet)
        .distinct()
        .toList();
  }

  /** The tables of a sheet for which a header row is named. */
  List<TableMap> placed(String sheet) {
    return tables.stream().filter(t -> t.isFor(sheet) && t.headerRow() >= 0).toList();
  }

  /** The columns below a header of which it says that they are readings. */
  Map<Integer, Role> readings(String sheet, Header header) {
    return about(sheet, header).map(TableMap::readings).orElse(Map.of());
  }

  /** What is said about a table: of its own, else of its sheet, else of every sheet. */
  Optional<TableMap> about(String sheet, Header header) {
    List<TableMap> fitting = new ArrayList<>();
    for (TableMap table : tables) {
      if (table.isFor(sheet) && (table.headerRow() < 0 || isOf(table, header))) {
        fitting.add(table);
      }
    }
    return fitting.stream().max((a, b) -> Integer.compare(closeness(a), closeness(b)));
  }

  /** Whether a map names the header's row and, where it names columns, one of its own. */
  private static boolean isOf(TableMap table, Header header) {
    return table.headerRow() >= header.topRow()
        && table.headerRow() <= header.bottomRow()
        && (table.columns().isEmpty()
            || table.columns().keySet().stream()
                .anyMatch(c -> c >= header.firstColumn() && c <= header.lastColumn()));
  }

  private static int closeness(TableMap table) {
    return (table.headerRow() >= 0 ? 2 : 0) + (table.sheet().isEmpty() ? 0 : 1);
  }
}
