package washbook.runner.sheet;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import washbook.log.sheet.Grid;
import washbook.runner.file.UnusableFileException;

/**
 * A sheet kept by column in short {@link CellChunk chunks} of rows, without an object per cell; the
 * characters of its texts are in {@link Texts}. A reader puts the cells in once and in any order; a
 * later one for the same place wins.
 */
public final class CompactGrid implements Grid {
  /** More rows than this are refused. */
  public static final int MAX_ROWS = 1 << 24;

  /** More columns than this are refused. */
  public static final int MAX_COLUMNS = 1 << 14;

  private final String name;
  private String fileName = "";
  private final Texts texts;
  private final List<Area> merged = new ArrayList<>();
  private final List<Area> drawings = new ArrayList<>();
  private final Map<Integer, BitSet> inside = new HashMap<>();
  private final WorkLimit work;
  private CellChunk[][] columns = new CellChunk[16][];
  private int rowCount;
  private int columnCount;

  public CompactGrid(String name, Texts texts) {
    this(name, texts, new WorkLimit());
  }

  /** The same sheet as one of a workbook. */
  public CompactGrid in(Path workbook) {
    fileName = withoutEnding(workbook);
    return this;
  }

  /** The name of a file without its ending. */
  public static String withoutEnding(Path file) {
    String whole = file.getFileName().toString();
    int point = whole.lastIndexOf('.');
    return point > 0 ? whole.substring(0, point) : whole;
  }

  @Override
  public String fileName() {
    return fileName;
  }

  CompactGrid(String name, Texts texts, WorkLimit work) {
    this.name = name;
    this.texts = texts;
    this.work = work;
  }

  /** A number; one that is not finite becomes an error cell. */
  public void putNumber(int row, int column, double number, boolean formula)
      throws UnusableFileException {
    put(row, column, Kind.NUMBER, number, formula);
  }

  /** A date or time as days since 1899-12-30. */
  public void putDate(int row, int column, double days, boolean formula)
      throws UnusableFileException {
    put(row, column, Kind.DATE, days, formula);
  }

  public void putLogical(int row, int column, boolean truth, boolean formula)
      throws UnusableFileException {
    put(row, column, Kind.LOGICAL, truth ? 1 : 0, formula);
  }

  /** An error, or a formula without a stored result. */
  public void putError(int row, int column, boolean formula) throws UnusableFileException {
    mark(row, column, Kind.ERROR, formula);
  }

  /** A text; an empty one that no formula gave leaves the cell blank. */
  public void putText(int row, int column, String text, boolean formula)
      throws UnusableFileException {
    putText(row, column, texts.intern(text), formula);
  }

  /** A text by its number in the texts that this grid was made with. */
  public void putText(int row, int column, int number, boolean formula)
      throws UnusableFileException {
    if (texts.isEmpty(number) && !formula) {
      return;
    }
    CellChunk chunk = mark(row, column, Kind.TEXT, formula);
    chunk.putText(row & (CellChunk.SIZE - 1), number, texts.limit());
  }

  public void merge(Area area) throws UnusableFileException {
    texts.limit().take(48);
    merged.add(area);
  }

  /** Notes the cells that a drawing lies over. */
  public void draw(Area area) throws UnusableFileException {
    texts.limit().take(48);
    drawings.add(area);
  }

  /** Notes that a cell's text wraps or is made smaller. */
  public void keepInside(int row, int column) throws UnusableFileException {
    BitSet rows = inside.computeIfAbsent(column, key -> new BitSet(0));
    if (row >= rows.size()) {
      texts.limit().take((2L * row - rows.size()) / Byte.SIZE + 48);
    }
    rows.set(row);
  }

  @Override
  public boolean isKeptInside(int row, int column) {
    BitSet rows = inside.get(column);
    return rows != null && rows.get(row);
  }

  @Override
  public List<Area> drawings() {
    return List.copyOf(drawings);
  }

  private void put(int row, int column, Kind kind, double number, boolean formula)
      throws UnusableFileException {
    if (!Double.isFinite(number)) {
      mark(row, column, Kind.ERROR, formula);
      return;
    }
    CellChunk chunk = mark(row, column, kind, formula);
    chunk.putNumber(row & (CellChunk.SIZE - 1), number, texts.limit());
  }

  private CellChunk mark(int row, int column, Kind kind, boolean formula)
      throws UnusableFileException {
    if (row < 0 || row >= MAX_ROWS || column < 0 || column >= MAX_COLUMNS) {
      throw UnusableFileException.of("sheet.farOut", name, row + 1L, column + 1L);
    }
    if (column >= columns.length) {
      columns = Arrays.copyOf(columns, Math.max(column + 1, 2 * columns.length));
    }
    CellChunk[] chunks = columns[column];
    int index = row >> CellChunk.BITS;
    if (chunks == null || index >= chunks.length) {
      int length = chunks == null ? index + 1 : Math.max(index + 1, 2 * chunks.length);
      texts.limit().take(4L * (length - (chunks == null ? 0 : chunks.length)));
      chunks = chunks == null ? new CellChunk[length] : Arrays.copyOf(chunks, length);
      columns[column] = chunks;
    }
    CellChunk chunk = chunks[index];
    if (chunk == null) {
      texts.limit().take(CellChunk.bytes());
      chunk = new CellChunk();
      chunks[index] = chunk;
      if (index > 0 && chunks[index - 1] != null) {
        packAbove(chunks, index);
      }
    } else {
      chunk.unpack(texts.limit());
    }
    chunk.mark(row & (CellChunk.SIZE - 1), kind, formula);
    rowCount = Math.max(rowCount, row + 1);
    columnCount = Math.max(columnCount, column + 1);
    return chunk;
  }

  /** Readers go down the rows: nothing more is to be expected above a new chunk. */
  private void packAbove(CellChunk[] chunks, int index) {
    int decimals = index > 1 && chunks[index - 2] != null ? chunks[index - 2].decimals() : 0;
    chunks[index - 1].pack(decimals);
  }

  private CellChunk chunk(int row, int column) {
    if (row < 0 || column < 0 || column >= columns.length || columns[column] == null) {
      return CellChunk.EMPTY;
    }
    CellChunk[] chunks = columns[column];
    int index = row >> CellChunk.BITS;
    return index >= chunks.length || chunks[index] == null ? CellChunk.EMPTY : chunks[index];
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public int rowCount() {
    return rowCount;
  }

  @Override
  public int columnCount() {
    return columnCount;
  }

  @Override
  public Kind kind(int row, int column) {
    work.ask(rowCount);
    return chunk(row, column).kind(row & (CellChunk.SIZE - 1));
  }

  @Override
  public double number(int row, int column) {
    CellChunk chunk = chunk(row, column);
    int at = row & (CellChunk.SIZE - 1);
    return switch (chunk.kind(at)) {
      case NUMBER, DATE, LOGICAL -> chunk.number(at);
      case BLANK, TEXT, ERROR -> Double.NaN;
    };
  }

  @Override
  public String text(int row, int column) {
    CellChunk chunk = chunk(row, column);
    int at = row & (CellChunk.SIZE - 1);
    return chunk.kind(at) == Kind.TEXT ? texts.get(chunk.text(at)) : "";
  }

  @Override
  public boolean isFormula(int row, int column) {
    return chunk(row, column).isFormula(row & (CellChunk.SIZE - 1));
  }

  @Override
  public List<Area> merged() {
    return Collections.unmodifiableList(merged);
  }
}
