package washbook.runner.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import washbook.functions.SafetyNote;
import washbook.runner.FileFormats;

/**
 * A process with little memory that fills the files named on its standard input, one a line after
 * the word for what is done with it, and answers each with {@code CODE<tab>RESULT<tab>MESSAGE}.
 * RESULT is the filled copy or "-".
 */
public final class FuzzChild {
  private FuzzChild() {}

  public static void main(String[] args) throws IOException {
    Path folder = Path.of(args[0]);
    BufferedReader in =
        new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
    int count = 0;
    for (String line = in.readLine(); line != null; line = in.readLine()) {
      String answer;
      try {
        String[] words = line.split("\t", 2);
        Path out = Files.createDirectories(folder.resolve("out" + count));
        answer =
            words[0].equals("fill")
                ? answer(words[1], out, count)
                : FuzzOthers.answer(words[0], Path.of(words[1]), out);
      } catch (Throwable crash) {
        answer = "crash\t-\t" + trace(crash);
      }
      count++;
      System.out.println(answer);
    }
  }

  private static String trace(Throwable crash) {
    StringBuilder trace = new StringBuilder(crash.toString());
    for (int i = 0; i < Math.min(12, crash.getStackTrace().length); i++) {
      trace.append(" / ").append(crash.getStackTrace()[i]);
    }
    return oneLine(trace.toString());
  }

  private static String answer(String file, Path out, int count) throws IOException {
    String report = out.resolve("report." + (count % 2 == 0 ? "html" : "json")).toString();
    Cli done = Cli.run("fill", file, "--out", out.toString(), "--report", report);
    String message = done.out() + done.err();
    if (!Files.exists(Path.of(report))) {
      return "crash\t-\tno report; " + oneLine(message);
    }
    if (count % 4 == 0) {
      Cli audit = Cli.run("audit", file, "--report", report);
      if (audit.code() == 2 || !audit.err().strip().equals(SafetyNote.POINTER)) {
        return "crash\t-\taudit: " + oneLine(audit.out() + audit.err());
      }
    }
    Files.delete(Path.of(report));
    Path made = null;
    try (Stream<Path> files = Files.list(out)) {
      made = files.findFirst().orElse(null);
    }
    if (made != null && FileFormats.of(made).reader().read(made).isEmpty()) {
      return "crash\t-\tthe copy has no sheet";
    }
    return done.code() + "\t" + (made == null ? "-" : made) + "\t" + oneLine(message);
  }

  static String oneLine(String text) {
    String line = text.strip().replaceAll("[\\s\\p{Cntrl}]+", " ");
    return line.substring(0, Math.min(line.length(), 1500));
  }
}
