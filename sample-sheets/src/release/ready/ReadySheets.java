import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/**
 * Makes the ready sheets of the other languages of the English ones: the same formulas and figures,
 * with other texts. Needs washbook.jar on the class path. Arguments: the folder of the English
 * sheets, that of the texts, that to write to; languages where not all are wanted.
 */
final class ReadySheets {
  static final List<String> LANGUAGES = List.of("de", "fr", "es", "it", "pt", "nl", "af");

  private static final List<String> BOOKS =
      List.of(
          "ferment-log",
          "ferment-log-fahrenheit",
          "ferment-log-brix",
          "ferment-log-oechsle",
          "still-run-log",
          "dilution-and-blending",
          "making-up",
          "plan",
          "class",
          "proof");

  /** One that a zip file holds without a zone. */
  private static final LocalDateTime MADE = LocalDateTime.of(2026, 1, 1, 0, 0);

  /** Comes first in an .ods, as it is. */
  private static final String TYPE = "mimetype";

  private static final Pattern PLAIN =
      Pattern.compile("<!\\[CDATA\\[(.*?)\\]\\]>", Pattern.DOTALL);

  private ReadySheets() {}

  public static void main(String[] arguments) throws IOException {
    Path english = Path.of(arguments[0]);
    Path texts = Path.of(arguments[1]);
    List<String> languages =
        arguments.length > 3 ? List.of(arguments).subList(3, arguments.length) : LANGUAGES;
    for (String language : languages) {
      Words words = Words.read(texts, language);
      for (String form : List.of("pack", "portable")) {
        Path from = english.resolve(form);
        Path into = Files.createDirectories(Path.of(arguments[2], language, form));
        for (String book : BOOKS) {
          XlsxSheets sheets = new XlsxSheets(parts(from.resolve(book + ".xlsx")), words);
          write(sheets.parts(), into.resolve(book + ".xlsx"));
          OdsSheets same = new OdsSheets(parts(from.resolve(book + ".ods")), words, sheets);
          write(same.parts(), into.resolve(book + ".ods"));
        }
      }
    }
  }

  private static Map<String, byte[]> parts(Path workbook) throws IOException {
    Map<String, byte[]> parts = new TreeMap<>();
    try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(workbook))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        if (!entry.isDirectory()) {
          parts.put(entry.getName(), zip.readAllBytes());
        }
      }
    }
    return parts;
  }

  private static void write(Map<String, byte[]> parts, Path target) throws IOException {
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(target))) {
      zip.setLevel(Deflater.BEST_COMPRESSION);
      byte[] type = parts.remove(TYPE);
      if (type != null) {
        zip.putNextEntry(stored(type));
        zip.write(type);
      }
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        zip.putNextEntry(entry(part.getKey()));
        zip.write(part.getValue());
      }
    }
  }

  private static ZipEntry stored(byte[] type) {
    CRC32 sum = new CRC32();
    sum.update(type);
    ZipEntry entry = entry(TYPE);
    entry.setMethod(ZipEntry.STORED);
    entry.setSize(type.length);
    entry.setCrc(sum.getValue());
    return entry;
  }

  private static ZipEntry entry(String name) {
    ZipEntry entry = new ZipEntry(name);
    entry.setTimeLocal(MADE);
    return entry;
  }

  /** A part that is XML, without sections of plain text, as long formulas have them. */
  static String text(byte[] part) {
    return PLAIN
        .matcher(new String(part, StandardCharsets.UTF_8))
        .replaceAll(text -> Matcher.quoteReplacement(Words.escaped(text.group(1))));
  }

  static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
