package washbook.runner.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;
import washbook.functions.Answer;
import washbook.functions.Numbers;
import washbook.functions.Sentence;
import washbook.functions.catalogue.Catalogue;
import washbook.log.fill.FormulaStyle;
import washbook.log.language.Message;
import washbook.runner.card.Card;
import washbook.runner.card.CardFile;
import washbook.runner.card.Cards;
import washbook.runner.card.Instrument;
import washbook.runner.card.Paper;
import washbook.runner.language.LanguageArgument;

/** {@code washbook card}: cards to print and to hang up. */
@Command(
    name = "card",
    mixinStandardHelpOptions = true,
    description = {
      "Writes a card to print: all scales of a wash side by side, the corrections of your own"
          + " hydrometer from 5 to 40 °C, or the true strength for your own alcoholometer.",
      "A value outside the range for which the figures are valid is marked, never continued."
    },
    footerHeading = "%nExamples:%n",
    footer = {
      "  washbook card scales --out scales.svg",
      "  washbook card hydrometer --calibration 60F --offset 0.002 --out mine.html",
      "  washbook card hydrometer --original 1.085 --as pack --out mine.ods",
      "  washbook card alcoholometer --degrees F --paper letter --out spirit.pdf"
    })
final class CardCommand implements Callable<Integer> {
  /** Of what a hydrometer shows. */
  private enum Scale {
    SG,
    BRIX
  }

  /** Of the thermometer. */
  private enum Degrees {
    C,
    F
  }

  @Spec private CommandSpec spec;
  @ParentCommand private WashbookCommand parent;

  @Parameters(paramLabel = "CARD", description = "scales, hydrometer or alcoholometer.")
  private Card.Kind kind;

  @Mixin private LanguageArgument language;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "FILE",
      description =
          "The card; the ending .svg, .html, .pdf, .xlsx or .ods says of which kind. A .pdf is made"
              + " by LibreOffice.")
  private Path out;

  @Option(
      names = "--calibration",
      paramLabel = "DEGREES",
      description =
          "Temperature at which the instrument is calibrated, as 20 or 60F; 20 °C if not given.")
  private String calibration = "20";

  @Option(
      names = "--offset",
      paramLabel = "NUMBER",
      description =
          "What a hydrometer shows too much, in its own unit: its reading in water at its"
              + " calibration temperature, less 1.000 (or less 0 °Bx).")
  private double offset;

  @Option(
      names = "--scale",
      paramLabel = "SCALE",
      description = "What a hydrometer shows: SG (default) or BRIX (Plato and Balling too).")
  private Scale scale = Scale.SG;

  @Option(
      names = "--original",
      paramLabel = "SG",
      description = "First gravity of a wash: adds a page for that wash while it ferments.")
  private double original = Double.NaN;

  @Option(
      names = "--degrees",
      paramLabel = "C|F",
      description = "Your thermometer's degrees: C (default) or F.")
  private Degrees degrees = Degrees.C;

  @Option(names = "--paper", paramLabel = "PAPER", description = "A4 (default) or letter.")
  private Paper paper = Paper.A4;

  @Option(
      names = "--page",
      paramLabel = "N",
      description = "With .svg, which holds one page: the page; the first if not given.")
  private int page = 1;

  @Option(
      names = "--as",
      paramLabel = "FORM",
      description =
          "With .xlsx and .ods, what the cells hold: values (default), pack (WASHBOOK functions) or"
              + " portable (plain formulas).")
  private FormulaStyle style = FormulaStyle.VALUES;

  @Option(names = "--overwrite", description = "Let --out replace a file that is no card.")
  private boolean overwrite;

  @Override
  public Integer call() throws IOException {
    checkOptions();
    checkPlace();
    Instrument instrument =
        new Instrument(
            kind, scale == Scale.BRIX, calibrationC(), offset, original, degrees == Degrees.F);
    Optional<Sentence> against = instrument.reasonAgainst();
    if (against.isPresent()) {
      throw usage("usage.noCard", against.get());
    }
    Card card = Cards.of(instrument, language.wording());
    int pages = CardFile.pages(card);
    if (page < 1 || page > pages) {
      throw pages == 1 ? usage("usage.page.one", page) : usage("usage.page.many", page, pages);
    }
    CardFile.write(card, out, paper, page, style);
    boolean more = CardFile.holdsOnePage(out) && pages > 1;
    parent
        .out()
        .println(more ? language.wording().say("usage.cardPage", out, page, pages) : out + ".");
    return ExitCode.DONE;
  }

  private void checkOptions() {
    if (kind != Card.Kind.HYDROMETER && given("--offset", "--scale", "--original")) {
      throw usage("usage.hydrometer");
    }
    if (kind == Card.Kind.SCALES && given("--calibration", "--degrees")) {
      throw usage("usage.scales");
    }
    if (scale == Scale.BRIX && given("--original")) {
      throw usage("usage.original");
    }
    if (given("--page") && !CardFile.holdsOnePage(out)) {
      throw usage("usage.pageSvg");
    }
    if (given("--as") && !CardFile.isSheet(out)) {
      throw usage("usage.asSheet");
    }
  }

  private boolean given(String... names) {
    for (String name : names) {
      if (spec.commandLine().getParseResult().hasMatchedOption(name)) {
        return true;
      }
    }
    return false;
  }

  private void checkPlace() {
    if (!CardFile.canWrite(out)) {
      throw usage("usage.cardEnd", "--out", out);
    }
    if (!Files.isDirectory(out.toAbsolutePath().getParent())) {
      throw usage("usage.inNoFolder", "--out", out);
    }
    Message against = CardFile.reasonAgainst(out, overwrite);
    if (!against.isBlank()) {
      throw usage("usage.against", "--out", out, against);
    }
  }

  private double calibrationC() {
    String text = calibration.strip().toUpperCase(Locale.ROOT).replace("°", "");
    boolean fahrenheit = text.endsWith("F");
    Double number =
        Numbers.parse(
            text.endsWith("F") || text.endsWith("C") ? text.substring(0, text.length() - 1) : text);
    if (number == null) {
      throw usage("usage.calibration", calibration);
    }
    if (!fahrenheit) {
      return number;
    }
    return Catalogue.get("CONVERT").call(number, "F", "C") instanceof Answer.Number celsius
        ? celsius.value()
        : number;
  }

  private RuntimeException usage(String key, Object... arguments) {
    return WashbookCommand.Wrong.usage(spec, key, arguments);
  }
}
