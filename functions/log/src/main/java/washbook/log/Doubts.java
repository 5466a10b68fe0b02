package washbook.log;

import java.util.ArrayList;
import java.util.List;

/** The questions about a sheet, in the order in which they came up. */
public final class Doubts {
  private final List<Doubt> all = new ArrayList<>();

  /**
   * @param cell address of the cell that it is about
   * @param question what the person has to say, and how it is said in a map
   */
  public void ask(String cell, String question) {
    all.add(new Doubt(cell, question));
  }

  /** Adds the questions of a part of the sheet. */
  public void takeOver(Doubts others) {
    all.addAll(others.all);
  }

  public List<Doubt> all() {
    return List.copyOf(all);
  }
}
