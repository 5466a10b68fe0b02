package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Texts in a text table that a spreadsheet program would take for formulas. */
final class HostileTextTest {
  @TempDir private Path folder;

  @Test
  void textOfATableNeverBecomesAFormula() throws IOException {
    for (String evil :
        new String[] {"=1+1", "+1+1", "-1+1", "@SUM(A1)", "\t=1+1", "\r=1+1", "＝1+1"}) {
      String quoted = '"' + evil + '"';
      Path file =
          Files.writeString(
              folder.resolve("evil.csv"),
              "Day,SG,Temp C,Batch,Note\n0,1.085,20,"
                  + quoted
                  + ","
                  + quoted
                  + "\n3,1.2,"
                  + "20,"
                  + quoted
                  + ",x\n6,1.02,20,"
                  + quoted
                  + ",x\n9,1.005,20,"
                  + quoted
                  + ",x\n");
      Path report = folder.resolve("report.csv");
      Cli done = Cli.run("fill", file.toString(), "--report", report.toString());
      assertTrue(done.code() <= 1, done.out() + done.err());
      String before = Files.readString(file);
      String after = Files.readString(folder.resolve("evil.filled.csv"));
      String[] old = before.split("\n");
      String[] now = after.split("\n");
      assertEquals(old.length, now.length);
      for (int i = 0; i < old.length; i++) {
        assertTrue(now[i].startsWith(old[i]), "the log's own text was changed: " + now[i]);
        for (String field : now[i].substring(old[i].length()).split(",")) {
          assertFalse(field.matches("(?s)\"?[=+@\t\r].*"), field);
        }
      }
      for (String line : Files.readString(report).split("\r\n")) {
        for (String field : line.split(",")) {
          assertFalse(field.matches("(?s)\"?[=+@\t\r＝].*|\"?-[^0-9].*"), line);
        }
      }
      Files.delete(folder.resolve("evil.filled.csv"));
    }
  }
}
