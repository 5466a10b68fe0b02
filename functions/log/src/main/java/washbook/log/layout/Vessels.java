package washbook.log.layout;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import washbook.log.Role;
import washbook.log.layout.Header.HeaderCell;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;
import washbook.log.words.CellText;
import washbook.log.words.Concept;
import washbook.log.words.ReadingScale;
import washbook.log.words.Vocabulary;

/**
 * Vessels side by side that share the columns of dates and notes: one table with several readings
 * becomes one table for each vessel. Their names stand in a row above or in the headers themselves.
 * Readings of one vessel at several times of day stand apart likewise, each called by its time;
 * those by several instruments do not.
 */
public final class Vessels {
  /** What a name is not about: these tell readings of one vessel apart. */
  static final Set<Concept> NO_NAME =
      EnumSet.of(
          Concept.GRAVITY,
          Concept.EXTRACT,
          Concept.READING,
          Concept.HYDROMETER,
          Concept.REFRACTOMETER,
          Concept.TEMPERATURE,
          Concept.AMBIENT,
          Concept.CALIBRATION,
          Concept.CORRECTED,
          Concept.UNCORRECTED,
          Concept.CORRECTION,
          Concept.ORIGINAL,
          Concept.ORIGINALGRAVITY,
          Concept.FINALGRAVITY,
          Concept.TARGET,
          Concept.POTENTIAL,
          Concept.ALCOHOL,
          Concept.DATE,
          Concept.DAY,
          Concept.TIME,
          Concept.TIME_OF_DAY,
          Concept.WEEKDAY,
          Concept.NOTE,
          Concept.TOTAL);

  private static final int LONGEST_NAME = 40;

  private static final int ROWS_SEEN = 40;

  /** Lines between the vessels' names and the header. */
  private static final int LINES_ABOVE = 6;

  private final Grid grid;
  private final Header header;
  private final List<HeaderCell> readings;

  private Vessels(Grid grid, Header header, Map<Integer, Role> said) {
    this.grid = grid;
    this.header = header;
    List<HeaderCell> read =
        header.cells().stream()
            .filter(c -> c.role() == Role.GRAVITY || isSaidOfOne(c, said))
            .filter(this::holdsFigures)
            .toList();
    List<HeaderCell> refracted = with(header, Role.REFRACTOMETER);
    boolean alike =
        refracted.size() > 1 && refracted.stream().map(HeaderCell::text).distinct().count() == 1;
    this.readings =
        !read.isEmpty() ? read : alike ? refracted : with(header, Role.OWN_CORRECTED_GRAVITY);
  }

  /** Whether texts alone do not stand below: {@code measured} may also tell who has. */
  private boolean holdsFigures(HeaderCell cell) {
    int texts = 0;
    for (int row = header.bottomRow() + 1; row < grid.rowCount(); row++) {
      if (!Double.isNaN(CellText.number(grid, row, cell.column()))) {
        return true;
      }
      texts += grid.kind(row, cell.column()) == Kind.TEXT ? 1 : 0;
    }
    return texts == 0;
  }

  /** Whether a map says of one of several alike columns that it is a refractometer's. */
  private static boolean isSaidOfOne(HeaderCell cell, Map<Integer, Role> said) {
    return said.get(cell.column()) == Role.REFRACTOMETER
        && !cell.meanings().contains(Concept.REFRACTOMETER);
  }

  private static List<HeaderCell> with(Header header, Role role) {
    return header.cells().stream().filter(c -> c.role() == role).toList();
  }

  /**
   * A header for each vessel, or the header alone where it is about one.
   *
   * @param said columns of which a map says that they are readings
   */
  public static List<Header> of(Grid grid, Header header, Map<Integer, Role> said) {
    Vessels vessels = new Vessels(grid, withoutMean(grid, withTemperatures(header)), said);
    boolean instruments = new HashSet<>(said.values()).size() > 1;
    if (instruments || vessels.readings.size() < 2 || !vessels.areOnOneScale()) {
      return List.of(header);
    }
    List<Header> found = vessels.areOfTimesOfDay() ? vessels.byTimesOfDay() : vessels.byNames(said);
    return found.isEmpty() ? List.of(header) : found;
  }

  private List<Header> byNames(Map<Integer, Role> said) {
    List<Header> found = byRowAbove(header.topRow() - 1);
    if (found.isEmpty() && header.bottomRow() > header.topRow()) {
      found = byRowAbove(header.topRow());
    }
    if (found.isEmpty()) {
      found = byOwnNames();
    }
    if (found.isEmpty()) {
      found = byRowFartherAbove();
    }
    boolean allSaid = readings.stream().allMatch(r -> said.containsKey(r.column()));
    return found.isEmpty() && allSaid ? byColumns() : found;
  }

  /** Morning and evening over blocks of columns, or in the headers themselves. */
  private List<Header> byTimesOfDay() {
    List<Header> found = byRowAbove(header.topRow() - 1, Vessels::isTimeOfDay);
    if (found.isEmpty() && header.bottomRow() > header.topRow()) {
      found = byRowAbove(header.topRow(), Vessels::isTimeOfDay);
    }
    boolean own = readings.stream().allMatch(r -> isTimeOfDay(r.text()));
    return found.isEmpty() && own ? byColumns() : found;
  }

  /** Names over lines that are said of the vessels, as their volumes and original gravities. */
  private List<Header> byRowFartherAbove() {
    for (int row = header.topRow() - 2; row >= Math.max(0, header.topRow() - LINES_ABOVE); row--) {
      List<Header> found = byRowAbove(row);
      int at = row;
      boolean over =
          readings.stream().allMatch(r -> grid.kind(at, r.column()) == Kind.TEXT)
              && found.stream().noneMatch(h -> Character.isDigit(h.vessel().charAt(0)));
      if (!found.isEmpty() && over) {
        return found;
      }
    }
    return List.of();
  }

  /** Each reading a vessel, as a map says: called by its header, or by its column. */
  private List<Header> byColumns() {
    List<String> names = readings.stream().map(r -> r.text().strip()).toList();
    boolean differ = new HashSet<>(names).size() == names.size();
    List<Header> headers = new ArrayList<>();
    for (int i = 0; i < readings.size(); i++) {
      String name = differ ? names.get(i) : CellAddress.letters(readings.get(i).column());
      headers.add(new Header(header.topRow(), header.bottomRow(), own(i), name));
    }
    return headers;
  }

  /** The header with columns called T and a name, right of a reading, as temperatures. */
  private static Header withTemperatures(Header header) {
    List<HeaderCell> cells = new ArrayList<>();
    for (HeaderCell cell : header.cells()) {
      boolean besideReading =
          !cells.isEmpty() && cells.get(cells.size() - 1).role() == Role.GRAVITY;
      boolean called =
          cell.role() == Role.OTHER && cell.text().strip().matches("[Tt]\\.? \\S{1,3}")
              || (cell.role() == Role.OTHER || cell.role() == Role.BATCH)
                  && cell.text().strip().matches(".*\\p{L} T\\.?( ?[\u00b0\u00ba] ?[CF])?");
      cells.add(
          besideReading && called
              ? new HeaderCell(cell.column(), cell.text(), cell.meanings(), Role.TEMPERATURE)
              : cell);
    }
    return new Header(header.topRow(), header.bottomRow(), List.copyOf(cells), header.vessel());
  }

  private static boolean isMean(Grid grid, Header header, HeaderCell mean, List<HeaderCell> cells) {
    int first = header.bottomRow() + 1;
    return Replicates.isMeanOfSeveral(grid, first, first + ROWS_SEEN, mean, cells);
  }

  /**
   * The header with the mean of several vessels as something else; that of one sample stays. Only
   * columns that their headers call by names are surely those of vessels.
   */
  private static Header withoutMean(Grid grid, Header header) {
    List<HeaderCell> read = new ArrayList<>(with(header, Role.GRAVITY));
    List<HeaderCell> means =
        read.stream().filter(c -> c.meanings().contains(Concept.TOTAL)).toList();
    read.removeAll(means);
    boolean named =
        read.stream()
            .map(c -> Vocabulary.meanings(c.text()))
            .allMatch(m -> m.contains(Concept.VESSEL) || m.contains(Concept.BATCH));
    if (read.size() < 2
        || !named
        || means.size() != 1
        || !isMean(grid, header, means.get(0), read)) {
      return header;
    }
    List<HeaderCell> cells = new ArrayList<>();
    for (HeaderCell cell : header.cells()) {
      cells.add(
          means.contains(cell)
              ? new HeaderCell(cell.column(), cell.text(), cell.meanings(), Role.OTHER)
              : cell);
    }
    return new Header(header.topRow(), header.bottomRow(), List.copyOf(cells), header.vessel());
  }

  private boolean areOnOneScale() {
    Set<Optional<ReadingScale>> scales = new HashSet<>();
    readings.forEach(r -> scales.add(ReadingScale.in(r.meanings())));
    return scales.size() == 1;
  }

  /** Whether readings are told apart by the time of day, as {@code Bé mañana | Bé tarde}. */
  private boolean areOfTimesOfDay() {
    return readings.stream()
        .anyMatch(
            r ->
                r.meanings().contains(Concept.TIME_OF_DAY)
                    || isTimeOfDay(header.topRow() - 1, r.column())
                    || isTimeOfDay(header.topRow(), r.column()));
  }

  private boolean isTimeOfDay(int row, int column) {
    return row >= 0 && grid.kind(row, column) == Kind.TEXT && isTimeOfDay(grid.text(row, column));
  }

  private static boolean isTimeOfDay(String text) {
    return Vocabulary.meanings(text).contains(Concept.TIME_OF_DAY);
  }

  /** Names over blocks of columns, each with one reading, by another instrument too. */
  private List<Header> byRowAbove(int row) {
    return byRowAbove(row, Vessels::isName);
  }

  private List<Header> byRowAbove(int row, Predicate<String> isName) {
    if (row < 0) {
      return List.of();
    }
    List<Integer> starts = new ArrayList<>();
    List<String> names = new ArrayList<>();
    for (int column = header.firstColumn(); column <= header.lastColumn(); column++) {
      String text = grid.kind(row, column) == Kind.TEXT ? grid.text(row, column).strip() : "";
      boolean again = !names.isEmpty() && names.get(names.size() - 1).equals(text);
      if (!text.isEmpty() && !again && column > header.firstColumn() - 1) {
        starts.add(column);
        names.add(text);
      }
    }
    List<Integer> kept = new ArrayList<>();
    List<String> keptNames = new ArrayList<>();
    int refracted = 0;
    int means = 0;
    int width = Integer.MAX_VALUE;
    for (int i = 0; i < starts.size(); i++) {
      int at = i;
      int next = i + 1 < starts.size() ? starts.get(i + 1) : Integer.MAX_VALUE;
      long inside = in(readings, starts.get(i), next);
      boolean other = inside == 0 && in(with(header, Role.REFRACTOMETER), starts.get(i), next) == 1;
      if (inside == 0 && !(other && isName.test(names.get(i)))) {
        continue;
      }
      if (inside == 1 && Vocabulary.meanings(names.get(i)).equals(Set.of(Concept.TOTAL))) {
        HeaderCell mean =
            readings.stream().filter(r -> r.column() >= starts.get(at)).findFirst().orElseThrow();
        List<HeaderCell> others = readings.stream().filter(r -> r != mean).toList();
        if (!isMean(grid, header, mean, others)) {
          return List.of();
        }
        means++;
        continue;
      }
      refracted += other ? 1 : 0;
      if (inside > 1 || !isName.test(names.get(i))) {
        return List.of();
      }
      if (!kept.isEmpty()) {
        width = Math.min(width, starts.get(i) - kept.get(kept.size() - 1));
      }
      kept.add(starts.get(i));
      keptNames.add(names.get(i));
    }
    boolean all =
        kept.size() + means == readings.size() + refracted
            && kept.size() > 1
            && new HashSet<>(keptNames).size() == kept.size();
    return all && width < Integer.MAX_VALUE ? blocks(kept, keptNames, width) : List.of();
  }

  private static long in(List<HeaderCell> cells, int first, int end) {
    return cells.stream().filter(c -> c.column() >= first && c.column() < end).count();
  }

  /** What stands in brackets behind a name is said of the vessel, as its place or its yeast. */
  static boolean isName(String text) {
    Set<Concept> meanings = EnumSet.noneOf(Concept.class);
    String before = text.replaceAll("(?<=\\S\\s)[(\\[].*", "");
    meanings.addAll(Vocabulary.meanings(before));
    if (meanings.contains(Concept.VESSEL) || meanings.contains(Concept.BATCH)) {
      meanings.remove(Concept.WEEKDAY);
    }
    return text.length() <= LONGEST_NAME && meanings.stream().noneMatch(NO_NAME::contains);
  }

  private List<Header> blocks(List<Integer> starts, List<String> names, int width) {
    List<Header> headers = new ArrayList<>();
    for (int i = 0; i < starts.size(); i++) {
      List<HeaderCell> cells = new ArrayList<>();
      for (HeaderCell cell : header.cells()) {
        int block = block(cell.column(), starts, width);
        boolean ofAll = block < 0 && cell.role() != readings.get(0).role();
        if (block == i || ofAll || isOnlyNote(cell)) {
          cells.add(cell);
        }
      }
      headers.add(
          new Header(header.topRow(), header.bottomRow(), List.copyOf(cells), names.get(i)));
    }
    return headers;
  }

  /** One column of remarks is about all vessels, also where it stands in the place of the last. */
  private boolean isOnlyNote(HeaderCell cell) {
    return cell.role() == Role.NOTE
        && cell.column() == header.lastColumn()
        && with(header, Role.NOTE).size() == 1;
  }

  private static int block(int column, List<Integer> starts, int width) {
    for (int i = 0; i < starts.size(); i++) {
      if (column >= starts.get(i) && column < starts.get(i) + width) {
        return i;
      }
    }
    return -1;
  }

  /** Names that are the part of the headers in which they differ. */
  private List<Header> byOwnNames() {
    List<String> names = new VesselNames(header, readings).find();
    List<Header> headers = new ArrayList<>();
    for (int i = 0; i < names.size(); i++) {
      headers.add(new Header(header.topRow(), header.bottomRow(), own(i), names.get(i)));
    }
    return headers;
  }

  /** The vessel's reading, its temperature, and what all share. */
  private List<HeaderCell> own(int vessel) {
    List<HeaderCell> temperatures =
        header.cells().stream().filter(c -> c.role() == Role.TEMPERATURE).toList();
    boolean shared = temperatures.size() < 2;
    int from = readings.get(vessel).column();
    int end = vessel + 1 < readings.size() ? readings.get(vessel + 1).column() : Integer.MAX_VALUE;
    return header.cells().stream()
        .filter(
            c ->
                switch (c.role()) {
                  case GRAVITY, REFRACTOMETER, OWN_CORRECTED_GRAVITY ->
                      c.column() == from || !readings.contains(c);
                  case TEMPERATURE ->
                      shared
                          || (temperatures.size() == readings.size()
                              ? temperatures.indexOf(c) == vessel
                              : c.column() > from && c.column() < end);
                  default -> true;
                })
        .toList();
  }
}
