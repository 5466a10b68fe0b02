package washbook.functions.portable;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import washbook.functions.Sentence;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.functions.portable.form.NotPortableException;

/**
 * Puts plain arithmetic in the place of our calls in a formula, wherever they stand: alone, inside
 * other functions or inside each other, in any case of letters. Everything else keeps its text.
 */
public final class FormulaRewriter {
  /** The longest formula that a workbook can hold. */
  public static final int LONGEST = 8192;

  private static final Pattern CELL = Pattern.compile("[A-Za-z]{1,3}\\$?[0-9]{1,7}");

  private final FormulaSyntax syntax;
  private final CallArguments arguments;

  public FormulaRewriter(FormulaSyntax syntax) {
    this.syntax = syntax;
    this.arguments = new CallArguments(syntax);
  }

  /**
   * A formula after rewriting.
   *
   * @param text the new formula; the old one when nothing was rewritten
   * @param calls how many calls were replaced, each with those inside it as one
   * @param left for each call that stayed, why
   */
  public record Rewritten(String text, int calls, List<Sentence> left) {}

  /** Rewrites a formula given without its {@code =} or {@code of:=}. */
  public Rewritten rewrite(String formula) {
    Rewritten rewritten = rewritePart(formula);
    if (rewritten.calls > 0 && rewritten.text.length() > LONGEST) {
      return new Rewritten(
          formula, 0, List.of(Sentence.of("portable.long", rewritten.text.length(), LONGEST)));
    }
    return rewritten;
  }

  /**
   * Rewrites an array formula. Its calls must take single cells: over ranges the guards of plain
   * arithmetic would judge all cells at once.
   */
  public Rewritten rewriteArray(String formula) {
    for (int i = 0; i < formula.length(); i = Lexemes.end(formula, i)) {
      if (CallArguments.functionAt(formula, i).isPresent()) {
        int open = CallArguments.opening(formula, Lexemes.end(formula, i));
        if (!takesSingleCells(formula.substring(open, Lexemes.closing(formula, open)))) {
          return new Rewritten(formula, 0, List.of(Sentence.of("portable.array")));
        }
      }
    }
    return rewrite(formula);
  }

  private static boolean takesSingleCells(String call) {
    for (int i = 0; i < call.length(); i = Lexemes.end(call, i)) {
      int end = Lexemes.end(call, i);
      String piece = call.substring(i, end);
      char next = end < call.length() ? call.charAt(end) : ' ';
      boolean name = Character.isLetter(piece.charAt(0)) && next != '(' && next != '!';
      if (piece.equals(":")
          || piece.startsWith("{")
          || piece.startsWith("[") && piece.contains(":")
          || name && !CELL.matcher(piece).matches()) {
        return false;
      }
    }
    return true;
  }

  /** The formula as a whole, when it is one call of ours that can be portable. */
  public Optional<WholeCall> whole(String formula) {
    String text = formula.strip();
    Optional<CatalogueFunction> function =
        text.isEmpty() ? Optional.empty() : CallArguments.functionAt(text, 0);
    if (function.isEmpty()) {
      return Optional.empty();
    }
    int open = CallArguments.opening(text, Lexemes.end(text, 0));
    if (Lexemes.closing(text, open) != text.length()) {
      return Optional.empty();
    }
    try {
      return Optional.of(new WholeCall(CallCompiler.compile(arguments.call(function.get(), text))));
    } catch (NotPortableException e) {
      return Optional.empty();
    }
  }

  /** Whether any call of ours stands in the formula. */
  public static boolean concerns(String formula) {
    for (int i = 0; i < formula.length(); i = Lexemes.end(formula, i)) {
      if (CallArguments.functionAt(formula, i).isPresent()) {
        return true;
      }
    }
    return false;
  }

  Rewritten rewritePart(String formula) {
    StringBuilder out = new StringBuilder();
    List<Sentence> left = new ArrayList<>();
    int calls = 0;
    int i = 0;
    while (i < formula.length()) {
      Optional<CatalogueFunction> function = CallArguments.functionAt(formula, i);
      int end = Lexemes.end(formula, i);
      if (function.isEmpty()) {
        out.append(formula, i, end);
        i = end;
        continue;
      }
      int open = CallArguments.opening(formula, end);
      int close = Lexemes.closing(formula, open);
      try {
        String call = formula.substring(i, close);
        out.append(
            CallCompiler.compile(arguments.call(function.get(), call)).text(syntax.separator()));
        calls++;
        i = close;
      } catch (NotPortableException e) {
        left.add(e.told());
        out.append(formula, i, end);
        i = end;
      }
    }
    return new Rewritten(out.toString(), calls, left);
  }
}
