package washbook.functions.catalogue;

import java.util.List;
import washbook.functions.Sentence;
import washbook.functions.quantity.Quantity;

/**
 * One argument of a function.
 *
 * @param name its formal name, in camel case, for example {@code temperatureC}: for programs,
 *     formulas, the function wizard and the reference page
 * @param told its name in words, for sentences
 * @param kind what is accepted
 * @param quantity unit and valid range; null for words
 * @param words the accepted words, upper case; empty for numbers
 * @param optional whether it may be left out
 * @param fallback what stands in when it is left out: a Double, a String, or null for "not given"
 * @param meaning one sentence for the function wizard and the reference page
 */
public record Parameter(
    String name,
    Sentence told,
    Kind kind,
    Quantity quantity,
    List<String> words,
    boolean optional,
    Object fallback,
    String meaning) {

  /** What an argument accepts. */
  public enum Kind {
    NUMBER,
    WORD,
    /** One of the words, or a number in the quantity's range. */
    WORD_OR_NUMBER,
    /** A range of cells holding numbers. */
    NUMBERS,
    /** Any value, handed through unread. */
    ANYTHING,
    /** All further values, none or many, handed through unread; only as the last parameter. */
    REST
  }

  public static Parameter number(String name, Quantity quantity, String meaning) {
    return new Parameter(
        name, called(name), Kind.NUMBER, quantity, List.of(), false, null, meaning);
  }

  /** A range of cells; blanks inside arrive as NaN and are the function's to judge. */
  public static Parameter numbers(String name, Quantity quantity, String meaning) {
    return new Parameter(
        name, called(name), Kind.NUMBERS, quantity, List.of(), false, null, meaning);
  }

  public static Parameter word(String name, List<String> words, String meaning) {
    return new Parameter(
        name, called(name), Kind.WORD, null, List.copyOf(words), false, null, meaning);
  }

  public static Parameter wordOrNumber(
      String name, List<String> words, Quantity quantity, String meaning) {
    return new Parameter(
        name,
        called(name),
        Kind.WORD_OR_NUMBER,
        quantity,
        List.copyOf(words),
        false,
        null,
        meaning);
  }

  /** Any one value, handed through unread. */
  public static Parameter anything(String name, String meaning) {
    return new Parameter(name, called(name), Kind.ANYTHING, null, List.of(), false, null, meaning);
  }

  /** Whatever else is passed, none or many. */
  public static Parameter rest(String name, String meaning) {
    return new Parameter(name, called(name), Kind.REST, null, List.of(), true, null, meaning);
  }

  /** The same argument, with other words than those for all of its name. */
  public Parameter told(String words) {
    return new Parameter(
        name, called(words), kind, quantity, this.words, optional, fallback, meaning);
  }

  private static Sentence called(String words) {
    return Sentence.of("name." + words);
  }

  /** The same argument, optional, with {@code value} in its place when it is left out. */
  public Parameter orElse(Object value) {
    return new Parameter(name, told, kind, quantity, words, true, value, meaning);
  }

  /** The same argument, optional; {@link Arguments#given} tells whether it was given. */
  public Parameter orNothing() {
    return new Parameter(name, told, kind, quantity, words, true, null, meaning);
  }
}
