package washbook.runner.season;

import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.Path;
import washbook.runner.report.BatchSeries;
import washbook.runner.report.OverviewLine;

/**
 * One batch of the season.
 *
 * @param line with the file as seen from the season's folder
 * @param curve null where there is none
 */
record SeasonRow(OverviewLine line, BatchSeries curve) {

  /** A path as it is seen from a folder, with / between folders. */
  static String seenFrom(Path folder, Path file) {
    Path full = file.toAbsolutePath().normalize();
    Path from = folder.toAbsolutePath().normalize();
    boolean together = full.getRoot() != null && full.getRoot().equals(from.getRoot());
    Path seen = together ? from.relativize(full) : full;
    return seen.toString().replace(seen.getFileSystem().getSeparator(), "/");
  }

  /** The link to its file. */
  URI link() {
    String path = line.file();
    try {
      return new URI(
          null, null, path.startsWith("/") || path.startsWith(".") ? path : "./" + path, null);
    } catch (URISyntaxException unspeakable) {
      throw new IllegalStateException(unspeakable);
    }
  }
}
