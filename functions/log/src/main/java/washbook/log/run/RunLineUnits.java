package washbook.log.run;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** What a line of words says of gallons and of proof. */
final class RunLineUnits {
  /** Words within which a gallon is called American or imperial: "us" alone may be we. */
  private static final int NEAR = 2;

  /** 100 proof of the old imperial scale in % vol, as logs put it. */
  private static final Pattern PROOF_SPIRIT =
      Pattern.compile("(?<!\\d)100\\b.{0,20}(?<!\\d)57[.,]1|(?<!\\d)57[.,]1.{0,20}(?<!\\d)100\\b");

  private static final Set<RunWord> KINDS = EnumSet.of(RunWord.US, RunWord.UK);

  private RunLineUnits() {}

  /** Which gallons a line speaks of. */
  static Set<RunWord> gallons(String line) {
    Set<RunWord> found = EnumSet.noneOf(RunWord.class);
    if (!RunWords.in(line).contains(RunWord.GALLON)) {
      return found;
    }
    String[] words = line.strip().split("\\s+");
    for (int i = 0; i < words.length; i++) {
      int end = Math.min(words.length, i + NEAR);
      Set<RunWord> near = RunWords.in(String.join(" ", Arrays.copyOfRange(words, i, end)));
      if (near.contains(RunWord.GALLON)) {
        KINDS.stream().filter(near::contains).forEach(found::add);
      }
    }
    return found;
  }

  /**
   * Which of two units that are called alike is meant: the one that a header names, else the one
   * that the lines do; empty where both or none are named.
   */
  static Optional<RunWord> either(
      RunHeader.Cell of, RunWord one, RunWord other, Set<RunWord> lines) {
    boolean own = of.has(one) || of.has(other);
    boolean first = own ? of.has(one) : lines.contains(one);
    boolean second = own ? of.has(other) : lines.contains(other);
    return first == second ? Optional.empty() : Optional.of(first ? one : other);
  }

  /** Whether it puts 100 proof at 57.1 % vol. */
  static boolean namesProofSpirit(String line) {
    return PROOF_SPIRIT.matcher(line).find();
  }
}
