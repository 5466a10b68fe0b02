package washbook.log.run;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import washbook.log.PassedOver;
import washbook.log.sheet.Grid;

/** Which rows below a header hold jars, and the lines between them that name a cut or a run. */
final class RunRows {
  private static final int MOST_JARS = 500;

  /** A total cut short, alone or with whose it is: a word that means up to in other places. */
  private static final Pattern SHORT_TOTAL = Pattern.compile("(?i)tot\\.?(\\s\\p{L}.{0,20})?");

  private final Grid grid;
  private final RunHeader header;
  private final int volume;
  private final int strength;
  private final boolean isTotal;
  private final Optional<RunVolumeUnit> unit;
  private final int end;

  /** Row of the reading that running totals start from, -1 for none. */
  int start = -1;

  /** Rows with a jar, from 0. */
  final List<Integer> jars = new ArrayList<>();

  /** For each jar the text of the line that stands over its group, "" for none. */
  final List<String> groups = new ArrayList<>();

  /** Rows below the header that hold no jar, blank ones apart. */
  final Map<Integer, PassedOver> setAside = new HashMap<>();

  /** Jars before which a line without numbers stands that names no cut. */
  final List<Integer> begun = new ArrayList<>();

  /**
   * @param isTotal whether the volumes are running totals
   * @param volumeUnit of {@link RunVolumeUnit}, "" while it is open
   * @param end one past the last row that can belong to the table
   */
  RunRows(
      Grid grid,
      RunHeader header,
      int volume,
      int strength,
      boolean isTotal,
      String volumeUnit,
      int end) {
    this.isTotal = isTotal;
    this.unit = RunVolumeUnit.of(volumeUnit);
    this.grid = grid;
    this.header = header;
    this.volume = volume;
    this.strength = strength;
    this.end = Math.min(end, grid.rowCount());
    read();
  }

  private void read() {
    boolean afterBlank = false;
    String group = "";
    boolean line = false;
    boolean afterSum = false;
    for (int row = header.bottomRow() + 1; row < end && jars.size() < MOST_JARS; row++) {
      if (isBlank(row)) {
        afterBlank = true;
        continue;
      }
      boolean strong = isNumber(row, strength);
      boolean both = strong && isNumber(row, volume);
      if (isSum(row) || isAverage(row)) {
        setAside.put(row, PassedOver.AVERAGE);
        afterSum = true;
        continue;
      }
      if (isStart(row)) {
        setAside.put(row, PassedOver.NOTE);
        start = row;
        continue;
      }
      if (isLine(row) && !isLabelOfJar(row)) {
        group = firstText(row);
        line = true;
        setAside.put(row, PassedOver.HEADING);
        continue;
      }
      boolean goesOn = !afterBlank || isNextNumber(row);
      if (!both && !(goesOn && isJarAtAll(row))) {
        setAside.put(row, PassedOver.NOTE);
        if (afterBlank) {
          break;
        }
        continue;
      }
      if ((afterSum || line && RunCut.of(group) == null) && !jars.isEmpty()) {
        begun.add(row);
      }
      afterSum = false;
      jars.add(row);
      groups.add(group);
      afterBlank = false;
      line = false;
    }
    dropTrailing();
  }

  /** A row at the end without any strength is a remark, an empty form or a sum, no jar. */
  private void dropTrailing() {
    for (int i = jars.size() - 1; i >= 0; i--) {
      int row = jars.get(i);
      if (grid.kind(row, strength) != Grid.Kind.BLANK) {
        return;
      }
      if (grid.kind(row, volume) == Grid.Kind.BLANK || isSumSoFar(i)) {
        jars.remove(i);
        groups.remove(i);
      } else {
        return;
      }
    }
  }

  /** A total before the first jar, of a row that is none. */
  private boolean isStart(int row) {
    boolean unread = grid.kind(row, strength) == Grid.Kind.BLANK && isNumber(row, volume);
    boolean named = !firstText(row).isEmpty() && !firstText(row).matches(".*\\d.*");
    return isTotal && jars.isEmpty() && unread && (named || number(row, volume) == 0);
  }

  private boolean isSumSoFar(int index) {
    if (isTotal) {
      return index > 0 && number(jars.get(index), volume) == number(jars.get(index - 1), volume);
    }
    double sum = 0;
    for (int i = 0; i < index; i++) {
      double value = number(jars.get(i), volume);
      sum += Double.isNaN(value) ? 0 : value;
    }
    double here = number(jars.get(index), volume);
    return index >= 2 && Math.abs(here - sum) <= 0.005 * sum;
  }

  /** Whether a row that lacks a figure is a jar all the same: something stands for the figures. */
  private boolean isJarAtAll(int row) {
    boolean volumeIsThere = grid.kind(row, volume) != Grid.Kind.BLANK;
    boolean strengthIsThere = grid.kind(row, strength) != Grid.Kind.BLANK;
    if (volumeIsThere || strengthIsThere) {
      return isShort(row, volume) && isShort(row, strength);
    }
    return isNumber(row, header.firstColumn()) || numbers(row) > 0 || isLabelOfJar(row);
  }

  /** Whether a row begins as the jar above does, but for its number: a jar without figures. */
  private boolean isLabelOfJar(int row) {
    if (jars.isEmpty()) {
      return false;
    }
    String label = firstText(row);
    String before = firstText(jars.get(jars.size() - 1));
    return label.matches(".*\\d.*")
        && label.replaceAll("\\d+", "#").equals(before.replaceAll("\\d+", "#"));
  }

  /** Whether a row has the number after that of the jar above, and something for both figures. */
  private boolean isNextNumber(int row) {
    int column = header.firstColumn();
    return !jars.isEmpty()
        && grid.kind(row, volume) != Grid.Kind.BLANK
        && grid.kind(row, strength) != Grid.Kind.BLANK
        && number(row, column) == number(jars.get(jars.size() - 1), column) + 1;
  }

  private boolean isShort(int row, int column) {
    return grid.kind(row, column) != Grid.Kind.TEXT || grid.text(row, column).length() <= 24;
  }

  private int numbers(int row) {
    int count = 0;
    for (RunHeader.Cell cell : header.cells()) {
      count += isNumber(row, cell.column()) ? 1 : 0;
    }
    return count;
  }

  /** A mean below jars: called so, and stronger than the last jar, since strengths fall. */
  private boolean isAverage(int row) {
    if (jars.size() < 2) {
      return false;
    }
    double before = number(jars.get(jars.size() - 1), strength);
    boolean called = RunWords.in(firstText(row)).contains(RunWord.AVERAGE);
    return called && number(row, strength) > before + 2;
  }

  private boolean isSum(int row) {
    for (int column = header.firstColumn(); column <= header.lastColumn(); column++) {
      if (grid.kind(row, column) == Grid.Kind.TEXT) {
        String text = grid.text(row, column).strip();
        boolean total = RunWords.in(text).contains(RunWord.TOTAL) && text.length() <= 40;
        boolean cut = SHORT_TOTAL.matcher(text).matches() && !isNumber(row, strength);
        boolean note = column > Math.max(volume, strength) && isNumber(row, strength);
        return (total || cut) && !note || RunCut.of(text) != null && isSumSince(row);
      }
    }
    return false;
  }

  /** A row of text alone, in one or two cells. */
  private boolean isLine(int row) {
    int texts = 0;
    for (int column = header.firstColumn(); column <= header.lastColumn(); column++) {
      Grid.Kind kind = grid.kind(row, column);
      if (kind == Grid.Kind.TEXT && !isNumber(row, column)) {
        texts++;
      } else if (kind != Grid.Kind.BLANK) {
        return false;
      }
    }
    boolean cut = texts == 1 && RunCut.of(firstText(row)) != null;
    boolean figures =
        grid.kind(row, volume) != Grid.Kind.BLANK || grid.kind(row, strength) != Grid.Kind.BLANK;
    return cut || texts >= 1 && texts <= 2 && !figures;
  }

  /** Whether a row without a strength has the sum of the jars since the row that was set aside. */
  private boolean isSumSince(int row) {
    boolean jar = grid.kind(row, strength) != Grid.Kind.BLANK || numbers(row) > 1;
    if (jar || isNumber(row, header.firstColumn()) && header.firstColumn() != volume) {
      return false;
    }
    double sum = 0;
    int count = 0;
    for (int i = jars.size() - 1; i >= 0 && !isSetAside(jars.get(i), row); i--) {
      sum += litres(jars.get(i));
      count++;
    }
    return count > 1 && Math.abs(litres(row) - sum) <= 0.005 * sum;
  }

  /** Whether a row is set aside between two rows. */
  private boolean isSetAside(int first, int last) {
    return setAside.entrySet().stream()
        .anyMatch(
            e -> e.getKey() > first && e.getKey() < last && e.getValue() == PassedOver.AVERAGE);
  }

  /** A volume in litres, or the number where no unit is known. */
  private double litres(int row) {
    double shown = number(row, volume);
    return RunCells.volumeUnit(grid, row, volume)
        .or(() -> unit)
        .map(u -> u.toLitres(shown))
        .orElse(shown);
  }

  private String firstText(int row) {
    for (int column = header.firstColumn(); column <= header.lastColumn(); column++) {
      if (grid.kind(row, column) == Grid.Kind.TEXT) {
        return grid.text(row, column).strip();
      }
    }
    return "";
  }

  private boolean isBlank(int row) {
    for (int column = header.firstColumn(); column <= header.lastColumn(); column++) {
      if (grid.kind(row, column) != Grid.Kind.BLANK) {
        return false;
      }
    }
    return true;
  }

  private boolean isNumber(int row, int column) {
    return !Double.isNaN(number(row, column));
  }

  private double number(int row, int column) {
    return RunCells.number(grid, row, column);
  }
}
