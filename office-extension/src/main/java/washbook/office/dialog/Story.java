package washbook.office.dialog;

import washbook.log.Understanding;
import washbook.log.UnderstandingText;
import washbook.log.fill.Filling;
import washbook.log.language.Language;
import washbook.log.language.Message;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.CellRefusal;
import washbook.log.sheet.ColumnPatch;
import washbook.office.language.OfficeText;

/** Says in words what was understood of a sheet and what would be written into it. */
public final class Story {
  private static final int MOST_REFUSALS = 20;

  private final StringBuilder text;
  private final Language language;

  private Story(String begun, Language language) {
    this.text = new StringBuilder(begun);
    this.language = language;
  }

  public static String of(Understanding understanding, Filling filling, Language language) {
    Story story =
        new Story(UnderstandingText.lines(understanding, filling.accounts(), language), language);
    story.tell(filling);
    return story.text.toString();
  }

  private void tell(Filling filling) {
    text.append('\n');
    for (ColumnPatch column : filling.patch().columns()) {
      line(OfficeText.of("fill.toBeWritten", where(column), column.header()));
    }
    line(counts(filling));
    int told = 0;
    for (CellRefusal refusal : filling.refusals()) {
      if (told++ == MOST_REFUSALS) {
        line(OfficeText.of("more", filling.refusals().size() - MOST_REFUSALS));
        break;
      }
      line(OfficeText.of("fill.refused", refusal.cell(), refusal.message()));
    }
  }

  private static String where(ColumnPatch column) {
    return CellAddress.of(column.headerRow(), column.column())
        + ":"
        + CellAddress.of(column.lastRow(), column.column());
  }

  /** How many readings are filled and refused. */
  public static Message counts(Filling filling) {
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
    return OfficeText.of("fill.counts", rows, filled, refused);
  }

  private void line(Message line) {
    text.append(line.in(language)).append('\n');
  }
}
