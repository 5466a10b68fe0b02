package washbook.runner.run;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import washbook.log.ComputedHeaders;
import washbook.log.layout.TransposedLog;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.Grid;
import washbook.log.sheet.SheetPatch;
import washbook.runner.FileFormat;
import washbook.runner.archive.Archive;
import washbook.runner.archive.Part;
import washbook.runner.file.ReadFile;
import washbook.runner.file.UnusableFileException;

/** Opens a file of ours again and looks whether it holds what we put there. */
final class ReadBack {
  private ReadBack() {}

  /**
   * More cells than these are not compared one by one, because that takes the memory of a second
   * sheet; every part of the file has to unpack to its check sum then.
   */
  private static final long MOST_CELLS = 200_000;

  static void check(FileFormat format, Path written, List<SheetPatch> patches) throws IOException {
    if (cells(patches) > MOST_CELLS && isArchive(written)) {
      unpack(written);
    } else {
      compare(format, written, patches);
    }
  }

  /** Tells whether a file is a result of ours by more than its columns. */
  @FunctionalInterface
  interface Sign {
    boolean isIn(Path file) throws IOException;
  }

  /** Refuses to put a result over a file, other than it, in which nothing is ours. */
  static void checkReplaced(FileFormat format, Path written, Path target, Sign sign)
      throws IOException {
    boolean loses =
        Files.isRegularFile(target) && Files.size(target) > 0 && !isSame(written, target);
    if (loses && !isResult(format, target) && !has(sign, target)) {
      throw UnusableFileException.of("write.noResult", UnusableFileException.quoted(target));
    }
  }

  private static boolean isSame(Path written, Path target) throws IOException {
    try (InputStream ours = ReadFile.stream(written);
        InputStream theirs = ReadFile.stream(target)) {
      byte[] one = new byte[1 << 15];
      byte[] other = new byte[1 << 15];
      for (int count = 1; count > 0; ) {
        count = ours.readNBytes(one, 0, one.length);
        int there = theirs.readNBytes(other, 0, other.length);
        if (count != there || !Arrays.equals(one, 0, count, other, 0, there)) {
          return false;
        }
      }
      return true;
    }
  }

  private static boolean has(Sign sign, Path file) {
    try {
      return sign.isIn(file);
    } catch (IOException | RuntimeException unreadable) {
      return false;
    }
  }

  /** Results are known by the headers of their computed columns. */
  private static boolean isResult(FileFormat format, Path file) {
    try {
      for (Grid grid : format.reader().read(file)) {
        for (int row = 0; row < grid.rowCount(); row++) {
          if (!ComputedHeaders.in(grid, row).columns().isEmpty()) {
            return true;
          }
        }
        if (TransposedLog.isFilled(grid)) {
          return true;
        }
      }
      return false;
    } catch (IOException | RuntimeException unreadable) {
      return false;
    }
  }

  private static long cells(List<SheetPatch> patches) {
    long cells = 0;
    for (SheetPatch patch : patches) {
      for (ColumnPatch column : patch.columns()) {
        cells += column.lastRow() - column.firstRow() + 1;
      }
    }
    return cells;
  }

  private static boolean isArchive(Path file) throws IOException {
    try (InputStream in = ReadFile.stream(file)) {
      return in.read() == 'P' && in.read() == 'K';
    }
  }

  private static void unpack(Path file) throws IOException {
    byte[] buffer = new byte[1 << 16];
    try (Archive archive = Archive.open(file)) {
      for (Part part : archive.parts()) {
        try (InputStream in = archive.read(part)) {
          while (in.read(buffer) >= 0) {
            // Reading to the end proves length and check sum.
          }
        }
      }
    }
  }

  private static void compare(FileFormat format, Path written, List<SheetPatch> patches)
      throws IOException {
    Map<String, Grid> sheets = new HashMap<>();
    for (Grid grid : format.reader().read(written)) {
      sheets.put(grid.name(), grid);
    }
    for (SheetPatch patch : patches) {
      // A text file's sheet is named after the file, and the unfinished file is named otherwise.
      Grid grid =
          sheets.size() == 1 ? sheets.values().iterator().next() : sheets.get(patch.sheet());
      if (grid == null) {
        throw UnusableFileException.of("readBack.sheet", patch.sheet());
      }
      for (ColumnPatch column : patch.columns()) {
        check(grid, column);
      }
    }
  }

  private static void check(Grid grid, ColumnPatch column) throws UnusableFileException {
    for (int row = column.firstRow(); row <= column.lastRow(); row++) {
      if (!column.owns(row)) {
        continue;
      }
      double number = column.cells().number(row);
      String text = column.cells().text(row);
      boolean holds =
          !Double.isNaN(number)
              ? isNumber(grid, row, column, number)
              : text == null || !grid.text(row, column.column()).isEmpty();
      if (!holds) {
        throw UnusableFileException.of("write.readBack", CellAddress.of(row, column.column()));
      }
    }
  }

  /** A text format holds the digits that are shown, perhaps with a decimal comma. */
  private static boolean isNumber(Grid grid, int row, ColumnPatch column, double expected) {
    double found = grid.number(row, column.column());
    double shown = 0.501 * Math.pow(10, -column.decimals(row));
    return Double.isNaN(found)
        ? !grid.text(row, column.column()).isEmpty()
        : Math.abs(found - expected) <= shown;
  }
}
