package washbook.runner.cli;

import java.time.LocalDate;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import washbook.log.WarningLimits;
import washbook.log.language.Language;
import washbook.log.language.ToldException;
import washbook.log.overview.Overviews;
import washbook.runner.language.Wording;

/** When a batch is worth a warning. */
final class WarningArguments {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--limit",
      split = ",",
      paramLabel = "NAME=VALUE",
      description =
          "When a batch is worth a warning: warmest=32 and coldest=10 (°C), lag-days=3 (the gravity"
              + " has not begun to fall), overdue-days=4 (a wash that works was not read),"
              + " closed-days=90 (an older log is not waited for), final-gravity=1.000 (a wash that"
              + " stands still above it is stuck), off-points=8 (a reading off its"
              + " neighbours or the fitted course), planned-abv (%% vol; no usual value). The usual"
              + " values are common practice, no source.")
  private List<String> given = List.of();

  WarningLimits limits(Language language) {
    try {
      return WarningLimits.parse(given);
    } catch (ToldException wrong) {
      throw WashbookCommand.Wrong.usage(spec, "usage.of", "--limit", wrong.told());
    }
  }

  /** Makes overviews as of today, with warnings in that language. */
  Overviews overviews(Language language) {
    return new Overviews(limits(language), LocalDate.now(), language);
  }

  /** What results depend on. */
  String settings() {
    return limits(Wording.ofUser("").language()).toString();
  }
}
