package washbook.office.call;

/** A cell of a range shows an error, which is then the error of the call too. */
final class CellErrorException extends Exception {
  private static final long serialVersionUID = 1L;

  private final int number;

  /** Takes Calc's number of the error. */
  CellErrorException(int number) {
    super("error " + number + " in a cell");
    this.number = number;
  }

  int number() {
    return number;
  }
}
