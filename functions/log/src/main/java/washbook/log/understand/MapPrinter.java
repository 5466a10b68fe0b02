package washbook.log.understand;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import washbook.functions.Numbers;
import washbook.log.Batch;
import washbook.log.Doubt;
import washbook.log.LogColumn;
import washbook.log.LogSettings;
import washbook.log.LogTable;
import washbook.log.MapAnswer;
import washbook.log.Role;
import washbook.log.RowStatement;
import washbook.log.StillRun;
import washbook.log.Understanding;
import washbook.log.language.Language;
import washbook.log.language.Message;
import washbook.log.sheet.CellAddress;

/**
 * Writes the text form of a map. Numbers have the places that a reading of their kind can be exact
 * to, so that 85 °F become 29.44 C and not 29.444444444444443 C.
 */
final class MapPrinter {
  private static final int CELSIUS_PLACES = 2;
  private static final int STRENGTH_PLACES = 2;
  private static final int PRESSURE_PLACES = 2;

  /** Grams and millilitres. */
  private static final int AMOUNT_PLACES = 3;

  private static final int FACTOR_PLACES = 4;

  /** A hundredth of what any scale shows: 0.01 °Oe, and less than 0.01 °Bx. */
  private static final int GRAVITY_PLACES = 5;

  private final Language language;

  /**
   * @param language of the comments; what a map says is the same in all languages
   */
  MapPrinter(Language language) {
    this.language = language;
  }

  String print(LogMap map) {
    StringBuilder out = new StringBuilder();
    comment(out, "map.head");
    for (TableMap table : map.tables()) {
      out.append("\n[table]\n").append(print(table));
    }
    return out.toString();
  }

  /** The statements of one table. */
  static String print(TableMap table) {
    StringBuilder out = new StringBuilder();
    print(out, table);
    return out.toString();
  }

  private void comment(StringBuilder out, String key, Object... arguments) {
    out.append("# ").append(Message.of(key, arguments).in(language)).append('\n');
  }

  private static void print(StringBuilder out, TableMap table) {
    if (!table.sheet().isEmpty()) {
      put(out, "sheet", table.sheet());
    }
    if (table.headerRow() >= 0) {
      put(out, "header row", String.valueOf(table.headerRow() + 1));
    }
    if (table.lastRow() >= 0) {
      put(out, "last row", String.valueOf(table.lastRow() + 1));
    }
    if (table.ignored()) {
      put(out, "ignore", "yes");
    }
    table.columns().forEach((column, use) -> put(out, column(column), show(use)));
    put(out, "temperature", table.temperatureC(), CELSIUS_PLACES, " C");
    if (table.corrected() != null) {
      put(out, "corrected", table.corrected() ? "yes" : "no");
    }
    put(out, "calibration", table.calibrationC(), CELSIUS_PLACES, " C");
    put(out, "offset", table.offset(), GRAVITY_PLACES, "");
    put(out, "refractometer factor", table.refractometerFactor(), FACTOR_PLACES, "");
    put(out, "volume", table.volumeL(), AMOUNT_PLACES, " L");
    if (!table.batch().isEmpty()) {
      put(out, "batch", table.batch());
    }
    for (Map.Entry<String, Double> one : table.originalGravities().entrySet()) {
      put(
          out,
          one.getKey().isEmpty() ? "original gravity" : "original gravity of " + one.getKey(),
          one.getValue(),
          GRAVITY_PLACES,
          " SG");
    }
    if (table.firstReadingIsOriginal()) {
      put(out, "original gravity", "first reading");
    }
    if (table.wash() != null) {
      put(out, "wash", table.wash().word());
    }
    table.feeds().uses().forEach((row, use) -> put(out, "row " + (row + 1), show(use)));
    table.feeds().sugar().forEach((row, feed) -> out.append(statement(row, feed)).append('\n'));
    table
        .feeds()
        .batches()
        .forEach((row, name) -> out.append(RowStatement.batch(row, name)).append('\n'));
    table.writing().language().ifPresent(said -> put(out, "language", said.code()));
    table.writing().scale().ifPresent(said -> put(out, "scale", said.scale().name()));
    if (!table.writing().warned()) {
      put(out, "warnings", "no");
    }
    table.writing().limits().settings().forEach(said -> put(out, "limit", said));
    if (table.run().isRun() != null) {
      put(out, "run", table.run().isRun() ? "yes" : "no");
    }
    if (table.run().volumesAt20() != null) {
      put(out, "volumes at 20", table.run().volumesAt20() ? "yes" : "no");
    }
    put(out, "charge", table.run().chargeLitres(), AMOUNT_PLACES, " L");
    put(out, "charge strength", table.run().chargePercentVolume(), STRENGTH_PLACES, " ABV");
    put(out, "pressure", table.run().pressureHPa(), PRESSURE_PLACES, "");
    if (table.sugarReadings() != null
        && table.sugarReadings() != LogSettings.SugarReadings.TOLD_BY_RISE) {
      put(
          out,
          "sugar readings",
          table.sugarReadings() == LogSettings.SugarReadings.BEFORE ? "before" : "after");
    }
  }

  private static String statement(int row, TableMap.Feed feed) {
    return feed.isByTheRise()
        ? RowStatement.sugarByTheRise(row)
        : RowStatement.sugar(row, Numbers.round(feed.kilograms().getAsDouble(), AMOUNT_PLACES));
  }

  /** The key of what a column of a table holds: a row where the log runs across. */
  private static String place(Understanding sheet, int column) {
    return sheet.across().map(grid -> "row " + (grid.sheetRow(column) + 1)).orElse(column(column));
  }

  /** The key of what a column holds. */
  static String column(int column) {
    return "column " + CellAddress.letters(column);
  }

  private static String show(TableMap.ColumnMap use) {
    return use.role() + (use.unit().isEmpty() ? "" : " in " + use.unit());
  }

  private static void put(StringBuilder out, String key, String value) {
    out.append(key).append(" = ").append(value).append('\n');
  }

  private static void put(StringBuilder out, String key, double value, int places, String unit) {
    if (!Double.isNaN(value)) {
      put(out, key, Numbers.round(value, places) + unit);
    }
  }

  String print(List<Understanding> sheets) {
    StringBuilder out = new StringBuilder();
    comment(out, "map.head");
    comment(out, "map.comment");
    for (Understanding sheet : sheets) {
      for (Doubt doubt : sheet.doubts()) {
        out.append('\n');
        comment(out, "map.question", sheet.sheet(), doubt.cell(), doubt.question(language));
      }
      for (LogTable table : sheet.tables()) {
        out.append("\n[table]\n");
        boolean across = sheet.across().isPresent();
        boolean printed = table.settled() && !across;
        print(
            out,
            TableMap.of(sheet.sheet(), table.headerRow(), printed ? columns(table) : Map.of()));
        if (!table.settled()) {
          comment(out, "map.unsettled");
        }
        if (!printed) {
          String start = table.settled() ? "" : "# ";
          columns(table)
              .forEach((column, use) -> put(out, start + place(sheet, column), show(use)));
        }
        settings(out, table);
        feedsAsked(out, sheet, table);
      }
      sheet.runs().forEach(run -> print(out, sheet.sheet(), run));
    }
    return out.toString();
  }

  /** Answers to questions about what was put in, as comments. */
  private static void feedsAsked(StringBuilder out, Understanding sheet, LogTable table) {
    for (Doubt doubt : sheet.doubts()) {
      for (MapAnswer answer : doubt.answers()) {
        String first = answer.lines().get(0);
        boolean ofRow =
            first.startsWith(RowStatement.SUGAR_AT) || first.startsWith(RowStatement.BATCH_FROM);
        if (ofRow && doubt.headerRow() == table.headerRow()) {
          answer.lines().forEach(line -> out.append("# ").append(line).append('\n'));
        }
      }
    }
  }

  private static void print(StringBuilder out, String sheet, StillRun run) {
    out.append("\n[table]\n");
    LogTable table = run.table();
    print(out, TableMap.of(sheet, table.headerRow(), table.settled() ? columns(table) : Map.of()));
    put(out, "run", "yes");
    StillRun.Settings settings = run.settings();
    put(out, "temperature", settings.temperatureC(), CELSIUS_PLACES, " C");
    put(out, "corrected", settings.corrected() ? "yes" : "no");
    put(out, "volumes at 20", settings.volumesAt20() ? "yes" : "no");
    put(out, "calibration", settings.calibrationC(), CELSIUS_PLACES, " C");
    put(out, "pressure", settings.pressureHPa(), PRESSURE_PLACES, "");
    if (run.parts().size() == 1) {
      put(out, "charge", run.parts().get(0).charge().litres(), AMOUNT_PLACES, " L");
      put(
          out,
          "charge strength",
          run.parts().get(0).charge().percentVolume(),
          STRENGTH_PLACES,
          " ABV");
    }
  }

  private static Map<Integer, TableMap.ColumnMap> columns(LogTable table) {
    Map<Integer, TableMap.ColumnMap> columns = new TreeMap<>();
    for (LogColumn use : table.columns()) {
      if (use.role() != Role.COMPUTED) {
        columns.put(use.column(), new TableMap.ColumnMap(use.role(), use.unit()));
      }
    }
    return columns;
  }

  private static void settings(StringBuilder out, LogTable table) {
    LogSettings settings = table.settings();
    if (settings.hasTemperature()) {
      put(out, "temperature", settings.temperatureC(), CELSIUS_PLACES, " C");
      if (settings.correctedAlready()) {
        put(out, "corrected", "yes");
      }
    }
    put(out, "calibration", settings.calibrationC(), CELSIUS_PLACES, " C");
    if (settings.offset() != 0) {
      put(out, "offset", settings.offset(), GRAVITY_PLACES, "");
    }
    if (settings.refractometerFactor() != 1) {
      put(out, "refractometer factor", settings.refractometerFactor(), FACTOR_PLACES, "");
    }
    put(out, "volume", settings.volumeL(), AMOUNT_PLACES, " L");
    if (settings.wash().isStated()) {
      put(out, "wash", settings.wash().kind().word());
    }
    for (Batch batch : table.batches()) {
      batch
          .originalGravity()
          .ifPresent(
              gravity -> {
                out.append("# ");
                put(out, "original gravity of " + batch.name(), gravity, GRAVITY_PLACES, " SG");
              });
    }
  }
}
