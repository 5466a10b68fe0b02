package washbook.runner.season;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import washbook.log.WarningLimits;
import washbook.runner.language.Wording;
import washbook.runner.report.FileReport;

/** Keeps the season's file up to date while logs change. */
public final class SeasonKeeper {
  private final Path file;
  private final WarningLimits limits;
  private final Wording words;
  private final Map<String, FileReport> reports = new TreeMap<>();
  private LocalDate written;
  private boolean changed;

  public SeasonKeeper(Path file, WarningLimits limits, Wording words) {
    this.file = file;
    this.limits = limits;
    this.words = words;
  }

  /** Takes what is known of one log now. */
  public void add(FileReport report) {
    reports.put(report.path(), report);
    changed = true;
  }

  /** Writes the season when a log or the day is another than at the last time. */
  public void update(LocalDate today) throws IOException {
    boolean gone = reports.keySet().removeIf(path -> !Files.exists(Path.of(path)));
    if (changed || gone || written != null && !today.equals(written)) {
      write(today);
      written = today;
      changed = false;
    }
  }

  /** What stands in the season. */
  public Season write(LocalDate today) throws IOException {
    Path folder = file.toAbsolutePath().getParent();
    Season season = Season.of(reports.values(), folder, today, limits, words);
    List<Path> logs = reports.keySet().stream().map(Path::of).filter(Files::exists).toList();
    SeasonFile.write(season, file, logs);
    return season;
  }
}
