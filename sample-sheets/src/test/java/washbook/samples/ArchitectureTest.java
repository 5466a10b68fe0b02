package washbook.samples;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The rooms of the code: which package may use which, and how full each may be. */
class ArchitectureTest {
  private static final int MOST_TYPES = 30;

  /** Each package with those that it may use, from the ground up; no arrow runs back. */
  private static final Map<String, Set<String>> MAY_USE =
      table(
          """
          functions:
          functions.liquid: functions
          functions.scale: functions, functions.liquid
          functions.reading: functions, functions.liquid
          functions.ferment: functions, functions.liquid, functions.reading
          functions.makeup: functions, functions.liquid
          functions.spirit: functions, functions.liquid
          functions.still: functions, functions.liquid
          functions.quantity: functions
          functions.catalogue: functions, functions.*
          functions.portable.form: functions, functions.*, functions.catalogue
          functions.portable: functions, functions.*, functions.catalogue, functions.portable.form
          log.language: functions
          log.sheet: functions, log.language
          log.words: functions, functions.*, log.sheet, log.language
          log: functions, functions.*, log.sheet, log.words, log.language
          log.reading: functions, functions.*, log, log.sheet, log.words, log.language
          log.layout: functions, functions.*, log, log.sheet, log.words, log.language
          log.evidence: functions, functions.*, log, log.sheet, log.words, log.reading, log.language
          log.run: functions, functions.*, functions.catalogue, log, log.sheet, log.words, log.language
          log.understand: functions, functions.*, log, log.sheet, log.words, log.reading, log.layout, \
          log.evidence, log.run, log.language
          log.fill: functions, functions.*, functions.catalogue, functions.portable, log, log.sheet, \
          log.words, log.reading, log.run, log.language
          log.audit: functions, functions.*, log, log.sheet, log.words, log.reading, log.run, log.fill, \
          log.language
          log.overview: functions, functions.*, functions.catalogue, log, log.sheet, log.reading, \
          log.fill, log.language
          log.answer: functions, log, log.sheet, log.understand, log.fill, log.language
          runner.file: log.language
          runner.language: functions, functions.catalogue, log.language
          runner.archive: runner.file
          runner.markup: functions, runner.file, runner.archive
          runner.sheet: log.sheet, log.language, runner.file, runner.markup
          runner.read: log.sheet, runner.file, runner.archive, runner.markup, runner.sheet
          runner.ask: log, log.sheet, log.understand, log.answer, log.language, runner.file, \
          runner.read, runner.language
          runner.extent: log.sheet, runner.file, runner.archive, runner.markup, runner.sheet
          runner.write: functions, functions.portable, log.sheet, log.language, runner.file, runner.archive, \
          runner.markup, runner.sheet, runner.read, runner.extent
          runner.chart: functions, functions.*, log.*, runner.file, runner.archive, runner.markup, runner.sheet, \
          runner.read, runner.language
          runner: log.language, runner.file, runner.sheet, runner.read, runner.write, runner.chart
          runner.report: functions, log, log.overview, log.language, runner.file, runner.language
          runner.run: functions, log.*, runner, runner.file, runner.archive, runner.sheet, \
          runner.read, runner.write, runner.chart, runner.report, runner.ask, runner.language
          runner.season: functions, log, log.sheet, log.understand, log.overview, log.language, runner, \
          runner.file, runner.archive, runner.sheet, runner.report, runner.run, runner.language
          runner.card: functions, functions.catalogue, log.sheet, log.fill, log.language, runner, \
          runner.file, runner.archive, runner.sheet, runner.language
          runner.cli: functions, functions.catalogue, functions.portable, log.*, runner, \
          runner.file, runner.sheet, runner.read, runner.write, runner.report, runner.run, \
          runner.season, runner.card, runner.ask, runner.language
          office.language: log.language
          office.help: log.language
          office.call: functions, functions.quantity, functions.catalogue, log.language, \
          office.language
          office.generate: functions, functions.quantity, functions.catalogue, log.language, \
          office.language, office.help
          office.dialog: functions, log.*, office.language
          office.menu: functions, functions.catalogue, functions.portable, functions.scale, log.*, office.language, \
          office.help, office.dialog
          office: functions.catalogue, office.call, office.menu
          """);

  private static final JavaClasses CODE = code();

  @Test
  void aPackageUsesOnlyThoseBelowIt() {
    Set<String> wrong = new TreeSet<>();
    for (JavaClass one : CODE) {
      String from = room(one);
      assertTrue(MAY_USE.containsKey(from), "washbook." + from + " is not in the table");
      one.getDirectDependenciesFromSelf().stream()
          .map(d -> d.getTargetClass().getBaseComponentType())
          .filter(target -> target.getPackageName().startsWith("washbook."))
          .filter(target -> !room(target).equals(from))
          .filter(target -> !MAY_USE.get(from).contains(room(target)))
          .forEach(target -> wrong.add(one.getName() + " -> " + target.getName()));
    }
    assertEquals(Set.of(), wrong);
  }

  @Test
  void noPackagesFormACircle() {
    slices().matching("washbook.(**)").should().beFreeOfCycles().check(CODE);
  }

  @Test
  void aPackageHoldsFewEnoughTypesToBeReadAsAWhole() {
    Map<String, Long> sizes =
        CODE.stream()
            .filter(JavaClass::isTopLevelClass)
            .filter(c -> !c.getSimpleName().equals("package-info"))
            .collect(
                Collectors.groupingBy(ArchitectureTest::room, TreeMap::new, Collectors.counting()));
    System.out.println("types a package: " + sizes);
    sizes.values().removeIf(size -> size <= MOST_TYPES);
    assertEquals(Map.of(), sizes);
  }

  @Test
  void aSimpleNameMeansOneThing() {
    Map<String, Set<String>> names =
        CODE.stream()
            .filter(JavaClass::isTopLevelClass)
            .filter(c -> !c.getSimpleName().equals("package-info"))
            .collect(
                Collectors.groupingBy(
                    JavaClass::getSimpleName,
                    TreeMap::new,
                    Collectors.mapping(JavaClass::getName, Collectors.toSet())));
    names.values().removeIf(classes -> classes.size() == 1);
    assertEquals(Map.of(), names);
  }

  @Test
  void everyPackageSaysInOneSentenceWhatBelongsInIt() throws IOException {
    for (String module :
        List.of("functions/maths", "functions/log", "batch-runner", "office-extension")) {
      Path sources = Path.of("..", module, "src/main/java");
      try (Stream<Path> files = Files.walk(sources)) {
        for (Path folder :
            files
                .filter(f -> f.toString().endsWith(".java"))
                .map(Path::getParent)
                .collect(Collectors.toCollection(TreeSet::new))) {
          Path about = folder.resolve("package-info.java");
          assertTrue(Files.exists(about), about + " is missing");
          String sentence =
              Files.readString(about)
                  .replaceAll("(?s)/\\*\\*(.*?)\\*/.*", "$1")
                  .replace(" * ", " ");
          assertTrue(sentence.strip().matches("(?s)[A-Z].{20,}\\."), about + ": " + sentence);
        }
      }
    }
  }

  private static JavaClasses code() {
    return new ClassFileImporter()
        .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
        .withImportOption(location -> !location.contains("/washbook/office/testing/"))
        .importPackages("washbook.functions", "washbook.log", "washbook.runner", "washbook.office");
  }

  private static String room(JavaClass one) {
    return one.getPackageName().replaceFirst("^washbook\\.", "");
  }

  /**
   * Reads the table; {@code functions.*} is what asks the trade's questions, below the catalogue,
   * and {@code log.*} all of the log.
   */
  /** A name in full in the middle of a line hides what the line does. */
  @Test
  void classesOfTheJdkAreImported() throws IOException {
    Pattern full = Pattern.compile("(?<![\\w.])javax?\\.[a-z]+(?:\\.[a-z]+)*\\.[A-Z]");
    List<String> wrong = new ArrayList<>();
    for (String module :
        List.of("functions/maths", "functions/log", "batch-runner", "office-extension")) {
      try (Stream<Path> files = Files.walk(Path.of("..", module, "src/main/java"))) {
        for (Path file : files.filter(name -> name.toString().endsWith(".java")).toList()) {
          for (String line : Files.readAllLines(file)) {
            String code = line.replaceAll("\"[^\"]*\"", "").strip();
            if (!code.startsWith("import ") && !code.startsWith("*") && full.matcher(code).find()) {
              wrong.add(file + ": " + code);
            }
          }
        }
      }
    }
    assertEquals(List.of(), wrong);
  }

  private static Map<String, Set<String>> table(String text) {
    Map<String, Set<String>> table = new TreeMap<>();
    for (String line : text.split("\n")) {
      String[] sides = line.split(":", 2);
      Set<String> below = new TreeSet<>();
      for (String name : Arrays.stream(sides[1].split(",")).map(String::strip).toList()) {
        if (name.equals("functions.*")) {
          below.addAll(
              List.of(
                  "functions.liquid",
                  "functions.scale",
                  "functions.reading",
                  "functions.ferment",
                  "functions.makeup",
                  "functions.spirit",
                  "functions.still",
                  "functions.quantity"));
        } else if (name.equals("log.*")) {
          table.keySet().stream()
              .filter(room -> room.equals("log") || room.startsWith("log."))
              .forEach(below::add);
        } else if (!name.isEmpty()) {
          assertTrue(table.containsKey(name), name + " is not below " + sides[0]);
          below.add(name);
        }
      }
      table.put(sides[0].strip(), below);
    }
    return table;
  }
}
