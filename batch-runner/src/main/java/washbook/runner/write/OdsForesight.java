package washbook.runner.write;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import washbook.log.sheet.ColumnPatch;
import washbook.runner.extent.NewColumns;

/**
 * What the rows of a document will ask of the parts that stand before them: styles, and how far a
 * page reaches. The first rows tell it; where a later row asks for something else, the document is
 * written once more with all that is known then.
 */
final class OdsForesight {
  private final OdsStyles styles;
  private final Map<String, NewColumns> foreseen = new HashMap<>();
  private final Map<String, NewColumns> found = new HashMap<>();
  private Set<String> foreseenStyles = Set.of();

  OdsForesight(OdsStyles styles) {
    this.styles = styles;
  }

  /** From now on the document is written with what has been found so far. */
  void begin() {
    foreseen.clear();
    foreseen.putAll(found);
    found.clear();
    foreseenStyles = styles.write();
  }

  /** Whether what was written is all that was asked for, and nothing else. */
  boolean cameTrue() {
    return styles.asked().equals(foreseenStyles)
        && foreseen.keySet().equals(found.keySet())
        && found.entrySet().stream()
            .allMatch(sheet -> sheet.getValue().isSame(foreseen.get(sheet.getKey())));
  }

  /** The columns that will be new in a sheet: in one not seen yet, as in those before it. */
  NewColumns added(String sheet, List<ColumnPatch> columns) {
    boolean none = !found.isEmpty() && found.values().stream().allMatch(NewColumns::isEmpty);
    List<ColumnPatch> fromLeft =
        columns.stream().sorted(Comparator.comparingInt(ColumnPatch::column)).toList();
    return foreseen.computeIfAbsent(sheet, key -> new NewColumns(none ? List.of() : fromLeft));
  }

  /** Notes the columns that are new in a sheet. */
  void found(String sheet, NewColumns added) {
    found.put(sheet, added);
  }

  /** The new columns of the sheets that have gone by. */
  Map<String, NewColumns> found() {
    return found;
  }
}
