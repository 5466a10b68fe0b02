package washbook.log.fill;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import washbook.log.ComputedColumn;
import washbook.log.WrittenScale;
import washbook.log.language.Language;

/**
 * What to fill in.
 *
 * @param columns the wanted columns; the note column comes by itself where a row is refused
 * @param style what the cells hold
 * @param scale of the corrected reading; empty for each log's own
 * @param language of headers and notes; empty for each log's own
 * @param userLanguage decides where a log's words are those of several languages, this one among
 *     them
 * @param notes what is said in the note column besides why a row was refused
 */
public record FillOptions(
    Set<ComputedColumn> columns,
    FormulaStyle style,
    Optional<WrittenScale> scale,
    Optional<Language> language,
    Language userLanguage,
    RowNotes notes) {
  public FillOptions {
    columns = columns.isEmpty() ? Set.of() : EnumSet.copyOf(columns);
  }

  /** With nothing but refusals in the note column. */
  public FillOptions(
      Set<ComputedColumn> columns,
      FormulaStyle style,
      Optional<WrittenScale> scale,
      Optional<Language> language,
      Language userLanguage) {
    this(columns, style, scale, language, userLanguage, RowNotes.NONE);
  }

  /** On each log's own scale and in its own language. */
  public FillOptions(Set<ComputedColumn> columns, FormulaStyle style) {
    this(columns, style, Optional.empty(), Optional.empty(), Language.EN);
  }

  /** The usual columns as plain numbers. */
  public static FillOptions usual() {
    Set<ComputedColumn> usual = EnumSet.allOf(ComputedColumn.class);
    usual.removeIf(column -> !column.byDefault());
    return new FillOptions(usual, FormulaStyle.VALUES);
  }

  /** The same with the corrected reading on one scale in all logs. */
  public FillOptions on(WrittenScale scale) {
    return new FillOptions(columns, style, Optional.of(scale), language, userLanguage, notes);
  }

  /** The same in one language in all logs. */
  public FillOptions in(Language language) {
    return new FillOptions(columns, style, scale, Optional.of(language), userLanguage, notes);
  }

  /** The same with other contents of the cells. */
  public FillOptions as(FormulaStyle other) {
    return new FillOptions(columns, other, scale, language, userLanguage, notes);
  }

  /** The same for a user of that language. */
  public FillOptions forUser(Language user) {
    return new FillOptions(columns, style, scale, language, user, notes);
  }

  /** The same with other notes. */
  public FillOptions noting(RowNotes other) {
    return new FillOptions(columns, style, scale, language, userLanguage, other);
  }
}
