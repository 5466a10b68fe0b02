package washbook.runner.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import washbook.log.language.Language;
import washbook.log.language.ToldException;
import washbook.runner.file.FileIdentity;
import washbook.runner.report.ReportPlace;
import washbook.runner.report.Reports;
import washbook.runner.run.Destination;
import washbook.runner.run.FileList;
import washbook.runner.run.Shard;
import washbook.runner.run.WorkItem;

/** How a command goes over many files, and what it reports. */
final class RunArguments {
  /** Holds the shard when the option is not given, for schedulers that set variables. */
  static final String SHARD_VARIABLE = "WASHBOOK_SHARD";

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--threads",
      paramLabel = "N",
      description = "Work on this many files at the same time; by default one for each processor.")
  private Integer threads;

  @Option(
      names = "--shard",
      paramLabel = "I/N",
      description =
          "Do the I-th of N parts of the files, for spreading a job over machines; also taken from"
              + " the environment variable "
              + SHARD_VARIABLE
              + ".")
  private String shard;

  @Option(
      names = "--report",
      paramLabel = "FILE",
      description = "Write a report; the ending .json, .csv or .html says of which kind.")
  private Path report;

  @Option(
      names = "--overwrite",
      description =
          "Let --report replace a file that is no report of this program, and a copy a"
              + " file that is no earlier result; those of ours are replaced in any case.")
  private boolean overwrite;

  @Option(
      names = "--quiet",
      description = "Say only what was refused or failed; the exit code stays the same.")
  private boolean quiet;

  /** Whether files that are not ours may be replaced. */
  boolean overwrites() {
    return overwrite;
  }

  /** Takes an option without a value; false where it is not ours or there already. */
  boolean takes(String option) {
    boolean taken = option.equals("--quiet") && !quiet;
    quiet |= taken;
    return taken;
  }

  boolean quiet() {
    return quiet;
  }

  int threads() {
    if (threads == null) {
      return Runtime.getRuntime().availableProcessors();
    }
    if (threads < 1 || threads > 1024) {
      throw usage("usage.threads");
    }
    return threads;
  }

  Shard shard(Map<String, String> environment) {
    String text = shard != null ? shard : environment.getOrDefault(SHARD_VARIABLE, "");
    try {
      return text.isBlank() ? Shard.WHOLE : Shard.parse(text);
    } catch (ToldException wrong) {
      throw usage("usage.of", shard != null ? "--shard" : SHARD_VARIABLE, wrong.told());
    }
  }

  /** The report's name, or null. */
  Path report(List<Path> files) {
    return report(files, null);
  }

  /** The report's name, or null; its folder is made where it lies in that of the results. */
  Path report(List<Path> files, Path results) {
    if (report == null) {
      return null;
    }
    if (!Reports.canWrite(report)) {
      throw usage("usage.reportEnd", "--report", report);
    }
    Path folder = report.toAbsolutePath().getParent();
    if (!Files.isDirectory(folder) && !(liesIn(results, folder) && isMade(folder))) {
      throw usage("usage.reportFolder", folder);
    }
    FileIdentity own = FileIdentity.of(report);
    for (Path file : files) {
      if (FileIdentity.of(file).equals(own) || FileIdentity.ofTarget(file).equals(own)) {
        throw usage("usage.reportRead", report);
      }
    }
    refuseToReplace(report);
    return report;
  }

  private void refuseToReplace(Path report) {
    boolean plain = Files.isRegularFile(report, LinkOption.NOFOLLOW_LINKS);
    if (!Reports.mayReplace(report) && !(overwrite && plain)) {
      throw usage(plain ? "usage.reportThere" : "usage.notPlain", "--report", report);
    }
  }

  private static boolean liesIn(Path results, Path folder) {
    return results != null && folder.normalize().startsWith(results.toAbsolutePath().normalize());
  }

  private static boolean isMade(Path folder) {
    try {
      return Files.isDirectory(Files.createDirectories(folder));
    } catch (IOException e) {
      return false;
    }
  }

  /** The files to work on; a report that lies in a walked folder is no log. */
  List<WorkItem> files(List<Path> given, Destination destination, Shard shard, Language language) {
    List<WorkItem> items = FileList.of(given, destination, shard, language);
    if (report != null) {
      FileIdentity own = FileIdentity.of(report);
      if (!Reports.mayReplace(report) && items.stream().anyMatch(item -> reads(item, own))) {
        throw usage("usage.reportRead", report);
      }
      items.removeIf(item -> FileIdentity.of(item.file()).equals(own));
      for (WorkItem item : items) {
        if (FileIdentity.of(item.target()).equals(own)) {
          throw usage("usage.reportResult", report, item.shown());
        }
      }
    }
    return items;
  }

  private static boolean reads(WorkItem item, FileIdentity file) {
    return FileIdentity.of(item.file()).equals(file)
        || FileIdentity.ofTarget(item.file()).equals(file);
  }

  /** Where the report goes: those may read it who may read all of the files. */
  ReportPlace place(List<WorkItem> items, Shard part) {
    return ReportPlace.about(report, items.stream().map(WorkItem::file).toList())
        .overwriting(overwrite)
        .ofPart(part.shown());
  }

  private RuntimeException usage(String key, Object... arguments) {
    return WashbookCommand.Wrong.usage(spec, key, arguments);
  }
}
