package washbook.office.call;

import washbook.functions.catalogue.Parameter;

/** A text that is a number with a point, in an office whose numbers have another sign there. */
record OtherNotation(String text) {
  String reason(Parameter parameter) {
    return parameter.name()
        + " '"
        + text
        + "' is a text that is not a number here: the decimal sign is '"
        + DecimalText.decimalSign()
        + "'.";
  }
}
