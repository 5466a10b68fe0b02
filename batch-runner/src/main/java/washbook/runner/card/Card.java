package washbook.runner.card;

import java.util.List;

/**
 * What a card says, whatever file it goes into.
 *
 * @param kind of what it is a card
 * @param purpose one sentence below the title
 * @param settings of the instrument, which formulas refer to
 * @param tables each on a page of its own
 * @param notes how to read it and what it does not say
 */
public record Card(
    Kind kind, String purpose, List<Setting> settings, List<CardTable> tables, List<String> notes) {

  /** What every card of ours begins with, by which it is known again. */
  static final String TITLE = "Washbook card: ";

  /** The cards that there are. */
  public enum Kind {
    SCALES("scales of a wash"),
    HYDROMETER("corrections of a hydrometer"),
    ALCOHOLOMETER("true strength from an alcoholometer");

    private final String subject;

    Kind(String subject) {
      this.subject = subject;
    }

    String title() {
      return TITLE + subject;
    }
  }

  /**
   * A number that the person's instrument has.
   *
   * @param name by which formulas ask for it
   * @param unit stands beside the value
   */
  record Setting(String name, String label, double value, int decimals, String unit) {
    String text() {
      return label + " " + CardNumber.plain(value, decimals) + " " + unit;
    }
  }
}
