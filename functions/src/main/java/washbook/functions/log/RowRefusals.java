package washbook.functions.log;

import java.util.Locale;
import washbook.functions.Answer.Code;
import washbook.functions.Numbers;
import washbook.functions.catalogue.Quantity;

/** Why a row is refused, in words: always the value and the range. */
final class RowRefusals {
  private RowRefusals() {}

  static CellRefusal unreadable(int row, int column, Code code, String what, Quantity quantity) {
    return new CellRefusal(
        CellAddress.of(row, column), code, what + "; it must be " + quantity.range() + ".");
  }

  static CellRefusal outside(
      int row, int column, String name, double value, String range, boolean tooLow) {
    return new CellRefusal(
        CellAddress.of(row, column),
        tooLow ? Code.TOO_LOW : Code.TOO_HIGH,
        name
            + " "
            + Numbers.show(value)
            + (tooLow ? " is too low" : " is too high")
            + "; it must be "
            + range
            + ".");
  }

  static CellRefusal refractometer(String cell, double presentBrix, double originalBrix) {
    return new CellRefusal(
        cell,
        Code.CONTRADICTION,
        "refractometer reading "
            + Numbers.show(presentBrix)
            + " does not go with the original reading "
            + Numbers.round(originalBrix, 2)
            + "; it must be below it and above what the wash can ferment to.");
  }

  static CellRefusal gravity(String cell, double gravity, double originalGravity) {
    return new CellRefusal(
        cell,
        Code.CONTRADICTION,
        String.format(
            Locale.ROOT,
            gravity >= originalGravity
                ? "gravity %.4f is above the original gravity %.4f and no sugar was added; it must"
                    + " be 0.97 to %2$.4f SG."
                : "gravity %.4f is lower than a wash of original gravity %.4f can ferment to; it"
                    + " must be 0.97 to %2$.4f SG.",
            gravity,
            originalGravity));
  }
}
