package washbook.functions.portable;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import washbook.functions.Numbers;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.functions.portable.CallArgument.Call;
import washbook.functions.portable.CallArgument.Cell;
import washbook.functions.portable.CallArgument.Literal;
import washbook.functions.portable.CallArgument.Omitted;
import washbook.functions.portable.CallArgument.Scaled;
import washbook.functions.portable.CallArgument.Word;
import washbook.functions.portable.form.NotPortableException;

/** Tells what the arguments of a call in a formula are. */
final class CallArguments {
  private static final String PREFIX = "WASHBOOK.";

  private final FormulaSyntax syntax;

  CallArguments(FormulaSyntax syntax) {
    this.syntax = syntax;
  }

  /** The function of ours whose call begins at {@code from}, if one does. */
  static Optional<CatalogueFunction> functionAt(String text, int from) {
    int end = Lexemes.end(text, from);
    return text.regionMatches(true, from, PREFIX, 0, PREFIX.length()) && opening(text, end) >= 0
        ? Catalogue.find(text.substring(from, end))
        : Optional.empty();
  }

  /** Where the bracket stands that follows a name; -1 when none does. */
  static int opening(String text, int afterName) {
    int at = afterName;
    while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
      at++;
    }
    return at < text.length() && text.charAt(at) == '(' ? at : -1;
  }

  /** The texts between the brackets at {@code open} and {@code end - 1}. */
  List<String> split(String text, int open, int end) {
    List<String> parts = new ArrayList<>();
    int depth = 0;
    int start = open + 1;
    for (int i = open; i < end; i = Lexemes.end(text, i)) {
      char c = text.charAt(i);
      depth += c == '(' ? 1 : c == ')' ? -1 : 0;
      if (depth == 1 && c == syntax.separator()) {
        parts.add(text.substring(start, i));
        start = i + 1;
      }
    }
    parts.add(text.substring(start, end - 1));
    return parts.size() == 1 && parts.get(0).isBlank() ? List.of() : parts;
  }

  CallArgument read(String text) throws NotPortableException {
    String trimmed = text.strip();
    if (trimmed.isEmpty()) {
      return new Omitted();
    }
    Double number = Numbers.parse(trimmed);
    if (number != null) {
      return new Literal(number);
    }
    boolean whole = Lexemes.end(trimmed, 0) == trimmed.length();
    if (whole && trimmed.startsWith("\"")) {
      return new Word(trimmed.substring(1, trimmed.length() - 1).replace("\"\"", "\""));
    }
    Optional<CatalogueFunction> function = functionAt(trimmed, 0);
    if (function.isPresent() && isOneCall(trimmed)) {
      return call(function.get(), trimmed);
    }
    refuseRange(trimmed);
    int sign = Math.max(trimmed.lastIndexOf('/'), trimmed.lastIndexOf('*'));
    if (sign > 0) {
      Double factor = Numbers.parse(trimmed.substring(sign + 1));
      String cell = trimmed.substring(0, sign).strip();
      if (factor != null && (Lexemes.end(cell, 0) == cell.length() || isReference(cell))) {
        return new Scaled(new Cell(cell), trimmed.charAt(sign), factor);
      }
    }
    return new Cell(
        whole || isOneCall(trimmed) || isReference(trimmed)
            ? rewritten(trimmed)
            : "(" + rewritten(trimmed) + ")");
  }

  /** The call that is the whole text. */
  Call call(CatalogueFunction function, String text) throws NotPortableException {
    if (!function.portable()) {
      throw new NotPortableException("portable.none", function.name());
    }
    List<CallArgument> arguments = new ArrayList<>();
    for (String part : split(text, text.indexOf('('), text.length())) {
      arguments.add(read(part));
    }
    return new Call(function, arguments);
  }

  private String rewritten(String text) throws NotPortableException {
    FormulaRewriter.Rewritten inner = new FormulaRewriter(syntax).rewritePart(text);
    if (!inner.left().isEmpty()) {
      throw new NotPortableException(inner.left().get(0));
    }
    return inner.text();
  }

  /** A name with its brackets, or brackets alone, and nothing after them. */
  private static boolean isOneCall(String text) {
    int open = text.charAt(0) == '(' ? 0 : opening(text, Lexemes.end(text, 0));
    return open >= 0 && Lexemes.closing(text, open) == text.length();
  }

  /** A cell of another sheet: a name, an exclamation mark, an address. */
  private static boolean isReference(String text) {
    int sheet = Lexemes.end(text, 0);
    return sheet < text.length() - 1
        && text.charAt(sheet) == '!'
        && Lexemes.end(text, sheet + 1) == text.length();
  }

  /** A range in the place of one value means one result for each of its cells. */
  private static void refuseRange(String text) throws NotPortableException {
    int depth = 0;
    for (int i = 0; i < text.length(); i = Lexemes.end(text, i)) {
      String piece = text.substring(i, Lexemes.end(text, i));
      depth += piece.equals("(") ? 1 : piece.equals(")") ? -1 : 0;
      if (depth == 0 && (piece.equals(":") || piece.startsWith("{") || isOpenRange(piece))) {
        throw new NotPortableException("portable.range");
      }
    }
  }

  private static boolean isOpenRange(String piece) {
    return piece.startsWith("[") && piece.replaceAll("'(?:[^']|'')*'", "").contains(":");
  }
}
