package washbook.functions.portable;

import java.util.regex.Pattern;
import washbook.functions.Numbers;
import washbook.functions.portable.CallArgument.Cell;
import washbook.functions.portable.CallArgument.Literal;
import washbook.functions.portable.CallArgument.Omitted;
import washbook.functions.portable.CallArgument.Word;

/** Tells what an argument's formula text is. */
final class CallArguments {
  /** A reference, with or without a sheet's name. */
  private static final Pattern REFERENCE =
      Pattern.compile("(?:\\$?'(?:[^']|'')+'[.!]|[\\w$.]+!)?[\\w$.]+");

  private CallArguments() {}

  static CallArgument read(String text) {
    String trimmed = text.strip();
    if (trimmed.isEmpty()) {
      return new Omitted();
    }
    Double number = Numbers.parse(trimmed);
    if (number != null) {
      return new Literal(number);
    }
    if (trimmed.matches("\"[^\"]*\"")) {
      return new Word(trimmed.substring(1, trimmed.length() - 1));
    }
    return new Cell(REFERENCE.matcher(trimmed).matches() ? trimmed : "(" + trimmed + ")");
  }
}
