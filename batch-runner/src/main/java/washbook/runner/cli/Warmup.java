package washbook.runner.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.CatalogueFunction;

/**
 * Does what a user does, so that Java can put the classes into an archive for quick starts: what is
 * missing there costs a small log as much as filling it.
 */
public final class Warmup {
  private static final String CSV = "Day,SG,Temp C\n0,1.085,20\n1,1.080,21\n2,1.070,21\n";

  private static final List<String> WORKBOOKS = List.of("warm-up.xlsx", "warm-up.ods");

  private final PrintStream out;

  private Warmup(PrintStream out) {
    this.out = out;
  }

  /** Runs every function's example, and the commands on a log of each format, quietly. */
  public static void main(String[] args) throws IOException {
    PrintStream nowhere =
        new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
    run(nowhere);
  }

  static void run(PrintStream out) throws IOException {
    Warmup warmup = new Warmup(out);
    for (CatalogueFunction function : Catalogue.all()) {
      List<String> words = new ArrayList<>(List.of("calc", function.name()));
      words.addAll(function.example());
      warmup.command(words.toArray(String[]::new));
    }
    Path folder = Files.createTempDirectory("washbook");
    try {
      warmup.commandsIn(folder);
    } finally {
      try (Stream<Path> left = Files.walk(folder)) {
        for (Path path : left.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(path);
        }
      }
    }
  }

  /**
   * Each is filled beside itself and, twice, into a folder, where the second time finds it done.
   */
  private void commandsIn(Path folder) throws IOException {
    List<Path> logs = new ArrayList<>();
    logs.add(Files.writeString(folder.resolve("warm-up.csv"), CSV));
    for (String name : WORKBOOKS) {
      try (InputStream in = Warmup.class.getResourceAsStream(name)) {
        Path log = folder.resolve(name);
        Files.copy(in, log);
        logs.add(log);
      }
    }
    String results = folder.resolve("out").toString();
    for (Path log : logs) {
      command("fill", log.toString());
      command("fill", log.toString(), "--out", results);
      command("fill", log.toString(), "--out", results);
      command("fill", log.toString(), "--in-place", "--backup");
    }
    command("fill", logs.get(1).toString(), "--as", "pack");
    command("explain", logs.get(1).toString());
    command("audit", logs.get(1).toString());
  }

  private void command(String... words) {
    Main.run(words, out, out);
  }
}
