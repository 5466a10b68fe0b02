package washbook.runner.attack;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import washbook.runner.TestLogs;

/** A folder with logs, the program in processes of its own, and what a run does to the folder. */
final class Attack {
  /** How many moments of each scenario are tried; 0 is all. */
  static final int MOMENTS = Integer.getInteger("washbook.attacks", 3);

  /** {@code 3/8} is the third of eight parts of the moments, so that the matrix can be divided. */
  private static final String[] PART =
      System.getProperty("washbook.attacks.part", "1/1").split("/");

  /** One script runs the program several times, and the long runs share the machine with others. */
  private static final int LONGEST_SECONDS = MOMENTS == 0 ? 280 : 120;

  static final boolean SUPERUSER = System.getProperty("user.name").equals("root");
  private static final String FAULTS = "/washbook/runner/attack/faults.c";

  private final Path folder;

  Attack(Path folder) {
    this.folder = folder;
  }

  /** All of them (or of a part of them), or some chosen by lot, always the same. */
  static List<Integer> moments(int calls, int wanted, String seed) {
    int first = Integer.parseInt(PART[0]) % Integer.parseInt(PART[1]);
    List<Integer> all = new ArrayList<>();
    for (int at = 1; at <= calls; at++) {
      if (at % Integer.parseInt(PART[1]) == first) {
        all.add(at);
      }
    }
    if (wanted == 0 || wanted >= all.size()) {
      return all;
    }
    Collections.shuffle(all, new Random(seed.hashCode() + calls));
    return all.subList(0, wanted);
  }

  /** Three small logs and some more. */
  static void logs(Path logs, int more) throws IOException {
    for (int i = 0; i < more; i++) {
      TestLogs.plain(logs.resolve("more/log " + i + ".xlsx"), 1.060 + i * 0.001, 40);
    }
    logs(logs);
  }

  /** Three small logs. */
  static void logs(Path logs) throws IOException {
    TestLogs.plain(logs.resolve("apple.xlsx"), 1.060, 9);
    TestLogs.plain(logs.resolve("inner/plum.xlsx"), 1.085, 9);
    Files.writeString(
        logs.resolve("sugar.csv"), "Day,SG,Temp C\n0,1.085,20\n1,1.080,21\n2,1.070,21\n");
  }

  /** How the program is started. */
  static List<String> program() {
    return program("washbook.runner.cli.Main");
  }

  /** How a class with a main method is started, with the memory that the program gets here. */
  static List<String> program(String main) {
    List<String> words = new ArrayList<>();
    words.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    words.addAll(
        List.of("-Xmx128m", "-Xshare:auto", "-XX:TieredStopAtLevel=1", "-XX:-UsePerfData"));
    words.addAll(List.of("-cp", System.getProperty("java.class.path")));
    words.add(main);
    return words;
  }

  /** The same for a shell. */
  static String shellProgram() {
    return String.join(
        " ", program().stream().map(word -> "'" + word.replace("'", "'\\''") + "'").toList());
  }

  /** EIO, ENOSPC, EDQUOT, EINTR, EPERM. */
  static Map<String, Integer> errors() {
    Map<String, Integer> errors = new LinkedHashMap<>();
    errors.put("EIO", 5);
    errors.put("ENOSPC", 28);
    errors.put("EDQUOT", 122);
    errors.put("EINTR", 4);
    errors.put("EPERM", 1);
    return errors;
  }

  /** The library that makes system calls fail, built here; a test without a compiler is skipped. */
  static Path faults(Path folder) throws IOException, InterruptedException {
    Path source = folder.resolve("faults.c");
    try (InputStream in = Attack.class.getResourceAsStream(FAULTS)) {
      Files.copy(in, source);
    }
    Path library = folder.resolve("faults.so");
    try {
      Process gcc =
          new ProcessBuilder(
                  "gcc",
                  "-O1",
                  "-shared",
                  "-fPIC",
                  "-o",
                  library.toString(),
                  source.toString(),
                  "-ldl")
              .inheritIO()
              .start();
      assertTrue(gcc.waitFor(60, TimeUnit.SECONDS) && gcc.exitValue() == 0, "gcc");
    } catch (IOException missing) {
      assumeTrue(false, "no C compiler on this machine");
    }
    return library;
  }

  /** The program, whose call of this number fails with this error, or is the last where it is 0. */
  interface Struck {
    Ended run(int at, int error, String... command) throws IOException, InterruptedException;
  }

  /** What a run said and how it ended; 137 is killed. */
  record Ended(int code, String said) {}

  Ended run(Path here, Map<String, String> environment, String... arguments)
      throws IOException, InterruptedException {
    List<String> words = program();
    words.addAll(List.of(arguments));
    return start(here, environment, words);
  }

  /** The same, with the n-th call that writes in the folder failing (0 kills); calls are logged. */
  Ended runWithFault(Path here, Path library, int at, int error, Path log, String... arguments)
      throws IOException, InterruptedException {
    return run(here, faultAt(here, library, at, error, log), arguments);
  }

  /** What the library reads. */
  static Map<String, String> faultAt(Path here, Path library, int at, int error, Path log)
      throws IOException {
    Map<String, String> environment = new TreeMap<>();
    environment.put("LD_PRELOAD", library.toString());
    environment.put("FAULT_FOLDER", here.toRealPath().toString());
    environment.put("FAULT_AT", Integer.toString(at));
    environment.put("FAULT_ERRNO", Integer.toString(error));
    if (log != null) {
      environment.put("FAULT_LOG", log.toString());
    }
    return environment;
  }

  /** A process that runs one command after the other, which saves Java's start. */
  LivingRunner living(Path here, Map<String, String> environment) throws IOException {
    Map<String, String> all = new TreeMap<>(environment);
    all.put("XDG_STATE_HOME", folder.resolve("state").toString());
    return new LivingRunner(here, all);
  }

  Ended sh(String script) throws IOException, InterruptedException {
    return start(folder, Map.of(), List.of("/bin/sh", "-c", script));
  }

  private Ended start(Path here, Map<String, String> environment, List<String> words)
      throws IOException, InterruptedException {
    Path said = Files.createTempFile(folder, "said", ".txt");
    ProcessBuilder builder = new ProcessBuilder(words).directory(here.toFile());
    builder.environment().put("XDG_STATE_HOME", folder.resolve("state").toString());
    builder.environment().putAll(environment);
    Process process = builder.redirectErrorStream(true).redirectOutput(said.toFile()).start();
    try {
      assertTrue(
          process.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS),
          "it hangs: " + Files.readString(said));
      return new Ended(process.exitValue(), Files.readString(said));
    } finally {
      process.descendants().forEach(ProcessHandle::destroyForcibly);
      process.destroyForcibly();
      Files.deleteIfExists(said);
    }
  }

  /** The files below a folder and what is in them. */
  static Map<String, byte[]> contents(Path of) throws IOException {
    Map<String, byte[]> all = new TreeMap<>();
    if (!Files.exists(of)) {
      return all;
    }
    try (Stream<Path> files = Files.walk(of)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        all.put(of.relativize(file).toString(), Files.readAllBytes(file));
      }
    }
    return all;
  }

  /**
   * Takes out all that is in a folder; the folder itself stays, since processes are at home in it.
   */
  static void empty(Path of) throws IOException {
    try (Stream<Path> files = Files.walk(of)) {
      for (Path file : files.sorted((a, b) -> b.compareTo(a)).toList()) {
        if (!file.equals(of)) {
          Files.delete(file);
        }
      }
    }
  }
}
