package washbook.log.fill;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import washbook.functions.Numbers;
import washbook.log.ComputedColumn;
import washbook.log.LogColumn;
import washbook.log.LogSettings;
import washbook.log.Role;
import washbook.log.StillRun;
import washbook.log.StillRun.Charge;
import washbook.log.run.JarRows;
import washbook.log.run.RunStrengthUnit;
import washbook.log.run.RunVolumeUnit;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.Grid;

/**
 * Writes the formulas of one table of jars. A sum stays blank unless every jar up to its row has
 * its figure, so that a figure taken away later never makes it too low.
 */
final class RunFormulas implements CellFormulas {
  private final Grid grid;
  private final StillRun run;
  private final FormulaSource source;
  private final Map<ComputedColumn, ComputedColumnPlaces.Place> places;

  RunFormulas(
      Grid grid,
      StillRun run,
      FormulaSource source,
      Map<ComputedColumn, ComputedColumnPlaces.Place> places) {
    this.grid = grid;
    this.run = run;
    this.source = source;
    this.places = places;
  }

  @Override
  public String formula(ComputedColumn column, int row) {
    return switch (column) {
      case TRUE_STRENGTH -> trueStrength(row);
      case VOLUME_AT_20 -> volumeAt20(row);
      case PURE_ALCOHOL -> pureAlcohol(row);
      case PURE_SUM -> sum(row);
      case CHARGE_SHARE -> share(row);
      case CUT_STRENGTH -> cut(row);
      case HEAD_STRENGTH -> head(row);
      default -> null;
    };
  }

  private String trueStrength(int row) {
    Role role = run.strengthRole(row);
    String shown = own(role, row);
    if (shown == null) {
      return null;
    }
    String unit = run.table().column(role).map(LogColumn::unit).orElse("");
    String percent = RunStrengthUnit.of(unit).formula(shown);
    if (run.isCorrected(row)) {
      return "IF(" + shown + "=\"\",\"\"," + percent + ")";
    }
    String temperature = temperature(row);
    if (temperature == null) {
      return null;
    }
    List<String> arguments = new ArrayList<>(List.of(percent, temperature));
    if (run.settings().calibrationC() != LogSettings.USUAL_CALIBRATION) {
      arguments.add(Numbers.show(run.settings().calibrationC()));
    }
    return source.formula("TRUESTRENGTH", arguments);
  }

  private String volumeAt20(int row) {
    String litres = litres(row);
    String strength = ours(ComputedColumn.TRUE_STRENGTH, row);
    if (litres == null || strength == null) {
      return null;
    }
    if (run.settings().volumesAt20()) {
      return "IF(" + strength + "=\"\",\"\"," + litres + ")";
    }
    String temperature = temperature(row);
    String call =
        temperature == null
            ? null
            : source.formula("VOLUMEAT20", List.of(litres, temperature, strength));
    String pure = ours(ComputedColumn.PURE_ALCOHOL, row);
    return call != null || pure == null
        ? call
        : "IF(" + pure + "=\"\",\"\",100*" + pure + "/" + strength + ")";
  }

  private String pureAlcohol(int row) {
    String litres = litres(row);
    String cell = ours(ComputedColumn.TRUE_STRENGTH, row);
    String strength = cell == null ? trueStrength(row) : cell;
    if (litres == null || strength == null) {
      return null;
    }
    if (run.settings().volumesAt20()) {
      return source.formula("PUREALCOHOL", List.of(litres, strength));
    }
    String temperature = temperature(row);
    return temperature == null
        ? null
        : source.formula("PUREALCOHOL", List.of(litres, strength, temperature));
  }

  private String sum(int row) {
    StillRun.Part part = part(row);
    if (part == null || !places.containsKey(ComputedColumn.PURE_ALCOHOL)) {
      return null;
    }
    int column = places.get(ComputedColumn.PURE_ALCOHOL).column();
    int first = part.rows()[0];
    String range =
        CellAddress.letters(column) + "$" + (first + 1) + ":" + CellAddress.of(row, column);
    return whole(range, upTo(part, row), "SUM(" + range + ")");
  }

  private String share(int row) {
    StillRun.Part part = part(row);
    String sum = ours(ComputedColumn.PURE_SUM, row);
    if (part == null || sum == null || part.charge().pureAlcohol().isEmpty()) {
      return null;
    }
    Charge charge = part.charge();
    String charged =
        charge.litresCell().isEmpty() || charge.strengthCell().isEmpty()
            ? Numbers.show(charge.pureAlcohol().getAsDouble())
            : "("
                + CellAddress.fixed(charge.litresCell())
                + "*"
                + CellAddress.fixed(charge.strengthCell())
                + "/100)";
    return "IF(" + sum + "=\"\",\"\",100*" + sum + "/" + charged + ")";
  }

  private String cut(int row) {
    StillRun.Part part = part(row);
    boolean there =
        places.containsKey(ComputedColumn.PURE_ALCOHOL)
            && places.containsKey(ComputedColumn.TRUE_STRENGTH);
    if (part == null || !there) {
      return null;
    }
    int last = upTo(part, row) - 1;
    int first = last;
    while (first > 0 && part.cuts().get(first - 1).equals(part.cuts().get(last))) {
      first--;
    }
    int top = part.rows()[first];
    if (row - top != last - first) {
      return null;
    }
    String pure = range(ComputedColumn.PURE_ALCOHOL, top, row);
    String strength = range(ComputedColumn.TRUE_STRENGTH, top, row);
    return whole(
        pure, last - first + 1, "SUM(" + pure + ")/SUMPRODUCT(" + pure + "/" + strength + ")");
  }

  private String head(int row) {
    String shown = own(Role.HEAD_TEMPERATURE, row);
    if (shown == null) {
      return null;
    }
    String celsius = celsius(shown, Role.HEAD_TEMPERATURE);
    double pressure = run.settings().pressureHPa();
    return source.formula(
        "HEADSTRENGTH",
        Double.isNaN(pressure) ? List.of(celsius) : List.of(celsius, Numbers.show(pressure)));
  }

  /** The formula where a range holds this many numbers, else a blank text. */
  private static String whole(String range, int count, String formula) {
    return "IF(COUNT(" + range + ")=" + count + "," + formula + ",\"\")";
  }

  private String range(ComputedColumn column, int first, int last) {
    int at = places.get(column).column();
    return CellAddress.of(first, at) + ":" + CellAddress.of(last, at);
  }

  private StillRun.Part part(int row) {
    return run.parts().stream().filter(p -> upTo(p, row) > 0).findFirst().orElse(null);
  }

  /** How many jars of a run there are up to a jar; 0 where it is none of its jars. */
  private static int upTo(StillRun.Part part, int row) {
    for (int i = 0; i < part.rows().length; i++) {
      if (part.rows()[i] == row) {
        return i + 1;
      }
    }
    return 0;
  }

  private String litres(int row) {
    StillRun.Jar jar = run.jar(row);
    Role role = run.table().column(Role.VOLUME).isPresent() ? Role.VOLUME : Role.VOLUME_SO_FAR;
    String cell = own(role, row);
    String unit = run.table().column(role).map(LogColumn::unit).orElse("");
    Optional<RunVolumeUnit> volume = RunVolumeUnit.of(unit);
    if (cell == null || volume.isEmpty()) {
      return null;
    }
    if (jar.before() < 0) {
      return volume.get().formula(cell);
    }
    String before = own(role, jar.before());
    return before == null ? null : volume.get().formula("(" + cell + "-" + before + ")");
  }

  private String temperature(int row) {
    if (!Double.isNaN(run.jar(row).temperatureC())) {
      return Numbers.show(run.jar(row).temperatureC());
    }
    if (run.table().column(Role.TEMPERATURE).isEmpty()) {
      return Numbers.show(run.settings().temperatureC());
    }
    String cell = own(Role.TEMPERATURE, row);
    return cell == null ? null : celsius(cell, Role.TEMPERATURE);
  }

  private String celsius(String cell, Role role) {
    return run.table().column(role).map(LogColumn::unit).orElse("").equals("F")
        ? source.formula("CONVERT", List.of(cell, "\"F\"", "\"C\""))
        : cell;
  }

  /** The log's own cell, null where it does not hold just a number. */
  private String own(Role role, int row) {
    int column = run.table().column(role).map(LogColumn::column).orElse(-1);
    int at = column < 0 ? row : JarRows.source(grid, row, column);
    return column >= 0 && grid.kind(at, column) == Grid.Kind.NUMBER
        ? CellAddress.of(at, column)
        : null;
  }

  private String ours(ComputedColumn column, int row) {
    return places.containsKey(column) ? CellAddress.of(row, places.get(column).column()) : null;
  }
}
