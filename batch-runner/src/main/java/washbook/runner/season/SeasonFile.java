package washbook.runner.season;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import washbook.log.language.Language;
import washbook.log.language.Message;
import washbook.log.sheet.Grid;
import washbook.log.understand.SeasonSheet;
import washbook.runner.FileFormats;
import washbook.runner.file.UnfinishedFile;
import washbook.runner.file.UnusableFileException;
import washbook.runner.report.CsvHeads;
import washbook.runner.report.OverviewColumn;
import washbook.runner.report.ReportPlace;
import washbook.runner.run.FileStamp;

/** The file that holds the season; its ending says of which kind it is. */
public final class SeasonFile {
  private static final List<String> KINDS = List.of("xlsx", "ods", "csv", "html", "json");

  /** How many bytes tell a page of ours from another file. */
  private static final int BEGIN = 1024;

  private SeasonFile() {}

  public static boolean canWrite(Path file) {
    return KINDS.contains(kind(file));
  }

  /** Why a file cannot be put in that place; "" when it can. */
  public static Message reasonAgainst(Path file) {
    if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      return Message.NONE;
    }
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      return UnusableFileException.message("there.notPlain");
    }
    try {
      return isOurs(file) ? Message.NONE : UnusableFileException.message("there.noSeason");
    } catch (IOException | RuntimeException unreadable) {
      return UnusableFileException.message("there.unreadable");
    }
  }

  private static boolean isOurs(Path file) throws IOException {
    switch (kind(file)) {
      case "html", "json":
        try (InputStream in = Files.newInputStream(file)) {
          String begin = new String(in.readNBytes(BEGIN), StandardCharsets.UTF_8);
          return kind(file).equals("json")
              ? begin.replaceAll("\\s", "").startsWith("{\"season\":[")
              : Arrays.stream(Language.values())
                  .anyMatch(one -> begin.contains("<title>" + SeasonSheet.title(one) + "<"));
        }
      default:
        for (Grid grid : FileFormats.of(file).reader().read(file)) {
          if (isTable(grid)) {
            return true;
          }
        }
        return false;
    }
  }

  static boolean isTable(Grid grid) {
    return SeasonSheet.isTitle(grid.text(0, 0));
  }

  /**
   * Writes the season in place of an older one, whose further columns are kept.
   *
   * @param logs those may read the season who may read all of them
   */
  public static void write(Season season, Path file, List<Path> logs) throws IOException {
    boolean replaces = Files.exists(file, LinkOption.NOFOLLOW_LINKS);
    if (replaces && isOpen(file)) {
      throw UnusableFileException.of("season.open");
    }
    Message against = reasonAgainst(file);
    if (!against.isBlank()) {
      throw UnusableFileException.of("there", UnusableFileException.quoted(file), against);
    }
    FileStamp before = replaces ? FileStamp.of(file) : null;
    ReportPlace place = ReportPlace.about(file, logs);
    try (UnfinishedFile unfinished = UnfinishedFile.beside(file)) {
      Path to = unfinished.path();
      switch (kind(file)) {
        case "xlsx" -> SeasonXlsx.write(season, older(file, replaces), replaces ? file : null, to);
        case "ods" -> SeasonOds.write(season, older(file, replaces), replaces ? file : null, to);
        case "csv" ->
            SeasonCsv.write(
                season, replaces ? OlderSeason.read(file, CsvHeads::of) : OlderSeason.none(), to);
        case "html" -> SeasonHtml.write(season, to);
        default -> SeasonJson.write(season, to);
      }
      unfinished.check();
      check(season, file, to);
      unfinished.permit(place.readers(), false);
      unfinished.force();
      if (replaces && !FileStamp.of(file).equals(before)) {
        throw UnusableFileException.of("season.changed");
      }
      unfinished.place();
      unfinished.forceFolder();
    }
  }

  private static OlderSeason older(Path file, boolean replaces) throws IOException {
    return replaces ? OlderSeason.read(file, OverviewColumn::head) : OlderSeason.none();
  }

  /** Reads a workbook back. */
  private static void check(Season season, Path file, Path written) throws IOException {
    if (List.of("xlsx", "ods", "csv").contains(kind(file))) {
      for (Grid grid : FileFormats.of(written).reader().read(written)) {
        if (isTable(grid) && grid.rowCount() > season.rows().size()) {
          return;
        }
      }
      throw UnusableFileException.of("readBack.season");
    }
  }

  private static boolean isOpen(Path file) {
    String name = file.getFileName().toString();
    return Stream.of(".~lock." + name + "#", "~$" + name)
        .anyMatch(lock -> Files.exists(file.resolveSibling(lock)));
  }

  private static String kind(Path file) {
    String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
    return name.substring(name.lastIndexOf('.') + 1);
  }
}
