package washbook.runner.language;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.PropertyResourceBundle;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.stream.IntStream;
import picocli.CommandLine;
import picocli.CommandLine.Model.UsageMessageSpec;
import washbook.log.language.Language;

/**
 * The help of the commands in the language of its reader. In English it stands beside the options
 * themselves, whence manual pages and completions are made; the other languages have a file each,
 * with the keys of the command-line library. They are read only for somebody who asks for help.
 */
public final class HelpWords {
  private static final int EXIT_CODES = 5;

  private HelpWords() {}

  /** Whether a command line asks for help, or is such that help follows. */
  public static boolean areWanted(String... words) {
    return words.length == 0
        || words[0].equals("help")
        || List.of(words).contains("--help")
        || List.of(words).contains("-h");
  }

  /** Speaks the language that the command line names, else that of the user. */
  public static Wording wording(String... words) {
    String code = "";
    for (int i = 0; i < words.length; i++) {
      if (words[i].startsWith("--language=")) {
        code = words[i].substring(words[i].indexOf('=') + 1);
      } else if (words[i].equals("--language") && i + 1 < words.length) {
        code = words[i + 1];
      }
    }
    return Wording.ofUser(code);
  }

  /** A command line that asks for help, without its language, which not every command knows. */
  public static String[] withoutLanguage(String... words) {
    List<String> rest = new ArrayList<>();
    for (int i = 0; i < words.length; i++) {
      if (words[i].equals("--language")) {
        i++;
      } else if (!words[i].startsWith("--language=")) {
        rest.add(words[i]);
      }
    }
    return rest.toArray(new String[0]);
  }

  /** Puts a whole command line's help into that language. */
  public static void translate(CommandLine line, Language language) {
    if (language != Language.EN) {
      translate(line, texts(language), true);
    }
  }

  private static void translate(CommandLine line, ResourceBundle texts, boolean top) {
    line.setResourceBundle(texts);
    UsageMessageSpec usage = line.getCommandSpec().usageMessage();
    if (top) {
      usage.footer(
          IntStream.range(0, EXIT_CODES)
              .mapToObj(code -> texts.getString("footer." + code))
              .toArray(String[]::new));
    } else if (!usage.footerHeading().isEmpty()) {
      usage.footerHeading(texts.getString("footer.examples"));
    }
    line.getSubcommands().values().forEach(command -> translate(command, texts, false));
  }

  /** What is told in the file of a language that is not English. */
  public static Set<String> keys(Language language) {
    return texts(language).keySet();
  }

  /** The file of a language that is not English. */
  private static ResourceBundle texts(Language language) {
    String name = "help/" + language.code() + ".properties";
    try (InputStream in = HelpWords.class.getResourceAsStream(name)) {
      return new PropertyResourceBundle(new InputStreamReader(in, StandardCharsets.UTF_8)) {
        @Override
        public Locale getLocale() {
          return Locale.forLanguageTag(language.code());
        }
      };
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
