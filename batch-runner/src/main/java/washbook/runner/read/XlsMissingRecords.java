package washbook.runner.read;

import java.io.ByteArrayOutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.apache.poi.hssf.model.InternalSheet;
import org.apache.poi.hssf.model.InternalWorkbook;
import org.apache.poi.hssf.record.DimensionsRecord;
import org.apache.poi.hssf.record.Record;
import org.apache.poi.hssf.record.RecordBase;

/**
 * Adds to a workbook's stream the records that small programs leave out and POI cannot do without
 * ([MS-XLS] 2.1.7.20.3 and 2.1.7.20.5): fonts, number formats, cell formats and styles, and each
 * sheet's dimensions and window. What is added is what a new workbook has.
 */
final class XlsMissingRecords {
  private static final int BOF = 0x809;
  private static final int EOF = 0x0A;
  private static final int FONT = 0x31;
  private static final int FORMAT = 0x41E;
  private static final int CELL_FORMAT = 0xE0;
  private static final int STYLE = 0x293;
  private static final int SHEET = 0x85;
  private static final int DIMENSIONS = 0x200;
  private static final int WINDOW = 0x23E;

  /** The global records that are added, in the order that they must stand in. */
  private static final List<Integer> GLOBALS = List.of(FONT, FORMAT, CELL_FORMAT, STYLE);

  /** With the first of these the cells of a sheet begin: rows, cells and notes on them. */
  private static final Set<Integer> CELLS =
      Set.of(0x208, 0x203, 0x204, 0xFD, 0x27E, 0xBD, 0xBE, 0x201, 0x205, 0x06, 0xD6);

  /** The window's record stands ahead of these: zoom, panes, selection, merged cells and so on. */
  private static final Set<Integer> AFTER_WINDOW =
      Set.of(0xA0, 0x41, 0x1D, 0x99, 0xE5, 0xEF, 0x1B0, 0x1B8, 0x1B2, 0x1BE, 0x867, EOF);

  private static final int WORKSHEET = 0x10;

  private final byte[] stream;
  private final ByteArrayOutputStream whole = new ByteArrayOutputStream();

  private XlsMissingRecords(byte[] stream) {
    this.stream = stream;
  }

  /** The stream with what was missing; the same array when nothing was. */
  static byte[] added(byte[] stream) {
    XlsMissingRecords records = new XlsMissingRecords(stream);
    return records.isWhole() ? stream : records.copy();
  }

  private boolean isWhole() {
    int end = 0;
    for (int at = 0; at + 4 <= stream.length; at = end) {
      end = substreamEnd(at);
      Set<Integer> needed =
          at == 0 ? Set.copyOf(GLOBALS) : isSheet(at) ? Set.of(DIMENSIONS, WINDOW) : Set.of();
      if (!kinds(at, end).containsAll(needed)) {
        return false;
      }
    }
    return true;
  }

  private boolean isSheet(int at) {
    return number(at) == BOF && number(at + 6) == WORKSHEET;
  }

  private byte[] copy() {
    int at = 0;
    while (at + 4 <= stream.length) {
      int end = substreamEnd(at);
      if (at == 0) {
        copyGlobals(at, end);
      } else if (isSheet(at)) {
        copySheet(at, end);
      } else {
        whole.write(stream, at, end - at);
      }
      at = end;
    }
    whole.write(stream, at, stream.length - at);
    return whole.toByteArray();
  }

  /** Where the part that begins with this record ends; charts within it have parts of their own. */
  private int substreamEnd(int start) {
    int depth = 0;
    int at = start;
    while (at + 4 <= stream.length) {
      int kind = number(at);
      at = next(at);
      depth += kind == BOF ? 1 : kind == EOF ? -1 : 0;
      if (depth <= 0 && kind == EOF) {
        break;
      }
    }
    return at;
  }

  private void copyGlobals(int start, int end) {
    List<Integer> missing = new ArrayList<>(GLOBALS);
    missing.removeAll(kinds(start, end));
    for (int at = start; at < end; at = next(at)) {
      int kind = number(at);
      // Ahead of a record come the missing ones that belong before it.
      int before = kind == SHEET || kind == EOF ? GLOBALS.size() : GLOBALS.indexOf(kind);
      while (!missing.isEmpty() && GLOBALS.indexOf(missing.get(0)) < before) {
        addFrom(InternalWorkbook.createWorkbook().getRecords(), missing.remove(0));
      }
      whole.write(stream, at, next(at) - at);
    }
  }

  private void copySheet(int start, int end) {
    Set<Integer> kinds = kinds(start, end);
    boolean dimensions = kinds.contains(DIMENSIONS);
    boolean window = kinds.contains(WINDOW);
    int depth = 0;
    for (int at = start; at < end; at = next(at)) {
      int kind = number(at);
      boolean behind = depth == 1 && AFTER_WINDOW.contains(kind);
      if (!dimensions && depth == 1 && (CELLS.contains(kind) || kind == WINDOW || behind)) {
        add(new DimensionsRecord());
        dimensions = true;
      }
      if (!window && behind) {
        addFrom(InternalSheet.createSheet().getRecords(), WINDOW);
        window = true;
      }
      depth += kind == BOF ? 1 : kind == EOF ? -1 : 0;
      whole.write(stream, at, next(at) - at);
    }
  }

  private Set<Integer> kinds(int start, int end) {
    Set<Integer> kinds = new TreeSet<>();
    int depth = 0;
    for (int at = start; at < end; at = next(at)) {
      int kind = number(at);
      depth += kind == BOF ? 1 : kind == EOF ? -1 : 0;
      if (depth <= 1) {
        kinds.add(kind);
      }
    }
    return kinds;
  }

  private void addFrom(List<? extends RecordBase> records, int kind) {
    for (RecordBase base : records) {
      if (base instanceof Record record && (record.getSid() & 0xffff) == kind) {
        add(record);
        if (kind == FORMAT) {
          return;
        }
      }
    }
  }

  private void add(Record record) {
    byte[] bytes = new byte[record.getRecordSize()];
    record.serialize(0, bytes);
    whole.write(bytes, 0, bytes.length);
  }

  private int next(int at) {
    return Math.min(stream.length, at + 4 + number(at + 2));
  }

  private int number(int at) {
    return at + 2 <= stream.length ? stream[at] & 0xff | (stream[at + 1] & 0xff) << 8 : 0;
  }
}
