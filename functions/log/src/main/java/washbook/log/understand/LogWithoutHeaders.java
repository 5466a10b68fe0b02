package washbook.log.understand;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import washbook.log.Doubts;
import washbook.log.MapAnswer;
import washbook.log.Role;
import washbook.log.language.Message;
import washbook.log.layout.HeaderRoles;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;
import washbook.log.words.Concept;
import washbook.log.words.DateText;
import washbook.log.words.Ditto;
import washbook.log.words.ReadingScale;
import washbook.log.words.Statement;
import washbook.log.words.TradeWords;
import washbook.log.words.Vocabulary;

/**
 * A sheet that speaks of a ferment and holds figures that fall as its readings do, but no header
 * that is known: it is asked about, not passed over in silence.
 */
final class LogWithoutHeaders {
  private static final int MOST_ROWS = 400;
  private static final int MOST_COLUMNS = 64;

  /** More are a sentence, and no reading. */
  private static final int MOST_WORDS = 4;

  /** Fewer figures show no course. */
  private static final int FEWEST = 5;

  /** The part of the highest figure that must be gone, counted from 1 for gravities. */
  private static final double FALL = 0.4;

  /** Of so many figures one alone may stand above the one before. */
  private static final int MANY = 7;

  /** So many of the figures may. */
  private static final double RISES = 0.1;

  /** No sugar scale reaches beyond, and hardly a wash begins below. */
  private static final double HIGHEST = 200;

  private static final double LOWEST_START = 5;

  private static final Pattern FIRST_NUMBER = Pattern.compile("(?<![\\d.,])-?\\d+(?:[.,]\\d+)?");

  /** A number that may be a temperature, as {@code 19}, {@code 20,5 °C} or {@code 21 Grad}. */
  private static final Pattern DEGREES =
      Pattern.compile(
          "(\\d{1,2}(?:[.,]\\d)?)\\s*(?:[\u00b0\u00ba]\\s*C?|C|(?i:grad|grade|grados|gradi|graus|graden|degr\u00e9s?|degrees|deg))?");

  private static final Pattern FAHRENHEIT =
      Pattern.compile("^[\u00b0\u00ba]?\\s?F(?!\\p{L})|[\u00b0\u00ba]\\s?F(?!\\p{L})");

  private static final double COLDEST = 3;
  private static final double WARMEST = 45;

  /** The part of the rows with a reading that shows what a column holds. */
  private static final double MOST = 0.7;

  private final Grid grid;

  LogWithoutHeaders(Grid grid) {
    this.grid = grid;
  }

  /** Asks which column holds the readings, or to turn a log that runs across. */
  void askAbout(Doubts doubts) {
    if (!speaksOfFerment()) {
      return;
    }
    for (int column = 0; column < Math.min(grid.columnCount(), MOST_COLUMNS); column++) {
      int first = fallsDown(column);
      if (first >= 0 && !isOverRows(first, column, column, this::isDay)) {
        askColumn(column, first, doubts);
        return;
      }
    }
    for (int row = 0; row < Math.min(grid.rowCount(), MOST_ROWS); row++) {
      int first = namesReading(row) ? fallsAcross(row) : -1;
      if (first >= 0) {
        doubts.ask(grid.address(row, first), Message.of("ask.acrossRow", row + 1));
        return;
      }
    }
  }

  private void askColumn(int column, int firstRow, Doubts doubts) {
    String letters = CellAddress.letters(column);
    Message question = Message.of("ask.figures", letters, firstRow + 1);
    if (firstRow == 0) {
      doubts.ask(grid.address(firstRow, column), question);
      return;
    }
    String scale = scale(figure(firstRow, column), firstRow);
    List<String> lines = new ArrayList<>();
    lines.add("header row = " + firstRow);
    boolean refracted = scale.equals("BRIX") && saysRefractometerAbove(firstRow);
    String reading = refracted ? " = REFRACTOMETER in " : " = GRAVITY in ";
    lines.add(MapPrinter.column(column) + reading + scale);
    boolean warmth = refracted;
    Set<Integer> days = new HashSet<>();
    for (int at = 0; at < column; at++) {
      if (isOverRows(firstRow, column, at, this::isDay)) {
        lines.add(MapPrinter.column(at) + " = DATE");
        days.add(at);
      }
    }
    for (int at = 0; at < Math.min(grid.columnCount(), MOST_COLUMNS); at++) {
      if (at == column || days.contains(at)) {
        continue;
      }
      if (inFahrenheit(at, firstRow)) {
        lines.add(MapPrinter.column(at) + " = TEMPERATURE in F");
        warmth = true;
      } else if (at > column && fallsDown(at) == firstRow && areAlike(column, at, firstRow)) {
        lines.add(MapPrinter.column(at) + reading + scale);
      } else if (isTemperature(at, firstRow)) {
        lines.add(MapPrinter.column(at) + " = TEMPERATURE");
        warmth = true;
      } else if (at > column && !warmth && isOverRows(firstRow, column, at, this::isWarmth)) {
        lines.add(MapPrinter.column(at) + " = TEMPERATURE in C");
        warmth = true;
      }
    }
    boolean known = warmth || saysCorrectedAbove(firstRow);
    doubts.ask(
        grid.address(firstRow, column),
        question,
        new MapAnswer(
            lines,
            known ? Message.NONE : Message.of("ask.withTemperature", "column X = TEMPERATURE in C"),
            !known));
  }

  private interface CellTest {
    boolean holds(int row, int column);
  }

  /** Whether a test holds for a column in most rows with a reading. */
  private boolean isOverRows(int firstRow, int reading, int column, CellTest test) {
    int read = 0;
    int held = 0;
    for (int row = firstRow; row < Math.min(grid.rowCount(), MOST_ROWS); row++) {
      if (!Double.isNaN(figure(row, reading))) {
        read++;
        held += test.holds(row, column) ? 1 : 0;
      }
    }
    return held >= MOST * read;
  }

  private boolean isDay(int row, int column) {
    return DateText.isDate(grid, row, column);
  }

  /** A temperature by its size, with a degree behind it or not; a ditto mark repeats one. */
  private boolean isWarmth(int row, int column) {
    if (grid.kind(row, column) == Kind.TEXT && Ditto.isMark(grid.text(row, column))) {
      return true;
    }
    double value =
        grid.kind(row, column) == Kind.NUMBER
            ? grid.number(row, column)
            : grid.kind(row, column) == Kind.TEXT
                ? degrees(grid.text(row, column).strip())
                : Double.NaN;
    return value >= COLDEST && value <= WARMEST;
  }

  private static double degrees(String text) {
    Matcher shown = DEGREES.matcher(text);
    return shown.matches() ? Double.parseDouble(shown.group(1).replace(',', '.')) : Double.NaN;
  }

  private boolean saysCorrectedAbove(int firstRow) {
    return isSaidAbove(firstRow, Statement::saysCorrected);
  }

  /** Whether a refractometer alone is named above: what it shows is no hydrometer's reading. */
  private boolean saysRefractometerAbove(int firstRow) {
    return isSaidAbove(firstRow, text -> Vocabulary.meanings(text).contains(Concept.REFRACTOMETER))
        && !isSaidAbove(firstRow, text -> Vocabulary.meanings(text).contains(Concept.HYDROMETER));
  }

  private boolean isSaidAbove(int firstRow, Predicate<String> said) {
    for (int row = 0; row < firstRow; row++) {
      for (int column = 0; column < Math.min(grid.columnsUsed(row), MOST_COLUMNS); column++) {
        if (grid.kind(row, column) == Kind.TEXT && said.test(grid.text(row, column))) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether two columns begin near one another: those of vessels beside one another. */
  private boolean areAlike(int one, int other, int row) {
    double first = figure(row, one);
    double second = figure(row, other);
    boolean gravities = ReadingScale.looksLikeGravity(first);
    return gravities == ReadingScale.looksLikeGravity(second)
        && (gravities || Math.abs(first - second) <= FALL * first);
  }

  /** Whether an F stands over a column of what can be degrees Fahrenheit. */
  private boolean inFahrenheit(int column, int firstRow) {
    double first = figure(firstRow, column);
    return firstRow > 0
        && grid.kind(firstRow - 1, column) == Kind.TEXT
        && FAHRENHEIT.matcher(grid.text(firstRow - 1, column)).find()
        && first >= 40
        && first <= 113;
  }

  /** Whether a word for temperature stands over a column, or T, and figures below it. */
  private boolean isTemperature(int column, int firstRow) {
    if (firstRow == 0
        || grid.kind(firstRow - 1, column) != Kind.TEXT
        || Double.isNaN(figure(firstRow, column))) {
      return false;
    }
    String text = grid.text(firstRow - 1, column).strip();
    return text.equals("T") || HeaderRoles.role(Vocabulary.meanings(text)) == Role.TEMPERATURE;
  }

  /** The scale that a line above names, else one that the value can stand on. */
  private String scale(double value, int firstRow) {
    Optional<ReadingScale> named = ScaleAbove.inTexts(grid, firstRow);
    if (named.isPresent() && !ReadingScale.looksLikeGravity(value)) {
      return named.get().name();
    }
    return ReadingScale.looksLikeGravity(value) ? "SG" : value > 45 ? "OECHSLE" : "BRIX";
  }

  private boolean speaksOfFerment() {
    int ferment = 0;
    int other = 0;
    for (int row = 0; row < Math.min(grid.rowCount(), MOST_ROWS); row++) {
      for (int column = 0; column < Math.min(grid.columnsUsed(row), MOST_COLUMNS); column++) {
        if (grid.kind(row, column) == Kind.TEXT) {
          String text = grid.text(row, column);
          Set<TradeWords.Side> sides = TradeWords.in(text);
          Set<Concept> meanings = Vocabulary.meanings(text);
          if (sides.contains(TradeWords.Side.OTHER) || meanings.contains(Concept.FOREIGN)) {
            other++;
          }
          boolean ours =
              sides.contains(TradeWords.Side.FERMENT)
                  || meanings.contains(Concept.HYDROMETER)
                  || meanings.contains(Concept.REFRACTOMETER)
                  || meanings.contains(Concept.POTENTIAL);
          ferment += ours ? 1 : 0;
        }
      }
    }
    String name = grid.name().toLowerCase(Locale.ROOT);
    Set<TradeWords.Side> ofName = TradeWords.in(name);
    ferment += ofName.contains(TradeWords.Side.FERMENT) ? 1 : 0;
    other += ofName.contains(TradeWords.Side.OTHER) ? 1 : 0;
    return ferment > other;
  }

  /** The first row of figures in a column that fall as a ferment's do, -1 where none do. */
  private int fallsDown(int column) {
    Run run = new Run();
    for (int row = 0; row < Math.min(grid.rowCount(), MOST_ROWS); row++) {
      run.add(row, figure(row, column));
    }
    return run.first();
  }

  /** Whether a row begins with a word for a reading, as {@code Grad Oechsle}, or a name and one. */
  private boolean namesReading(int row) {
    int seen = 0;
    for (int column = 0; column < Math.min(grid.columnsUsed(row), MOST_COLUMNS); column++) {
      if (grid.kind(row, column) != Kind.BLANK) {
        boolean named =
            grid.kind(row, column) == Kind.TEXT
                && HeaderRoles.role(Vocabulary.meanings(grid.text(row, column))) == Role.GRAVITY;
        if (named || ++seen == 2) {
          return named;
        }
      }
    }
    return false;
  }

  private int fallsAcross(int row) {
    Run run = new Run();
    for (int column = 0; column < Math.min(grid.columnsUsed(row), MOST_COLUMNS); column++) {
      run.add(column, figure(row, column));
    }
    return run.first();
  }

  /** The number of a cell, in a text the first gravity or else the first number. */
  private double figure(int row, int column) {
    if (grid.kind(row, column) == Kind.NUMBER) {
      return grid.number(row, column);
    }
    if (grid.kind(row, column) != Kind.TEXT) {
      return Double.NaN;
    }
    Matcher numbers = FIRST_NUMBER.matcher(grid.text(row, column));
    double first = Double.NaN;
    while (numbers.find()) {
      double value = Double.parseDouble(numbers.group().replace(',', '.'));
      if (ReadingScale.looksLikeGravity(value)) {
        return value;
      }
      first = Double.isNaN(first) ? value : first;
    }
    String text = grid.text(row, column).strip();
    boolean sentence =
        !FIRST_NUMBER.matcher(text).lookingAt() && text.split("\\s+").length > MOST_WORDS;
    return sentence ? Double.NaN : first;
  }

  /**
   * Figures one after the other: all of them, else those from the highest on. Where most are
   * gravities the others are slips or amounts, and do not count.
   */
  private static final class Run {
    private final List<Integer> places = new ArrayList<>();
    private final List<Double> figures = new ArrayList<>();

    void add(int at, double shown) {
      if (!Double.isNaN(shown)) {
        places.add(at);
        figures.add(shown);
      }
    }

    int first() {
      long gravities = figures.stream().filter(Run::isGravity).count();
      boolean mostly = gravities > MOST * figures.size();
      List<Integer> at = new ArrayList<>();
      List<Double> sugar = new ArrayList<>();
      for (int i = 0; i < figures.size(); i++) {
        double shown = figures.get(i);
        if (!mostly || isGravity(shown) || shown == 1) {
          at.add(places.get(i));
          boolean gravity = isGravity(shown) || mostly;
          sugar.add(gravity ? 1000 * (ReadingScale.withoutThousandths(shown) - 1) : shown);
        }
      }
      int highest = 0;
      for (int i = 1; i < sugar.size(); i++) {
        boolean possible = sugar.get(i) <= HIGHEST;
        highest = possible && sugar.get(i) > sugar.get(highest) ? i : highest;
      }
      if (falls(sugar, 0)) {
        return at.get(0);
      }
      List<Double> newestFirst = new ArrayList<>(sugar);
      Collections.reverse(newestFirst);
      return mostly && falls(newestFirst, 0)
          ? at.get(0)
          : falls(sugar, highest) ? at.get(highest) : -1;
    }

    private static boolean isGravity(double shown) {
      return ReadingScale.looksLikeGravity(shown) && shown != 1;
    }

    private static boolean falls(List<Double> sugar, int from) {
      int rises = 0;
      for (int i = from + 1; i < sugar.size(); i++) {
        rises += sugar.get(i) > sugar.get(i - 1) ? 1 : 0;
      }
      int count = sugar.size() - from;
      return count >= FEWEST
          && sugar.get(from) >= LOWEST_START
          && sugar.get(from) <= HIGHEST
          && sugar.get(count + from - 1) <= (1 - FALL) * sugar.get(from)
          && rises <= (count < MANY ? RISES * count : Math.max(1, RISES * count));
    }
  }
}
