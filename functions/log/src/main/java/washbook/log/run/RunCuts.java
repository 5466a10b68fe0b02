package washbook.log.run;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import washbook.log.sheet.Grid;
import washbook.log.words.Ditto;

/** Heads, hearts and tails in the cells of a column. */
final class RunCuts {
  private RunCuts() {}

  /** Whether a column's cells name the cuts and nearly nothing else. */
  static boolean isColumn(Grid grid, int from, int end, RunHeader.Cell cell) {
    List<String> texts = texts(grid, from, end, cell.column());
    int named = 0;
    int letters = 0;
    Set<RunCut> cuts = EnumSet.noneOf(RunCut.class);
    Set<String> shorts = new HashSet<>();
    for (String text : texts) {
      RunCut word = RunCut.of(text);
      RunCut letter = RunCut.ofLetter(text);
      named += word != null || Ditto.isMark(text) ? 1 : 0;
      letters += letter != null || Ditto.isMark(text) ? 1 : 0;
      shorts.add(text.toLowerCase(Locale.ROOT));
      if (word != null || letter != null) {
        cuts.add(word != null ? word : letter);
      }
    }
    boolean all = named * 10 >= texts.size() * 8 || letters == texts.size() && shorts.size() <= 4;
    return texts.size() >= 3 && cuts.size() >= 2 && all;
  }

  /** How many different cuts a column's cells name, notes with more words too. */
  static int named(Grid grid, int from, int end, int column) {
    Set<RunCut> cuts = EnumSet.noneOf(RunCut.class);
    for (String text : texts(grid, from, end, column)) {
      RunCut cut = RunCut.of(text);
      if (cut != null) {
        cuts.add(cut);
      }
    }
    return cuts.size();
  }

  /** The cut of each row as a word of its own; "" where the cell says nothing. */
  static List<String> of(Grid grid, List<Integer> rows, int column) {
    List<String> cuts = new ArrayList<>();
    String before = "";
    for (int row : rows) {
      String text = grid.text(row, column).strip();
      RunCut word = RunCut.of(text);
      RunCut cut = word != null ? word : RunCut.ofLetter(text);
      String here = Ditto.isMark(text) ? before : cut == null ? "" : cut.name();
      cuts.add(here);
      before = here;
    }
    return cuts;
  }

  private static List<String> texts(Grid grid, int from, int end, int column) {
    List<String> texts = new ArrayList<>();
    for (int row = from; row < Math.min(end, grid.rowCount()); row++) {
      if (grid.kind(row, column) == Grid.Kind.TEXT && !grid.text(row, column).isBlank()) {
        texts.add(grid.text(row, column).strip());
      }
    }
    return texts;
  }
}
