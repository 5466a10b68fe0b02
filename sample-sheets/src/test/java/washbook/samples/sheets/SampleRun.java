package washbook.samples.sheets;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The spirit run of Plum 3 as the co-operative noted it. Invented data. */
final class SampleRun {
  static final String FILE = "plum-3-run.csv";

  private static final String TEXT =
      """
      Plum 3 - spirit run,,,,,,
      Charge (L),11.5,,,,,
      Charge strength (% vol),28,,,,,
      ,,,,,,
      Jar,mL,ABV read,Temp C,Head C,Cut,Smell
      1,100,74.6,15.5,84.9,heads,glue
      2,200,74.4,16.0,85.1,heads,sharp
      3,500,73.8,16.5,85.5,hearts,plum
      4,500,72.6,17.0,86.2,hearts,stone
      5,500,71.0,17.5,87.0,hearts,
      6,500,68.4,18.0,88.2,hearts,soft
      7,500,64.1,18.0,90.1,hearts,
      8,500,57.2,18.5,92.2,tails,damp
      9,500,45.0,19.0,94.6,tails,cardboard
      10,500,27.5,,97.2,tails,thermometer in the other jar
      11,300,14.0,19.5,98.6,tails,off
      Total,4600,,,,,
      """;

  private SampleRun() {}

  static void write(Path file) throws IOException {
    Files.writeString(file, TEXT.replace("\n", "\r\n"));
  }
}
