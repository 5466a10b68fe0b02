package washbook.log.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Addresses of cells, and headers of columns that we have written before. */
class CellAddressTest {
  /** ECMA-376 part 1, 18.17.2.3: columns A to XFD are 1 to 16,384. */
  @ParameterizedTest
  @CsvSource({
    "0, A",
    "1, B",
    "25, Z",
    "26, AA",
    "51, AZ",
    "52, BA",
    "701, ZZ",
    "702, AAA",
    "16383, XFD"
  })
  void aColumnHasItsLetters(int column, String letters) {
    assertEquals(letters, CellAddress.letters(column));
    assertEquals(column, CellAddress.column(letters));
    assertEquals(column, CellAddress.column(letters.toLowerCase(Locale.ROOT)));
    assertEquals(letters + "7", CellAddress.of(6, column));
    assertEquals("$" + letters + "$7", CellAddress.fixed(6, column));
    assertEquals("$" + letters + "$70", CellAddress.fixed(letters + "70"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "A1", "7", "@", "[", "\u00c9", "AAAAA"})
  void anythingElseIsNoColumn(String text) {
    assertEquals(-1, CellAddress.column(text));
  }

  @Test
  void aHeaderIsOursByItsTextNowOrBefore() {
    ColumnPatch patch = new ColumnPatch(3, 0, "Alcohol", "Alkohol", 1, 9, 2, null);
    assertTrue(patch.isOurs("Alcohol"));
    assertTrue(patch.isOurs(" Alkohol "));
    assertFalse(patch.isOurs("alcohol"));
    assertFalse(patch.isOurs(""));
    assertFalse(patch.isOurs(null));
    assertFalse(new ColumnPatch(3, 0, "Alcohol", 1, 9, 2, null).isOurs("Alkohol"));
  }
}
