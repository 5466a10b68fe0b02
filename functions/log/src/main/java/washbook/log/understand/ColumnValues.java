package washbook.log.understand;

import java.util.Optional;
import washbook.functions.scale.TemperatureUnit;
import washbook.log.language.Message;
import washbook.log.layout.TableRows;
import washbook.log.reading.RowRefusals;
import washbook.log.sheet.Grid;
import washbook.log.words.CellText;
import washbook.log.words.ReadingScale;

/** What the numbers of one column look like; texts that are a number without a unit count too. */
final class ColumnValues {
  private static final int FEWEST_WORDS = 3;

  private int numbers;
  private int likeGravity;
  private int below32;
  private int above60;
  private int negative;
  private double min = Double.POSITIVE_INFINITY;
  private double max = Double.NEGATIVE_INFINITY;

  static ColumnValues of(Grid grid, TableRows rows, int column) {
    ColumnValues facts = new ColumnValues();
    for (int row = rows.firstRow(); row <= rows.lastRow(); row++) {
      double value = CellText.plainNumber(grid, row, column);
      if (!Double.isNaN(value) && !rows.isSkipped(row)) {
        facts.add(value);
      }
    }
    return facts;
  }

  /** Whether several words stand in a column and no figure: names, or findings such as traces. */
  static boolean areWords(Grid grid, TableRows rows, int column) {
    int words = 0;
    for (int row = rows.firstRow(); row <= rows.lastRow(); row++) {
      Grid.Kind kind = rows.isSkipped(row) ? Grid.Kind.BLANK : grid.kind(row, column);
      String text = kind == Grid.Kind.TEXT ? grid.text(row, column) : "";
      if (kind != Grid.Kind.BLANK && kind != Grid.Kind.TEXT
          || text.chars().anyMatch(Character::isDigit)) {
        return false;
      }
      words += text.chars().anyMatch(Character::isLetter) ? 1 : 0;
    }
    return words >= FEWEST_WORDS;
  }

  private void add(double value) {
    if (value == 0) {
      numbers++;
      below32++;
      min = Math.min(min, 0);
      max = Math.max(max, 0);
      return;
    }
    numbers++;
    min = Math.min(min, value);
    max = Math.max(max, value);
    if (ReadingScale.looksLikeGravity(value)) {
      likeGravity++;
    }
    if (value < 32) {
      below32++;
    }
    if (value > 60) {
      above60++;
    }
    if (value < 0) {
      negative++;
    }
  }

  int numbers() {
    return numbers;
  }

  double min() {
    return min;
  }

  double max() {
    return max;
  }

  boolean mostlyGravity() {
    return numbers > 0 && likeGravity >= 0.8 * numbers;
  }

  boolean allGravity() {
    return numbers > 0 && likeGravity == numbers;
  }

  /** The unit of temperatures; empty when the numbers would do for both or for neither. */
  Optional<TemperatureUnit> temperatureUnit() {
    if (numbers == 0) {
      return Optional.empty();
    }
    if (above60 > 0 && below32 == 0) {
      return Optional.of(TemperatureUnit.F);
    }
    return above60 == 0 && negative == 0 && below32 > 0
        ? Optional.of(TemperatureUnit.C)
        : Optional.empty();
  }

  /** The least and the greatest number, to be read. */
  Message range() {
    return RowRefusals.range(min, max, "");
  }
}
