package washbook.log;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import washbook.log.language.Figure;
import washbook.log.language.Message;
import washbook.log.sheet.Grid;
import washbook.log.words.CellText;
import washbook.log.words.ReadingScale;

/**
 * A scale as figures are written on it.
 *
 * @param inThousandths whether a specific gravity of 1.085 is written as 1085
 */
public record WrittenScale(ReadingScale scale, boolean inThousandths) {
  /** Specific gravity 20/20 as 1.085. */
  public static final WrittenScale SG = new WrittenScale(ReadingScale.SG, false);

  private static final WrittenScale THOUSANDTHS = new WrittenScale(ReadingScale.SG, true);

  /** The scale on which a table's own readings stand. */
  public static WrittenScale of(Grid grid, LogTable table) {
    LogColumn reading =
        table.column(Role.GRAVITY).or(() -> table.column(Role.REFRACTOMETER)).orElse(null);
    if (reading == null) {
      return SG;
    }
    ReadingScale scale = ReadingScale.of(reading.unit());
    return new WrittenScale(
        scale, scale == ReadingScale.SG && isInThousandths(grid, table, reading.column()));
  }

  private static boolean isInThousandths(Grid grid, LogTable table, int column) {
    for (int row = table.firstRow(); row <= table.lastRow(); row++) {
      double value = CellText.plainNumber(grid, row, column);
      if (ReadingScale.looksLikeGravity(value)) {
        return ReadingScale.SG.isInThousandths(value);
      }
    }
    return false;
  }

  /** The scale of a word of CONVERT, or GCM3. */
  public static Optional<WrittenScale> named(String word) {
    String name = word.strip().toUpperCase(Locale.ROOT);
    return ReadingScale.isName(name)
        ? Optional.of(new WrittenScale(ReadingScale.valueOf(name), false))
        : Optional.empty();
  }

  /** The words of {@link #named}, for people. */
  public static String words() {
    return String.join(", ", Arrays.stream(ReadingScale.values()).map(ReadingScale::name).toList());
  }

  /** Every scale that figures are written on. */
  static List<WrittenScale> all() {
    List<WrittenScale> all = new ArrayList<>();
    for (ReadingScale scale : ReadingScale.values()) {
      all.add(new WrittenScale(scale, false));
    }
    all.add(THOUSANDTHS);
    return all;
  }

  /** Whether it is SG as functions take and give it. */
  public boolean isPlainGravity() {
    return scale == ReadingScale.SG && !inThousandths;
  }

  /** The figure of an SG 20/20. */
  public double fromGravity(double gravity) {
    return inThousandths ? 1000 * gravity : scale.fromGravity(gravity);
  }

  /** How much a figure rises, just above water, with SG. */
  public double change(double gravity) {
    return fromGravity(1 + gravity) - fromGravity(1);
  }

  /** The SG 20/20 of a figure. */
  public double toGravity(double figure) {
    return inThousandths ? figure / 1000 : scale.toGravity(figure);
  }

  /**
   * Decimal places that tell readings apart: one step is 0.00001 to 0.0001 SG, where a hydrometer
   * is read to 0.0005.
   */
  public int decimals() {
    return switch (scale) {
      case SG -> inThousandths ? 1 : 4;
      case GCM3 -> 4;
      case POINTS, OECHSLE, KGM3, GL -> 1;
      case BRIX, PLATO, BALLING, BAUME, KMW, TWADDELL, POTENTIAL -> 2;
    };
  }

  /** Its name in a header: {@code SG}, {@code °Oe}. */
  Message name() {
    return switch (scale) {
      case SG -> Message.of(inThousandths ? "scale.THOUSANDTHS" : "scale.SG");
      case POINTS, POTENTIAL -> Message.of("scale." + scale.name());
      default -> Message.of("plain", scale.sign().strip());
    };
  }

  /** An SG 20/20 on this scale, to be read, without its sign. */
  public Figure shown(double gravity) {
    return new Figure(String.format(Locale.ROOT, "%." + decimals() + "f", fromGravity(gravity)));
  }
}
