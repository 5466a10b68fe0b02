package washbook.office.menu;

import java.util.Locale;
import washbook.functions.Numbers;
import washbook.log.Batch;
import washbook.log.Doubt;
import washbook.log.LogColumn;
import washbook.log.LogTable;
import washbook.log.Role;
import washbook.log.Understanding;
import washbook.log.fill.Filling;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.CellRefusal;
import washbook.log.sheet.ColumnPatch;

/** Says in words what was understood of a sheet and what would be written into it. */
final class Story {
  private static final int MOST_REFUSALS = 20;

  private final StringBuilder text = new StringBuilder();

  private Story() {}

  static String of(Understanding understanding, Filling filling) {
    Story story = new Story();
    for (LogTable table : understanding.tables()) {
      story.tell(table);
    }
    for (Doubt doubt : understanding.doubts()) {
      story.line("In doubt, " + doubt.cell() + ": " + doubt.question());
    }
    story.tell(filling);
    return story.text.toString();
  }

  private void tell(LogTable table) {
    line("Table " + table.range() + (table.settled() ? "" : " (in doubt: nothing is written)"));
    for (LogColumn use : table.columns()) {
      if (use.role() != Role.OTHER) {
        line("  " + column(use));
      }
    }
    for (Batch batch : table.batches()) {
      line("  Batch " + batch.name() + ": " + original(batch));
    }
    for (String remark : table.remarks()) {
      line("  " + remark);
    }
  }

  private static String column(LogColumn use) {
    return CellAddress.letters(use.column())
        + " \""
        + use.header()
        + "\": "
        + use.role().name().toLowerCase(Locale.ROOT).replace('_', ' ')
        + (use.unit().isEmpty() ? "" : " in " + use.unit());
  }

  private static String original(Batch batch) {
    if (Double.isNaN(batch.originalGravity())) {
      return "original gravity not known; " + batch.originalGravityWhy();
    }
    return "original gravity "
        + Numbers.show(Math.round(batch.originalGravity() * 1e5) / 1e5)
        + "; "
        + batch.originalGravityWhy();
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
