package washbook.log.fill;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import washbook.functions.Numbers;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.Parameter;
import washbook.functions.liquid.WashKind;
import washbook.log.Batch;
import washbook.log.ComputedColumn;
import washbook.log.LogColumn;
import washbook.log.LogSettings;
import washbook.log.LogTable;
import washbook.log.OriginalGravity.FirstReading;
import washbook.log.OriginalGravity.Stated;
import washbook.log.OriginalGravity.StatedNumber;
import washbook.log.Role;
import washbook.log.StatedWash;
import washbook.log.WrittenScale;
import washbook.log.reading.HydrometerRows;
import washbook.log.reading.OtherBrixScale;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.Grid;
import washbook.log.words.ReadingScale;

/**
 * Writes the formulas of one table's rows. A formula refers to cells of its own row and to the
 * batch's original gravity: to the cell above the table that states it, held by $, or by a look-up
 * in a column of the table (see {@link OriginalGravityLookUp}), so that it stays right when rows
 * are put in and when the table is sorted.
 */
final class RowFormulas implements CellFormulas {
  private final Grid grid;
  private final LogTable table;
  private final FormulaSource source;
  private final HydrometerRows reading;
  private final int correctedColumn;
  private final WrittenScale shownOn;
  private final int originalColumn;
  private final OriginalGravityLookUp first;
  private final int[] batchOfRow;
  private final int gravityColumn;
  private final ReadingScale scale;
  private final int temperatureColumn;
  private final boolean fahrenheit;
  private final int refractometerColumn;
  private final boolean refractometerInBrix;

  /**
   * @param places where our columns stand
   * @param all the sheet's tables
   */
  RowFormulas(
      Grid grid,
      LogTable table,
      FormulaSource source,
      Map<ComputedColumn, ComputedColumnPlaces.Place> places,
      List<LogTable> all) {
    this.grid = grid;
    this.table = table;
    this.source = source;
    this.reading = new HydrometerRows(grid, table);
    gravityColumn = column(Role.GRAVITY);
    scale = ReadingScale.of(unit(Role.GRAVITY));
    temperatureColumn = column(Role.TEMPERATURE);
    fahrenheit = unit(Role.TEMPERATURE).equals("F");
    Role refracted = table.column(Role.INSTRUMENT).isPresent() ? Role.GRAVITY : Role.REFRACTOMETER;
    refractometerColumn = column(refracted);
    refractometerInBrix = unit(refracted).equals("BRIX");
    ComputedColumnPlaces.Place shown = places.get(ComputedColumn.CORRECTED_GRAVITY);
    shownOn = shown == null ? WrittenScale.SG : shown.header().scale();
    correctedColumn =
        column(
            places,
            shownOn.isPlainGravity()
                ? ComputedColumn.CORRECTED_GRAVITY
                : ComputedColumn.SPECIFIC_GRAVITY);
    originalColumn = column(places, ComputedColumn.ORIGINAL_GRAVITY);
    first =
        new OriginalGravityLookUp(grid, table, column(places, ComputedColumn.FIRST_GRAVITY), all);
    batchOfRow = new int[table.lastRow() - table.firstRow() + 1];
    Arrays.fill(batchOfRow, -1);
    for (int i = 0; i < table.batches().size(); i++) {
      for (int row : table.batches().get(i).rows()) {
        batchOfRow[row - table.firstRow()] = i;
      }
    }
  }

  private int column(Role role) {
    return table.column(role).map(LogColumn::column).orElse(-1);
  }

  private String unit(Role role) {
    return table.column(role).map(LogColumn::unit).orElse("");
  }

  private static int column(
      Map<ComputedColumn, ComputedColumnPlaces.Place> places, ComputedColumn column) {
    return places.containsKey(column) ? places.get(column).column() : -1;
  }

  /** The formula of a row that is filled; null where only the value can stand. */
  @Override
  public String formula(ComputedColumn column, int row) {
    int index = batchOfRow[row - table.firstRow()];
    if (index < 0 || reading.read(row) != HydrometerRows.State.READ) {
      return null;
    }
    Batch batch = table.batches().get(index);
    reading.begin(batch, batch.stepsBegunAt(row));
    if (column == ComputedColumn.CORRECTED_GRAVITY && !shownOn.isPlainGravity()) {
      return onItsScale(CellAddress.of(row, correctedColumn));
    }
    if (column == ComputedColumn.CORRECTED_GRAVITY
        || column == ComputedColumn.SPECIFIC_GRAVITY
        || column == ComputedColumn.FIRST_GRAVITY) {
      return corrected(batch, row);
    }
    if (column == ComputedColumn.ORIGINAL_GRAVITY) {
      String original = lookedUp(batch, row);
      return original == null || Numbers.parse(original) != null ? null : original;
    }
    String function = column.function();
    if (function == null) {
      return null;
    }
    String gravity =
        correctedColumn >= 0 ? CellAddress.of(row, correctedColumn) : corrected(batch, row);
    String original = batch.isFirstReading(row) ? gravity : original(batch, row);
    if (gravity == null || original == null) {
      return null;
    }
    if (!isBeforeFerment(batch, row)) {
      return source.formula(function, arguments(function, original, gravity));
    }
    return correctedColumn < 0
        ? null
        : source.formula(
            function, arguments(function, original, "MIN(" + original + "," + gravity + ")"));
  }

  /** With the kind of wash at its place where it is not the usual one. */
  private List<String> arguments(String function, String original, String gravity) {
    List<String> arguments = new ArrayList<>(List.of(original, gravity));
    StatedWash wash = table.settings().wash();
    List<String> names =
        Catalogue.get(function).parameters().stream().map(Parameter::name).toList();
    if (wash.kind() != WashKind.MALT && names.contains("wash")) {
      while (arguments.size() < names.indexOf("wash")) {
        arguments.add("");
      }
      arguments.add(wash.argument());
    }
    return arguments;
  }

  /** Whether the row just read is above the original gravity by no more than readings differ. */
  private boolean isBeforeFerment(Batch batch, int row) {
    double original = batch.originalGravity(batch.stepsBegunAt(row)).orElse(Double.NaN);
    return !batch.isFirstReading(row) && !Double.isNaN(reading.beforeFerment(original));
  }

  private String corrected(Batch batch, int row) {
    if (reading.byRefractometer()) {
      return byRefractometer(batch, row);
    }
    String shown = gravityFormula(row);
    String temperature = temperatureFormula(row);
    if (shown == null || temperature == null) {
      return null;
    }
    LogSettings settings = table.settings();
    boolean isFirst = batch.isFirstReading(row) || isBeforeFerment(batch, row);
    List<String> arguments = new ArrayList<>(List.of(shown, temperature));
    boolean offset = settings.offset() != 0;
    if (!isFirst || offset || reading.calibrationC != LogSettings.USUAL_CALIBRATION) {
      arguments.add(Numbers.show(reading.calibrationC));
    }
    if (!isFirst || offset) {
      String original = isFirst ? "" : original(batch, row);
      if (original == null) {
        return null;
      }
      arguments.add(original);
    }
    if (offset) {
      arguments.add(Numbers.show(settings.offset()));
    }
    return source.formula("CORRECTEDGRAVITY", arguments);
  }

  private String byRefractometer(Batch batch, int row) {
    String present = presentBrixFormula(row);
    boolean isFirst = batch.isFirstReading(row) || isBeforeFerment(batch, row);
    OptionalDouble shownFirst = batch.originalBrix(batch.stepsBegunAt(row));
    if (!isFirst && shownFirst.isEmpty()) {
      return null;
    }
    String original = isFirst ? present : Numbers.show(shownFirst.getAsDouble());
    List<String> arguments = new ArrayList<>(List.of(original, present));
    if (table.settings().refractometerFactor() != 1) {
      arguments.add(Numbers.show(table.settings().refractometerFactor()));
    }
    return source.formula("REFRACTOMETERGRAVITY", arguments);
  }

  /** The original gravity for a row: the row's own cell where there is that column. */
  private String original(Batch batch, int row) {
    return originalColumn >= 0 ? CellAddress.of(row, originalColumn) : lookedUp(batch, row);
  }

  /** The batch's original gravity: a cell or a look-up where it can be one, else the number. */
  private String lookedUp(Batch batch, int row) {
    OptionalDouble number = batch.originalGravity(batch.stepsBegunAt(row));
    if (number.isEmpty()) {
      return null;
    }
    if (!batch.isFed() && batch.original() instanceof FirstReading reading) {
      return ofFirstReading(batch, reading, row);
    }
    if (!batch.isFed()
        && batch.original() instanceof Stated stated
        && stated.number().isPresent()) {
      StatedNumber shown = stated.number().get();
      return asGravity(first.ofStatement(batch, stated, row), shown.shown(), shown.scale());
    }
    return Numbers.show(number.getAsDouble());
  }

  private String ofFirstReading(Batch batch, FirstReading reading, int row) {
    if (first.hasColumn()) {
      return first.ofFirstReading(batch, reading, row);
    }
    return correctedColumn >= 0
        ? CellAddress.fixed(reading.row(), correctedColumn)
        : Numbers.show(reading.sg());
  }

  /** The specific gravity of a number in a cell, as the log writes it. */
  private String asGravity(String cell, double shown, ReadingScale on) {
    return switch (on) {
      case SG -> on.isInThousandths(shown) ? cell + "/1000" : cell;
      case GCM3 -> convert(cell + "*1000", on.wordOfConvert(), "SG");
      default -> convert(cell, on.wordOfConvert(), "SG");
    };
  }

  /** The corrected reading on another scale, from the cell that holds it as SG. */
  private String onItsScale(String gravity) {
    String figure;
    if (shownOn.inThousandths()) {
      figure = gravity + "*1000";
    } else {
      String converted = convert(gravity, "SG", shownOn.scale().wordOfConvert());
      if (shownOn.scale() != ReadingScale.GCM3) {
        return converted;
      }
      figure = converted + "/1000";
    }
    return "IF(" + gravity + "=\"\",\"\"," + figure + ")";
  }

  private String convert(String cell, String from, String to) {
    return source.formula("CONVERT", List.of(cell, '"' + from + '"', '"' + to + '"'));
  }

  /** The reading just read as an argument of a formula: its cell where it is a number. */
  private String gravityFormula(int row) {
    if (reading.byRefractometer()) {
      return null;
    }
    if (grid.kind(row, gravityColumn) != Grid.Kind.NUMBER) {
      return Numbers.show(reading.gravity);
    }
    String cell = reading.cell(row);
    double shown = grid.number(row, gravityColumn);
    if (!OtherBrixScale.is(scale, table.settings())) {
      return asGravity(cell, shown, scale);
    }
    String calibration = Numbers.show(table.settings().calibrationC());
    String degrees = source.formula("CORRECTEDBRIX", List.of(cell, "20", calibration));
    return degrees == null ? null : asGravity(degrees, shown, scale);
  }

  /** The temperature just read as an argument of a formula. */
  private String temperatureFormula(int row) {
    if (table.settings().correctedAlready()
        || temperatureColumn < 0
        || grid.kind(row, temperatureColumn) != Grid.Kind.NUMBER) {
      return Numbers.show(reading.temperatureC);
    }
    String cell = CellAddress.of(row, temperatureColumn);
    return fahrenheit ? convert(cell, "F", "C") : cell;
  }

  /** The present refractometer reading as an argument of a formula. */
  private String presentBrixFormula(int row) {
    return grid.kind(row, refractometerColumn) == Grid.Kind.NUMBER && refractometerInBrix
        ? CellAddress.of(row, refractometerColumn)
        : Numbers.show(reading.presentBrix);
  }
}
