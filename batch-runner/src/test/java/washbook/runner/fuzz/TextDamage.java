package washbook.runner.fuzz;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Damage to XML and to text tables, token by token, so that much of the file still makes sense. */
final class TextDamage {
  private static final Pattern XML = Pattern.compile("<[^>]*>|[^<]+|<", Pattern.DOTALL);
  private static final Pattern TABLE = Pattern.compile("\r\n|[\r\n,;\t]|[^\r\n,;\t]+");
  private static final Pattern VALUE = Pattern.compile("(\\s[\\w:]+=)([\"'])(.*?)\\2");

  private static final List<String> EVIL =
      List.of(
          "0",
          "-1",
          "1048576",
          "1048577",
          "2147483647",
          "99999999999999999999",
          "1e308",
          "1e999",
          "NaN",
          "",
          " ",
          "A1",
          "XFD1048576",
          "A1:XFD1048576",
          "=1+1",
          "=cmd|' /C x'!A0",
          "+1",
          "@SUM(1)",
          "&#0;",
          "&#x110000;",
          "&lol;",
          "&amp;",
          "../../../etc/passwd",
          "/xl/workbook.xml",
          "http://localhost:9/x",
          "1.085",
          "1,085",
          "1.085 @ 68F",
          "SG",
          "Temp",
          "PT1H",
          "2026-13-45",
          "true",
          "\uFEFF",
          "\u202E",
          "\uD83C\uDF4E",
          "x".repeat(40_000));

  private TextDamage() {}

  static byte[] xml(byte[] part, Random random) {
    List<String> tokens = tokens(XML, new String(part, StandardCharsets.UTF_8));
    damage(tokens, random);
    return String.join("", tokens).getBytes(StandardCharsets.UTF_8);
  }

  static byte[] table(byte[] file, Random random) {
    List<String> tokens = tokens(TABLE, new String(file, StandardCharsets.ISO_8859_1));
    damage(tokens, random);
    String text = String.join("", tokens);
    if (random.nextInt(8) == 0) {
      text = (random.nextBoolean() ? "sep=|\r\n" : "\u00EF\u00BB\u00BF") + text;
    }
    if (random.nextInt(8) == 0) {
      text = text.replace(',', "\";\t|\0".charAt(random.nextInt(5)));
    }
    return text.getBytes(
        random.nextInt(16) == 0 ? StandardCharsets.UTF_16 : StandardCharsets.ISO_8859_1);
  }

  private static List<String> tokens(Pattern pattern, String text) {
    List<String> tokens = new ArrayList<>();
    Matcher matcher = pattern.matcher(text);
    while (matcher.find()) {
      tokens.add(matcher.group());
    }
    return tokens;
  }

  private static void damage(List<String> tokens, Random random) {
    int times = 1 + random.nextInt(5);
    for (int i = 0; i < times && !tokens.isEmpty(); i++) {
      int at = random.nextInt(tokens.size());
      int other = random.nextInt(tokens.size());
      switch (random.nextInt(8)) {
        case 0 -> tokens.remove(at);
        case 1 -> tokens.add(at, tokens.get(other));
        case 2 -> tokens.set(at, tokens.get(other));
        case 3 -> {
          String kept = tokens.set(at, tokens.get(other));
          tokens.set(other, kept);
        }
        case 4 -> tokens.add(at, evil(random));
        default -> tokens.set(at, altered(tokens.get(at), random));
      }
    }
  }

  /** Another value for one of a tag's attributes, or another text. */
  private static String altered(String token, Random random) {
    if (!token.startsWith("<")) {
      return random.nextInt(4) == 0 ? token + '"' : evil(random);
    }
    List<Integer> starts = new ArrayList<>();
    Matcher matcher = VALUE.matcher(token);
    while (matcher.find()) {
      starts.add(matcher.start());
    }
    if (starts.isEmpty()) {
      return token.replace(">", "/>");
    }
    int start = starts.get(random.nextInt(starts.size()));
    matcher.find(start);
    String value = random.nextInt(6) == 0 ? null : evil(random);
    String by = value == null ? "" : matcher.group(1) + matcher.group(2) + value + matcher.group(2);
    return token.substring(0, start) + by + token.substring(matcher.end());
  }

  private static String evil(Random random) {
    return EVIL.get(random.nextInt(EVIL.size()));
  }
}
