package washbook.office.call;

import washbook.functions.catalogue.Parameter;
import washbook.log.language.Message;
import washbook.office.language.OfficeText;

/** A text that is a number with a point, in an office whose numbers have another sign there. */
record OtherNotation(String text) {
  Message reason(Parameter parameter) {
    return OfficeText.of("reason.notation", parameter.told(), text, DecimalText.decimalSign());
  }
}
