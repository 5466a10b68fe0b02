package washbook.samples.generator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Recognition measured on made logs, whose truth is known because they were made from it. {@code
 * -Dwashbook.logs=20000} makes more of them, {@code -Dwashbook.seed=7} others; {@code
 * -Dwashbook.log=1/42} prints number 42 of seed 1 with its truth and what the program made of it.
 */
class GeneratedLogsTest {
  static final long SEED = Long.getLong("washbook.seed", 1);
  private static final int LOGS = Integer.getInteger("washbook.logs", Allowed.LOGS);
  private static final Path REPORT = Path.of("target/generated-logs.txt");

  @Test
  void noMoreIsWrongThanIsAllowed() throws IOException {
    Tally classes = new Tally();
    Tally features = new Tally();
    List<String> wrong = new ArrayList<>();
    List<String> vanished = new ArrayList<>();
    for (int number = 0; number < LOGS; number++) {
      GeneratedLog log = GeneratedLog.of(SEED, number);
      Judgement judgement = Judgement.of(log, Recogniser.look(log.sheet()));
      classes.count(log.group(), judgement);
      log.features().forEach(f -> features.count(f, judgement));
      String name = SEED + "/" + number + " " + log.group() + " " + log.features() + ": ";
      if (!judgement.wrong().isEmpty()) {
        wrong.add(name + judgement.wrong().size() + " x, " + judgement.wrong().get(0));
      }
      if (!judgement.unaccounted().isEmpty()) {
        vanished.add(name + judgement.unaccounted());
      }
    }
    String report =
        LOGS
            + " logs of seed "
            + SEED
            + "\n\n"
            + classes.table()
            + "\nBY FEATURE\n"
            + features.table();
    Files.createDirectories(REPORT.getParent());
    Files.writeString(
        REPORT,
        report
            + "\nWRONG OR WRITTEN INTO ("
            + wrong.size()
            + ")\n"
            + String.join("\n", wrong)
            + "\n\nROWS UNACCOUNTED ("
            + vanished.size()
            + ")\n"
            + String.join("\n", vanished)
            + "\n");
    System.out.println(report);
    List<String> tooMany = new ArrayList<>();
    for (String name : classes.names()) {
      boolean other = name.startsWith("other");
      Judgement.Result worst = other ? Judgement.Result.WRITTEN_INTO : Judgement.Result.WRONG;
      Allowed.compare(name, classes.of(name, worst), Allowed.WRONG, LOGS, tooMany);
      Allowed.compare(name, classes.unaccounted(name), Allowed.UNACCOUNTED, LOGS, tooMany);
    }
    assertEquals(List.of(), tooMany, "see " + REPORT);
  }

  @Test
  void aLogIsMadeAgainFromSeedAndNumber() {
    String[] wanted = System.getProperty("washbook.log", SEED + "/0").split("/");
    long seed = Long.parseLong(wanted[0]);
    int number = Integer.parseInt(wanted[1]);
    GeneratedLog log = GeneratedLog.of(seed, number);
    assertEquals(log.print(), GeneratedLog.of(seed, number).print());
    if (System.getProperty("washbook.log") != null) {
      Seen seen = Recogniser.look(log.sheet());
      System.out.println(log.print());
      seen.questions().forEach(q -> System.out.println("asked: " + q));
      seen.tables().forEach(t -> System.out.println("seen: " + t));
      System.out.println(Judgement.of(log, seen));
    }
  }

  /** The expected figures come from what is written; they must be near what was in the vessel. */
  @Test
  void expectedFiguresAreNearWhatIsInTheVessel() {
    int checked = 0;
    for (int number = 0; number < 600; number++) {
      if (GeneratedLog.isOther(number)) {
        continue;
      }
      FermentLog log = FermentLog.chosen(SEED, number);
      double room = 0.12 + 150 * 1.1 * log.gauge.stepGravity();
      for (List<Line> lines : log.batches) {
        for (Line line : lines) {
          if (!Double.isNaN(line.abv)) {
            double lag = line.abvError + (log.course == Course.Kind.LAG ? 0.2 : 0);
            double second = log.gauge.kind() == Gauge.Kind.REFRACTOMETER ? 0.35 : 0;
            double off = Math.abs(line.abv - line.visit.moment().abv());
            assertTrue(off <= room + lag + second, SEED + "/" + number + ": " + off + " % vol");
            checked++;
          }
        }
      }
    }
    assertTrue(checked > 3000, checked + " rows checked");
  }

  @Test
  void allLanguagesLayoutsAndFortyOtherUsesComeUp() {
    Set<String> seen = new HashSet<>();
    Set<String> uses = new HashSet<>();
    for (int number = 0; number < Allowed.LOGS; number++) {
      GeneratedLog log = GeneratedLog.of(SEED, number);
      seen.add(log.group());
      seen.addAll(log.features());
      log.features().stream().filter(f -> f.startsWith("other ")).forEach(uses::add);
    }
    Words.LANGUAGES.forEach(l -> assertTrue(seen.contains("language " + l), l));
    for (Layout layout : Layout.values()) {
      assertTrue(seen.contains(layout.name()), layout.name());
    }
    for (Dirt dirt : Dirt.values()) {
      assertTrue(seen.contains("dirt " + dirt), dirt.name());
    }
    assertEquals(OtherUse.kinds(), uses.size());
    assertTrue(uses.size() >= 40, uses.size() + " other uses");
  }
}
