package washbook.log;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.regex.Pattern;
import washbook.log.language.Message;

/**
 * What became of the rows of a table's range, from the row of its headers to its last row: each was
 * filled, refused or passed over, so that the three counts add up to the rows.
 *
 * @param rows of the range
 * @param filled rows with computed figures
 * @param refused rows with a reason of their own, or that wait for an answer about the table
 * @param passedOver rows without a reading to be filled
 * @param passed the same by reason
 */
public record RowAccount(int rows, int filled, int refused, int passedOver, List<Passed> passed) {
  /** Characters of row numbers after which the rest is only counted. */
  private static final int MOST_ROW_TEXT = 40;

  /** A row's number; what stands in brackets is how many there are. */
  private static final Pattern ROW = Pattern.compile("(?<![(\\d])\\d+(?![\\d)])");

  public RowAccount {
    passed = List.copyOf(passed);
    int reasons = passed.stream().mapToInt(Passed::count).sum();
    if (rows != filled + refused + passedOver || passedOver != reasons) {
      throw new IllegalArgumentException(
          rows + " = " + filled + " + " + refused + " + " + passedOver + "?");
    }
  }

  /**
   * Rows passed over for one reason.
   *
   * @param count how many
   * @param rows as a sheet counts them: 4, 7-9, of many only the first
   */
  public record Passed(PassedOver reason, int count, String rows) {
    private Message told() {
      return Message.of("passed." + reason.name(), rows);
    }
  }

  /**
   * The account of a table.
   *
   * @param over the rows that were passed over, by reason
   */
  public static RowAccount of(int filled, int refused, Map<PassedOver, BitSet> over) {
    List<Passed> passed = new ArrayList<>();
    int count = 0;
    for (PassedOver reason : PassedOver.values()) {
      BitSet rows = over.getOrDefault(reason, new BitSet());
      int here = rows.cardinality();
      if (here > 0) {
        passed.add(new Passed(reason, here, shown(rows)));
        count += here;
      }
    }
    return new RowAccount(filled + refused + count, filled, refused, count, passed);
  }

  /** The same with other names for its rows. */
  public RowAccount shownBy(IntFunction<String> name) {
    List<Passed> named =
        passed.stream()
            .map(
                p ->
                    new Passed(
                        p.reason(),
                        p.count(),
                        ROW.matcher(p.rows())
                            .replaceAll(r -> name.apply(Integer.parseInt(r.group()) - 1))))
            .toList();
    return new RowAccount(rows, filled, refused, passedOver, named);
  }

  /** It in words. */
  public Message told() {
    Message counts = Message.of("account.rows", rows, filled, refused, passedOver);
    return passed.isEmpty() ? counts : Message.of("account.passed", counts, toldOfPassed());
  }

  /** The passed over rows in words, {@link Message#NONE} where there are none. */
  public Message toldOfPassed() {
    return passed.stream()
        .map(Passed::told)
        .reduce((before, last) -> Message.of("account.and", before, last))
        .orElse(Message.NONE);
  }

  /** Rows as a person counts them: 4-20, or the first few of scattered ones. */
  static String shown(BitSet rows) {
    StringBuilder parts = new StringBuilder();
    int start = rows.nextSetBit(0);
    while (start >= 0) {
      if (parts.length() > MOST_ROW_TEXT) {
        return parts + " ... (" + rows.cardinality() + ")";
      }
      int end = rows.nextClearBit(start);
      parts.append(parts.isEmpty() ? "" : ", ").append(start + 1);
      if (end > start + 1) {
        parts.append('-').append(end);
      }
      start = rows.nextSetBit(end);
    }
    return parts.toString();
  }
}
