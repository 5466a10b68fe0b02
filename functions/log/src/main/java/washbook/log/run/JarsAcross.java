package washbook.log.run;

import java.util.Set;
import washbook.log.Doubts;
import washbook.log.language.Message;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.Grid;

/** Asks about runs whose jars stand side by side, a row for volumes and one for strengths. */
final class JarsAcross {
  private static final int FEWEST_JARS = 4;
  private static final int MOST_ROWS = 200;

  private JarsAcross() {}

  static void askAbout(Grid grid, Doubts doubts) {
    int volume = -1;
    int strength = -1;
    boolean run = false;
    for (int row = 0; row < Math.min(grid.rowCount(), MOST_ROWS); row++) {
      String text = grid.text(row, 0).strip();
      Set<RunWord> words = RunWords.in(text);
      run |= words.contains(RunWord.JAR) || words.contains(RunWord.CHARGE);
      run |= words.contains(RunWord.RUN);
      RunHeader.Cell cell = RunHeader.Cell.of(0, text);
      boolean volumes = volume < 0 && cell.isVolume();
      boolean strengths = strength < 0 && cell.isStrength();
      if ((volumes || strengths) && numbers(grid, row) >= FEWEST_JARS) {
        volume = volumes ? row : volume;
        strength = strengths ? row : strength;
      }
    }
    if (run && volume >= 0 && strength >= 0) {
      doubts.ask(CellAddress.of(Math.min(volume, strength), 0), Message.of("ask.jarsAcross"));
    }
  }

  private static int numbers(Grid grid, int row) {
    int count = 0;
    for (int column = 1; column < Math.min(grid.columnsUsed(row), 60); column++) {
      count += Double.isNaN(RunCells.number(grid, row, column)) ? 0 : 1;
    }
    return count;
  }
}
