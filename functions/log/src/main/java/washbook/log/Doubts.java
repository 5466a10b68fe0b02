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

  /**
   * Adds the questions of one of several like tables; what was asked about another one already, but
   * for the letters of its columns, is not asked again.
   */
  public void takeOverNew(Doubts others) {
    for (Doubt doubt : others.all) {
      String matter = matter(doubt);
      if (all.stream().noneMatch(d -> matter(d).equals(matter))) {
        all.add(doubt);
      }
    }
  }

  private static String matter(Doubt doubt) {
    return doubt
        .question()
        .replaceAll("\\b([Cc]olumns?|and) [A-Z]{1,3}\\b", "$1")
        .replaceAll("-?\\d+(\\.\\d+)?", "");
  }

  public List<Doubt> all() {
    return List.copyOf(all);
  }
}
