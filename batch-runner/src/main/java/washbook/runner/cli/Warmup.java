package washbook.runner.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.CatalogueFunction;

/** Uses what a user uses, so that Java can put the classes into an archive for quick starts. */
public final class Warmup {
  private Warmup() {}

  /** Runs every function's example and a fill, quietly. */
  public static void main(String[] args) throws IOException {
    PrintStream nowhere =
        new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
    for (CatalogueFunction function : Catalogue.all()) {
      Stream<String> words = Stream.of("calc", function.name());
      Main.run(
          Stream.concat(words, function.example().stream()).toArray(String[]::new),
          nowhere,
          nowhere);
    }
    Path log = Files.createTempFile("washbook", ".csv");
    try {
      Files.writeString(log, "Day,SG,Temp C\n0,1.085,20\n1,1.080,21\n2,1.070,21\n");
      Main.run(new String[] {"fill", "--dry-run", log.toString()}, nowhere, nowhere);
    } finally {
      Files.delete(log);
    }
  }
}
