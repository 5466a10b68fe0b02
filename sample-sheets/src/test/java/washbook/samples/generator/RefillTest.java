package washbook.samples.generator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import washbook.log.WrittenScale;
import washbook.log.fill.FillOptions;
import washbook.log.language.Language;

/** A log that was filled in any language, or by an earlier version, is filled in its place. */
class RefillTest {
  private static final Path CORPUS = Path.of("src/test/resources/corpus");

  /** What the first version has written, by what is written now; before a label or the end. */
  private static final Map<String, String> EARLIER =
      Map.of(
          "Corrected gravity (SG", "Corrected gravity",
          "Alcohol to date (% vol", "ABV to date",
          "Apparent attenuation (%", "Apparent attenuation",
          "Real attenuation (%", "Real attenuation");

  private static List<Sheet> corpus() throws IOException {
    List<Sheet> sheets = new ArrayList<>();
    try (Stream<Path> files = Files.walk(CORPUS)) {
      for (Path file :
          files
              .filter(f -> f.toString().matches(".*\\.(xlsx|ods|xls|csv|tsv)"))
              .sorted()
              .toList()) {
        for (Sheet sheet : Recogniser.read(file)) {
          Sheet filled = Recogniser.filled(sheet);
          if (filled.columns() > sheet.columns()) {
            sheets.add(sheet);
          }
        }
      }
    }
    assertTrue(sheets.size() >= 100, sheets.size() + " sheets are filled");
    return sheets;
  }

  @Test
  void aRefillInAnyOtherLanguageDoublesNoColumn() throws IOException {
    Language[] languages = Language.values();
    List<String> wrong = new ArrayList<>();
    for (Sheet sheet : corpus()) {
      for (Language first : languages) {
        Language second = languages[(first.ordinal() + 1) % languages.length];
        Sheet filled = Recogniser.filled(sheet, FillOptions.usual().in(first));
        compare(
            Recogniser.filled(sheet, FillOptions.usual().in(second)),
            Recogniser.filled(filled, FillOptions.usual().in(second)),
            sheet.name() + " " + first + " " + second,
            wrong);
      }
    }
    assertEquals(List.of(), wrong);
  }

  @Test
  void aRefillAfterAnEarlierVersionDoublesNoColumn() throws IOException {
    Language[] languages = Language.values();
    FillOptions earlier = FillOptions.usual().in(Language.EN).on(WrittenScale.SG);
    int turn = 0;
    List<String> wrong = new ArrayList<>();
    for (Sheet sheet : corpus()) {
      Sheet before = Recogniser.filled(sheet, earlier);
      for (int row = 0; row < before.rows(); row++) {
        for (int column = 0; column < before.columns(); column++) {
          if (before.at(row, column) instanceof String text && sheet.at(row, column) == null) {
            before.put(row, column, asEarlier(text));
          }
        }
      }
      FillOptions now = FillOptions.usual().in(languages[turn++ % languages.length]);
      compare(
          Recogniser.filled(sheet, now),
          Recogniser.filled(before, now),
          sheet.name() + " " + now.language(),
          wrong);
    }
    assertEquals(List.of(), wrong);
  }

  private static String asEarlier(String text) {
    for (Map.Entry<String, String> header : EARLIER.entrySet()) {
      if (text.startsWith(header.getKey())) {
        int label = text.indexOf("), ");
        return header.getValue() + (label < 0 ? "" : text.substring(label + 1)) + " (Washbook)";
      }
    }
    return text;
  }

  private static void compare(Sheet once, Sheet again, String where, List<String> wrong) {
    for (int row = 0; row < Math.max(once.rows(), again.rows()); row++) {
      for (int column = 0; column < Math.max(once.columns(), again.columns()); column++) {
        String expected = String.valueOf(once.at(row, column));
        String found = String.valueOf(again.at(row, column));
        if (!expected.equals(found)) {
          wrong.add(
              where + " row " + (row + 1) + " column " + column + ": " + expected + " | " + found);
          return;
        }
      }
    }
  }
}
