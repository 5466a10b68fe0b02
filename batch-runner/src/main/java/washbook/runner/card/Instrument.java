package washbook.runner.card;

import java.util.Optional;
import washbook.functions.Sentence;
import washbook.runner.card.Card.Kind;

/**
 * The person's own instrument.
 *
 * @param brix whether a hydrometer shows degrees Brix and not SG
 * @param calibrationC temperature at which it is calibrated, °C
 * @param offset what it shows too much, in its own unit
 * @param original SG of the wash before the ferment, or NaN for no page on a fermenting wash
 * @param fahrenheit whether its thermometer shows °F
 */
public record Instrument(
    Kind kind,
    boolean brix,
    double calibrationC,
    double offset,
    double original,
    boolean fahrenheit) {

  /** Why there can be no card of it; empty when there can. */
  public Optional<Sentence> reasonAgainst() {
    return switch (kind) {
      case SCALES -> Optional.empty();
      case ALCOHOLOMETER -> CardNumber.reason("TRUESTRENGTH", 40.0, 20.0, calibrationC);
      case HYDROMETER ->
          brix
              ? CardNumber.reason("CORRECTEDBRIX", 10.0, 20.0, calibrationC, offset)
              : CardNumber.reason(
                  "CORRECTEDGRAVITY",
                  Double.isNaN(original) ? (Object) 1.05 : original,
                  20.0,
                  calibrationC,
                  Double.isNaN(original) ? null : original,
                  offset);
    };
  }

  String degrees() {
    return fahrenheit ? "°F" : "°C";
  }

  double celsius(double shown) {
    return fahrenheit ? CardNumber.of("CONVERT", shown, "F", "C") : shown;
  }
}
