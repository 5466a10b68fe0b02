package washbook.functions.catalogue;

/** The checked arguments of one call, in the order of the function's parameters. */
public final class Arguments {
  private final double[] numbers;
  private final Object[] others;

  Arguments(double[] numbers, Object[] others) {
    this.numbers = numbers;
    this.others = others;
  }

  /** A number inside its valid range. */
  public double number(int index) {
    return numbers[index];
  }

  /** A word of the parameter's list, upper case; null when a number was given instead. */
  public String word(int index) {
    return (String) others[index];
  }

  /** A range of numbers; NaN where a cell was blank. */
  public double[] numbers(int index) {
    return (double[]) others[index];
  }

  /** Whatever was passed, unread. */
  public Object anything(int index) {
    return others[index];
  }

  /** All values from a {@link Parameter.Kind#REST} parameter on, unread. */
  public Object[] rest(int index) {
    return (Object[]) others[index];
  }

  /** Whether an optional argument without a fallback was given. */
  public boolean given(int index) {
    return others[index] != null || !Double.isNaN(numbers[index]);
  }
}
