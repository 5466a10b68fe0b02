package washbook.runner.cli;

import java.io.BufferedReader;
import java.io.FileInputStream;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * A process that runs the commands on its standard input one after the other and answers each with
 * {@code CODE<tab>WHAT IT SAID}. A line is the call that fails, its error and the command's words,
 * separated by tabs.
 */
public final class CommandChild {
  private CommandChild() {}

  public static void main(String[] args) throws IOException {
    BufferedReader in =
        new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
    for (String line = in.readLine(); line != null; line = in.readLine()) {
      String[] words = line.split("\t");
      chooseFault(words[0], words[1]);
      String answer;
      try {
        Cli done = Cli.run(Arrays.copyOfRange(words, 2, words.length));
        answer = done.code() + "\t" + FuzzChild.oneLine(done.out() + done.err());
      } catch (Throwable crash) {
        answer = "70\tException " + FuzzChild.oneLine(crash.toString());
      }
      System.out.println(answer);
    }
  }

  /** The library that makes calls fail knows this name; there is no such file. */
  private static void chooseFault(String at, String error) throws IOException {
    try (FileInputStream none = new FileInputStream("/next-fault/" + at + "/" + error)) {
      throw new IOException("a file where none can be: " + none.getFD());
    } catch (FileNotFoundException asExpected) {
      return;
    }
  }
}
