package washbook.log.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import washbook.log.Role;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;
import washbook.log.words.BatchNameText;
import washbook.log.words.CellText;
import washbook.log.words.Concept;
import washbook.log.words.ReadingScale;
import washbook.log.words.Statement;
import washbook.log.words.Vocabulary;

/** Reads the lines above a table. */
public final class KeyLines {
  /** Rows above a header in which key lines are looked for. */
  private static final int MOST_ROWS = 60;

  private static final int MOST_COLUMNS = 64;

  /** A reading at more degrees of which nobody says what they are may be one in °F. */
  private static final double WARMEST = 40;

  /** Cells between a label and its value. */
  private static final int FARTHEST = 3;

  private final Grid grid;

  public KeyLines(Grid grid) {
    this.grid = grid;
  }

  /** Key lines between two rows, ends included, in the columns from first to last. */
  public List<KeyLine> find(int firstRow, int lastRow, int firstColumn, int lastColumn) {
    List<KeyLine> lines = new ArrayList<>();
    int last = Math.min(lastColumn, firstColumn + MOST_COLUMNS);
    for (int row = Math.max(firstRow, lastRow - MOST_ROWS); row <= lastRow; row++) {
      for (int column = firstColumn; column <= last; column++) {
        if (grid.kind(row, column) == Kind.TEXT) {
          List<KeyLine> said = new ArrayList<>();
          read(row, column, said);
          if (isBehindGravity(row, column)) {
            said.removeIf(KeyLine::saysCorrected);
          }
          if (said.stream().noneMatch(KeyLine::isOriginalGravity)) {
            OriginalGravityInHeader.inTitle(grid, row, column).ifPresent(said::add);
          }
          lines.addAll(said);
        }
      }
    }
    return lines;
  }

  /** Whether one gravity stands left of a cell: what is said there is said of that one. */
  private boolean isBehindGravity(int row, int column) {
    for (int at = column - 1; at >= Math.max(0, column - FARTHEST); at--) {
      if (grid.kind(row, at) != Kind.BLANK) {
        double value = CellText.number(grid, row, at);
        return ReadingScale.looksLikeGravity(value) && value != 1;
      }
    }
    return false;
  }

  /**
   * Brackets and marks between the things that a cell says; the point of an abbreviation is none.
   */
  private static final Pattern PARTS =
      Pattern.compile(
          "[()\\[\\];]|,\\s"
              + "|(?<!\\b(?i:cal|temp|hyd|ref|corr|init|vol|alc|pot|prob|nr|no)|\\p{L}\\.\\p{L})\\.\\s");

  /** Two numbers near one another with a unit of temperature behind the second. */
  private static final Pattern AT_TEMPERATURE =
      Pattern.compile(
          "\\d[\\d.,]*[^\\d]{1,12}\\d{1,3}([.,]\\d)?\\s?[\u00b0\u00ba]?\\s?[CF](?!\\p{L})");

  /** As many words name a number that follows without a mark. */
  private static final int WORDS_BEFORE_NUMBER = 2;

  /** So many words are no title. */
  private static final int SHORT_LABEL = 3;

  /** A cell says one thing, or several separated by brackets, semicolons or commas. */
  private void read(int row, int column, List<KeyLine> lines) {
    String text = grid.text(row, column).strip();
    double inWater = Statement.readingInWater(text);
    if (!Double.isNaN(inWater)) {
      lines.add(figure(EnumSet.of(Concept.OFFSET), text, row, column, inWater));
      return;
    }
    double samples = Statement.samplesReadAt(text);
    if (!Double.isNaN(samples)) {
      lines.add(figure(EnumSet.of(Concept.TEMPERATURE, Concept.C), text, row, column, samples));
      return;
    }
    String[] parts = PARTS.split(text, -1);
    if (parts.length == 1) {
      KeyLine line = read(text, row, column, true);
      add(lines, line == null ? wordsOnly(text, row, column) : line);
      return;
    }
    boolean label = text.endsWith(":") || firstDigit(text) < 0;
    if (label) {
      add(lines, read(text, row, column, true));
      return;
    }
    KeyLine remarked = labelWithRemark(parts[0], text, row, column);
    if (remarked != null) {
      lines.add(remarked);
      return;
    }
    Set<Concept> all = Vocabulary.meanings(text);
    KeyLine own = beside(Vocabulary.meanings(parts[0]), parts[0], row, column);
    boolean ofOne =
        all.contains(Concept.ORIGINAL)
            || all.contains(Concept.ORIGINALGRAVITY)
            || own != null && ReadingScale.looksLikeGravity(own.value());
    boolean instrument = false;
    for (String part : parts) {
      boolean degrees = CellText.read(part).form == CellText.Form.TEMPERATURE;
      if (Statement.isReference(part) || instrument && degrees) {
        lines.add(
            words(
                EnumSet.of(Concept.CALIBRATION), part, row, column, Statement.temperatureIn(part)));
        continue;
      }
      instrument = Vocabulary.meanings(part).equals(EnumSet.of(Concept.HYDROMETER));
      KeyLine line = part.isBlank() ? null : read(part.strip(), row, column, false);
      // What is said to be corrected beside one gravity is that one, not the readings.
      if (line != null && !(ofOne && line.saysCorrected())) {
        lines.add(line);
      }
    }
  }

  /** A label such as {@code OG (at 28 C)} with its figure in the next cell; null for others. */
  private KeyLine labelWithRemark(String label, String text, int row, int column) {
    Set<Concept> meanings = Vocabulary.meanings(label);
    if (firstDigit(label) >= 0 || HeaderRoles.role(meanings) != Role.ORIGINAL_GRAVITY) {
      return null;
    }
    KeyLine line = beside(meanings, label, row, column);
    if (line == null || Double.isNaN(line.value())) {
      return null;
    }
    Set<Concept> all = Vocabulary.meanings(text);
    boolean ofInstrument =
        all.contains(Concept.HYDROMETER)
            || all.contains(Concept.CALIBRATION)
            || Statement.saysCorrected(all);
    return ofInstrument ? line : line.at(Statement.temperatureIn(text));
  }

  private KeyLine words(
      Set<Concept> meanings, String text, int row, int column, double temperatureC) {
    String cell = grid.address(row, column);
    return new KeyLine(
        meanings, text, row, column, cell, "", Double.NaN, Set.of(), temperatureC, false);
  }

  private KeyLine figure(Set<Concept> meanings, String text, int row, int column, double value) {
    String cell = grid.address(row, column);
    return new KeyLine(meanings, text, row, column, cell, text, value, Set.of(), Double.NaN, false);
  }

  /** A line of which only the words count. */
  private KeyLine wordsOnly(String text, int row, int column) {
    Set<Concept> meanings = Vocabulary.meanings(text);
    return meanings.isEmpty() ? null : words(meanings, text, row, column, Double.NaN);
  }

  private static void add(List<KeyLine> lines, KeyLine line) {
    if (line != null) {
      lines.add(line);
    }
  }

  private KeyLine read(String text, int row, int column, boolean whole) {
    Set<Concept> all = Vocabulary.meanings(text);
    if (all.isEmpty() && text.indexOf(':') < 0) {
      return null;
    }
    int mark = separator(text);
    if (mark >= 0 && mark + 1 < text.length()) {
      return inOneCell(text.substring(0, mark), text.substring(mark + 1).strip(), row, column);
    }
    int digit = firstDigit(text);
    if (mark < 0 && digit > 0) {
      if (all.contains(Concept.CORRECTED)) {
        return words(all, text, row, column, Statement.temperatureIn(text));
      }
      Set<Concept> meanings = Vocabulary.meanings(text.substring(0, digit));
      if (meanings.equals(EnumSet.of(Concept.BATCH))) {
        return named(text, row, column);
      }
      if (HeaderRoles.role(meanings) == Role.ORIGINAL_GRAVITY
          && HeaderRoles.role(Vocabulary.meanings(lastWords(text.substring(0, digit))))
              != Role.ORIGINAL_GRAVITY) {
        return null;
      }
      return inOneCell(text.substring(0, digit), text.substring(digit), row, column);
    }
    String label = mark >= 0 ? text.substring(0, mark) : text;
    Set<Concept> meanings = Vocabulary.meanings(label);
    if (meanings.isEmpty()) {
      return null;
    }
    boolean amount = digit == 0 && unitsOnly(label).equals(meanings);
    KeyLine beside = whole && !amount ? beside(meanings, label, row, column) : null;
    if (beside != null) {
      return beside;
    }
    return meanings.equals(EnumSet.of(Concept.BATCH))
        ? named(text, row, column)
        : words(meanings, text, row, column, Double.NaN);
  }

  /** What stands right before a number: a title's other words do not name it. */
  private static String lastWords(String label) {
    String[] words = label.strip().split("\\s+");
    int from = words.length <= SHORT_LABEL ? 0 : words.length - WORDS_BEFORE_NUMBER;
    return String.join(" ", Arrays.asList(words).subList(from, words.length));
  }

  private static int separator(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == ':' || c == '=') {
        return i;
      }
    }
    return -1;
  }

  /** First digit that begins a number, not one inside a unit or a pair of brackets. */
  private static int firstDigit(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (Character.isDigit(text.charAt(i))
          && (i == 0 || !Character.isLetterOrDigit(text.charAt(i - 1)))) {
        return i;
      }
    }
    return -1;
  }

  /** A batch's name after the word for batch. */
  private KeyLine named(String text, int row, int column) {
    int space = text.indexOf(' ');
    if (space < 0
        || !Vocabulary.meanings(text.substring(0, space)).contains(Concept.BATCH)
        || !BatchNameText.mayFollow(text.substring(space + 1).strip())) {
      return null;
    }
    return new KeyLine(
        EnumSet.of(Concept.BATCH),
        text.substring(0, space),
        row,
        column,
        grid.address(row, column),
        text.substring(space + 1).strip(),
        Double.NaN,
        Set.of(),
        Double.NaN,
        false);
  }

  private KeyLine inOneCell(String label, String value, int row, int column) {
    Set<Concept> meanings = Vocabulary.meanings(label);
    if (meanings.isEmpty()) {
      return null;
    }
    return withText(meanings, label, value, row, column);
  }

  private KeyLine withText(Set<Concept> meanings, String label, String value, int row, int column) {
    CellText cell = CellText.read(upToTemperature(value));
    boolean pair = cell.form == CellText.Form.PAIR && cell.marked && cell.temperature <= WARMEST;
    boolean number = pair || cell.form == CellText.Form.VALUE || isTemperature(cell);
    if (!number
        && (meanings.contains(Concept.HYDROMETER)
            || meanings.contains(Concept.CALIBRATION)
            || Statement.saysCorrected(value))) {
      return new KeyLine(
          meanings,
          label,
          row,
          column,
          grid.address(row, column),
          value,
          Double.NaN,
          Set.of(),
          Statement.temperatureIn(value),
          false);
    }
    double temperatureC = cell.celsius();
    Set<Concept> units = EnumSet.noneOf(Concept.class);
    if (isTemperature(cell)) {
      return new KeyLine(
          meanings,
          label,
          row,
          column,
          grid.address(row, column),
          value,
          cell.value,
          Set.of(),
          temperatureC,
          false);
    }
    if (!cell.unit.isEmpty()) {
      units.addAll(Vocabulary.meanings(cell.unit));
      if (units.isEmpty()) {
        units.addAll(Vocabulary.meanings("\u00b0" + cell.unit));
      }
    }
    return new KeyLine(
        meanings,
        label,
        row,
        column,
        grid.address(row, column),
        value,
        number ? cell.value : Double.NaN,
        units,
        temperatureC,
        false);
  }

  /** A reading and its temperature, without the sentence behind them. */
  static String upToTemperature(String value) {
    Matcher reading = AT_TEMPERATURE.matcher(value);
    return reading.lookingAt() && !Double.isNaN(CellText.read(reading.group()).temperature)
        ? reading.group()
        : value;
  }

  private static boolean isTemperature(CellText cell) {
    return cell.form == CellText.Form.TEMPERATURE;
  }

  private KeyLine beside(Set<Concept> meanings, String label, int row, int column) {
    for (int at = column + 1; at <= column + FARTHEST && at < grid.columnCount(); at++) {
      Kind kind = grid.kind(row, at);
      if (kind == Kind.BLANK) {
        continue;
      }
      if (kind == Kind.NUMBER) {
        Set<Concept> units = EnumSet.noneOf(Concept.class);
        if (at + 1 < grid.columnCount() && grid.kind(row, at + 1) == Kind.TEXT) {
          units.addAll(unitsOnly(grid.text(row, at + 1)));
        }
        return new KeyLine(
            meanings,
            label,
            row,
            at,
            grid.address(row, at),
            "",
            grid.number(row, at),
            units,
            TemperatureBehind.gravity(grid, row, at, meanings),
            true);
      }
      if (kind == Kind.TEXT) {
        String text = grid.text(row, at).strip();
        return withText(meanings, label, text, row, at)
            .at(TemperatureBehind.gravity(grid, row, at, meanings));
      }
      return null;
    }
    return null;
  }

  private static Set<Concept> unitsOnly(String text) {
    Set<Concept> meanings = Vocabulary.meanings(text.strip());
    return meanings.stream().allMatch(m -> m.compareTo(Concept.SG) >= 0) ? meanings : Set.of();
  }
}
