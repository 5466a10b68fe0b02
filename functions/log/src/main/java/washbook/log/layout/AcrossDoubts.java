package washbook.log.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import washbook.log.Doubt;
import washbook.log.MapAnswer;
import washbook.log.language.Message;
import washbook.log.sheet.AcrossGrid;
import washbook.log.sheet.CellAddress;

/** Questions about a log that runs across, in the directions of its sheet. */
public final class AcrossDoubts {
  private static final Pattern COLUMN = Pattern.compile("column ([A-Z]+)( = .*)");

  /** Statements that hold for a table in whichever direction it runs. */
  private static final Set<String> OF_TABLE =
      Set.of(
          "header row",
          "ignore",
          "temperature",
          "corrected",
          "calibration",
          "offset",
          "refractometer factor",
          "volume",
          "batch",
          "original gravity",
          "wash",
          "sugar readings");

  private final AcrossGrid grid;

  public AcrossDoubts(AcrossGrid grid) {
    this.grid = grid;
  }

  /** The same questions; empty where an answer to one can only be given of a log that runs down. */
  public Optional<List<Doubt>> of(List<Doubt> doubts) {
    List<Doubt> turned = new ArrayList<>();
    for (Doubt doubt : doubts) {
      Optional<Doubt> same = turned(doubt);
      if (same.isEmpty()) {
        return Optional.empty();
      }
      turned.add(same.get());
    }
    return Optional.of(turned);
  }

  private Optional<Doubt> turned(Doubt doubt) {
    TreeSet<Integer> named = new TreeSet<>();
    int own = grid.column(Integer.parseInt(doubt.cell().replaceAll("\\D", "")) - 1);
    if (own >= 0) {
      named.add(own);
    }
    List<MapAnswer> answers = new ArrayList<>();
    for (MapAnswer answer : doubt.answers()) {
      List<String> lines = new ArrayList<>();
      for (String line : answer.lines()) {
        Matcher column = COLUMN.matcher(line);
        if (column.matches()) {
          int at = CellAddress.column(column.group(1));
          named.add(at);
          lines.add("row " + (grid.sheetRow(at) + 1) + column.group(2));
        } else if (OF_TABLE.contains(line.split(" = ", 2)[0])) {
          lines.add(line);
        } else {
          return Optional.empty();
        }
      }
      answers.add(new MapAnswer(lines, answer.remark(), answer.isExample()));
    }
    Message asked = doubt.asked();
    for (int column : named.descendingSet()) {
      asked =
          Message.of("ask.turned", CellAddress.letters(column), grid.sheetRow(column) + 1, asked);
    }
    return answers.isEmpty()
        ? Optional.empty()
        : Optional.of(new Doubt(doubt.cell(), doubt.headerRow(), asked, answers));
  }
}
