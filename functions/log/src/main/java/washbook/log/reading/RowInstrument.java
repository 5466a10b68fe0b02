package washbook.log.reading;

import java.util.Locale;
import java.util.Set;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;
import washbook.log.words.Concept;
import washbook.log.words.Ditto;
import washbook.log.words.Vocabulary;

/** A column that says of each reading whether hydrometer or refractometer took it. */
public final class RowInstrument {
  /** What such a column says of a row. */
  public enum Kindred {
    HYDROMETER,
    REFRACTOMETER,
    NOTHING
  }

  /** Abbreviations that mean a hydrometer only beside a refractometer. */
  private static final Set<String> SHORT =
      Set.of("h", "s", "sp", "spi", "sg", "hyd", "float", "ar\u00e4o", "dens", "d");

  private static final Set<String> REFRACTED = Set.of("r", "ref", "rf", "refra", "refr", "brix");

  private RowInstrument() {}

  /** What a text says, NOTHING also for a ditto mark. */
  public static Kindred of(String text) {
    String word = text.strip().toLowerCase(Locale.ROOT);
    Set<Concept> meanings = Vocabulary.meanings(word);
    boolean refracted = meanings.contains(Concept.REFRACTOMETER);
    boolean floated = meanings.contains(Concept.HYDROMETER);
    if (refracted != floated) {
      return refracted ? Kindred.REFRACTOMETER : Kindred.HYDROMETER;
    }
    String bare = word.endsWith(".") ? word.substring(0, word.length() - 1) : word;
    return REFRACTED.contains(bare)
        ? Kindred.REFRACTOMETER
        : SHORT.contains(bare) ? Kindred.HYDROMETER : Kindred.NOTHING;
  }

  /** What a column says of each row from the first on; of a ditto mark what stands above it. */
  static Kindred[] ofRows(Grid grid, int column, int firstRow, int lastRow) {
    Kindred[] found = new Kindred[Math.max(0, lastRow - firstRow + 1)];
    Kindred above = Kindred.NOTHING;
    for (int i = 0; i < found.length; i++) {
      String text =
          grid.kind(firstRow + i, column) == Kind.TEXT ? grid.text(firstRow + i, column) : "";
      found[i] = Ditto.isMark(text) ? above : of(text);
      above = found[i];
    }
    return found;
  }
}
