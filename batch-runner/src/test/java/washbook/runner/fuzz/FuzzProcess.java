package washbook.runner.fuzz;

import java.io.BufferedReader;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import washbook.runner.cli.FuzzChild;

/** The child process, which is restarted after it hung or died. */
final class FuzzProcess implements Closeable {
  private static final String DIED = "died";

  private final Path folder;
  private Process process;
  private BlockingQueue<String> answers;
  private int starts;

  FuzzProcess(Path folder) {
    this.folder = folder;
  }

  /** The answer on a file; "hung" after ten seconds, "died" when the process ended. */
  String ask(Path file) throws IOException, InterruptedException {
    return ask("fill", file);
  }

  /** The same for another command. */
  String ask(String mode, Path file) throws IOException, InterruptedException {
    return ask(mode, file, 10);
  }

  /** What goes before the questions; it is none of them and may take longer. */
  String prepare(Path file) throws IOException, InterruptedException {
    return ask("prepare", file, 120);
  }

  private String ask(String mode, Path file, int seconds) throws IOException, InterruptedException {
    if (process == null || !process.isAlive()) {
      start();
    }
    Writer to = process.outputWriter(StandardCharsets.UTF_8);
    to.write(mode + "\t" + file + "\n");
    to.flush();
    String answer = answers.poll(seconds, TimeUnit.SECONDS);
    if (answer == null || answer.equals(DIED)) {
      close();
      return answer == null
          ? "hung\t-\tno answer within " + seconds + " s"
          : "died\t-\tthe process ended";
    }
    return answer;
  }

  private void start() throws IOException {
    List<String> command =
        List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-Xmx256m",
            "-XX:+UseSerialGC",
            "-XX:TieredStopAtLevel=1",
            "-cp",
            System.getProperty("java.class.path"),
            FuzzChild.class.getName(),
            folder.resolve("run" + starts++).toString());
    Process started =
        new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
    BlockingQueue<String> queue = new LinkedBlockingQueue<>();
    Thread reader = new Thread(() -> read(started, queue), "answers");
    reader.setDaemon(true);
    reader.start();
    process = started;
    answers = queue;
  }

  private static void read(Process from, BlockingQueue<String> to) {
    try (BufferedReader in =
        new BufferedReader(new InputStreamReader(from.getInputStream(), StandardCharsets.UTF_8))) {
      for (String line = in.readLine(); line != null; line = in.readLine()) {
        to.add(line);
      }
    } catch (IOException ended) {
      // The same as the end of the stream.
    }
    to.add(DIED);
  }

  @Override
  public void close() {
    if (process != null) {
      process.destroyForcibly();
      process = null;
    }
  }
}
