package washbook.runner.cli;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import washbook.log.ComputedColumn;
import washbook.log.WrittenScale;
import washbook.log.fill.FillOptions;
import washbook.log.fill.FormulaStyle;
import washbook.log.fill.RowNotes;
import washbook.log.language.Language;
import washbook.runner.language.Wording;
import washbook.runner.run.Destination;
import washbook.runner.run.LogSheetFiller;
import washbook.runner.run.SheetFiller;

/** What fill and watch have in common: what is filled in and where the results go. */
final class FillArguments {
  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description =
          "Write results into this folder, keeping the folders inside a given one. Without it a"
              + " copy NAME.filled.EXT is written beside each file.")
  private Path out;

  @Option(names = "--in-place", description = "Replace the files themselves.")
  private boolean inPlace;

  @Option(
      names = "--backup",
      description = "With --in-place: keep each replaced file as NAME.EXT.bak, .bak2 and so on.")
  private boolean backup;

  @Option(
      names = "--as",
      paramLabel = "FORM",
      description =
          "What the cells hold: values (default), pack (WASHBOOK functions) or portable (plain"
              + " formulas that any spreadsheet program calculates).")
  private FormulaStyle style = FormulaStyle.VALUES;

  @Option(
      names = "--columns",
      split = ",",
      paramLabel = "NAME",
      description =
          "The columns to fill, of gravity, abv, apparent, real (these four by default), extract,"
              + " sugar, rate, state, plusminus, original, sg; of a still run strength, pure,"
              + " puresum, share, cut, head (these by default), volume20; or all.")
  private List<String> columns = List.of();

  @Option(
      names = "--scale",
      paramLabel = "SCALE",
      description =
          "The scale of the corrected reading: own (default: the one on which the log's readings"
              + " stand), or SG, POINTS, BRIX, PLATO, BALLING, BAUME, OECHSLE, KMW, TWADDELL, KGM3,"
              + " GCM3, GL, POTENTIAL.")
  private String scale = "own";

  @Option(
      names = "--language",
      paramLabel = "CODE",
      description =
          "The language of headers, notes and reasons: en, de, fr, es, it, pt, nl or af. Without it"
              + " headers and notes are in each log's own language, what is shown here and reported"
              + " in that of LC_ALL, LC_MESSAGES or LANG.")
  private String language = "";

  @Option(
      names = "--chart",
      description =
          "Add one sheet, Washbook charts, with gravity, alcohol and temperature of every batch"
              + " over time, or redraw it (.xlsx, .xlsm and .ods).")
  private boolean chart;

  @Option(
      names = "--no-warnings",
      description =
          "Write no warnings (stuck, too warm, a suspicious reading and so on) into the note"
              + " column. Reports have them all the same.")
  private boolean unwarned;

  @Mixin private MapArgument map = new MapArgument();

  /** Takes an option without a value; false where it is not ours or there already. */
  boolean takes(String option) {
    if (option.equals("--in-place") && !inPlace) {
      inPlace = true;
    } else if (option.equals("--backup") && !backup) {
      backup = true;
    } else if (option.equals("--no-warnings") && !unwarned) {
      unwarned = true;
    } else {
      return false;
    }
    return true;
  }

  /** Takes an option with its value; false where one of them is not ours or there already. */
  boolean takes(String option, String value) {
    if (option.equals("--out") && out == null) {
      out = Path.of(value);
    } else if (option.equals("--language")
        && language.isEmpty()
        && Language.of(value).isPresent()) {
      language = value;
    } else {
      return false;
    }
    return true;
  }

  /** Whether the options that were taken do not contradict each other. */
  boolean goTogether() {
    return (out == null || !inPlace) && (inPlace || !backup);
  }

  /** The folder for results, or null. */
  Path out() {
    return out;
  }

  /**
   * Where the results go.
   *
   * @param overwrites whether copies may replace files that are no results of ours
   */
  Destination destination(boolean overwrites) {
    if (out != null && inPlace) {
      throw usage("usage.exclude");
    }
    if (backup && !inPlace) {
      throw usage("usage.backup");
    }
    return new Destination(out, inPlace, backup, overwrites);
  }

  boolean writesFormulas() {
    return style != FormulaStyle.VALUES;
  }

  /** Whether a sheet with charts is wanted. */
  boolean charts() {
    if (chart
        && !computed().containsAll(Set.of(ComputedColumn.CORRECTED_GRAVITY, ComputedColumn.ABV))) {
      throw usage("usage.chart");
    }
    return chart;
  }

  /**
   * Fills as the arguments say.
   *
   * @param warnings for the note column
   */
  SheetFiller filler(RowNotes warnings) {
    FillOptions options =
        new FillOptions(computed(), style, scale(), language(), userLanguage())
            .noting(unwarned ? RowNotes.NONE : warnings);
    return new LogSheetFiller(map.read(userLanguage()), options);
  }

  /** Sheets that the map speaks of. Ask after {@link #filler}. */
  List<String> mappedSheets() {
    return map.sheets();
  }

  /** Everything that results depend on besides the files. Ask after {@link #filler}. */
  List<String> settings() {
    return List.of(
        String.valueOf(out),
        Boolean.toString(inPlace),
        style.name(),
        computed().toString(),
        scale().toString(),
        language() + " " + userLanguage(),
        Boolean.toString(chart),
        Boolean.toString(unwarned),
        map.text());
  }

  private Optional<WrittenScale> scale() {
    if (scale.strip().equalsIgnoreCase("own")) {
      return Optional.empty();
    }
    Optional<WrittenScale> named = WrittenScale.named(scale);
    if (named.isEmpty()) {
      throw usage("usage.scale", scale);
    }
    return named;
  }

  private Optional<Language> language() {
    Optional<Language> named = Language.of(language);
    if (named.isEmpty() && !language.isBlank()) {
      throw usage("usage.language", language);
    }
    return named;
  }

  /** Speaks to the user. */
  Wording wording() {
    return new Wording(userLanguage());
  }

  private Language userLanguage() {
    return language().orElseGet(() -> Language.ofUser(System.getenv()));
  }

  private Set<ComputedColumn> computed() {
    if (columns.isEmpty()) {
      return FillOptions.usual().columns();
    }
    Set<ComputedColumn> wanted = EnumSet.noneOf(ComputedColumn.class);
    for (String column : columns) {
      wanted.addAll(byWord(column.strip().toLowerCase(Locale.ROOT)));
    }
    return wanted;
  }

  private Set<ComputedColumn> byWord(String word) {
    Set<ComputedColumn> all =
        EnumSet.complementOf(EnumSet.of(ComputedColumn.NOTE, ComputedColumn.FIRST_GRAVITY));
    if (word.equals("all")) {
      return all;
    }
    Set<ComputedColumn> found =
        all.stream().filter(c -> c.word().equals(word)).collect(Collectors.toSet());
    if (found.isEmpty()) {
      throw usage(
          "usage.column",
          word,
          all.stream().map(ComputedColumn::word).collect(Collectors.joining(", ")));
    }
    return found;
  }

  private RuntimeException usage(String key, Object... arguments) {
    return WashbookCommand.Wrong.usage(spec, key, arguments);
  }
}
