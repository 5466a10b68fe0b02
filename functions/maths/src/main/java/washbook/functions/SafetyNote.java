package washbook.functions;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;

/**
 * The caution that stands in the README, the add-in's help and every report. Its translations lie
 * beside this class in {@code safety/}, a file for each language.
 */
public final class SafetyNote {
  public static final String TITLE = "Safety";

  /** One sentence or two for each danger. */
  public static final List<String> LINES =
      List.of(
          "Alcohol vapour burns and can explode. Keep flames and sparks away and ventilate well.",
          "A ferment gives off carbon dioxide, which gathers unseen in closed and low rooms and can"
              + " kill: air the room before you go in.",
          "Hot wash, steam and hot vessels scald: never heat a vessel that cannot vent.",
          "Any part of a run can hold methanol, which can blind and kill and cannot be tasted. No"
              + " figure of Washbook says that a spirit is safe to drink.",
          "Distilling needs a licence in most places, and excise may be due. Figures here are for"
              + " planning and for your own log: local codes and licensed practice decide.");

  /** The pointer at the end of a command. */
  public static final String POINTER =
      TITLE
          + ": vapour, carbon dioxide and methanol can kill; 'washbook --help' has the whole note.";

  private static final Set<String> TRANSLATED = Set.of("de", "fr", "es", "it", "pt", "nl", "af");
  private static final Map<String, Map<String, String>> TEXTS = new ConcurrentHashMap<>();

  private SafetyNote() {}

  /** The whole note as one paragraph. */
  public static String text() {
    return text("en");
  }

  /**
   * The whole note in a language.
   *
   * @param language its code of ISO 639, such as {@code de}; English where there is no file for it
   */
  public static String text(String language) {
    String all = String.join(" ", lines(language));
    return TRANSLATED.contains(language)
        ? TextFile.filled(texts(language).get("whole"), part -> part == 0 ? title(language) : all)
        : TITLE + ": " + all;
  }

  /** The title in a language. */
  public static String title(String language) {
    return TRANSLATED.contains(language) ? texts(language).get("title") : TITLE;
  }

  /** The sentences in a language. */
  public static List<String> lines(String language) {
    return TRANSLATED.contains(language)
        ? IntStream.rangeClosed(1, LINES.size())
            .mapToObj(line -> texts(language).get(Integer.toString(line)))
            .toList()
        : LINES;
  }

  private static Map<String, String> texts(String language) {
    return TEXTS.computeIfAbsent(
        language, one -> TextFile.read(SafetyNote.class, "safety/" + one + ".properties"));
  }
}
