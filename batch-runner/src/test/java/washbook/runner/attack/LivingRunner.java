package washbook.runner.attack;

import java.io.BufferedReader;
import java.io.Closeable;
import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import washbook.runner.cli.CommandChild;

/** A process that runs one command after the other, each with its own fault. */
final class LivingRunner implements Closeable {
  private final Process process;
  private final BufferedReader answers;

  LivingRunner(Path here, Map<String, String> environment) throws IOException {
    ProcessBuilder builder =
        new ProcessBuilder(Attack.program(CommandChild.class.getName())).directory(here.toFile());
    builder.environment().putAll(environment);
    process = builder.redirectError(ProcessBuilder.Redirect.DISCARD).start();
    answers = process.inputReader(StandardCharsets.UTF_8);
  }

  /** Runs a command whose n-th call that writes fails with this error; 0 for none. */
  Attack.Ended run(int at, int error, String... command) throws IOException, InterruptedException {
    Writer to = process.outputWriter(StandardCharsets.UTF_8);
    to.write(at + "\t" + error + "\t" + String.join("\t", command) + "\n");
    to.flush();
    String[] answer = answer().split("\t", 2);
    return new Attack.Ended(Integer.parseInt(answer[0]), answer[1]);
  }

  private String answer() throws IOException, InterruptedException {
    CompletableFuture<String> line =
        CompletableFuture.supplyAsync(
            () -> {
              try {
                return answers.readLine();
              } catch (IOException ended) {
                return null;
              }
            });
    try {
      String answer = line.get(120, TimeUnit.SECONDS);
      if (answer == null) {
        throw new IOException("the runner ended");
      }
      return answer;
    } catch (ExecutionException | TimeoutException none) {
      throw new IOException("the runner hangs", none);
    }
  }

  @Override
  public void close() {
    process.destroyForcibly();
  }
}
