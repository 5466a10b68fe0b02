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
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.WorkbookFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.runner.Office;

/**
 * Damaged files through the whole program: each ends as a filled copy that opens again or as a
 * refusal with a reason, within ten seconds and 256 MB, and is itself left as it was. The files
 * come from numbers, so that a failure can be looked at again: {@code -Dwashbook.fuzz.first=N
 * -Dwashbook.fuzz=1}.
 */
final class FuzzTest {
  private static final int FILES = Integer.getInteger("washbook.fuzz", 500);
  private static final long FIRST = Long.getLong("washbook.fuzz.first", 0);

  /** Reasons that a person could not understand. */
  private static final Pattern UNCLEAR =
      Pattern.compile(
          "Exception|Error\\b|out of bounds|Cannot invoke|because \"|\\bnull\\b|washbook\\.|poi\\.|java\\.");

  @TempDir private Path folder;

  private final Map<String, Integer> outcomes = new TreeMap<>();
  private final List<String> failures = new ArrayList<>();
  private final List<Path> filledInputs = new ArrayList<>();
  private final List<Path> filledCopies = new ArrayList<>();

  @Test
  void everyDamagedFileIsFilledOrRefusedWithAReason() throws Exception {
    FuzzSeeds seeds = new FuzzSeeds();
    try (FuzzProcess process = new FuzzProcess(folder)) {
      for (long number = FIRST; number < FIRST + FILES; number++) {
        tryOut(number, seeds.damaged(number), process);
      }
    }
    int byPoi = openedByPoi();
    int byOffice = openedByOffice();
    String figures =
        "%d damaged files from %d seeds: %s; read by POI %d, by the office %d"
            .formatted(FILES, seeds.size(), outcomes, byPoi, byOffice);
    System.out.println(figures);
    Files.createDirectories(Path.of("target"));
    Files.writeString(
        Path.of("target/fuzz.txt"), figures + "\n" + String.join("\n", failures) + "\n");
    assertEquals(List.of(), failures);
    assertTrue(FILES < 100 || filledCopies.size() > FILES / 10, figures);
  }

  private void tryOut(long number, FuzzSeeds.Damaged damaged, FuzzProcess process)
      throws IOException, InterruptedException {
    Path file = folder.resolve("f" + number + "." + damaged.extension());
    Files.write(file, damaged.bytes());
    String[] answer = process.ask(file).split("\t", 3);
    String fault = fault(answer);
    if (!Arrays.equals(damaged.bytes(), Files.readAllBytes(file))) {
      fault = "the input was changed";
    }
    boolean copied = !answer[1].equals("-");
    outcomes.merge("exit " + answer[0] + (copied ? " with a copy" : ""), 1, Integer::sum);
    if (fault != null) {
      failures.add(number + " of " + damaged.seed().getFileName() + ": " + fault);
      System.out.println(failures.get(failures.size() - 1));
    }
    if (copied) {
      filledInputs.add(file);
      filledCopies.add(Path.of(answer[1]));
    } else {
      Files.delete(file);
    }
  }

  private static String fault(String[] answer) {
    String message = answer[2];
    switch (answer[0]) {
      case "0", "1", "3", "4" -> {
        if (message.isEmpty()) {
          return "no message";
        }
        return !answer[0].equals("0") && UNCLEAR.matcher(message).find()
            ? "unclear reason: " + message
            : null;
      }
      default -> {
        return answer[0] + ": " + message;
      }
    }
  }

  /** What another library can read before it must read after. */
  private int openedByPoi() {
    int opened = 0;
    int step = Math.max(1, filledCopies.size() / 1000);
    for (int i = 0; i < filledCopies.size(); i += step) {
      Path input = filledInputs.get(i);
      if (!input.toString().matches(".*\\.xls[xm]?") || !poiReads(input)) {
        continue;
      }
      opened++;
      if (!poiReads(filledCopies.get(i))) {
        failures.add("POI reads " + input.getFileName() + ", but not its filled copy");
      }
    }
    return opened;
  }

  private static boolean poiReads(Path file) {
    try (var book = WorkbookFactory.create(file.toFile(), null, true)) {
      return book.getNumberOfSheets() > 0;
    } catch (IOException | RuntimeException | StackOverflowError unreadable) {
      return false;
    }
  }

  /** A few are opened by the office, eight in one go; some damaged originals make it give up. */
  private int openedByOffice() throws InterruptedException {
    int wanted = Math.min(Math.max(8, FILES / 100), 200);
    int step = Math.max(1, filledCopies.size() / wanted);
    int opened = 0;
    for (int i = 0; i < filledCopies.size(); i += 8 * step) {
      List<Path> inputs = new ArrayList<>();
      List<Path> copies = new ArrayList<>();
      for (int j = i; j < Math.min(i + 8 * step, filledCopies.size()); j += step) {
        inputs.add(filledInputs.get(j));
        copies.add(filledCopies.get(j));
      }
      Office office = new Office(folder);
      List<String> before;
      try {
        before = office.converted(inputs);
      } catch (IOException gaveUp) {
        continue;
      }
      try {
        List<String> lost = new ArrayList<>(before);
        lost.removeAll(office.converted(copies));
        lost.forEach(
            name -> failures.add("the office reads " + name + ", but not its filled copy"));
      } catch (IOException gaveUp) {
        failures.add("the office gives up on one of " + copies);
      }
      opened += before.size();
    }
    return opened;
  }
}
