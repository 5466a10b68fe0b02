package washbook.office.testing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * One office process with everything it starts. It runs in a process group of its own under a shell
 * that ends with it. Beside it a second shell waits on a pipe from this program: when the pipe
 * closes, because the test is over or because this program was killed, it kills the group.
 */
final class OfficeProcess {
  private static final String GUARDED =
      "exec 3<&0; (read -r _ <&3; kill -9 0) & soffice \"$@\" < /dev/null 3<&-; kill -9 0";

  private final Process shell;

  private OfficeProcess(Process shell) {
    this.shell = shell;
  }

  /** Takes variables to be set in its environment. */
  static OfficeProcess start(List<String> arguments, Map<String, String> environment) {
    List<String> command = new ArrayList<>(List.of("setsid", "sh", "-c", GUARDED, "office"));
    command.addAll(arguments);
    requireOffice();
    try {
      ProcessBuilder builder = new ProcessBuilder(command);
      builder.redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD);
      builder.environment().putAll(environment);
      OfficeProcess office = new OfficeProcess(builder.start());
      Runtime.getRuntime().addShutdownHook(new Thread(office::kill));
      return office;
    } catch (IOException e) {
      throw new UncheckedIOException("the office does not start", e);
    }
  }

  static final String LACKS =
      "No LibreOffice was found: there is no program soffice in any directory of the PATH. These"
          + " tests start a real Calc. On Debian: apt-get install --no-install-recommends"
          + " libreoffice-calc libreoffice-java-common";

  static boolean isThere() {
    for (String directory : System.getenv("PATH").split(":", -1)) {
      if (Files.isExecutable(Path.of(directory, "soffice"))) {
        return true;
      }
    }
    return false;
  }

  private static void requireOffice() {
    if (!isThere()) {
      throw new IllegalStateException(LACKS);
    }
  }

  /** The second shell and the office's own processes that still run. */
  List<ProcessHandle> alive() {
    return shell.descendants().filter(ProcessHandle::isAlive).toList();
  }

  /** Waits until the office has ended by itself. */
  boolean endsWithin(int seconds) {
    try {
      return shell.waitFor(seconds, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  void kill() {
    try {
      shell.getOutputStream().close();
      shell.waitFor(10, TimeUnit.SECONDS);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  static void pause() {
    try {
      Thread.sleep(50);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }
}
