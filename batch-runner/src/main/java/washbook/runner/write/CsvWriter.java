package washbook.runner.write;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.SheetPatch;
import washbook.runner.file.ReadFile;
import washbook.runner.file.UnusableFileException;
import washbook.runner.file.WrittenFile;
import washbook.runner.read.CsvDetector;
import washbook.runner.read.CsvDialect;
import washbook.runner.read.CsvScanner;
import washbook.runner.sheet.OwnCells;
import washbook.runner.sheet.SheetWriter;

/**
 * Puts columns into a text table. Numbers are written rounded, with the file's own decimal mark;
 * texts that a spreadsheet would take for a formula get an apostrophe; every byte outside the
 * patched fields stays.
 *
 * <p>A record too short for a filled cell is filled up with separators. A record that reaches the
 * new column gets its field also when that is blank, so that a rectangular table stays one. A
 * character that the file's encoding does not have becomes a question mark.
 */
public final class CsvWriter implements SheetWriter {

  @Override
  public void write(Path source, List<SheetPatch> patches, Path target) throws IOException {
    CsvDialect dialect = CsvDetector.detect(source);
    List<ColumnPatch> columns = new ArrayList<>();
    patches.forEach(patch -> columns.addAll(patch.columns()));
    columns.sort(Comparator.comparingInt(ColumnPatch::column));
    try (InputStream in = ReadFile.stream(source);
        OutputStream out = WrittenFile.stream(target)) {
      out.write(in.readNBytes(dialect.prefixLength()));
      CsvScanner scanner = new CsvScanner(in, dialect.charset(), dialect.separator());
      Rows rows = new Rows(dialect, columns, out);
      int row = 0;
      boolean open = false;
      for (; scanner.next(); row++) {
        rows.patch(row, scanner);
        open = scanner.lineEnd().isEmpty();
      }
      rows.append(row, open);
    }
  }

  /** Writes the records of one file. */
  private static final class Rows {
    private final CsvDialect dialect;
    private final List<ColumnPatch> columns;
    private final OutputStream out;
    private final byte[] separator;
    private final Set<ColumnPatch> ours = Collections.newSetFromMap(new IdentityHashMap<>());

    Rows(CsvDialect dialect, List<ColumnPatch> columns, OutputStream out) {
      this.dialect = dialect;
      this.columns = columns;
      this.out = out;
      this.separator = encode(String.valueOf(dialect.separator()));
    }

    void patch(int row, CsvScanner scanner) throws IOException {
      TreeMap<Integer, Field> fields = fieldsOf(row);
      int had = scanner.isEmptyLine() ? 0 : scanner.fieldCount();
      int width = width(had, fields);
      byte[] record = scanner.record();
      int copied = 0;
      for (int column : fields.headMap(had).keySet()) {
        Field field = fields.get(column);
        String old = scanner.text(column);
        refuseOthers(row, field, old);
        if (!field.content.equals(old)) {
          out.write(record, copied, scanner.fieldStart(column) - copied);
          out.write(encode(dialect.quoted(field.content, field.isNumber)));
          copied = scanner.fieldEnd(column);
        }
      }
      int lineEnd = scanner.fieldEnd(scanner.fieldCount() - 1);
      out.write(record, copied, lineEnd - copied);
      writeFields(had, width, fields);
      out.write(record, lineEnd, scanner.recordEnd() - lineEnd);
    }

    private void refuseOthers(int row, Field field, String old) throws UnusableFileException {
      if (field.patch.headerRow() == row && field.patch.isOurs(old)) {
        ours.add(field.patch);
      }
      OwnCells.refuseOthers(
          "", row, field.patch.column(), ours.contains(field.patch), old.isBlank());
    }

    /** Rows that the file does not have yet. */
    void append(int firstMissing, boolean openEnd) throws IOException {
      int last = -1;
      for (ColumnPatch patch : columns) {
        last = Math.max(last, Math.max(patch.headerRow(), patch.lastRow()));
      }
      byte[] lineEnd = encode(dialect.lineEnd());
      for (int row = firstMissing; row <= last; row++) {
        TreeMap<Integer, Field> fields = fieldsOf(row);
        if (openEnd) {
          out.write(lineEnd);
        }
        writeFields(0, width(0, fields), fields);
        if (!openEnd) {
          out.write(lineEnd);
        }
      }
    }

    private void writeFields(int had, int width, TreeMap<Integer, Field> fields)
        throws IOException {
      for (int column = had; column < width; column++) {
        if (column > 0) {
          out.write(separator);
        }
        Field field = fields.get(column);
        if (field != null) {
          out.write(encode(dialect.quoted(field.content, field.isNumber)));
        }
      }
    }

    private static int width(int had, TreeMap<Integer, Field> fields) {
      int width = had;
      for (int column : fields.keySet()) {
        if (!fields.get(column).content.isEmpty() || had > 0 && column == width) {
          width = Math.max(width, column + 1);
        }
      }
      return width;
    }

    private TreeMap<Integer, Field> fieldsOf(int row) {
      TreeMap<Integer, Field> fields = new TreeMap<>();
      for (ColumnPatch patch : columns) {
        if (row == patch.headerRow()) {
          fields.put(patch.column(), new Field(patch, CsvDialect.harmless(patch.header()), false));
        } else if (patch.owns(row)) {
          fields.put(patch.column(), cell(patch, row));
        }
      }
      return fields;
    }

    private Field cell(ColumnPatch patch, int row) {
      double number = patch.cells().number(row);
      if (!Double.isNaN(number)) {
        return new Field(patch, dialect.numberField(number, patch.decimals(row)), true);
      }
      String text = patch.cells().text(row);
      return new Field(patch, text == null ? "" : CsvDialect.harmless(text), false);
    }

    private byte[] encode(String text) {
      return text.getBytes(dialect.charset());
    }
  }

  private record Field(ColumnPatch patch, String content, boolean isNumber) {}
}
