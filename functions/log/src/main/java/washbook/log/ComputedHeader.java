package washbook.log;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import washbook.log.language.Language;
import washbook.log.language.Message;
import washbook.log.words.ReadingScale;

/**
 * The header of a computed column.
 *
 * @param column which computed column it is
 * @param scale the scale of the figures below; that of SG for all but the corrected reading
 * @param isMarked whether it names this program, so that it is ours wherever it stands. One that is
 *     not marked is told by its neighbours, see {@link ComputedHeaders}
 * @param label name of the table it belongs to when it does not stand beside that table, else ""
 */
public record ComputedHeader(
    ComputedColumn column, WrittenScale scale, boolean isMarked, String label) {
  /** What marks a header, in its last brackets. */
  private static final String NAME = "Washbook";

  private static final String LABEL = ", ";

  /** What versions up to 0.1 have written before {@code (Washbook)}. */
  private static final Map<String, ComputedColumn> EARLIER =
      Map.ofEntries(
          Map.entry("Corrected gravity", ComputedColumn.CORRECTED_GRAVITY),
          Map.entry("ABV to date", ComputedColumn.ABV),
          Map.entry("Apparent attenuation", ComputedColumn.APPARENT_ATTENUATION),
          Map.entry("Real attenuation", ComputedColumn.REAL_ATTENUATION),
          Map.entry("True extract", ComputedColumn.TRUE_EXTRACT),
          Map.entry("True extract in % mass", ComputedColumn.TRUE_EXTRACT),
          Map.entry("Sugar left", ComputedColumn.SUGAR_LEFT),
          Map.entry("Sugar left in g/L", ComputedColumn.SUGAR_LEFT),
          Map.entry("Points per day", ComputedColumn.RATE),
          Map.entry("Rate per day", ComputedColumn.RATE),
          Map.entry("State", ComputedColumn.STATE),
          Map.entry("Plus or minus", ComputedColumn.PLUS_MINUS),
          Map.entry("Plus or minus in % vol", ComputedColumn.PLUS_MINUS),
          Map.entry("Original gravity", ComputedColumn.ORIGINAL_GRAVITY),
          Map.entry("First gravity", ComputedColumn.FIRST_GRAVITY));

  /** The texts of all languages, without a label. */
  private static final Map<String, ComputedHeader> KNOWN = known();

  private static final List<String> NOTES =
      List.of(Language.values()).stream()
          .map(language -> title(ComputedColumn.NOTE, WrittenScale.SG, language))
          .toList();

  private static Map<String, ComputedHeader> known() {
    Map<String, ComputedHeader> known = new HashMap<>();
    EARLIER.forEach(
        (title, column) ->
            known.put(
                title + " (" + NAME + ")", new ComputedHeader(column, WrittenScale.SG, true, "")));
    for (Language language : Language.values()) {
      for (WrittenScale scale : WrittenScale.all()) {
        put(known, ComputedColumn.CORRECTED_GRAVITY, scale, language);
      }
      for (ComputedColumn column : ComputedColumn.values()) {
        if (column != ComputedColumn.SPECIFIC_GRAVITY) {
          put(known, column, WrittenScale.SG, language);
        }
      }
    }
    EarlierTitles.ALL.forEach((title, column) -> put(known, title, column, WrittenScale.SG));
    WrittenScale potential = new WrittenScale(ReadingScale.POTENTIAL, false);
    EarlierTitles.POTENTIAL.forEach(
        (scale, language) ->
            put(
                known,
                Message.of("header.gravity", scale).in(Language.valueOf(language)),
                ComputedColumn.CORRECTED_GRAVITY,
                potential));
    return known;
  }

  private static void put(
      Map<String, ComputedHeader> known,
      ComputedColumn column,
      WrittenScale scale,
      Language language) {
    put(known, title(column, scale, language), column, scale);
  }

  private static void put(
      Map<String, ComputedHeader> known, String title, ComputedColumn column, WrittenScale scale) {
    boolean note = column == ComputedColumn.NOTE;
    known.putIfAbsent(title, new ComputedHeader(column, scale, note, ""));
    if (!note) {
      known.putIfAbsent(marked(title), new ComputedHeader(column, scale, true, ""));
    }
  }

  /**
   * Reads a header's text; empty when we write no such text. The column of SG beside another scale
   * has the text of a corrected reading on SG.
   */
  public static Optional<ComputedHeader> read(String text) {
    ComputedHeader known = KNOWN.get(text);
    return known != null || !text.contains(NAME) ? Optional.ofNullable(known) : labelled(text);
  }

  private static Optional<ComputedHeader> labelled(String text) {
    for (String note : NOTES) {
      if (text.startsWith(note + LABEL)) {
        return Optional.of(
            new ComputedHeader(
                ComputedColumn.NOTE,
                WrittenScale.SG,
                true,
                text.substring(note.length() + LABEL.length())));
      }
    }
    String end = NAME + ")";
    if (text.endsWith(" (" + end)) {
      return earlierLabelled(text.substring(0, text.length() - end.length() - 2));
    }
    int name = text.indexOf(end + LABEL);
    ComputedHeader known = name < 0 ? null : KNOWN.get(text.substring(0, name + end.length()));
    return known == null
        ? Optional.empty()
        : Optional.of(known.with(text.substring(name + end.length() + LABEL.length())));
  }

  private static Optional<ComputedHeader> earlierLabelled(String text) {
    int comma = text.indexOf(LABEL);
    ComputedColumn column = comma < 0 ? null : EARLIER.get(text.substring(0, comma));
    return column == null
        ? Optional.empty()
        : Optional.of(
            new ComputedHeader(
                column, WrittenScale.SG, true, text.substring(comma + LABEL.length())));
  }

  private ComputedHeader with(String label) {
    return new ComputedHeader(column, scale, isMarked, label);
  }

  /** The header as it is written. */
  public String text(Language language) {
    String title = title(column, scale, language);
    String plain = isMarked && column != ComputedColumn.NOTE ? marked(title) : title;
    return label.isEmpty() ? plain : plain + LABEL + label;
  }

  /** The text without mark and label: what the column holds, and in which unit. */
  public static String title(ComputedColumn column, WrittenScale scale, Language language) {
    return switch (column) {
      case CORRECTED_GRAVITY -> Message.of("header.gravity", scale.name()).in(language);
      case SPECIFIC_GRAVITY -> title(ComputedColumn.CORRECTED_GRAVITY, WrittenScale.SG, language);
      default -> Message.of("header." + column.word()).in(language);
    };
  }

  private static String marked(String title) {
    return title.endsWith(")")
        ? title.substring(0, title.length() - 1) + ", " + NAME + ")"
        : title + " (" + NAME + ")";
  }
}
