package washbook.log.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import washbook.log.WrittenScale;
import washbook.log.language.Language;
import washbook.log.language.ToldException;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.Grid;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** A map says in which language and on which scale a log is written into. */
class MappedWritingTest {
  private static final Grid LOG =
      TestGrid.of(
          "Plum 3",
          """
          Date       | Gravity | Temp C
          2026-01-02 | 1.085   | 20
          2026-01-05 | 1.050   | 20
          2026-01-09 | 1.010   | 20
          """);

  private static List<String> headers(LogMap map, FillOptions options) {
    return LogFiller.fill(LOG, SheetUnderstanding.understand(LOG, map), options)
        .patch()
        .columns()
        .stream()
        .map(ColumnPatch::header)
        .toList();
  }

  @Test
  void theMapTakesThePlaceOfTheLogsOwn() {
    LogMap map = LogMap.parse("language = de\nscale = oechsle");
    List<String> headers = headers(map, FillOptions.usual());
    assertEquals("Korrigierte Dichte (°Oe)", headers.get(0));
    assertTrue(headers.contains("Alkohol bisher (% vol)"), headers.toString());
    assertEquals(map, LogMap.parse(map.print()));
  }

  @Test
  void theCommandLineTakesThePlaceOfTheMap() {
    LogMap map = LogMap.parse("language = de\nscale = OECHSLE");
    FillOptions options = FillOptions.usual().in(Language.EN).on(WrittenScale.SG);
    assertEquals("Corrected gravity (SG)", headers(map, options).get(0));
  }

  @Test
  void whatIsNoneOfOursIsRefused() {
    ToldException language =
        assertThrows(ToldException.class, () -> LogMap.parse("language = Latin"));
    assertEquals(
        "Zeile 1 der Zuordnung: „Latin“ ist keine Sprache; Sprachen sind"
            + " en, de, fr, es, it, pt, nl, af.",
        language.told().in(Language.DE));
    assertThrows(ToldException.class, () -> LogMap.parse("scale = furlongs"));
  }
}
