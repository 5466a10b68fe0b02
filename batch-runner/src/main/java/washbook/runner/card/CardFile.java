package washbook.runner.card;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import washbook.functions.XmlText;
import washbook.log.fill.FormulaStyle;
import washbook.log.language.Language;
import washbook.log.language.Message;
import washbook.runner.file.FileMode;
import washbook.runner.file.UnfinishedFile;
import washbook.runner.file.UnusableFileException;
import washbook.runner.file.WrittenFile;
import washbook.runner.language.Wording;

/** The file that holds a card; its ending says of which kind it is. */
public final class CardFile {
  private static final Set<String> KINDS = Set.of("svg", "html", "pdf", "xlsx", "ods");
  private static final Set<String> SHEETS = Set.of("xlsx", "ods");

  /** How many bytes tell a page of ours from another file. */
  private static final int BEGIN = 1024;

  private CardFile() {}

  public static boolean canWrite(Path file) {
    return KINDS.contains(kind(file));
  }

  /** Whether it is a sheet that can calculate. */
  public static boolean isSheet(Path file) {
    return SHEETS.contains(kind(file));
  }

  /** Whether it holds one page only. */
  public static boolean holdsOnePage(Path file) {
    return kind(file).equals("svg");
  }

  /** How many sheets of paper a card takes. */
  public static int pages(Card card) {
    return CardPages.of(card, Paper.A4).size();
  }

  /**
   * Why a card cannot be put in that place; "" when it can. A picture of ours is replaced; a sheet
   * can hold what somebody has written into it.
   *
   * @param overwrite whether another plain file may be replaced
   */
  public static Message reasonAgainst(Path file, boolean overwrite) {
    if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      return Message.NONE;
    }
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      return UnusableFileException.message("there.notPlain");
    }
    if (overwrite) {
      return isOpen(file) ? UnusableFileException.message("there.open") : Message.NONE;
    }
    if (isSheet(file)) {
      return UnusableFileException.message("there.cardSheet");
    }
    return isOurs(file) ? Message.NONE : UnusableFileException.message("there.noCard");
  }

  private static boolean isOurs(Path file) {
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = kind(file).equals("pdf") ? in.readAllBytes() : in.readNBytes(BEGIN);
      String text = new String(bytes, StandardCharsets.UTF_8);
      if (kind(file).equals("pdf")) {
        return text.startsWith("%PDF-")
            && anyTitle(title -> text.contains("/Title<FEFF" + hex(title)));
      }
      return (text.startsWith("<svg ") || text.startsWith(CardHtml.BEGIN))
          && anyTitle(title -> text.contains("<title>" + XmlText.escaped(title)));
    } catch (IOException unreadable) {
      return false;
    }
  }

  /** A card is replaced by one in another language too. */
  private static boolean anyTitle(Predicate<String> test) {
    return Arrays.stream(Language.values())
        .map(language -> Card.beginOfTitle(new Wording(language)))
        .anyMatch(test);
  }

  /** A text as it stands in the information of a PDF. */
  private static String hex(String text) {
    StringBuilder hex = new StringBuilder();
    for (byte b : text.getBytes(StandardCharsets.UTF_16BE)) {
      hex.append(String.format(Locale.ROOT, "%02X", b));
    }
    return hex.toString();
  }

  private static boolean isOpen(Path file) {
    String name = file.getFileName().toString();
    return Files.exists(file.resolveSibling(".~lock." + name + "#"))
        || Files.exists(file.resolveSibling("~$" + name));
  }

  /**
   * Writes a card; it appears under its name when it is finished.
   *
   * @param page of an .svg, from 1
   * @param style what the cells of a sheet hold
   */
  public static void write(Card card, Path file, Paper paper, int page, FormulaStyle style)
      throws IOException {
    try (UnfinishedFile unfinished = UnfinishedFile.beside(file)) {
      Path to = unfinished.path();
      if (isSheet(file)) {
        CardSheet.write(card, paper, style, kind(file), to);
      } else {
        byte[] bytes = picture(card, kind(file), paper, page);
        try (OutputStream out = WrittenFile.stream(to)) {
          out.write(bytes);
        }
      }
      unfinished.check();
      unfinished.permit(FileMode.forAll(List.of(file)), false);
      unfinished.force();
      unfinished.place();
      unfinished.forceFolder();
    }
  }

  private static byte[] picture(Card card, String kind, Paper paper, int page) throws IOException {
    List<String> pages = CardPages.of(card, paper);
    return switch (kind) {
      case "pdf" -> CardPdf.of(card, paper, pages, System.getenv("PATH"));
      case "html" -> CardHtml.of(card, paper, pages).getBytes(StandardCharsets.UTF_8);
      default -> pages.get(page - 1).getBytes(StandardCharsets.UTF_8);
    };
  }

  private static String kind(Path file) {
    String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
    return name.substring(name.lastIndexOf('.') + 1);
  }
}
