package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.log.language.Language;
import washbook.log.sheet.Grid;
import washbook.runner.FileFormats;

/** {@code washbook card} as a person runs it. */
final class CardCommandTest {
  @TempDir private Path folder;

  private Cli card(String words, String file) {
    return Cli.viaLibrary(
        Stream.concat(
                Stream.of(("card " + words + " --out").split(" ")),
                Stream.of(folder.resolve(file).toString()))
            .toArray(String[]::new));
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"html", "svg"})
  void aPictureOfOursIsReplacedAndASecondPageAskedFor(String kind) throws IOException {
    String file = "mine." + kind;
    Cli first = card("scales", file);
    assertEquals(ExitCode.DONE, first.code(), first.err());
    String scales = Files.readString(folder.resolve(file));
    assertTrue(scales.contains("<title>Washbook card: scales of a wash</title>"), scales);
    assertEquals(kind.equals("svg"), first.out().contains("page 1 of 2"), first.out());
    assertEquals(ExitCode.DONE, card("hydrometer --calibration 60F", file).code());
    String second = Files.readString(folder.resolve(file));
    assertNotEquals(scales, second);
    assertTrue(second.contains("Calibrated at 15.56 °C"), second);
    assertEquals(List.of(file), names(), "nothing else is left behind");
  }

  @ParameterizedTest
  @EnumSource(value = Language.class, names = "EN", mode = EnumSource.Mode.EXCLUDE)
  void aCardSpeaksTheLanguageOfItsReaderAndReplacesOneInAnother(Language language)
      throws IOException {
    Pattern english =
        Pattern.compile("\\b(the|and|with|reading|wash|gravity|read|shows|number|vessel|card)\\b");
    for (String kind : List.of("hydrometer --original 1.085", "scales", "alcoholometer")) {
      for (String code : List.of("en", language.code())) {
        Cli run = card(kind + " --language " + code, "mine.html");
        assertEquals(ExitCode.DONE, run.code(), run.err());
      }
      String page = Files.readString(folder.resolve("mine.html"));
      assertTrue(page.contains("<html lang=\"" + language.code() + "\">"), page);
      assertFalse(english.matcher(page.replaceAll("<[^>]*>", " ")).find(), page);
    }
    Cli run = card("hydrometer --as pack --overwrite --language " + language.code(), "own.ods");
    assertEquals(ExitCode.DONE, run.code(), run.err());
    Path sheet = folder.resolve("own.ods");
    Grid grid = FileFormats.of(sheet).reader().read(sheet).get(0);
    for (int row = 0; row < 20; row++) {
      assertFalse(english.matcher(grid.text(row, 0)).find(), grid.text(row, 0));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"a.html", "a.svg", "a.xlsx", "a.ods", "a.pdf"})
  void aFileOfSomebodyIsReplacedOnlyWhenTold(String file) throws IOException {
    Path there = folder.resolve(file);
    Files.writeString(there, "somebody's");
    Cli refused = card("scales", file);
    assertEquals(ExitCode.USAGE, refused.code());
    assertTrue(refused.err().contains("--overwrite replaces it"), refused.err());
    assertEquals("somebody's", Files.readString(there));
    if (!file.endsWith("pdf")) {
      assertEquals(ExitCode.DONE, card("scales --overwrite", file).code());
      assertNotEquals("somebody's", Files.readString(there, StandardCharsets.ISO_8859_1));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "scales --offset 0.001,a.svg,belong to a hydrometer",
    "scales --degrees F,a.svg,mean nothing",
    "scales --page 3,a.svg,has 2 pages",
    "scales --page 2,a.html,--page is for .svg",
    "scales --as pack,a.svg,--as is for",
    "scales,a.txt,must end in",
    "hydrometer --calibration warm,a.svg,is no temperature",
    "hydrometer --calibration 60,a.svg,too high",
    "hydrometer --offset 0.2,a.svg,too high",
    "hydrometer --original 0.99,a.svg,too low",
    "hydrometer --scale BRIX --original 1.085,a.svg,Only a card in SG",
    "alcoholometer --calibration 5,a.svg,too low"
  })
  void whatMakesNoSenseIsRefusedBeforeAnythingIsWritten(String words, String file, String said)
      throws IOException {
    Cli run = card(words, file);
    assertEquals(ExitCode.USAGE, run.code(), run.err());
    assertTrue(run.err().contains(said), run.err());
    assertEquals(List.of(), names());
  }

  @ParameterizedTest
  @CsvSource({
    "xlsx,values",
    "ods,values",
    "xlsx,pack",
    "ods,pack",
    "xlsx,portable",
    "ods,portable"
  })
  void aSheetHoldsTheNumbersOfTheCardInEveryForm(String kind, String form) throws IOException {
    Cli run = card("hydrometer --original 1.085 --as " + form, "own." + kind);
    assertEquals(ExitCode.DONE, run.code(), run.err());
    Path file = folder.resolve("own." + kind);
    Grid grid = FileFormats.of(file).reader().read(file).get(0);
    int head = 0;
    while (!grid.text(head, 0).startsWith("Wash, ")) {
      head++;
    }
    assertEquals(1.04, grid.number(head, 3), 1e-12);
    assertEquals(30, grid.number(head + 26, 0), 1e-12);
    // 1.040 read at 30 °C: ICUMSA SPS-4 and the glass of NBS C440, 1.04275.
    assertEquals(0.0028, grid.number(head + 26, 3), 0.00011);
    int last = head + 36 + 2;
    assertEquals(1.08, grid.number(last, 10), 1e-12);
    assertEquals(List.of("own." + kind), names());
  }
}
