package washbook.functions;

import java.util.List;

/** The caution that stands in the README, the add-in's help and every report. */
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

  private SafetyNote() {}

  /** The whole note as one paragraph. */
  public static String text() {
    return TITLE + ": " + String.join(" ", LINES);
  }
}
