package washbook.log.fill;

import java.util.List;
import java.util.Map;
import washbook.log.ComputedColumn;
import washbook.log.language.Language;
import washbook.log.language.Message;

/** Computed cells with more in their note column. */
record NotedCells(ComputedCells computed, Map<Integer, List<Message>> notes)
    implements ComputedCells {
  @Override
  public double number(ComputedColumn column, int row) {
    return computed.number(column, row);
  }

  @Override
  public String text(ComputedColumn column, int row, Language language) {
    String text = computed.text(column, row, language);
    if (column != ComputedColumn.NOTE || !notes.containsKey(row)) {
      return text;
    }
    StringBuilder all = new StringBuilder(text == null ? "" : text);
    for (Message note : notes.get(row)) {
      all.append(all.isEmpty() ? "" : " / ").append(note.in(language));
    }
    return all.toString();
  }
}
