package washbook.log.understand;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import washbook.functions.Numbers;
import washbook.functions.reading.Hydrometer;
import washbook.log.Doubts;
import washbook.log.LogSettings;
import washbook.log.MapAnswer;
import washbook.log.Role;
import washbook.log.language.Figure;
import washbook.log.language.Message;
import washbook.log.layout.Header;
import washbook.log.layout.Header.HeaderCell;
import washbook.log.layout.HeaderRoles;
import washbook.log.layout.KeyLine;
import washbook.log.sheet.Grid;
import washbook.log.words.CellText;
import washbook.log.words.Concept;
import washbook.log.words.ReadingScale;
import washbook.log.words.Statement;
import washbook.log.words.Vocabulary;

/**
 * The original gravity as the lines above a table state it. What may state it and is not read is
 * asked about: nothing of it is passed over.
 */
final class OriginalAbove {
  /** A gravity above a table that can be the original one, SG. */
  private static final double LEAST_ORIGINAL = 1.025;

  private static final double MOST_ORIGINAL = 1.2;

  /** One that is not higher than the readings is one of them, SG. */
  private static final double HIGHER = 0.0008;

  /** What a label may mean before a figure of which it does not say what it is. */
  private static final Set<Role> OPEN_ROLES = EnumSet.of(Role.GRAVITY, Role.OTHER, Role.NOTE);

  private static final int LONGEST_UNIT = 12;

  private static final int ROWS_READ = 200;

  private static final Set<Concept> NO_GRAVITY =
      EnumSet.of(
          Concept.FACTOR,
          Concept.OFFSET,
          Concept.CORRECTION,
          Concept.TARGET,
          Concept.RATE,
          Concept.ATTENUATION,
          Concept.ALCOHOL);

  private static final Set<Concept> PERCENT = EnumSet.of(Concept.PERCENT);

  private final Grid grid;
  private final Header header;
  private final List<KeyLine> lines;
  private final int above;
  private final int firstColumn;
  private final int lastColumn;
  private final Set<Integer> ofOthers;
  private final Doubts doubts;

  /**
   * @param lines what is said above the table
   * @param above first row of those that may speak of it
   * @param firstColumn first column of those
   * @param lastColumn last column of those
   * @param ofOthers columns between them that other vessels have for themselves
   */
  OriginalAbove(
      Grid grid,
      Header header,
      List<KeyLine> lines,
      int above,
      int firstColumn,
      int lastColumn,
      Set<Integer> ofOthers,
      Doubts doubts) {
    this.grid = grid;
    this.header = header;
    this.lines = lines;
    this.above = above;
    this.firstColumn = firstColumn;
    this.lastColumn = lastColumn;
    this.ofOthers = ofOthers;
    this.doubts = doubts;
  }

  /** All lines that state one. */
  List<KeyLine> allStated() {
    return lines.stream().filter(l -> l.isOriginalGravity() && !Double.isNaN(l.value())).toList();
  }

  /** The line that states it, the nearest of several; null where none does. */
  KeyLine stated() {
    List<KeyLine> all = allStated();
    return all.isEmpty() ? null : all.get(all.size() - 1);
  }

  /** A gravity stated above that nothing understands may be the original one. */
  void askAboutOpen(
      ColumnAssignment columns, OriginalsList list, TableMap said, LogSettings settings) {
    if (stated() != null
        || columns.has(Role.ORIGINAL_GRAVITY)
        || said.firstReadingIsOriginal()
        || !said.originalGravities().isEmpty()) {
      return;
    }
    if (askAboutUnread(columns)) {
      return;
    }
    List<KeyLine> all = new ArrayList<>(lines);
    all.addAll(unknownFigures());
    all.addAll(higherFigures(columns, List.copyOf(all)));
    double highest = highest(columns);
    for (KeyLine line : all) {
      double stated = gravity(line, columns);
      if (!list.isIn(line.row()) && isOpen(line, stated, highest)) {
        columns.unsettle();
        doubts.ask(
            line.cell(),
            Message.of(
                "ask.isOriginal",
                line.text().isEmpty() || line.units().isEmpty()
                    ? new Figure(Numbers.show(line.value()))
                    : line.text(),
                line.label().strip()),
            MapAnswer.of(
                "original gravity = " + Numbers.round(at20(stated, line, settings), 4) + " SG"),
            MapAnswer.of("original gravity = first reading"));
      }
    }
  }

  private static boolean isOpen(KeyLine line, double stated, double highest) {
    Role role = HeaderRoles.role(line.meanings());
    boolean called = line.meanings().isEmpty() || role == Role.GRAVITY;
    boolean higher =
        OPEN_ROLES.contains(role)
            && line.meanings().stream().noneMatch(NO_GRAVITY::contains)
            && stated > highest + HIGHER;
    return (called || higher)
        && stated > LEAST_ORIGINAL
        && stated < MOST_ORIGINAL
        && !line.has(Concept.FINALGRAVITY)
        && !line.has(Concept.CALIBRATION)
        && !line.has(Concept.POTENTIAL);
  }

  /** A stated gravity as it would be read at 20 °C, where the line tells what it was read at. */
  private static double at20(double stated, KeyLine line, LogSettings settings) {
    return Double.isNaN(line.temperatureC()) || settings.correctedAlready()
        ? stated
        : Hydrometer.correctedGravity(
            stated, line.temperatureC(), settings.calibrationC(), settings.offset());
  }

  /** The same on the scale of the readings, where a figure has none and looks like no gravity. */
  private static double gravity(KeyLine line, ColumnAssignment columns) {
    HeaderCell reading = reading(columns);
    boolean bare =
        PERCENT.containsAll(line.units()) && !ReadingScale.looksLikeGravity(line.value());
    boolean alike = line.has(Concept.ORIGINAL) || ReadingScale.in(line.meanings()).isPresent();
    return bare && alike && reading != null && !columns.of(reading).unit().isEmpty()
        ? ReadingScale.of(columns.of(reading).unit()).toGravity(line.value())
        : gravity(line);
  }

  /** What a line states as a gravity: by the scale behind its figure, else by its looks. */
  private static double gravity(KeyLine line) {
    ReadingScale scale = ReadingScale.in(line.units()).orElse(ReadingScale.SG);
    return scale == ReadingScale.SG
        ? ReadingScale.withoutThousandths(line.value())
        : scale.toGravity(line.value());
  }

  /** The highest reading, SG; NaN where its scale is open. */
  private double highest(ColumnAssignment columns) {
    HeaderCell reading = reading(columns);
    return reading == null || columns.of(reading).unit().isEmpty()
        ? Double.NaN
        : ReadingScale.of(columns.of(reading).unit()).toGravity(highest(reading, columns));
  }

  /** Of plain numbers, else of those with their unit in the cell. */
  private double highest(HeaderCell reading, ColumnAssignment columns) {
    if (columns.facts(reading).numbers() > 0) {
      return columns.facts(reading).max();
    }
    double highest = Double.NaN;
    int last = Math.min(grid.rowCount(), header.bottomRow() + ROWS_READ);
    for (int row = header.bottomRow() + 1; row < last; row++) {
      double value = CellText.number(grid, row, reading.column());
      highest = value <= highest || Double.isNaN(value) ? highest : value;
    }
    return highest;
  }

  private static HeaderCell reading(ColumnAssignment columns) {
    return Stream.of(Role.GRAVITY, Role.REFRACTOMETER)
        .flatMap(role -> columns.with(role).stream())
        .findFirst()
        .orElse(null);
  }

  /**
   * Figures on the scale of the readings, in sentences above, that are higher than all of them.
   *
   * @param asked lines that may be asked about without that
   */
  private List<KeyLine> higherFigures(ColumnAssignment columns, List<KeyLine> asked) {
    List<KeyLine> found = new ArrayList<>();
    HeaderCell reading = reading(columns);
    if (reading == null || columns.of(reading).unit().isEmpty()) {
      return found;
    }
    ReadingScale scale = ReadingScale.of(columns.of(reading).unit());
    double highest = highest(columns);
    for (int row = above; row < header.topRow(); row++) {
      for (int column = firstColumn; column <= lastColumn; column++) {
        if (ofOthers.contains(column)) {
          continue;
        }
        String text = grid.kind(row, column) == Grid.Kind.TEXT ? grid.text(row, column) : "";
        int at = row;
        int from = column;
        boolean read =
            asked.stream()
                .anyMatch(
                    l -> l.row() == at && l.column() == from && isOpen(l, gravity(l), highest));
        if (grid.kind(row, column) == Grid.Kind.NUMBER) {
          higherNumber(asked, row, column, scale, highest).ifPresent(found::add);
        } else if (!read && !Statement.saysTarget(text)) {
          Statement.figures(text, scale).stream()
              .filter(g -> g > highest + HIGHER && g < MOST_ORIGINAL)
              .findFirst()
              .ifPresent(g -> found.add(figure(text, at, g)));
        }
      }
    }
    return found;
  }

  /** A number that looks like the readings and is higher, whatever stands before it. */
  private Optional<KeyLine> higherNumber(
      List<KeyLine> asked, int row, int column, ReadingScale scale, double highest) {
    double value = grid.number(row, column);
    Optional<ReadingScale> behind =
        Optional.of(text(row, column + 1))
            .filter(unit -> unit.length() <= LONGEST_UNIT)
            .flatMap(unit -> ReadingScale.in(Vocabulary.meanings(unit)))
            .filter(s -> s != ReadingScale.SG);
    boolean alike = scale == ReadingScale.SG || scale.isDensity();
    if (behind.isEmpty() && !(alike && ReadingScale.looksLikeGravity(value))) {
      return Optional.empty();
    }
    double plain =
        scale.isDensity() && value > 900
            ? scale.toGravity(value)
            : ReadingScale.withoutThousandths(value);
    double gravity = behind.map(s -> s.toGravity(value)).orElse(plain);
    boolean known =
        asked.stream()
            .anyMatch(
                l ->
                    l.row() == row
                        && l.column() == column
                        && (l.isOriginalGravity() || isOpen(l, gravity(l), highest)));
    String label = label(row, column);
    boolean higher = gravity > highest + HIGHER && gravity < MOST_ORIGINAL;
    return known || Statement.saysTarget(label) || !higher
        ? Optional.empty()
        : Optional.of(figure(label, row, gravity));
  }

  private String text(int row, int column) {
    return column < grid.columnCount() && grid.kind(row, column) == Grid.Kind.TEXT
        ? grid.text(row, column).strip()
        : "";
  }

  /** The nearest words left of a figure. */
  private String label(int row, int column) {
    String label = "";
    for (int at = column - 1; at >= 0 && label.isEmpty(); at--) {
      label = text(row, at);
    }
    return label;
  }

  private KeyLine figure(String text, int row, double gravity) {
    return new KeyLine(
        Set.of(),
        text,
        row,
        header.firstColumn(),
        grid.address(row, header.firstColumn()),
        "",
        Math.rint(gravity * 1e4) / 1e4,
        Set.of(),
        Double.NaN,
        false);
  }

  /** Figures like gravities behind a label that means nothing known. */
  private List<KeyLine> unknownFigures() {
    List<KeyLine> found = new ArrayList<>();
    for (int row = above; row < header.topRow(); row++) {
      int at = row;
      if (lines.stream().anyMatch(l -> l.row() == at)) {
        continue;
      }
      for (int column = firstColumn; column < lastColumn; column++) {
        if (ofOthers.contains(column + 1)) {
          continue;
        }
        double value =
            grid.kind(row, column + 1) == Grid.Kind.NUMBER
                ? grid.number(row, column + 1)
                : Double.NaN;
        boolean label =
            grid.kind(row, column) == Grid.Kind.TEXT
                && Vocabulary.meanings(grid.text(row, column)).isEmpty();
        if (label && value > LEAST_ORIGINAL && value < MOST_ORIGINAL) {
          found.add(
              new KeyLine(
                  Set.of(),
                  grid.text(row, column),
                  row,
                  column + 1,
                  grid.address(row, column + 1),
                  "",
                  value,
                  Set.of(),
                  Double.NaN,
                  true));
        }
      }
    }
    return found;
  }

  /** An original gravity is stated in a form that is not read: it is not passed over. */
  private boolean askAboutUnread(ColumnAssignment columns) {
    for (KeyLine line : lines) {
      if (line.isOriginalGravity() && !line.text().isEmpty() && hasDigit(line.text())) {
        columns.unsettle();
        doubts.ask(
            line.cell(),
            Message.of("ask.notRead", Message.of("quoted", line.text())),
            MapAnswer.like("original gravity = 1.085 SG"),
            MapAnswer.of("original gravity = first reading"));
        return true;
      }
    }
    return false;
  }

  private static boolean hasDigit(String text) {
    return text.chars().anyMatch(Character::isDigit);
  }
}
