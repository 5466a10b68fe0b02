package washbook.runner.language;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import washbook.log.language.Language;

/** In which language a command speaks that writes nothing into logs. */
public final class LanguageArgument {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--language",
      paramLabel = "CODE",
      description =
          "The language of what is shown and reported: en, de, fr, es, it, pt, nl or af. Without it"
              + " that of LC_ALL, LC_MESSAGES or LANG.")
  private String language = "";

  public Wording wording() {
    if (!language.isBlank() && Language.of(language).isEmpty()) {
      throw UsageException.of(spec, "usage.language", language);
    }
    return Wording.ofUser(language);
  }
}
