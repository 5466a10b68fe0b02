package washbook.office.menu;

import washbook.log.Understanding;
import washbook.log.UnderstandingText;
import washbook.log.fill.Filling;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.CellRefusal;
import washbook.log.sheet.ColumnPatch;

/** Says in words what was understood of a sheet and what would be written into it. */
final class Story {
  private static final int MOST_REFUSALS = 20;

  private final StringBuilder text;

  private Story(String begun) {
    text = new StringBuilder(begun);
  }

  static String of(Understanding understanding, Filling filling) {
    Story story = new Story(UnderstandingText.lines(understanding));
    story.tell(filling);
    return story.text.toString();
  }

  private void tell(Filling filling) {
    line("");
    for (ColumnPatch column : filling.patch().columns()) {
      line("To be written: " + where(column) + " \"" + column.header() + "\"");
    }
    line(counts(filling));
    int told = 0;
    for (CellRefusal refusal : filling.refusals()) {
      if (told++ == MOST_REFUSALS) {
        line("... and " + (filling.refusals().size() - MOST_REFUSALS) + " more.");
        break;
      }
      line("Refused, " + refusal.cell() + ": " + refusal.reason());
    }
  }

  private static String where(ColumnPatch column) {
    return CellAddress.of(column.headerRow(), column.column())
        + ":"
        + CellAddress.of(column.lastRow(), column.column());
  }

  /** How many readings are filled and refused. */
  static String counts(Filling filling) {
    int rows = 0;
    int filled = 0;
    int refused = 0;
    for (Filling.TableCount table : filling.tables()) {
      for (Filling.BatchCount batch : table.batches()) {
        rows += batch.rows();
        filled += batch.filled();
        refused += batch.refused();
      }
    }
    return "Readings: " + rows + "; filled: " + filled + "; refused: " + refused + ".";
  }

  private void line(String line) {
    text.append(line).append('\n');
  }
}
