package washbook.log;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import washbook.log.language.Language;
import washbook.log.sheet.TestGrid;

/** Which headers of a row are taken for ours. */
class ComputedHeadersTest {
  private static Set<Integer> ours(String row) {
    Map<Integer, String> texts = new HashMap<>();
    String[] cells = row.split("\\|", -1);
    for (int i = 0; i < cells.length; i++) {
      if (!cells[i].isBlank()) {
        texts.put(i, cells[i].strip());
      }
    }
    return new TreeSet<>(new ComputedHeaders(texts).columns());
  }

  private static final String USUAL =
      "Corrected gravity (SG) | Alcohol to date (% vol) | Apparent attenuation (%)"
          + " | Real attenuation (%)";

  @Test
  void theUsualFourAreFoundWithAndWithoutANote() {
    assertEquals(Set.of(2, 3, 4, 5), ours("Day | SG | " + USUAL));
    assertEquals(Set.of(2, 3, 4, 5, 6), ours("Day | SG | " + USUAL + " | Washbook note"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Day | SG | Corrected gravity (SG)",
        "Day | SG | Real attenuation (%)",
        "Day | SG | Alcohol to date (% vol) | Extract left (g/L)",
        "Day | SG | Real attenuation (%) | Alcohol to date (% vol) | Corrected gravity (SG)",
        "Day | Corrected gravity (SG) | | Alcohol to date (% vol) | | Real attenuation (%)",
        "State | Batch | SG",
        "Day | SG | ABV to date | Real attenuation",
      })
  void aPersonsOwnColumnsAreNotOurs(String row) {
    assertEquals(Set.of(), ours(row));
  }

  /** Whatever a person calls a column beside ours: it stays theirs, and ours are found. */
  @ParameterizedTest
  @EnumSource(Language.class)
  void aNeighbourIsNeverTakenForOursWhateverItIsCalled(Language language) {
    for (boolean noted : new boolean[] {false, true}) {
      for (ComputedColumn column : ComputedColumn.values()) {
        if (column == ComputedColumn.NOTE) {
          continue;
        }
        String name = ComputedHeader.title(column, WrittenScale.SG, language);
        String block = noted ? USUAL + " | Washbook note" : USUAL;
        Set<Integer> expected = noted ? Set.of(3, 4, 5, 6, 7) : Set.of(3, 4, 5, 6);
        assertEquals(
            new TreeSet<>(expected), ours("Day | SG | " + name + " | " + block), "left " + name);
        assertEquals(
            new TreeSet<>(expected), ours("Day | SG | x | " + block + " | " + name), "right");
      }
    }
  }

  @Test
  void aColumnPutInBetweenIsSteppedOver() {
    assertEquals(
        Set.of(1, 2, 4, 5),
        ours(
            "SG | Corrected gravity (SG) | Alcohol to date (% vol) | my taste"
                + " | Apparent attenuation (%) | Real attenuation (%)"));
  }

  @Test
  void oneOfTheUsualColumnsMayBeGone() {
    assertEquals(
        Set.of(1, 2, 3),
        ours("SG | Corrected gravity (SG) | Alcohol to date (% vol) | Real attenuation (%)"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Corrected gravity (Washbook); CORRECTED_GRAVITY; ''",
        "ABV to date (Washbook); ABV; ''",
        "Sugar left (Washbook); SUGAR_LEFT; ''",
        "Sugar left in g/L (Washbook); SUGAR_LEFT; ''",
        "Rate per day (Washbook); RATE; ''",
        "Plus or minus (Washbook); PLUS_MINUS; ''",
        "Washbook note; NOTE; ''",
        "Washbook note, Plum 3; NOTE; Plum 3",
        "Corrected gravity, Plum 3 (Washbook); CORRECTED_GRAVITY; Plum 3",
        "Korrigierte Dichte (°Oe, Washbook); CORRECTED_GRAVITY; ''",
        "'Alcool à ce jour (% vol, Washbook), columns A to D'; ABV; columns A to D",
        "State (Washbook); STATE; ''",
      })
  void markedHeadersOfAllVersionsAreOursByThemselves(
      String text, ComputedColumn column, String label) {
    ComputedHeader header = ComputedHeader.read(text).orElseThrow();
    assertEquals(column, header.column());
    assertEquals(label, header.label());
    assertEquals(true, header.isMarked());
  }

  @Test
  void everyHeaderOfEveryLanguageIsReadBackAsItself() {
    for (Language language : Language.values()) {
      for (ComputedColumn column : ComputedColumn.values()) {
        for (WrittenScale scale : WrittenScale.all()) {
          for (boolean marked : new boolean[] {false, true}) {
            boolean corrected = column == ComputedColumn.CORRECTED_GRAVITY;
            ComputedHeader header =
                new ComputedHeader(
                    column,
                    corrected ? scale : WrittenScale.SG,
                    marked || column == ComputedColumn.NOTE,
                    marked ? "Plum 3, cellar" : "");
            ComputedHeader read = ComputedHeader.read(header.text(language)).orElseThrow();
            ComputedColumn same =
                column == ComputedColumn.SPECIFIC_GRAVITY
                    ? ComputedColumn.CORRECTED_GRAVITY
                    : column;
            assertEquals(
                new ComputedHeader(same, header.scale(), header.isMarked(), header.label()),
                read,
                header.text(language));
          }
        }
      }
    }
    assertEquals(Optional.empty(), ComputedHeader.read("Washbook"));
  }

  /** A note of ours has company as far as the corrected reading, and no further. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "SG | Corrected gravity (SG) | Washbook note; 1, 2",
        "Corrected gravity (SG) | Corrected gravity (SG) | Washbook note; 1, 2",
        "SG | Alcohol to date (% vol) | Washbook note; 2",
        "SG | Corrected gravity (SG) | | Washbook note; 3",
        "SG | Corrected gravity (SG) | mine | Washbook note; 1, 3",
        "Corrected gravity (SG) | Washbook note | State | Washbook note; 0, 1, 3",
        "Corrected gravity (SG) | Washbook note, Plum 3; 1",
        "% vol | True strength (% vol) | Alcohol to date (% vol) | Washbook note; 3",
        "% vol | Corrected gravity (SG) | True strength (% vol) | Washbook note; 2, 3",
        "Corrected gravity (°Oe) | Corrected gravity (SG) | Washbook note; 0, 1, 2",
        "Corrected gravity (°Oe) | | Corrected gravity (SG) | Washbook note; 2, 3",
        "Corrected gravity (°Oe) | mine | Corrected gravity (SG) | Washbook note; 0, 2, 3",
        "Corrected gravity (SG) | Corrected gravity (°Oe) | Washbook note; 1, 2",
      })
  void leftOfANoteStandsWhatWeWrote(String row, String columns) {
    assertEquals(columns, ours(row).toString().replaceAll("[\\[\\]]", ""));
  }

  @Test
  void theHeaderOfAColumnIsKnownByItsPlace() {
    Map<Integer, String> texts = Map.of(0, "SG", 1, "Corrected gravity (SG)", 2, "Washbook note");
    ComputedHeaders headers = new ComputedHeaders(texts);
    assertEquals(Optional.empty(), headers.at(0));
    assertEquals(ComputedColumn.CORRECTED_GRAVITY, headers.at(1).orElseThrow().column());
    assertEquals(
        Set.of(1, 2),
        ComputedHeaders.in(TestGrid.of("x", "y\nSG|Corrected gravity (SG)|Washbook note"), 1)
            .columns());
  }
}
