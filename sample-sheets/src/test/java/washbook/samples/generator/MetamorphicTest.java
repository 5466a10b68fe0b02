package washbook.samples.generator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntUnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What says nothing about the readings changes no figure; what says everything does. */
class MetamorphicTest {
  private static final int FERMENTS = Integer.getInteger("washbook.changed", 400);
  private static final Path REPORT = Path.of("target/metamorphic.txt");

  /** A sheet with its name for the report. */
  private record Named(String name, Words words, Sheet sheet) {}

  private final Map<String, List<String>> broken = new TreeMap<>();

  @Test
  void whatSaysNothingAboutTheReadingsChangesNoFigure() throws IOException {
    for (Change change : Change.values()) {
      broken.put("made " + change, new ArrayList<>());
      broken.put("corpus " + change, new ArrayList<>());
    }
    int tried = 0;
    for (Named log : made()) {
      tried += change("made ", log);
    }
    for (Named log : corpus()) {
      tried += change("corpus ", log);
    }
    assertTrue(tried > 2500, tried + " changes tried");
    report("changes.txt");
  }

  private int change(String origin, Named log) {
    Seen before = Recogniser.look(log.sheet());
    Seen.Table table =
        before.tables().stream().filter(Seen.Table::settled).findFirst().orElse(null);
    if (table == null || before.across()) {
      return 0;
    }
    int tried = 0;
    for (Change change : Change.values()) {
      if (change.fits(log.sheet(), before)) {
        Change.Changed changed =
            change.apply(
                log.sheet(), table, log.words(), Math.floorMod(log.name().hashCode(), 997));
        String difference =
            difference(
                figures(before, changed.row(), changed.column()),
                figures(Recogniser.look(changed.sheet()), r -> r, c -> c));
        if (!difference.isEmpty()) {
          broken.get(origin + change).add(log.name() + ": " + difference);
        }
        tried++;
      }
    }
    return tried;
  }

  @Test
  void anotherLanguageChangesNoFigure() throws IOException {
    List<String> found = broken.computeIfAbsent("another language", k -> new ArrayList<>());
    for (int number = 0; number < FERMENTS; number++) {
      if (GeneratedLog.isOther(number)) {
        continue;
      }
      Map<String, Seen.Figures> first = null;
      for (String language : List.of("en", "de", "es")) {
        GeneratedLog log =
            GeneratedLog.ferment(GeneratedLogsTest.SEED, number, GeneratedLog.Variant.in(language));
        var figures = figures(Recogniser.look(log.sheet()), r -> r, c -> c);
        String difference = first == null ? "" : difference(first, figures);
        if (!difference.isEmpty()) {
          found.add(GeneratedLogsTest.SEED + "/" + number + " " + language + ": " + difference);
        }
        first = first == null ? figures : first;
      }
    }
    report("languages.txt");
  }

  @Test
  void withoutWordsOfTheTradeItAsksAndUnderAForeignTitleItLeavesAlone() throws IOException {
    List<String> unasked = broken.computeIfAbsent("words taken away", k -> new ArrayList<>());
    List<String> written = broken.computeIfAbsent("foreign title", k -> new ArrayList<>());
    int tried = 0;
    for (int number = 0; number < 3 * FERMENTS; number++) {
      FermentLog log =
          GeneratedLog.isOther(number) ? null : FermentLog.chosen(GeneratedLogsTest.SEED, number);
      if (log == null || !isSimple(log)) {
        continue;
      }
      Sheet bare =
          GeneratedLog.ferment(GeneratedLogsTest.SEED, number, GeneratedLog.Variant.withoutWords())
              .sheet();
      Seen seen = Recogniser.look(bare);
      if (seen.wroteFigures() || seen.questions().isEmpty()) {
        unasked.add(GeneratedLogsTest.SEED + "/" + number + " " + log.words.language());
      }
      Sheet foreign =
          bare.moved(bare.name(), r -> r + 2, c -> c).put(0, 0, "Battery bank, weekly check");
      if (Recogniser.look(foreign).writtenColumns() > 0) {
        written.add(GeneratedLogsTest.SEED + "/" + number + " " + log.words.language());
      }
      tried++;
    }
    assertTrue(tried > 50, tried + " logs tried");
    report("words.txt");
  }

  private static boolean isSimple(FermentLog log) {
    return log.isSg()
        && log.gauge.kind() == Gauge.Kind.HYDROMETER
        && log.gauge.hydrometer().calibrationC() == 20
        && log.course == Course.Kind.ORDINARY;
  }

  @Test
  void fillingAFilledSheetChangesNothing() throws IOException {
    List<String> found = broken.computeIfAbsent("filled twice", k -> new ArrayList<>());
    List<Named> all = made();
    all.addAll(corpus());
    for (Named log : all) {
      Sheet once = Recogniser.filled(log.sheet());
      if (!once.csv().equals(Recogniser.filled(once).csv())) {
        found.add(log.name());
      }
    }
    report("filled-twice.txt");
  }

  private static List<Named> made() {
    List<Named> logs = new ArrayList<>();
    for (int number = 0; number < FERMENTS; number++) {
      GeneratedLog log = GeneratedLog.of(GeneratedLogsTest.SEED, number);
      String language =
          log.features().stream()
              .filter(f -> f.startsWith("language "))
              .map(f -> f.substring("language ".length()))
              .findFirst()
              .orElse("en");
      logs.add(new Named(GeneratedLogsTest.SEED + "/" + number, Words.in(language), log.sheet()));
    }
    return logs;
  }

  private static List<Named> corpus() throws IOException {
    List<Named> logs = new ArrayList<>();
    for (String folder : List.of("corpus", "typed")) {
      try (Stream<Path> files = Files.list(Path.of("src/test/resources", folder))) {
        for (Path file : files.sorted().toList()) {
          if (!file.toString().endsWith(".expected")) {
            for (Sheet sheet : Recogniser.read(file)) {
              logs.add(new Named(file.getFileName() + " " + sheet.name(), Words.in("de"), sheet));
            }
          }
        }
      }
    }
    return logs;
  }

  /** Figures by row and first reading column, as if rows and columns had been moved. */
  private static Map<String, Seen.Figures> figures(
      Seen seen, IntUnaryOperator toRow, IntUnaryOperator toColumn) {
    Map<String, Seen.Figures> figures = new HashMap<>();
    for (Seen.Table table : seen.tables()) {
      int column = table.readingColumns().stream().mapToInt(toColumn::applyAsInt).min().orElse(-1);
      table.filled().forEach((row, f) -> figures.put(toRow.applyAsInt(row) + "/" + column, f));
    }
    return figures;
  }

  /** What differs, "" for nothing. */
  private static String difference(
      Map<String, Seen.Figures> before, Map<String, Seen.Figures> after) {
    long lost = before.keySet().stream().filter(k -> !after.containsKey(k)).count();
    long came = after.keySet().stream().filter(k -> !before.containsKey(k)).count();
    long other =
        before.entrySet().stream()
            .filter(
                e -> after.containsKey(e.getKey()) && !e.getValue().equals(after.get(e.getKey())))
            .count();
    return lost + came + other == 0
        ? ""
        : lost + " figures gone, " + came + " come, " + other + " changed of " + before.size();
  }

  private void report(String part) throws IOException {
    StringBuilder text = new StringBuilder();
    broken.forEach((name, logs) -> text.append(name).append(": ").append(logs.size()).append('\n'));
    broken.forEach(
        (name, logs) -> logs.forEach(l -> text.append(name).append("  ").append(l).append('\n')));
    Path report = REPORT.resolveSibling("metamorphic-" + part);
    Files.createDirectories(report.getParent());
    Files.writeString(report, text);
    List<String> tooMany = new ArrayList<>();
    broken.forEach(
        (name, logs) -> {
          if (FERMENTS == 400) {
            Allowed.compare(name, logs.size(), Allowed.CHANGED, Allowed.LOGS, tooMany);
          }
        });
    assertEquals(List.of(), tooMany, "see " + report);
  }
}
