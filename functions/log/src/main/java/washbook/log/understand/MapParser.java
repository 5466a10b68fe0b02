package washbook.log.understand;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import washbook.functions.Numbers;
import washbook.functions.RefusedException;
import washbook.functions.liquid.WashKind;
import washbook.functions.quantity.Quantity;
import washbook.functions.scale.Conversion;
import washbook.log.LogSettings;
import washbook.log.Role;
import washbook.log.RowStatement;
import washbook.log.WarningLimits;
import washbook.log.WritingWish;
import washbook.log.WrittenScale;
import washbook.log.language.Language;
import washbook.log.language.Message;
import washbook.log.language.ToldException;
import washbook.log.reading.RowRefusals;
import washbook.log.run.RunStrengthUnit;
import washbook.log.run.RunVolumeUnit;
import washbook.log.sheet.CellAddress;
import washbook.log.words.AmountUnit;
import washbook.log.words.ReadingScale;

/** Reads the text form of a map; the form is described at {@link LogMap}. */
final class MapParser {
  private final List<TableMap> tables = new ArrayList<>();
  private int line;
  private boolean open;
  private String sheet;
  private int headerRow;
  private int lastRow;
  private boolean ignored;
  private Map<Integer, TableMap.ColumnMap> columns;
  private Map<Integer, TableMap.ColumnMap> rows;
  private double temperatureC;
  private Boolean corrected;
  private double calibrationC;
  private double offset;
  private double factor;
  private double volumeL;
  private String batch;
  private Map<String, Double> originals;
  private boolean firstReadingIsOriginal;
  private LogSettings.SugarReadings sugarReadings;
  private WashKind wash;
  private Map<Integer, TableMap.Feed> sugar;
  private Map<Integer, String> batchesFrom;
  private Language written;
  private WrittenScale scale;
  private boolean warned;
  private WarningLimits limits;
  private Boolean isRun;
  private Boolean volumesAt20;
  private double chargeLitres;
  private double chargePercentVolume;
  private double pressureHPa;

  List<TableMap> parse(String text) {
    reset();
    for (String raw : text.split("\r\n|\r|\n", -1)) {
      line++;
      String statement = raw.strip();
      if (statement.startsWith("\ufeff")) {
        statement = statement.substring(1).strip();
      }
      if (statement.isEmpty() || statement.startsWith("#")) {
        continue;
      }
      if (statement.equalsIgnoreCase("[table]")) {
        close();
        continue;
      }
      int equals = statement.indexOf('=');
      if (equals < 0) {
        throw wrong("map.statement", quoted(statement), "key = value");
      }
      open = true;
      set(
          statement.substring(0, equals).strip().replaceAll("\\s+", " "),
          statement.substring(equals + 1).strip());
    }
    close();
    return tables;
  }

  private void reset() {
    open = false;
    sheet = "";
    headerRow = -1;
    lastRow = -1;
    ignored = false;
    columns = new HashMap<>();
    rows = new HashMap<>();
    temperatureC = Double.NaN;
    corrected = null;
    calibrationC = Double.NaN;
    offset = Double.NaN;
    factor = Double.NaN;
    volumeL = Double.NaN;
    batch = "";
    originals = new HashMap<>();
    firstReadingIsOriginal = false;
    sugarReadings = null;
    wash = null;
    sugar = new HashMap<>();
    batchesFrom = new HashMap<>();
    written = null;
    scale = null;
    warned = true;
    limits = WarningLimits.usual();
    isRun = null;
    volumesAt20 = null;
    chargeLitres = Double.NaN;
    chargePercentVolume = Double.NaN;
    pressureHPa = Double.NaN;
  }

  private void close() {
    if (open) {
      tables.add(
          new TableMap(
              sheet,
              headerRow,
              lastRow,
              ignored,
              columns,
              temperatureC,
              corrected,
              calibrationC,
              offset,
              factor,
              volumeL,
              batch,
              originals,
              firstReadingIsOriginal,
              sugarReadings,
              wash,
              new TableMap.RowPart(sugar, batchesFrom, rows),
              new WritingWish(
                  Optional.ofNullable(written), Optional.ofNullable(scale), warned, limits),
              new TableMap.RunPart(
                  isRun, volumesAt20, chargeLitres, chargePercentVolume, pressureHPa)));
    }
    reset();
  }

  private void set(String key, String value) {
    String lower = key.toLowerCase(Locale.ROOT);
    if (lower.startsWith("column ")) {
      columns.put(column(key.substring(7)), role(value));
      return;
    }
    if (lower.startsWith("row ")) {
      rows.put(row(lower.substring(4).strip()), role(value));
      return;
    }
    if (lower.startsWith("original gravity of ")) {
      originals.put(key.substring(20).strip(), gravity(value));
      return;
    }
    if (lower.startsWith(RowStatement.SUGAR_AT)) {
      sugar.put(row(lower.substring(RowStatement.SUGAR_AT.length()).strip()), feed(value));
      return;
    }
    if (lower.startsWith(RowStatement.BATCH_FROM)) {
      batchesFrom.put(row(lower.substring(RowStatement.BATCH_FROM.length()).strip()), named(value));
      return;
    }
    switch (lower) {
      case "sheet" -> sheet = value;
      case "header row" -> headerRow = row(value);
      case "last row" -> lastRow = row(value);
      case "ignore" -> ignored = yes(value);
      case "temperature" -> temperatureC = temperature(value, Quantity.SUGAR_TEMPERATURE);
      case "corrected" -> corrected = yes(value);
      case "calibration" -> calibrationC = temperature(value, Quantity.CALIBRATION_TEMPERATURE);
      case "offset" -> offset = checked(value, Quantity.GRAVITY_OFFSET);
      case "refractometer factor" -> factor = checked(value, Quantity.REFRACTOMETER_FACTOR);
      case "volume" -> volumeL = quantity(value, "L", Quantity.LITRES, "L", "GALUS", "GALUK");
      case "batch" -> batch = value;
      case "original gravity" -> {
        if (value.equalsIgnoreCase("first reading")) {
          firstReadingIsOriginal = true;
        } else {
          originals.put("", gravity(value));
        }
      }
      case "run" -> isRun = yes(value);
      case "volumes at 20" -> volumesAt20 = yes(value);
      case "charge" -> chargeLitres = quantity(value, "L", Quantity.LITRES, "L", "GALUS");
      case "charge strength" ->
          chargePercentVolume = quantity(value, "ABV", Quantity.CHARGE_STRENGTH, "ABV", "PROOFUS");
      case "pressure" -> pressureHPa = checked(value, Quantity.PRESSURE);
      case "wash" -> wash = kind(value);
      case "language" ->
          written =
              Language.of(value)
                  .orElseThrow(() -> wrong("map.language", quoted(value), Language.codes()));
      case "scale" ->
          scale =
              WrittenScale.named(value)
                  .orElseThrow(() -> wrong("map.scale", quoted(value), WrittenScale.words()));
      case "warnings" -> warned = yes(value);
      case "limit" -> limits = limits(value).over(limits);
      case "sugar readings" ->
          sugarReadings =
              switch (value.toLowerCase(Locale.ROOT)) {
                case "before" -> LogSettings.SugarReadings.BEFORE;
                case "after" -> LogSettings.SugarReadings.AFTER;
                default -> throw wrong("map.oneOf", quoted(value), "before", "after");
              };
      default -> throw wrong("map.key", quoted(key));
    }
  }

  private WarningLimits limits(String value) {
    try {
      return WarningLimits.parse(Arrays.asList(value.split(",")));
    } catch (ToldException wrong) {
      throw new ToldException(Message.of("map.lineWith", line, wrong.told()));
    }
  }

  private TableMap.Feed feed(String value) {
    if (value.equalsIgnoreCase(RowStatement.BY_THE_RISE)) {
      return TableMap.Feed.BY_THE_RISE;
    }
    String[] parts = value.split("\\s+", 2);
    Optional<AmountUnit> unit =
        parts.length < 2
            ? Optional.empty()
            : AmountUnit.of(parts[1].strip().toUpperCase(Locale.ROOT)).filter(AmountUnit::isMass);
    if (unit.isEmpty()) {
      throw wrong("map.quantity", quoted(value), either("KG", "LB", RowStatement.BY_THE_RISE));
    }
    double kilograms = unit.get().toBase(number(parts[0]));
    return new TableMap.Feed(
        OptionalDouble.of(checked(value, kilograms, Quantity.KILOGRAMS_OR_NONE)));
  }

  private String named(String value) {
    if (value.isEmpty()) {
      throw wrong("map.name");
    }
    return value;
  }

  /** A word of the functions, or a yield in % of theory. */
  private WashKind kind(String value) {
    if (Numbers.parse(value) != null) {
      return WashKind.ofYield(checked(value, Quantity.YIELD));
    }
    String word = value.toUpperCase(Locale.ROOT);
    if (!WashKind.words().contains(word)) {
      throw wrong("map.kind", quoted(value), String.join(", ", WashKind.words()));
    }
    return WashKind.of(word);
  }

  private ToldException wrong(String key, Object... arguments) {
    return new ToldException(Message.of("map.line", line, Message.of(key, arguments)));
  }

  private ToldException outside(String value, Quantity quantity) {
    String unit = quantity.unit().equals("C") ? "\u00b0C" : quantity.unit();
    return wrong(
        "map.outside",
        quoted(value),
        RowRefusals.range(quantity.min(), quantity.max(), (" " + unit).stripTrailing()));
  }

  private static Message either(String... units) {
    return Arrays.stream(units)
        .map(unit -> Message.of("plain", unit))
        .reduce((before, last) -> Message.of("either", before, last))
        .orElse(Message.NONE);
  }

  private static Message quoted(String text) {
    return Message.of("quoted", text);
  }

  private int column(String letters) {
    int column = CellAddress.column(letters.strip());
    if (column < 0) {
      throw wrong("map.column", quoted(letters), "column B = GRAVITY in SG");
    }
    return column;
  }

  private int row(String value) {
    if (!value.matches("[1-9]\\d{0,6}")) {
      throw wrong("map.row", quoted(value));
    }
    return Integer.parseInt(value) - 1;
  }

  private boolean yes(String value) {
    return switch (value.toLowerCase(Locale.ROOT)) {
      case "yes" -> true;
      case "no" -> false;
      default -> throw wrong("map.oneOf", quoted(value), "yes", "no");
    };
  }

  private TableMap.ColumnMap role(String value) {
    String[] parts = value.toUpperCase(Locale.ROOT).split("\\s+IN\\s+", 2);
    Role role =
        Arrays.stream(Role.values())
            .filter(r -> r.name().equals(parts[0].strip().replace(' ', '_')))
            .findFirst()
            .orElseThrow(() -> wrong("map.role", quoted(parts[0]), List.of(Role.values())));
    String unit = parts.length < 2 ? "" : parts[1].strip();
    if (!unit.isEmpty() && !isUnit(unit)) {
      throw wrong("map.unit", quoted(parts[1]), Conversion.words());
    }
    if (!unit.isEmpty() && !fits(unit, role)) {
      throw wrong("map.unitOf", quoted(parts[1]), role);
    }
    return new TableMap.ColumnMap(role, unit);
  }

  private static boolean isUnit(String unit) {
    return Conversion.words().contains(unit)
        || ReadingScale.isName(unit)
        || AmountUnit.of(unit).isPresent()
        || RunStrengthUnit.isName(unit)
        || RunVolumeUnit.of(unit).isPresent();
  }

  private static boolean fits(String unit, Role role) {
    return switch (role) {
      case GRAVITY, REFRACTOMETER, ORIGINAL_GRAVITY, OWN_CORRECTED_GRAVITY ->
          ReadingScale.isName(unit);
      case STRENGTH -> RunStrengthUnit.isName(unit);
      case TEMPERATURE, HEAD_TEMPERATURE -> unit.equals("C") || unit.equals("F");
      case SUGAR_ADDED -> AmountUnit.of(unit).filter(AmountUnit::isMass).isPresent();
      case VOLUME_SO_FAR -> RunVolumeUnit.of(unit).isPresent();
      case VOLUME ->
          RunVolumeUnit.of(unit).isPresent()
              || AmountUnit.of(unit).filter(u -> !u.isMass()).isPresent();
      case WATER_ADDED -> AmountUnit.of(unit).filter(u -> !u.isMass()).isPresent();
      default -> true;
    };
  }

  private double number(String value) {
    Double number = Numbers.parse(value);
    if (number == null) {
      throw wrong("map.number", quoted(value));
    }
    return number;
  }

  private double checked(String value, Quantity quantity) {
    return checked(value, number(value), quantity);
  }

  private double checked(String value, double number, Quantity quantity) {
    try {
      return quantity.check("value", number);
    } catch (RefusedException refused) {
      throw outside(value, quantity);
    }
  }

  private double temperature(String value, Quantity range) {
    return quantity(value, "C", range, "C", "F");
  }

  private double gravity(String value) {
    return quantity(value, "SG", Quantity.ORIGINAL_GRAVITY, "SG", "BRIX", "...");
  }

  /** A number and its unit; both are needed, because guessing is what a map is there to end. */
  private double quantity(String value, String to, Quantity range, String... units) {
    String[] parts = value.split("\\s+", 2);
    if (parts.length < 2) {
      throw wrong("map.quantity", quoted(value), either(units));
    }
    double converted;
    try {
      converted =
          Conversion.convert(number(parts[0]), parts[1].strip().toUpperCase(Locale.ROOT), to);
    } catch (RefusedException refused) {
      throw wrong("map.quantity", quoted(value), either(units));
    }
    return checked(value, converted, range);
  }
}
