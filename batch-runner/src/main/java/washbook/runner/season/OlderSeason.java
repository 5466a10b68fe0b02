package washbook.runner.season;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import washbook.log.sheet.Grid;
import washbook.runner.FileFormats;
import washbook.runner.language.Wording;
import washbook.runner.report.OverviewColumn;

/**
 * The table of the season as an earlier run wrote it and the person went on with it.
 *
 * @param grid null when there is none
 */
record OlderSeason(Grid grid, OwnColumns own) {

  /** What stands of one batch in the new table. */
  record Place(OwnColumns.Key key, SeasonRow row, int olderRow) {}

  static OlderSeason none() {
    return new OlderSeason(null, OwnColumns.none());
  }

  /** Reads the sheet that begins as ours do. */
  static OlderSeason read(Path file, BiFunction<OverviewColumn, Wording, String> headOf)
      throws IOException {
    Grid found = null;
    for (Grid grid : FileFormats.of(file).reader().read(file)) {
      if (SeasonFile.isTable(grid)) {
        found = grid;
      }
    }
    return found == null ? none() : new OlderSeason(found, OwnColumns.of(found, headOf));
  }

  /**
   * The rows of the new table: the season's batches, then those with notes of the person's that are
   * in no log any more.
   */
  List<Place> places(Season season) {
    OwnColumns.Keys keys = new OwnColumns.Keys();
    List<Place> places = new ArrayList<>();
    List<OwnColumns.Key> present = new ArrayList<>();
    for (SeasonRow row : season.rows()) {
      OwnColumns.Key key = keys.of(row.line());
      present.add(key);
      places.add(new Place(key, row, own.rows().getOrDefault(key, -1)));
    }
    if (grid != null) {
      for (Map.Entry<OwnColumns.Key, Integer> orphan : own.orphans(present, grid)) {
        places.add(new Place(orphan.getKey(), null, orphan.getValue()));
      }
    }
    return places;
  }
}
