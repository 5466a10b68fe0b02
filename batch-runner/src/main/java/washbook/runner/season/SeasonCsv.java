package washbook.runner.season;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import washbook.functions.Numbers;
import washbook.log.sheet.Grid;
import washbook.runner.file.WrittenFile;
import washbook.runner.language.Caution;
import washbook.runner.language.Wording;
import washbook.runner.report.Csv;
import washbook.runner.report.CsvHeads;
import washbook.runner.report.OverviewColumn;

/** The season as comma-separated values: a line for each batch, the safety note at the end. */
final class SeasonCsv {
  /** Begins the last line. */
  static final String SAFETY = CsvHeads.SAFETY;

  private SeasonCsv() {}

  static void write(Season season, OlderSeason older, Path to) throws IOException {
    try (Writer out = new OutputStreamWriter(WrittenFile.stream(to), StandardCharsets.UTF_8)) {
      List<String> heads = new ArrayList<>(List.of(season.title()));
      Arrays.stream(OverviewColumn.values())
          .forEach(column -> heads.add(CsvHeads.of(column, season.words())));
      heads.addAll(older.own().heads().keySet());
      Csv.writeLine(out, heads.toArray(String[]::new));
      int number = 0;
      for (OlderSeason.Place place : older.places(season)) {
        List<String> line = new ArrayList<>(List.of(Integer.toString(++number)));
        for (OverviewColumn column : OverviewColumn.values()) {
          line.add(value(place, column, season.words()));
        }
        for (int column : older.own().heads().values()) {
          line.add(place.olderRow() < 0 ? "" : shown(older.grid(), place.olderRow(), column));
        }
        Csv.writeLine(out, line.toArray(String[]::new));
      }
      List<String> last = new ArrayList<>(Collections.nCopies(heads.size(), ""));
      last.set(0, SAFETY);
      last.set(1, Caution.text(season.words()));
      Csv.writeLine(out, last.toArray(String[]::new));
    }
  }

  private static String value(OlderSeason.Place place, OverviewColumn column, Wording words) {
    if (place.row() != null) {
      return CsvHeads.value(column, place.row().line(), words);
    }
    return switch (column) {
      case FILE -> place.key().file();
      case SHEET -> place.key().sheet();
      case BATCH -> place.key().batch();
      case STATE -> SeasonTable.gone(words);
      default -> "";
    };
  }

  private static String shown(Grid grid, int row, int column) {
    double number = grid.number(row, column);
    return Double.isNaN(number) ? grid.text(row, column) : Numbers.show(number);
  }
}
