package washbook.log.understand;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import washbook.log.Role;
import washbook.log.layout.HeaderRoles;
import washbook.log.layout.KeyLine;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;
import washbook.log.words.CellText;
import washbook.log.words.Concept;
import washbook.log.words.ReadingScale;
import washbook.log.words.Vocabulary;

/** A list above a log that gives the original gravity of each batch, in rows or in one row. */
final class OriginalsList {
  /**
   * One original gravity.
   *
   * @param row in which it stands
   * @param scale of its header, empty where none is named
   * @param names the other cells of its row
   */
  record Entry(
      int row, String cell, double value, Optional<ReadingScale> scale, List<String> names) {}

  /** Hardly any wash begins lower, SG. */
  private static final double LEAST_ORIGINAL = 1.02;

  private static final Pattern BEHIND_LABEL = Pattern.compile(":.*");

  private static final Pattern NAMED =
      Pattern.compile("(\\p{L}.*?)\\s*[:=\u2013-]?\\s+(\\d{1,4}(?:[.,]\\d{1,4})?)");

  private final List<Entry> entries = new ArrayList<>();

  /** Lines that state different ones, with the words of each. */
  private final Map<KeyLine, List<String>> lines = new LinkedHashMap<>();

  /**
   * @param above first row that can speak of the table
   * @param topRow first row of its header
   */
  static OriginalsList of(Grid grid, int above, int topRow, int firstColumn, int lastColumn) {
    OriginalsList list = new OriginalsList();
    for (int row = above; row < topRow - 1; row++) {
      for (int column = firstColumn; column <= lastColumn; column++) {
        if (grid.kind(row, column) == Kind.TEXT && isHeader(grid, row, column)) {
          list.read(grid, row, column, topRow, firstColumn, lastColumn);
        }
      }
    }
    for (int row = above; row < topRow && list.isEmpty(); row++) {
      list.readLine(grid, row, firstColumn, lastColumn);
    }
    return list;
  }

  /** A name and a gravity each in the cells of a row, as {@code WB1 1058 | WB2 1057.5}. */
  private void readLine(Grid grid, int row, int firstColumn, int lastColumn) {
    List<Entry> found = new ArrayList<>();
    for (int column = firstColumn; column <= lastColumn; column++) {
      Matcher named =
          NAMED.matcher(grid.kind(row, column) == Kind.TEXT ? grid.text(row, column).strip() : "");
      if (named.matches()) {
        double value = Double.parseDouble(named.group(2).replace(',', '.'));
        if (isOriginal(value)) {
          found.add(
              new Entry(
                  row,
                  grid.address(row, column),
                  value,
                  Optional.empty(),
                  List.of(plain(named.group(1)))));
        }
      }
    }
    if (found.size() > 1) {
      entries.addAll(found);
    }
  }

  /** Whether a figure behind a name is a wash's gravity, and not the number of a vessel. */
  private static boolean isOriginal(double value) {
    return ReadingScale.looksLikeGravity(value)
        && ReadingScale.withoutThousandths(value) >= LEAST_ORIGINAL;
  }

  private static boolean isHeader(Grid grid, int row, int column) {
    Set<Concept> meanings = Vocabulary.meanings(grid.text(row, column));
    return HeaderRoles.role(meanings) == Role.ORIGINAL_GRAVITY
        && grid.kind(row + 1, column) == Kind.NUMBER;
  }

  private void read(
      Grid grid, int header, int column, int topRow, int firstColumn, int lastColumn) {
    Optional<ReadingScale> scale = ReadingScale.in(Vocabulary.meanings(grid.text(header, column)));
    for (int row = header + 1; row < topRow; row++) {
      double value = CellText.plainNumber(grid, row, column);
      if (Double.isNaN(value)) {
        return;
      }
      List<String> names = new ArrayList<>();
      for (int other = firstColumn; other <= lastColumn; other++) {
        if (other != column && grid.kind(row, other) == Kind.TEXT) {
          names.add(plain(grid.text(row, other)));
        }
      }
      entries.add(new Entry(row, grid.address(row, column), value, scale, names));
    }
  }

  /** Adds lines such as {@code Run 11: OG 1.066 at 78 F}, where there are several. */
  void add(Grid grid, List<KeyLine> stated) {
    if (stated.stream().mapToDouble(KeyLine::value).distinct().count() < 2) {
      return;
    }
    for (KeyLine line : stated) {
      StringJoiner words = new StringJoiner(" ");
      for (int column = 0; column <= line.column(); column++) {
        if (grid.kind(line.row(), column) == Kind.TEXT) {
          words.add(grid.text(line.row(), column));
        }
      }
      lines.put(line, Vocabulary.tokens(BEHIND_LABEL.matcher(words.toString()).replaceFirst("")));
    }
  }

  boolean hasLines() {
    return !lines.isEmpty();
  }

  /** The only line that begins with a batch's name; empty where none or several do. */
  Optional<KeyLine> line(String batch) {
    List<String> name = Vocabulary.tokens(batch);
    List<KeyLine> found =
        lines.keySet().stream()
            .filter(l -> !name.isEmpty() && Collections.indexOfSubList(lines.get(l), name) >= 0)
            .toList();
    return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
  }

  boolean isEmpty() {
    return entries.isEmpty();
  }

  /** That of a batch; empty where no row, or more than one, names it. */
  Optional<Entry> of(String batch) {
    List<Entry> named =
        entries.stream().filter(entry -> entry.names().contains(plain(batch))).toList();
    return named.size() == 1 ? Optional.of(named.get(0)) : Optional.empty();
  }

  /** Whether an original gravity of the list stands in a row. */
  boolean isIn(int row) {
    return entries.stream().anyMatch(entry -> entry.row() == row);
  }

  /** Where the first one stands. */
  String cell() {
    return entries.isEmpty() ? lines.keySet().iterator().next().cell() : entries.get(0).cell();
  }

  private static String plain(String name) {
    return name.strip().toLowerCase(Locale.ROOT);
  }
}
