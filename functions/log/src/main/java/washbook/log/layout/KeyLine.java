package washbook.log.layout;

import java.util.Set;
import washbook.functions.scale.TemperatureUnit;
import washbook.log.Role;
import washbook.log.sheet.CellAddress;
import washbook.log.words.AmountUnit;
import washbook.log.words.Concept;
import washbook.log.words.ReadingScale;
import washbook.log.words.Statement;
import washbook.log.words.Vocabulary;

/**
 * Something said above a table, as {@code Original gravity: 1.085 @ 68F}.
 *
 * @param meanings of its label
 * @param label the label as it stands there
 * @param row of the value
 * @param column of the value
 * @param text the value's text, "" when the cell is a number
 * @param value the number, NaN when there is none
 * @param units meanings of the unit after the value
 * @param temperatureC temperature after the value, NaN when there is none
 * @param numberCell whether the value is a number in a cell of its own
 */
public record KeyLine(
    Set<Concept> meanings,
    String label,
    int row,
    int column,
    String cell,
    String text,
    double value,
    Set<Concept> units,
    double temperatureC,
    boolean numberCell) {

  public boolean has(Concept concept) {
    return meanings.contains(concept);
  }

  /** The same read at a temperature; its own one where it has one. */
  KeyLine at(double celsius) {
    double read = Double.isNaN(temperatureC) ? celsius : temperatureC;
    return new KeyLine(meanings, label, row, column, cell, text, value, units, read, numberCell);
  }

  /** The same of another column's number. */
  public KeyLine in(int otherColumn, double number) {
    return new KeyLine(
        meanings,
        label,
        row,
        otherColumn,
        CellAddress.of(row, otherColumn),
        "",
        number,
        units,
        temperatureC,
        true);
  }

  boolean hasUnit(Concept concept) {
    return meanings.contains(concept) || units.contains(concept);
  }

  public boolean hasValue() {
    return !Double.isNaN(value) || !text.isEmpty();
  }

  /** Whether it states the gravity before the ferment. */
  public boolean isOriginalGravity() {
    return HeaderRoles.role(meanings) == Role.ORIGINAL_GRAVITY || isInitialGravity();
  }

  /** Whether what was in the beginning is a gravity by its figure, whatever it is called. */
  private boolean isInitialGravity() {
    return has(Concept.ORIGINAL)
        && !has(Concept.TARGET)
        && !has(Concept.FINALGRAVITY)
        && !has(Concept.TEMPERATURE)
        && !has(Concept.VOLUME)
        && !has(Concept.SUGAR)
        && !has(Concept.WATER)
        && !has(Concept.FOREIGN)
        && (value > 1.02 && value < 1.2
            || units.stream().anyMatch(Concept.SUGAR_SCALES::contains)
            || has(Concept.KGM3) && value > 1020 && value < 1200);
  }

  /**
   * Whether it states that readings are corrected already; what stands behind a gravity is of that
   * one.
   */
  public boolean saysCorrected() {
    boolean ofItself = isOriginalGravity() || ReadingScale.looksLikeGravity(value) && value != 1;
    if (ofItself && !has(Concept.READING)) {
      return false;
    }
    boolean inValue = has(Concept.READING) && Statement.saysCorrected(text);
    if (!(Statement.saysCorrected(meanings) || inValue)
        || has(Concept.FACTOR)
        || has(Concept.ALCOHOL)) {
      return false;
    }
    if (!text.isEmpty() && Vocabulary.meanings(text).contains(Concept.NEGATION)) {
      return false;
    }
    return hasValue() || !Double.isNaN(temperatureC) || !label.strip().endsWith("?");
  }

  /** Whether it tells the instrument's calibration, as {@code Hydrometer: 60 F} does too. */
  public boolean isCalibration() {
    return has(Concept.CALIBRATION)
        || (has(Concept.HYDROMETER)
            && !has(Concept.TEMPERATURE)
            && !has(Concept.READING)
            && !has(Concept.CORRECTED)
            && !has(Concept.ORIGINAL)
            && (!Double.isNaN(temperatureC)
                || units.contains(Concept.C)
                || units.contains(Concept.F)));
  }

  /** Whether it gives one temperature for all readings. */
  public boolean isReadingTemperature() {
    return HeaderRoles.role(meanings) == Role.TEMPERATURE
        && !(has(Concept.HYDROMETER) && !has(Concept.READING) && !has(Concept.SAMPLE))
        && !has(Concept.CORRECTED)
        && !has(Concept.ORIGINAL)
        && !has(Concept.FINALGRAVITY)
        && !Double.isNaN(value);
  }

  /** A temperature in °C, NaN when its unit is not settled. */
  public double celsius() {
    double shown = Double.isNaN(temperatureC) ? value : Double.NaN;
    if (Double.isNaN(shown)) {
      return temperatureC;
    }
    if (hasUnit(Concept.C)) {
      return shown;
    }
    if (hasUnit(Concept.F)) {
      return TemperatureUnit.F.toCelsius(shown);
    }
    return shown < 32 ? shown : shown > 60 ? TemperatureUnit.F.toCelsius(shown) : Double.NaN;
  }

  /** A volume in litres, NaN when its unit is not settled. */
  public double litres() {
    return AmountUnit.in(units, false)
        .or(() -> AmountUnit.in(meanings, false))
        .map(unit -> unit.toBase(value))
        .orElse(Double.NaN);
  }
}
