import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import washbook.functions.SafetyNote;

/** The texts of a language, found by the English ones. */
final class Words {
  private static final List<String> STATES =
      List.of("lag", "working", "slowing", "stuck", "done", "restarted");
  private static final Pattern LITERAL = Pattern.compile("\"([^\"]*+(?:\"\"[^\"]*+)*+)\"");
  private static final Pattern STATE = Pattern.compile("WASHBOOK\\.FERMENTSTATE\\([^()]*\\)");

  private final Map<String, String> texts = new HashMap<>();

  /** Kinds of wash and sugar: codes that a function takes. */
  private final TreeSet<String> kinds = new TreeSet<>();

  private Words() {}

  static Words read(Path folder, String language) throws IOException {
    Map<String, String> english = lines(folder.resolve("en.properties"));
    Map<String, String> others = lines(folder.resolve(language + ".properties"));
    Words words = new Words();
    english.forEach((key, text) -> words.texts.put(text, others.get(key)));
    english.entrySet().stream()
        .filter(line -> line.getKey().startsWith("kinds."))
        .forEach(line -> words.kinds.add(line.getValue()));
    words.texts.put(SafetyNote.text(), SafetyNote.text(language));
    return words;
  }

  static Map<String, String> lines(Path file) throws IOException {
    return Files.readAllLines(file, StandardCharsets.UTF_8).stream()
        .map(line -> line.split(" = ", 2))
        .collect(Collectors.toMap(line -> line[0], line -> line[1]));
  }

  boolean isKind(String english) {
    return kinds.contains(english);
  }

  /** A whole text of a cell; as it is where it has no other form, like a unit. */
  String say(String english) {
    String one = english.replace("\n(", " (");
    String found = texts.get(one);
    if (found != null) {
      return one.equals(english) ? found : found.replace(" (", "\n(");
    }
    for (String part : List.of(": ", ". ")) {
      int end = english.indexOf(part);
      while (end >= 0) {
        String first = texts.get(english.substring(0, end + 1));
        if (first != null) {
          String rest = english.substring(end + part.length());
          return first + " " + (part.equals(": ") ? list(rest, ", ") : say(rest));
        }
        end = english.indexOf(part, end + 1);
      }
    }
    return english;
  }

  private String list(String words, String comma) {
    return Arrays.stream(words.split(comma)).map(this::say).collect(Collectors.joining(comma));
  }

  /** What is said in a formula; names of scales and kinds stay. */
  String formula(String english, String comma) {
    String said = literals(english, this::literal);
    return STATE
        .matcher(said)
        .replaceAll(call -> Matcher.quoteReplacement(state(call.group(), comma)));
  }

  /** The words to choose from in a cell; names of scales stay. */
  String choices(String english) {
    return literals(
        english,
        text -> kinds.containsAll(List.of(text.split(","))) ? list(text, ",") : literal(text));
  }

  private static String literals(String formula, UnaryOperator<String> change) {
    return LITERAL
        .matcher(formula)
        .replaceAll(text -> Matcher.quoteReplacement(quoted(change.apply(text.group(1)))));
  }

  /** The state of a ferment in words of this language; the function's own word if it is another. */
  private String state(String call, String comma) {
    List<String> said = STATES.stream().map(this::say).toList();
    return chosen(call, STATES, said, comma);
  }

  /** The kind that a word of this language in a cell means; what stands there if it is none. */
  String kind(String cell, List<String> codes, String comma) {
    return chosen(cell, codes.stream().map(this::say).toList(), codes, comma);
  }

  /** What stands in one list where a value does in another; else the value. */
  private static String chosen(String value, List<String> from, List<String> to, String comma) {
    String found = "MATCH(" + value + comma + "{" + all(from, comma) + "}" + comma + "0)";
    String choice = "CHOOSE(" + found + comma + all(to, comma) + ")";
    return "IFERROR(" + choice + comma + value + ")";
  }

  private static String all(List<String> texts, String comma) {
    return texts.stream().map(Words::quoted).collect(Collectors.joining(comma));
  }

  private static String quoted(String text) {
    return "\"" + text + "\"";
  }

  private String literal(String text) {
    if (text.equals(text.toUpperCase(Locale.ROOT))) {
      return text;
    }
    if (text.endsWith(": ")) {
      return say(text.strip()) + " ";
    }
    return Arrays.stream(text.split(",")).allMatch(texts::containsKey)
        ? list(text, ",")
        : say(text);
  }

  /** The contents of all elements of this name. */
  static String elements(String xml, String name, UnaryOperator<String> change) {
    return replaced(xml, "(<" + name + "(?:\\s[^>]*)?(?<!/)>)([^<]*)(</" + name + ">)", change);
  }

  /** The values of all attributes whose names match. */
  static String attributes(String xml, String name, UnaryOperator<String> change) {
    return replaced(xml, "(\\s(?:" + name + ")=\")([^\"]*)(\")", change);
  }

  /** The second of three groups changed. */
  static String replaced(String xml, String pattern, UnaryOperator<String> change) {
    return Pattern.compile(pattern)
        .matcher(xml)
        .replaceAll(
            found -> {
              String inside = escaped(change.apply(plain(found.group(2))));
              return Matcher.quoteReplacement(found.group(1) + inside + found.group(3));
            });
  }

  static String plain(String xml) {
    String text = xml.replace("&#xa;", "\n").replace("&quot;", "\"").replace("&apos;", "'");
    return text.replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&");
  }

  static String escaped(String text) {
    String xml = text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    return xml.replace("\"", "&quot;");
  }
}
