package washbook.office.call;

/** What an argument gets that takes one value and was given a range of more. */
enum SeveralCells {
  GIVEN
}
