package washbook.runner.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Damaged workbooks through portable and audit, damaged maps, journals and reports through the
 * commands that read them: each is used or refused with a reason, within ten seconds and 256 MB.
 * They come from numbers: {@code -Dwashbook.fuzz.others.first=N -Dwashbook.fuzz.others=1}.
 */
final class OtherInputsFuzzTest {
  private static final int EACH = Integer.getInteger("washbook.fuzz.others", 40);
  private static final int FIRST = Integer.getInteger("washbook.fuzz.others.first", 0);

  private static final Pattern UNCLEAR =
      Pattern.compile(
          "Exception|Error\\b|out of bounds|Cannot invoke|because \"|\\bnull\\b|washbook\\.runner|poi\\.|java\\.");

  private static final String LOG = "Day,SG,Temp C\n0,1.085,20\n1,1.080,21\n2,1.070,21\n";

  @TempDir private Path folder;

  private final Map<String, Integer> outcomes = new TreeMap<>();
  private final List<String> failures = new ArrayList<>();

  @Test
  void whateverIsReadIsUsedOrRefusedWithAReason() throws Exception {
    FuzzSeeds seeds = new FuzzSeeds();
    try (FuzzProcess process = new FuzzProcess(folder)) {
      Path whole = folder.resolve("whole");
      Path log = Files.writeString(Files.createDirectories(whole).resolve("log.csv"), LOG);
      String prepared = process.prepare(log);
      assertTrue(prepared.startsWith("0\t"), prepared);
      for (int number = FIRST; number < FIRST + EACH; number++) {
        Random random = new Random(number * 0x9E3779B97F4A7C15L + 9);
        FuzzSeeds.Damaged damaged = seeds.damaged(number);
        ask(process, "audit", number, damaged.extension(), damaged.bytes());
        String kind = number % 2 == 0 ? "xlsx" : "ods";
        byte[] packed = Files.readAllBytes(whole.resolve("pack." + kind));
        ask(process, "portable", number, kind, ZipDamage.some(packed, packed, random));
        for (String mode : List.of("map", "journal", "merge")) {
          byte[] text = Files.readAllBytes(whole.resolve(mode + ".txt"));
          ask(process, mode, number, "txt", damagedText(text, random));
        }
      }
    }
    String figures = EACH + " damaged inputs each, from " + FIRST + " on: " + outcomes;
    System.out.println(figures);
    Files.writeString(
        Path.of("target/fuzz-others.txt"), figures + "\n" + String.join("\n", failures) + "\n");
    assertEquals(List.of(), failures);
  }

  private static byte[] damagedText(byte[] text, Random random) {
    byte[] bytes = text;
    for (int i = 0; i <= random.nextInt(3); i++) {
      bytes =
          random.nextInt(3) == 0 ? ByteDamage.some(bytes, random) : TextDamage.table(bytes, random);
    }
    return bytes;
  }

  private void ask(FuzzProcess process, String mode, int number, String extension, byte[] bytes)
      throws IOException, InterruptedException {
    Path file = Files.write(folder.resolve(mode + number + "." + extension), bytes);
    String[] answer = process.ask(mode, file).split("\t", 3);
    boolean known = List.of("0", "1", "2", "3", "4").contains(answer[0]);
    outcomes.merge(mode + " exit " + answer[0], 1, Integer::sum);
    if (!known || UNCLEAR.matcher(answer[2]).find()) {
      failures.add(mode + " " + number + ": " + answer[0] + " " + answer[2]);
      Files.write(
          Files.createDirectories(Path.of("target/fuzz-others")).resolve(mode + number), bytes);
    }
    if (!Arrays.equals(bytes, Files.readAllBytes(file)) && !mode.equals("journal")) {
      failures.add(mode + " " + number + ": the input was changed");
    }
    Files.delete(file);
  }
}
