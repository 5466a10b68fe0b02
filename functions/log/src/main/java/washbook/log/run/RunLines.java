package washbook.log.run;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.StringJoiner;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.DoubleStream;
import washbook.functions.Numbers;
import washbook.log.StillRun.Charge;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.Grid;

/** What the lines above a table of jars say: the charge, and how jars were read. */
final class RunLines {
  private static final String NUMBER = "(?<![\\p{L}\\d.,])(\\d{1,5}(?:[.,]\\d+)?)";

  /** A number, a unit of volume or a unit of strength. */
  private static final Pattern TOKEN =
      Pattern.compile(
          NUMBER
              + "|(?<![\\p{L}])(l|lt|ltr|liters?|litres?|litros?|litri|lit)(?![\\p{L}\\d])"
              + "|(%|(?<![\\p{L}])(?:vol|abv|abv20|alc|alk|prozent|procent)(?![\\p{L}\\d]))",
          Pattern.CASE_INSENSITIVE);

  private static final Pattern STRENGTH_IN_DEGREES =
      Pattern.compile(NUMBER + "\\s*\u00b0(?!\\s*[cCfF\\d])");
  private static final Pattern PRESSURE =
      Pattern.compile(NUMBER + "\\s*(?:hpa|mbar|mb)\\b", Pattern.CASE_INSENSITIVE);

  private static final int LONGEST_LINE = 300;

  /** A short mark and what it stands for, up to the next one. */
  private static final Pattern MARK =
      Pattern.compile(
          "(?<![\\p{L}\\d])(\\p{L}{1,3})\\s*[=:]\\s*([^;,.=]+?)(?=\\s+\\p{L}{1,3}\\s*=|[;,.]|$)");

  private static final Set<RunWord> PROOFS = EnumSet.of(RunWord.US_PROOF, RunWord.UK_PROOF);
  private static final Set<RunWord> VOLUMES =
      EnumSet.of(RunWord.VOLUME, RunWord.ML, RunWord.CL, RunWord.DL, RunWord.L, RunWord.GALLON);

  /** Where proof is defined, \u00b0C. */
  private static final double SIXTY_F = 140.0 / 9;

  private static final Pattern PURE_LITRES =
      Pattern.compile("(?iu)(?=.*(?:[a\u00e1]l[ck]o|laa|lpa|lap))\\D*\\d+(?:[.,]\\d+)?\\D*");

  /** Above that nothing is charged, % vol. */
  private static final double MOST_CHARGED = 96;

  private final Grid grid;
  private final int firstColumn;
  private final int lastColumn;

  /** Whether the lines below are read: they tell of the whole as well as of the jars. */
  private boolean isBelow;

  private double pureLitres = Double.NaN;

  /** Whether lines over several tables are read: a charge in them is of one nobody knows. */
  private boolean isOfAll;

  double litres = Double.NaN;
  double percentVolume = Double.NaN;
  private String litresCell = "";
  private String strengthCell = "";
  private String cell = "";
  private int chargeRow = -2;

  final RunTemperatures temperatures = new RunTemperatures();
  double calibrationC = Double.NaN;
  double pressureHPa = Double.NaN;
  boolean corrected;
  boolean volumesAt20;

  /** Whether a line says that volumes are running totals. */
  boolean volumesSoFar;

  /** Which gallons the lines speak of. */
  final Set<RunWord> gallons = EnumSet.noneOf(RunWord.class);

  /** Which proof they speak of. */
  final Set<RunWord> proofs = EnumSet.noneOf(RunWord.class);

  /** Short marks in lower case that stand for strengths as read or corrected ones. */
  final Map<String, RunWord> marks = new HashMap<>();

  /** All that the lines mean. */
  final Set<RunWord> words = EnumSet.noneOf(RunWord.class);

  /** The first text of the lines, "" for none. */
  String title = "";

  RunLines(Grid grid, int firstRow, int lastRow, int firstColumn, int lastColumn) {
    this.grid = grid;
    this.firstColumn = firstColumn;
    this.lastColumn = lastColumn;
    for (int row = Math.max(0, firstRow); row <= lastRow; row++) {
      read(row);
    }
  }

  /** The lines over tables side by side, down to the first that has a cell over this one. */
  void readOfAll(int firstRow, int lastRow) {
    isOfAll = true;
    for (int row = firstRow; row <= lastRow; row++) {
      for (int column = firstColumn; column <= lastColumn; column++) {
        if (grid.kind(row, column) != Grid.Kind.BLANK) {
          return;
        }
      }
      read(row);
    }
  }

  /**
   * Lines between a header and the first jar that tell of the instrument; others may head the first
   * jars alone.
   */
  void readUnder(int firstRow, int end) {
    for (int row = firstRow; row < end; row++) {
      int filled = 0;
      int texts = 0;
      for (int column = firstColumn; column <= lastColumn; column++) {
        filled += grid.kind(row, column) == Grid.Kind.BLANK ? 0 : 1;
        texts += grid.kind(row, column) == Grid.Kind.TEXT ? 1 : 0;
      }
      if (filled > 1 || filled != texts) {
        return;
      }
      if (!Double.isNaN(RunTemperatures.statedCalibration(grid.text(row, firstColumn)))) {
        read(row);
      }
    }
  }

  /** Lines below a table; sums that stand there and rows with figures say nothing of all jars. */
  void readBelow(int firstRow, int lastRow) {
    isBelow = true;
    for (int row = firstRow; row <= lastRow; row++) {
      boolean plain = true;
      for (int column = firstColumn; column <= lastColumn; column++) {
        Set<RunWord> words = RunWords.in(grid.text(row, column));
        boolean sum = words.contains(RunWord.TOTAL) || words.contains(RunWord.AVERAGE);
        plain &= grid.kind(row, column) != Grid.Kind.NUMBER && !sum;
      }
      if (plain) {
        read(row);
      }
    }
  }

  Charge charge() {
    double strength = Double.isNaN(percentVolume) ? 100 * pureLitres / litres : percentVolume;
    return new Charge(litres, strength, litresCell, strengthCell, cell);
  }

  private void read(int row) {
    StringJoiner joined = new StringJoiner(" ");
    StringBuilder spoken = new StringBuilder();
    int first = -1;
    int columns = Math.min(Math.min(lastColumn + 1, grid.columnsUsed(row)), 60);
    for (int column = isOfAll ? 0 : firstColumn; column < columns; column++) {
      Grid.Kind kind = grid.kind(row, column);
      if (kind == Grid.Kind.TEXT) {
        joined.add(grid.text(row, column).strip());
        spoken.append(RunTemperatures.setApart(grid.text(row, column).strip()));
      } else if (kind == Grid.Kind.NUMBER) {
        joined.add(Numbers.show(grid.number(row, column)));
        spoken.append(' ').append(Numbers.show(grid.number(row, column)));
      } else {
        continue;
      }
      if (first < 0) {
        first = column;
        String text = grid.text(row, column).strip();
        title =
            title.isEmpty() && !isBelow && !isOfAll && !RunWords.in(text).contains(RunWord.TOTAL)
                ? text
                : title;
      }
    }
    String line = joined.toString();
    if (line.isEmpty() || line.length() > LONGEST_LINE) {
      return;
    }
    readMarks(line);
    Set<RunWord> meanings = EnumSet.noneOf(RunWord.class);
    for (String clause : spoken.toString().split("[.;()](?!\\d)|,(?!\\d)|\\s[-\u2013]\\s")) {
      // °GL is a scale of strength, and Gl. a glass.
      Set<RunWord> here = RunWords.in(clause.replaceAll("\u00b0 ?GL\\b", "% vol"));
      meanings.addAll(here);
      state(line, clause.toLowerCase(Locale.ROOT).replaceAll("(?<=\\d ?)\u00ba", "\u00b0"), here);
    }
    units(line, meanings);
    words.addAll(meanings);
    if (!isOfAll) {
      charge(row, first, line, meanings);
    }
  }

  private void units(String line, Set<RunWord> meanings) {
    gallons.addAll(RunLineUnits.gallons(line));
    PROOFS.stream().filter(RunWords.in(line)::contains).forEach(proofs::add);
    if (meanings.contains(RunWord.PROOF) && RunLineUnits.namesProofSpirit(line)) {
      proofs.add(RunWord.UK_PROOF);
    }
    boolean volume = VOLUMES.stream().anyMatch(meanings::contains);
    volumesSoFar |= volume && meanings.contains(RunWord.CUMULATIVE);
  }

  private void readMarks(String line) {
    Matcher mark = MARK.matcher(line);
    while (mark.find()) {
      Set<RunWord> meaning = RunWords.in(mark.group(2));
      boolean corrected = meaning.contains(RunWord.CORRECTED) || meaning.contains(RunWord.AT20);
      boolean not = meaning.contains(RunWord.NOT);
      if (RunWords.in(lastWord(line, mark.start())).contains(RunWord.NOT)) {
        marks.put("", corrected && !not ? RunWord.CORRECTED : RunWord.READ);
      } else if (corrected && !not) {
        marks.put(mark.group(1).toLowerCase(Locale.ROOT), RunWord.CORRECTED);
      } else if (corrected || meaning.contains(RunWord.READ)) {
        marks.put(mark.group(1).toLowerCase(Locale.ROOT), RunWord.READ);
      }
    }
  }

  /** The word before a place in a line. */
  private static String lastWord(String line, int end) {
    String before = line.substring(0, end).strip();
    return before.substring(before.lastIndexOf(' ') + 1);
  }

  private void state(String line, String clause, Set<RunWord> words) {
    Matcher pressure = PRESSURE.matcher(clause);
    if (pressure.find()) {
      pressureHPa = number(pressure.group(1));
    }
    boolean no = words.contains(RunWord.NOT);
    boolean twenty = clause.matches(".*\\b20 ?(\u00b0|c\\b|grad|deg).*");
    boolean volume = words.contains(RunWord.VOLUME) && !clause.contains("%");
    boolean correct = words.contains(RunWord.CORRECTED) || words.contains(RunWord.AT20);
    boolean strength = words.contains(RunWord.STRENGTH) || words.contains(RunWord.PROOF);
    if (no || MARK.matcher(clause).lookingAt()) {
      calibration(clause, words);
      return;
    }
    if (volume && (twenty || words.contains(RunWord.ALSO) && corrected)) {
      volumesAt20 = true;
    }
    boolean ofOne = isBelow && clause.replaceAll("\\b20\\b", "").matches(".*\\d.*");
    if (correct && !ofOne && (strength || twenty && !volume)) {
      corrected = true;
    }
    if (!correct && !calibration(clause, words)) {
      temperatures.read(line, clause, words, volume, isBelow);
    }
  }

  /** Whether a clause has a temperature that the instrument is made for. */
  private boolean calibration(String clause, Set<RunWord> words) {
    double celsius = RunTemperatures.calibrationC(clause);
    boolean own = RunTemperatures.isOfInstrument(clause);
    boolean instrument =
        words.contains(RunWord.INSTRUMENT) && (own || !words.contains(RunWord.READ));
    boolean jar = words.contains(RunWord.SPIRIT) || words.contains(RunWord.JAR);
    boolean sixty = Math.abs(celsius - SIXTY_F) < 0.01;
    boolean proof = words.contains(RunWord.PROOF) && (words.contains(RunWord.READ) || sixty);
    boolean charge = words.contains(RunWord.CHARGE);
    boolean named = words.contains(RunWord.CALIBRATED);
    boolean made = (instrument || proof) && (own || !jar) && !charge && isReference(celsius);
    boolean elsewhere = words.contains(RunWord.HEAD) || words.contains(RunWord.ELSEWHERE);
    if (!(celsius < RunTemperatures.WARMEST_CALIBRATION) || !(named && !elsewhere) && !made) {
      return false;
    }
    calibrationC = celsius;
    return true;
  }

  /** Alcoholometers are made for 15 °C, 60 °F or 20 °C (OIML R 44 names 20); others say so. */
  private static boolean isReference(double celsius) {
    return DoubleStream.of(15, SIXTY_F, 20).anyMatch(of -> Math.abs(celsius - of) < 0.01);
  }

  private void charge(int row, int column, String line, Set<RunWord> words) {
    boolean goesOn =
        chargeRow == row - 1
            && Double.isNaN(percentVolume)
            && RunWords.in(grid.text(row, column)).contains(RunWord.STRENGTH);
    boolean rest = isBelow && words.contains(RunWord.OTHER);
    boolean named = words.contains(RunWord.CHARGE) && !rest || goesOn;
    double[] found = amounts(named && !goesOn ? fromCharge(row, line) : line);
    if (named && Double.isNaN(found[1])) {
      found[1] = strengthWithoutPercent(row, line);
    }
    double volume = found[0];
    double strength = found[1];
    boolean both = !isBelow && !Double.isNaN(volume) && !Double.isNaN(strength);
    if (!named && !(both && words.contains(RunWord.RUN))) {
      return;
    }
    if (words.contains(RunWord.PURE) && PURE_LITRES.matcher(line).matches()) {
      pureLitres = volume <= litres ? volume : pureLitres;
    } else if (!Double.isNaN(volume) && Double.isNaN(litres)) {
      litres = volume;
      litresCell = plainCell(row, volume);
    }
    if (!Double.isNaN(strength) && Double.isNaN(percentVolume) && strength <= MOST_CHARGED) {
      percentVolume = strength;
      strengthCell = plainCell(row, strength);
    }
    if (!Double.isNaN(volume) || !Double.isNaN(strength)) {
      chargeRow = row;
      cell = cell.isEmpty() ? CellAddress.of(row, column) : cell;
    }
  }

  /** A strength as 23° or in the cell right of a word for it; NaN where there is none. */
  private double strengthWithoutPercent(int row, String line) {
    Matcher degrees = STRENGTH_IN_DEGREES.matcher(line);
    if (degrees.find()) {
      return number(degrees.group(1));
    }
    for (int column = firstColumn; column < lastColumn; column++) {
      Set<RunWord> words = RunWords.in(grid.text(row, column));
      double right = RunCells.number(grid, row, column + 1);
      if (words.contains(RunWord.STRENGTH) && right > 1 && right <= MOST_CHARGED) {
        return right;
      }
    }
    return Double.NaN;
  }

  /** The line from the first cell on that speaks of the charge. */
  private String fromCharge(int row, String line) {
    for (int column = firstColumn; column <= lastColumn; column++) {
      if (grid.kind(row, column) == Grid.Kind.TEXT
          && RunWords.in(grid.text(row, column)).contains(RunWord.CHARGE)) {
        int at = line.indexOf(grid.text(row, column).strip());
        return at < 0 ? line : line.substring(at);
      }
    }
    return line;
  }

  /**
   * Litres and % vol of a line, NaN where there are none. Units stand after their numbers, or,
   * where a unit comes first, before them.
   */
  private static double[] amounts(String line) {
    double[] found = {Double.NaN, Double.NaN};
    Matcher token = TOKEN.matcher(line);
    boolean unitFirst = false;
    boolean any = false;
    int unit = -1;
    double number = Double.NaN;
    while (token.find()) {
      int kind = token.group(1) != null ? -1 : token.group(2) != null ? 0 : 1;
      unitFirst |= !any && kind >= 0;
      any = true;
      if (kind < 0) {
        number = number(token.group(1));
      } else {
        unit = kind;
      }
      boolean complete = unit >= 0 && !Double.isNaN(number) && (unitFirst == (kind < 0));
      if (complete) {
        if (Double.isNaN(found[unit])) {
          found[unit] = number;
        }
        number = Double.NaN;
        unit = -1;
      } else if (kind >= 0 && !unitFirst) {
        unit = -1;
      }
    }
    return found;
  }

  /** The cell of a row that holds just this number, "" when there is none or several. */
  private String plainCell(int row, double value) {
    String found = "";
    for (int column = firstColumn; column <= lastColumn; column++) {
      if (grid.kind(row, column) == Grid.Kind.NUMBER && grid.number(row, column) == value) {
        if (!found.isEmpty()) {
          return "";
        }
        found = CellAddress.of(row, column);
      }
    }
    return found;
  }

  private static double number(String text) {
    return Double.parseDouble(text.replace(',', '.'));
  }
}
