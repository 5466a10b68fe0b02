package washbook.runner.corpus;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import washbook.log.sheet.Grid;
import washbook.log.sheet.SheetPatch;
import washbook.runner.FileFormat;
import washbook.runner.FileFormats;
import washbook.runner.file.UnusableFileException;

/**
 * Reads and patches files in a process of its own with little memory, so that running out of it or
 * hanging is seen. Every format uses it; what may change is told by a {@link ChangeCheck}.
 */
final class CorpusRun {
  /** No file may take longer to be read. */
  private static final int SECONDS = 10;

  private CorpusRun() {}

  /** Runs the files in a new process with 512 MB. */
  static List<CorpusResult> run(List<Path> files, Class<? extends ChangeCheck> check, Path folder)
      throws Exception {
    Path list = folder.resolve("files.txt");
    Path results = folder.resolve("results.txt");
    Files.write(list, files.stream().map(Path::toString).toList());
    Path said = folder.resolve("said.txt");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx512m",
                "-cp",
                System.getProperty("java.class.path"),
                CorpusRun.class.getName(),
                list.toString(),
                results.toString(),
                check.getName())
            .redirectErrorStream(true)
            .redirectOutput(said.toFile())
            .start();
    try {
      if (!process.waitFor(10, TimeUnit.MINUTES) || process.exitValue() != 0) {
        throw new AssertionError("the run did not end well: " + Files.readString(said));
      }
    } finally {
      process.destroyForcibly();
    }
    return Files.readAllLines(results).stream().map(CorpusResult::fromLine).toList();
  }

  /** File with the paths; file for the results; class of the check. */
  public static void main(String[] arguments) throws Exception {
    ChangeCheck check =
        (ChangeCheck) Class.forName(arguments[2]).getDeclaredConstructor().newInstance();
    List<String> lines = new ArrayList<>();
    ExecutorService worker =
        Executors.newSingleThreadExecutor(
            task -> {
              Thread thread = new Thread(task);
              thread.setDaemon(true);
              return thread;
            });
    for (String file : Files.readAllLines(Path.of(arguments[0]))) {
      lines.add(run(Path.of(file), check, worker).toLine());
    }
    Files.write(Path.of(arguments[1]), lines, StandardCharsets.UTF_8);
    System.exit(0);
  }

  private static CorpusResult run(Path file, ChangeCheck check, ExecutorService worker)
      throws Exception {
    String name = file.getFileName().toString();
    FileFormat[] format = new FileFormat[1];
    Future<List<Grid>> reading =
        worker.submit(
            () -> {
              format[0] = FileFormats.of(file);
              return format[0].reader().read(file);
            });
    List<Grid> grids;
    try {
      grids = reading.get(SECONDS, TimeUnit.SECONDS);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof UnusableFileException refused) {
        return new CorpusResult(name, CorpusResult.Kind.REFUSED, refused.getMessage());
      }
      return new CorpusResult(name, CorpusResult.Kind.FAILED, trace(e.getCause()));
    } catch (TimeoutException e) {
      // The reader hangs: nothing more can be learnt in this process.
      System.err.println(name + " is not read within " + SECONDS + " s");
      System.exit(1);
      throw e;
    }
    Path patched = Files.createTempFile("corpus", "." + Corpus.extension(file));
    try {
      List<SheetPatch> patches = ForcedPatch.on(grids);
      format[0].writer().write(file, patches, patched);
      check.check(file, grids, patches, patched, format[0].reader().read(patched));
      return new CorpusResult(name, CorpusResult.Kind.PATCHED, grids.size() + " sheets");
    } catch (UnusableFileException e) {
      return new CorpusResult(name, CorpusResult.Kind.PATCH_REFUSED, e.getMessage());
    } catch (Exception | Error e) {
      return new CorpusResult(name, CorpusResult.Kind.FAILED, trace(e));
    } finally {
      Files.delete(patched);
    }
  }

  private static String trace(Throwable thrown) {
    StringWriter text = new StringWriter();
    thrown.printStackTrace(new PrintWriter(text));
    return text.toString();
  }
}
