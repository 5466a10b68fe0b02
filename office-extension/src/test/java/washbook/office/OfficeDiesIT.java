package washbook.office;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import washbook.office.testing.Office;

/** No office outlives the program that started it, however that ends. */
class OfficeDiesIT {

  /** Starts an office, says which processes it has, and waits to be killed. */
  public static final class Victim {
    private Victim() {}

    public static void main(String[] arguments) throws IOException {
      Office office = Office.on(Path.of(arguments[0]));
      StringBuilder line = new StringBuilder("started");
      office.processes().forEach(p -> line.append(' ').append(p.pid()));
      System.out.println(line);
      assertEquals(-1, System.in.read());
    }
  }

  @Test
  void whenTheTestProgramIsKilled() throws Exception {
    Path profile = Office.freshProfile();
    Process victim =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                Victim.class.getName(),
                profile.toString())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    try (BufferedReader out =
        new BufferedReader(
            new InputStreamReader(victim.getInputStream(), StandardCharsets.UTF_8))) {
      String line = out.readLine();
      assertTrue(line != null && line.startsWith("started "), line);
      List<Long> pids = Stream.of(line.split(" ", -1)).skip(1).map(Long::valueOf).toList();
      assertFalse(pids.isEmpty());
      assertTrue(pids.stream().anyMatch(OfficeDiesIT::runs));
      victim.destroyForcibly().waitFor();
      for (int i = 0; i < 200 && pids.stream().anyMatch(OfficeDiesIT::runs); i++) {
        TimeUnit.MILLISECONDS.sleep(50);
      }
      assertTrue(pids.stream().noneMatch(OfficeDiesIT::runs), line);
    } finally {
      victim.destroyForcibly();
      Office.delete(profile);
    }
  }

  private static boolean runs(long pid) {
    return ProcessHandle.of(pid).filter(ProcessHandle::isAlive).isPresent();
  }
}
