package washbook.runner.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.SheetPatch;
import washbook.runner.TestColumn;

class PatchStoreTest {
  private static final int ROWS = 60_000;

  @Test
  void numbersBlanksAndNotesComeBackInAnyOrder() {
    Map<Integer, Object> numbers = new HashMap<>();
    Map<Integer, Object> notes = new HashMap<>();
    for (int row = 3; row < ROWS; row++) {
      if (row % 5 > 0) {
        numbers.put(row, Math.sqrt(row));
      }
      if (row % 500 == 0) {
        notes.put(row, "note " + row);
      }
    }
    SheetPatch patch =
        new SheetPatch(
            "Plum 3",
            List.of(
                TestColumn.of(4, 2, "Alcohol", ROWS - 1, 2, numbers),
                TestColumn.of(5, 2, "Note", ROWS - 1, -1, notes)));
    try (PatchStore store = new PatchStore()) {
      SheetPatch other = store.put(patch);
      SheetPatch stored = store.put(patch);
      assertNotSame(patch, stored);
      assertEquals(patch.sheet(), stored.sheet());
      for (int i = 0; i < 2; i++) {
        ColumnPatch before = patch.columns().get(i);
        ColumnPatch after = stored.columns().get(i);
        assertEquals(before.header(), after.header());
        assertEquals(before.firstRow(), after.firstRow());
        assertEquals(before.lastRow(), after.lastRow());
        assertEquals(before.decimals(), after.decimals());
        for (int row = before.firstRow(); row <= before.lastRow(); row++) {
          // From both ends and in two patches at once.
          int back = before.lastRow() + before.firstRow() - row;
          same(before, other.columns().get(i), row);
          same(before, after, row % 1000 == 0 ? back : row);
        }
      }
    }
  }

  private static void same(ColumnPatch before, ColumnPatch after, int row) {
    assertEquals(before.cells().number(row), after.cells().number(row));
    assertEquals(before.cells().text(row), after.cells().text(row));
    assertEquals(before.cells().formula(row), after.cells().formula(row));
  }

  @Test
  void smallPatchesFormulasAndManyTextsStayAsTheyAre() {
    Map<Integer, Object> texts = new HashMap<>();
    for (int row = 1; row < 5_000; row++) {
      texts.put(row, "refused");
    }
    int last = 200_000;
    ColumnPatch notes = TestColumn.of(4, 0, "Note", last, -1, texts);
    ColumnPatch formulas =
        TestColumn.of(4, 0, "Alcohol", last, 2, Map.of(9, 1.5), Map.of(9, "A9+B9"));
    ColumnPatch few = TestColumn.of(4, 0, "Alcohol", 100, 2, Map.of(9, 1.5));
    try (PatchStore store = new PatchStore()) {
      for (ColumnPatch column : List.of(notes, formulas, few)) {
        SheetPatch patch = new SheetPatch("Apple 7", List.of(column));
        assertSame(patch, store.put(patch));
      }
    }
  }
}
