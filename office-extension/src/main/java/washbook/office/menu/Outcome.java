package washbook.office.menu;

/**
 * How a command ended.
 *
 * @param done whether it did what was asked
 * @param text what there is to say about it
 */
record Outcome(boolean done, String text) {
  static Outcome done(String text) {
    return new Outcome(true, text);
  }

  static Outcome failed(String text) {
    return new Outcome(false, text);
  }
}
