package washbook.runner.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Stream;

/** The whole files that are damaged: the samples, the invented logs, and the corpus if there is. */
final class FuzzSeeds {
  private static final int LARGEST = 120_000;
  private static final List<String> EXTENSIONS =
      List.of("xlsx", "xlsm", "ods", "xls", "csv", "tsv");

  private final List<Path> files = new ArrayList<>();
  private final List<byte[]> contents = new ArrayList<>();
  private final int own;

  /** One damaged file. */
  record Damaged(Path seed, String extension, byte[] bytes) {}

  FuzzSeeds() throws IOException {
    Path samples = Path.of("../sample-sheets");
    add(samples.resolve("samples"));
    add(samples.resolve("starters"));
    add(samples.resolve("src/test/resources/corpus"));
    own = files.size();
    for (Path parent = Path.of("").toAbsolutePath(); parent != null; parent = parent.getParent()) {
      Path corpus = parent.resolve("shared/corpus/workbooks");
      if (Files.isDirectory(corpus)) {
        add(corpus);
        break;
      }
    }
  }

  private void add(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      System.out.println("fuzzing without " + folder);
      return;
    }
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.sorted().toList()) {
        if (EXTENSIONS.contains(extension(file)) && Files.size(file) <= LARGEST) {
          files.add(file);
          contents.add(Files.readAllBytes(file));
        }
      }
    }
  }

  int size() {
    return files.size();
  }

  /** Formats take turns; within one the seed file is drawn, mostly a log. */
  Damaged damaged(long number) {
    Random random = new Random(number * 0x9E3779B97F4A7C15L + 8);
    List<List<String>> turns =
        List.of(List.of("xlsx", "xlsm"), List.of("ods"), List.of("xls"), List.of("csv", "tsv"));
    List<String> wanted = turns.get((int) (number % turns.size()));
    boolean ownOnly = random.nextInt(4) > 0;
    List<Integer> fitting = new ArrayList<>();
    for (int i = 0; i < (ownOnly ? own : files.size()); i++) {
      if (wanted.contains(extension(files.get(i)))) {
        fitting.add(i);
      }
    }
    int chosen = fitting.get(random.nextInt(fitting.size()));
    byte[] other = contents.get(fitting.get(random.nextInt(fitting.size())));
    String extension = extension(files.get(chosen));
    byte[] bytes = contents.get(chosen);
    int rounds = random.nextInt(4) == 0 ? 2 : 1;
    for (int i = 0; i < rounds; i++) {
      bytes =
          switch (extension) {
            case "csv", "tsv" ->
                random.nextInt(4) == 0
                    ? ByteDamage.some(bytes, random)
                    : TextDamage.table(bytes, random);
            case "xls" -> ByteDamage.some(bytes, random);
            default ->
                random.nextInt(4) == 0
                    ? ByteDamage.some(bytes, random)
                    : ZipDamage.some(bytes, other, random);
          };
    }
    return new Damaged(files.get(chosen), extension, bytes);
  }

  private static String extension(Path file) {
    String name = file.getFileName().toString();
    return name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
  }
}
