package washbook.log;

import java.util.ArrayList;
import java.util.List;
import washbook.log.language.Message;

/** The questions about a sheet, in the order in which they came up. */
public final class Doubts {
  private final List<Doubt> all = new ArrayList<>();

  /**
   * @param cell address of the cell that it is about
   * @param asked what the person has to say
   * @param answers how it is said in a map
   */
  public void ask(String cell, Message asked, MapAnswer... answers) {
    all.add(new Doubt(cell, -1, asked, List.of(answers)));
  }

  /**
   * Adds the questions about one table.
   *
   * @param headerRow row of its headers from 0
   */
  public void takeOver(Doubts others, int headerRow) {
    others.all.forEach(doubt -> all.add(doubt.below(headerRow)));
  }

  /**
   * Adds the questions of one of several like tables; what was asked about another one already, but
   * for the letters of its columns, is not asked again.
   */
  public void takeOverNew(Doubts others, int headerRow) {
    for (Doubt doubt : others.all) {
      String matter = matter(doubt);
      if (all.stream().noneMatch(d -> matter(d).equals(matter))) {
        all.add(doubt.below(headerRow));
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
