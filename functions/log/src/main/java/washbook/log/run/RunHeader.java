package washbook.log.run;

import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import washbook.log.words.Remembered;

/**
 * The header of a table of jars.
 *
 * @param topRow first row of it, from 0
 * @param bottomRow last row of it; the row above the first jar where there is no header
 * @param isMissing whether the columns are told by the units in their cells
 */
record RunHeader(int topRow, int bottomRow, List<Cell> cells, boolean isMissing) {

  /** One header cell; its text and that of a unit below it. */
  record Cell(int column, String text, Set<RunWord> words) {
    private static final Pattern BROUGHT_TO_20 = Pattern.compile("\\b20 ?(?:\u00b0 ?C?|C)\\b");

    /** An instrument right before the temperature that it is made for. */
    private static final Pattern MADE_FOR_20 =
        Pattern.compile(
            "(\\p{L}{4,})\\.?\\s*(?:(?:@|at|for|a|\u00e0|bei|bij|op|em)\\s*)?\\(?\\s*20\\s?(?:\u00b0|[cC]\\b)");

    private static final Remembered<Set<RunWord>> WORDS =
        new Remembered<>(text -> RunWords.in(BROUGHT_TO_20.matcher(text).replaceAll("")));

    /** The cell of a text; the 20 °C that figures are brought to is no unit of a temperature. */
    static Cell of(int column, String text) {
      return new Cell(column, text, WORDS.of(text));
    }

    boolean has(RunWord word) {
      return words.contains(word);
    }

    private boolean hasVolumeUnit() {
      return has(RunWord.ML)
          || has(RunWord.CL)
          || has(RunWord.DL)
          || has(RunWord.L)
          || has(RunWord.GALLON)
          || has(RunWord.ODD_UNIT);
    }

    /** Whether it may head volumes of jars. */
    boolean isVolume() {
      return !has(RunWord.TEMPERATURE)
          && !has(RunWord.PURE)
          && !isStrength()
          && (hasVolumeUnit() || has(RunWord.VOLUME))
          && !has(RunWord.STRENGTH);
    }

    /** Whether it may head strengths. */
    boolean isStrength() {
      boolean named = has(RunWord.STRENGTH) || has(RunWord.PROOF);
      return !has(RunWord.PURE)
          && !hasVolumeUnit()
          && (has(RunWord.PROOF) || !has(RunWord.TEMPERATURE))
          && (named || has(RunWord.DEGREE) && !has(RunWord.C) && !has(RunWord.F));
    }

    boolean isPureAlcohol() {
      return has(RunWord.PURE) || (has(RunWord.STRENGTH) && hasVolumeUnit());
    }

    boolean isTemperature() {
      boolean letter = has(RunWord.C) || has(RunWord.F);
      boolean place = has(RunWord.SPIRIT) || has(RunWord.HEAD) || has(RunWord.ELSEWHERE);
      return !isPureAlcohol()
          && (has(RunWord.TEMPERATURE) || letter && (place || has(RunWord.DEGREE)));
    }

    private boolean isMadeFor20() {
      Matcher made = MADE_FOR_20.matcher(text);
      return made.find() && RunWords.in(made.group(1)).contains(RunWord.INSTRUMENT);
    }

    /**
     * Whether it says that its figures are true strengths or volumes at 20 °C; of an instrument
     * that is where it was calibrated.
     */
    boolean isAt20() {
      boolean words =
          has(RunWord.CORRECTED) || has(RunWord.AT20) || text.matches(".*\\b20 ?(°|[cC]\\b).*");
      return words && !has(RunWord.NOT) && (has(RunWord.CORRECTED) || !isMadeFor20());
    }
  }

  int firstColumn() {
    return cells.get(0).column();
  }

  int lastColumn() {
    return cells.get(cells.size() - 1).column();
  }

  boolean overlaps(RunHeader other) {
    return other.firstColumn() <= lastColumn() && firstColumn() <= other.lastColumn();
  }
}
