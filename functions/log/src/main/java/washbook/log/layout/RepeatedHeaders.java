package washbook.log.layout;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import washbook.log.ReadingError;
import washbook.log.Role;
import washbook.log.layout.Header.HeaderCell;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;
import washbook.log.words.CellText;
import washbook.log.words.Concept;
import washbook.log.words.ReadingScale;
import washbook.log.words.Vocabulary;

/**
 * Headers that only come again, as on every page of a book: the same words in the same columns, no
 * title of another batch above, and readings that go on where those before ended.
 */
public final class RepeatedHeaders {
  private final Grid grid;
  private final Map<Header, BitSet> rows = new HashMap<>();

  public RepeatedHeaders(Grid grid) {
    this.grid = grid;
  }

  /** The headers without those that only come again. */
  public List<Header> without(List<Header> headers) {
    List<Header> kept = new ArrayList<>();
    Map<Header, Header> lastOf = new HashMap<>();
    for (Header header : headers) {
      Header first = null;
      for (Header other : kept) {
        if (other.overlaps(header)) {
          first = other;
        }
      }
      if (first != null && goesOn(lastOf.getOrDefault(first, first), header)) {
        rows.computeIfAbsent(first, k -> new BitSet()).set(header.topRow(), header.bottomRow() + 1);
        lastOf.put(first, header);
      } else {
        kept.add(header);
      }
    }
    return kept;
  }

  /** Rows below a header where it comes again. */
  public BitSet of(Header header) {
    return rows.getOrDefault(header, new BitSet());
  }

  private boolean goesOn(Header first, Header again) {
    if (!words(first).equals(words(again))) {
      return false;
    }
    TableRows before = new TableRows(grid, first, again.topRow(), new BitSet());
    TableRows after = new TableRows(grid, again, grid.rowCount(), new BitSet());
    if (before.lastRow() < before.firstRow() || after.lastRow() < after.firstRow()) {
      return false;
    }
    for (int row = before.lastRow() + 1; row < again.topRow(); row++) {
      if (!continues(row, again)) {
        return false;
      }
    }
    double last = reading(before.lastRow(), before.firstRow() - 1, -1, first);
    double next = reading(after.firstRow(), after.lastRow() + 1, 1, again);
    return next <= last + ReadingError.USUAL;
  }

  private static List<String> words(Header header) {
    return header.cells().stream()
        .filter(c -> c.role() != Role.COMPUTED)
        .map(c -> c.column() + c.text())
        .toList();
  }

  /** Whether a row between is blank or only says that the log goes on. */
  private boolean continues(int row, Header header) {
    for (int column = header.firstColumn(); column <= header.lastColumn(); column++) {
      if (grid.kind(row, column) == Kind.TEXT) {
        Set<Concept> meanings = Vocabulary.meanings(grid.text(row, column));
        if (!meanings.contains(Concept.PERIOD) && !meanings.contains(Concept.TOTAL)) {
          return false;
        }
      }
    }
    return true;
  }

  private double reading(int from, int to, int step, Header header) {
    int column =
        header.cells().stream()
            .filter(c -> HeaderRuns.isReading(c.role()))
            .mapToInt(HeaderCell::column)
            .findFirst()
            .orElse(-1);
    for (int row = from; column >= 0 && row != to; row += step) {
      double value = CellText.plainNumber(grid, row, column);
      if (!Double.isNaN(value) && value != 0) {
        return ReadingScale.withoutThousandths(value);
      }
    }
    return Double.NaN;
  }
}
