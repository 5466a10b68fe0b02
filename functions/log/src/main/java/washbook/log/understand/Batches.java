package washbook.log.understand;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import washbook.functions.Numbers;
import washbook.log.Batch;
import washbook.log.Doubts;
import washbook.log.LogColumn;
import washbook.log.LogTable;
import washbook.log.MapAnswer;
import washbook.log.OriginalGravity;
import washbook.log.Role;
import washbook.log.language.Message;
import washbook.log.layout.KeyLine;
import washbook.log.layout.KeyLines;
import washbook.log.layout.TableRows;
import washbook.log.reading.NewestFirst;
import washbook.log.reading.RowTimes;
import washbook.log.sheet.Grid;
import washbook.log.words.BatchNameText;
import washbook.log.words.Concept;
import washbook.log.words.Ditto;
import washbook.log.words.LateWords;
import washbook.log.words.Vocabulary;

/** Splits a table's rows into batches and finds each batch's original gravity. */
final class Batches {
  /** {@code A (18 L)} is batch A. */
  private static final Pattern VOLUME_BEHIND =
      Pattern.compile("\\s+\\(\\d+([.,]\\d+)?\\s*([Ll]|gal|hl|kg)\\)$");

  private static final int LONGEST_NAME = 24;

  /** Of more batches no note is asked which of them it names. */
  private static final int MOST_NAMED = 100;

  private final Grid grid;
  private final LogTable table;
  private final TableRows rows;
  private final String tableName;
  private final KeyLine stated;
  private final OriginalsList list;
  private final TableMap said;
  private final List<String> vessels;
  private final boolean sharesNotes;
  private final Doubts doubts;
  private RowTimes times;

  /** Cells between the rows that say of the batch begun there that it was blended or parted. */
  private final Map<String, String> partedInside = new HashMap<>();

  /** Original gravities stated between the rows, by the batch that a row of its own begins. */
  private final Map<String, Optional<KeyLine>> begunInside = new HashMap<>();

  /**
   * @param table with columns and settings, without batches
   * @param tableName name of a batch that the rows do not name
   * @param stated key line with the original gravity, or null
   * @param list original gravities by batch, from a list above
   * @param said what a map says
   * @param vessels names of those that stand side by side with this one
   * @param sharesNotes whether they share its column of notes
   */
  Batches(
      Grid grid,
      LogTable table,
      TableRows rows,
      String tableName,
      KeyLine stated,
      OriginalsList list,
      TableMap said,
      List<String> vessels,
      boolean sharesNotes,
      Doubts doubts) {
    this.grid = grid;
    this.table = table;
    this.rows = rows;
    this.vessels = vessels;
    this.sharesNotes = sharesNotes;
    this.tableName = tableName;
    this.stated = stated;
    this.list = list;
    this.said = said;
    this.doubts = doubts;
  }

  /** Which date is read in another year than it says; {@link Message#NONE} for none. */
  Message yearRemark() {
    LogColumn date = table.column(Role.DATE).orElse(null);
    return date == null || times.slip() < 0
        ? Message.NONE
        : Message.of(
            "remark.year",
            grid.address(times.slip(), date.column()),
            String.valueOf(times.year(times.slip())));
  }

  List<Batch> make() {
    times = RowTimes.of(grid, table);
    Map<String, int[]> parts = inOrder(times);
    Collection<String> names =
        parts.size() > MOST_NAMED ? List.of() : vessels.isEmpty() ? parts.keySet() : vessels;
    Feeds additions = new Feeds(grid, table, times, said.feeds(), names, sharesNotes, doubts);
    BatchOriginals originals = new BatchOriginals(grid, table, list, said, doubts);
    List<Batch> batches = new ArrayList<>();
    for (Map.Entry<String, int[]> entry : parts.entrySet()) {
      int[] batchRows = entry.getValue();
      boolean several = list.hasLines() && parts.size() > 1;
      Optional<KeyLine> above = several ? list.line(entry.getKey()) : Optional.ofNullable(stated);
      Optional<KeyLine> line = begunInside.getOrDefault(entry.getKey(), above);
      boolean open = several && line.isEmpty() && stated != null;
      Batch batch =
          withoutPartedStart(originals.batch(entry.getKey(), batchRows, line.orElse(null), open));
      batches.add(batch.original().gravity().isEmpty() ? batch : additions.over(batch));
    }
    askAboutOtherRows(batches);
    return said.firstReadingIsOriginal()
        ? batches
        : new PartedBatches(grid, table, times, doubts).withoutTheirStart(batches);
  }

  /** The rows of each batch in the order of time, parted where a map says that another begins. */
  private Map<String, int[]> inOrder(RowTimes order) {
    Map<String, Ints> byName = byName();
    Map<String, int[]> parted = new LinkedHashMap<>();
    for (Map.Entry<String, Ints> entry : byName.entrySet()) {
      int[] batchRows = entry.getValue().toArray();
      order.sort(batchRows);
      if (isWithoutTime(order, batchRows)) {
        new NewestFirst(grid, table).turn(batchRows);
      }
      String name = entry.getKey();
      int from = 0;
      for (int position = 1; position < batchRows.length; position++) {
        String begins = said.feeds().batches().get(batchRows[position]);
        if (begins != null) {
          parted.put(name, Arrays.copyOfRange(batchRows, from, position));
          boolean taken = parted.containsKey(begins) || byName.containsKey(begins);
          name = taken ? begins + " " + (batchRows[position] + 1) : begins;
          begunInside.put(name, Optional.empty());
          from = position;
        }
      }
      parted.put(name, Arrays.copyOfRange(batchRows, from, batchRows.length));
    }
    return parted;
  }

  private static boolean isWithoutTime(RowTimes order, int[] batchRows) {
    return Arrays.stream(batchRows).allMatch(row -> Double.isNaN(order.days(row)));
  }

  /** A map speaks of a row that is none of this table's. */
  private void askAboutOtherRows(List<Batch> batches) {
    Set<Integer> rowsSaid = new TreeSet<>(said.feeds().sugar().keySet());
    rowsSaid.addAll(said.feeds().batches().keySet());
    for (int row : rowsSaid) {
      boolean inside = row >= table.firstRow() && row <= table.lastRow();
      boolean ofThis = inside || said.headerRow() >= 0;
      if (ofThis
          && batches.stream().noneMatch(b -> Arrays.stream(b.rows()).anyMatch(r -> r == row))) {
        doubts.ask(grid.address(row, table.firstColumn()), Message.of("ask.otherRow", row + 1));
      }
    }
  }

  private Map<String, Ints> byName() {
    Map<String, Ints> byName = new LinkedHashMap<>();
    Map<String, String> spellings = new HashMap<>();
    int column = table.column(Role.BATCH).map(LogColumn::column).orElse(-1);
    String name = tableName;
    Ints current = null;
    for (int row = table.firstRow(); row <= table.lastRow(); row++) {
      String begun = column < 0 ? begun(row) : "";
      if (!begun.isEmpty()) {
        name = begun;
        current = null;
        begunInside.put(name, Optional.empty());
      }
      if (begunInside.containsKey(name) && (rows.isSkipped(row) || !begun.isEmpty())) {
        String batch = name;
        statedIn(row).ifPresent(line -> begunInside.put(batch, Optional.of(line)));
      }
      if (rows.isSkipped(row) || !begun.isEmpty()) {
        continue;
      }
      if (column >= 0) {
        String shown = name(row, column);
        if (!shown.isEmpty() && !shown.equals(name)) {
          String first = shown;
          name = spellings.computeIfAbsent(shown.toLowerCase(Locale.ROOT), k -> first);
          current = null;
        }
      }
      if (isBlank(row)) {
        continue;
      }
      if (current == null) {
        current = byName.computeIfAbsent(name, k -> new Ints());
      }
      current.add(row);
    }
    return byName;
  }

  /** The name of the batch that a row of its own begins, "" where none does. */
  private String begun(int row) {
    String text = onlyText(row);
    String name = BatchNameText.of(text);
    name = name.isEmpty() ? BatchNameText.vessel(text) : name;
    if (!name.isEmpty() || !tellsOfParts(text)) {
      return name;
    }
    String words = text.split("[\\d(,;:.]", 2)[0].strip();
    String called =
        words.isEmpty() || words.length() > LONGEST_NAME ? String.valueOf(row + 1) : words;
    partedInside.put(called, grid.address(row, table.firstColumn()));
    return called;
  }

  private static boolean tellsOfParts(String text) {
    return Vocabulary.meanings(text).contains(Concept.BLENDED) || LateWords.sayParted(text);
  }

  /** A batch blended or parted in mid ferment has no original gravity of its own. */
  private Batch withoutPartedStart(Batch batch) {
    String cell = partedInside.get(batch.name());
    if (cell == null
        || !(batch.original() instanceof OriginalGravity.FirstReading)
        || said.firstReadingIsOriginal()) {
      return batch;
    }
    doubts.ask(
        cell,
        Message.of("ask.blended", batch.name()),
        MapAnswer.like("original gravity of " + batch.name() + " = 1.055 SG"),
        MapAnswer.of("original gravity = first reading"));
    return batch.withoutOriginal(cell, Message.of("why.late", cell));
  }

  /** The text in the table's first column where nothing else stands in the row, else "". */
  private String onlyText(int row) {
    int first = table.firstColumn();
    if (grid.kind(row, first) != Grid.Kind.TEXT) {
      return "";
    }
    for (int column = first + 1; column <= table.lastColumn(); column++) {
      if (grid.kind(row, column) != Grid.Kind.BLANK) {
        return "";
      }
    }
    return grid.text(row, first);
  }

  private Optional<KeyLine> statedIn(int row) {
    return new KeyLines(grid)
        .find(row, row, table.firstColumn(), table.lastColumn()).stream()
            .filter(l -> l.isOriginalGravity() && !Double.isNaN(l.value()))
            .findFirst();
  }

  private boolean isBlank(int row) {
    for (LogColumn use : table.columns()) {
      if (use.role() != Role.COMPUTED && grid.kind(row, use.column()) != Grid.Kind.BLANK) {
        return false;
      }
    }
    return true;
  }

  private String name(int row, int column) {
    return switch (grid.kind(row, column)) {
      case TEXT -> {
        String text = grid.text(row, column).strip();
        yield Ditto.isMark(text)
            ? ""
            : text.endsWith(")") ? VOLUME_BEHIND.matcher(text).replaceFirst("") : text;
      }
      case NUMBER, DATE -> Numbers.show(grid.number(row, column));
      default -> "";
    };
  }

  /** A growing list of row numbers. */
  private static final class Ints {
    private int[] values = new int[16];
    private int size;

    void add(int value) {
      if (size == values.length) {
        values = Arrays.copyOf(values, size + (size >> 1));
      }
      values[size++] = value;
    }

    int[] toArray() {
      return Arrays.copyOf(values, size);
    }
  }
}
