package washbook.runner.sheet;

import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.SheetPatch;
import washbook.runner.file.UnusableFileException;

/**
 * Keeps the computed numbers of large sheets in a file until they are written, so that a workbook
 * of many takes no more memory for them than its largest. The sheet and all that was made of it can
 * be given up then.
 */
public final class PatchStore implements Closeable {
  /** Fewer cells stay where they are. */
  private static final long FEWEST_CELLS = 100_000;

  /** Sentences are kept in memory; a patch that has more of them stays as it is. */
  private static final int MOST_TEXTS = 1_000;

  private static final int WINDOW = 1 << 13;

  private FileChannel file;
  private long end;

  /** The same patch; where it holds formulas, many texts, or cannot be stored, it is as before. */
  public SheetPatch put(SheetPatch patch) {
    long cells = 0;
    for (ColumnPatch column : patch.columns()) {
      cells += column.lastRow() - column.firstRow() + 1;
    }
    if (cells < FEWEST_CELLS) {
      return patch;
    }
    try {
      List<ColumnPatch> columns = new ArrayList<>();
      for (ColumnPatch column : patch.columns()) {
        Map<Integer, String> texts = texts(column);
        if (texts == null) {
          return patch;
        }
        columns.add(
            new ColumnPatch(
                column.column(),
                column.headerRow(),
                column.header(),
                column.headerBefore(),
                column.firstRow(),
                column.lastRow(),
                column.decimals(),
                new Stored(column.firstRow(), write(column), texts),
                column.cut()));
      }
      return new SheetPatch(patch.sheet(), columns);
    } catch (IOException noRoom) {
      return patch;
    }
  }

  /** The texts by their rows; null where they are too many, or there are formulas. */
  private static Map<Integer, String> texts(ColumnPatch column) {
    Map<Integer, String> texts = new HashMap<>();
    for (int row = column.firstRow(); row <= column.lastRow(); row++) {
      if (column.cells().formula(row) != null) {
        return null;
      }
      String text = column.cells().text(row);
      if (text != null) {
        texts.put(row, text);
      }
      if (texts.size() > MOST_TEXTS) {
        return null;
      }
    }
    return texts;
  }

  /** Where the numbers of the column begin. */
  private long write(ColumnPatch column) throws IOException {
    if (file == null) {
      file =
          FileChannel.open(
              Files.createTempFile("washbook", ".cells"),
              StandardOpenOption.READ,
              StandardOpenOption.WRITE,
              StandardOpenOption.DELETE_ON_CLOSE);
    }
    long start = end;
    ByteBuffer bytes = ByteBuffer.allocate(WINDOW);
    for (int row = column.firstRow(); row <= column.lastRow(); row++) {
      bytes.putDouble(column.cells().number(row));
      if (!bytes.hasRemaining() || row == column.lastRow()) {
        bytes.flip();
        while (bytes.hasRemaining()) {
          end += file.write(bytes, end);
        }
        bytes.clear();
      }
    }
    return start;
  }

  @Override
  public void close() {
    try {
      if (file != null) {
        file.close();
      }
    } catch (IOException e) {
      // It is read no more, and closing is all that can be done with it.
    }
  }

  /** Cells whose numbers stand in the file, of which a short stretch is at hand. */
  private final class Stored implements ColumnPatch.Cells {
    private final int firstRow;
    private final long start;
    private final Map<Integer, String> texts;
    private final ByteBuffer window = ByteBuffer.allocate(WINDOW);
    private long windowStart = -1;

    Stored(int firstRow, long start, Map<Integer, String> texts) {
      this.firstRow = firstRow;
      this.start = start;
      this.texts = texts;
      window.limit(0);
    }

    @Override
    public double number(int row) {
      long place = start + Double.BYTES * (long) (row - firstRow);
      if (windowStart < 0 || place < windowStart || place >= windowStart + window.limit()) {
        read(place);
      }
      return window.getDouble((int) (place - windowStart));
    }

    private void read(long place) {
      try {
        window.clear();
        window.limit((int) Math.min(WINDOW, end - place));
        windowStart = place;
        while (window.hasRemaining()) {
          if (file.read(window, place + window.position()) < 0) {
            throw UnusableFileException.of("changed.numbers");
          }
        }
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    @Override
    public String text(int row) {
      return texts.get(row);
    }
  }
}
