package washbook.runner.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.stream.Stream;
import washbook.runner.FileFormats;

/** What the child does with inputs other than logs to fill. */
final class FuzzOthers {
  private FuzzOthers() {}

  static String answer(String mode, Path file, Path out) throws IOException {
    Cli done =
        switch (mode) {
          case "prepare" -> prepare(file);
          case "audit" -> Cli.run("audit", text(file), "--report", text(out.resolve("r.html")));
          case "portable" -> portable(file, out);
          case "map" -> Cli.run("explain", text(log(file)), "--map", text(file));
          case "journal" -> journal(file, out);
          case "merge" ->
              Cli.run("report", "merge", text(file), "--out", text(out.resolve("r.html")));
          default -> throw new IllegalArgumentException(mode);
        };
    return done.code() + "\t-\t" + FuzzChild.oneLine(done.out() + done.err());
  }

  /** Makes, beside a whole log, what is damaged later. */
  private static Cli prepare(Path log) throws IOException {
    Path whole = log.getParent();
    Path samples = Path.of("../sample-sheets/samples");
    for (String kind : List.of("xlsx", "ods")) {
      Path copies = whole.resolve("copies-" + kind);
      Path sample = sample(samples, kind);
      Cli.run("fill", text(sample), "--as", "pack", "--out", text(copies));
      try (Stream<Path> made = Files.list(copies)) {
        Files.copy(made.findFirst().orElseThrow(), whole.resolve("pack." + kind));
      }
    }
    Cli.run("explain", text(log), "--write-map", text(whole.resolve("map.txt")));
    Cli.run(fill(log, whole.resolve("journal.txt"), whole.resolve("out")));
    Path report = whole.resolve("report.json");
    Cli.run("fill", text(log), "--dry-run", "--report", text(report));
    Files.move(report, whole.resolve("merge.txt"));
    return new Cli(0, "prepared", "");
  }

  private static Path sample(Path samples, String kind) throws IOException {
    try (Stream<Path> files = Files.walk(samples)) {
      return files
          .filter(f -> f.toString().endsWith("." + kind))
          .sorted()
          .findFirst()
          .orElseThrow();
    }
  }

  private static Cli portable(Path file, Path out) throws IOException {
    Path copy = Files.copy(file, out.resolve(file.getFileName()));
    Cli done = Cli.run("portable", text(copy));
    try (Stream<Path> made = Files.list(out)) {
      for (Path result : made.filter(f -> f.toString().contains(".portable.")).toList()) {
        if (FileFormats.of(result).reader().read(result).isEmpty()) {
          throw new IllegalStateException("the copy has no sheet");
        }
      }
    }
    return done;
  }

  private static Cli journal(Path file, Path out) throws IOException {
    Path journal = Files.copy(file, out.resolve("j.jsonl"), StandardCopyOption.REPLACE_EXISTING);
    Cli done = Cli.run(fill(log(file), journal, out.resolve("results")));
    boolean whole = Files.exists(out.resolve("results/log.csv"));
    return done.code() == 0 && !whole && !done.out().contains("earlier run")
        ? new Cli(99, "nothing was made: " + done.out(), "")
        : done;
  }

  private static String[] fill(Path log, Path journal, Path out) {
    return new String[] {
      "fill", text(log), "--journal", text(journal), "--continue", "--out", text(out)
    };
  }

  private static Path log(Path damaged) {
    return damaged.resolveSibling("whole").resolve("log.csv");
  }

  private static String text(Path path) {
    return path.toString();
  }
}
