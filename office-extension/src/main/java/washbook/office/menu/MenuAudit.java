package washbook.office.menu;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import washbook.log.ComputedColumn;
import washbook.log.ComputedHeader;
import washbook.log.Understanding;
import washbook.log.WrittenScale;
import washbook.log.audit.Audit;
import washbook.log.audit.LogAuditor;
import washbook.log.language.Language;
import washbook.log.language.Message;
import washbook.log.sheet.CellAddress;
import washbook.log.understand.SheetUnderstanding;
import washbook.office.dialog.Outcome;
import washbook.office.dialog.StoppedException;
import washbook.office.language.MenuText;
import washbook.office.language.OfficeText;

/** Compares the figures of the log in front with ours, in a new sheet. */
record MenuAudit(OpenSheet sheet, Language language) {
  private static final String NAME = "Washbook audit";

  Outcome run() {
    sheet.requireChangeable();
    CalcGrid grid = CalcGrid.of(sheet);
    Understanding understanding =
        SheetUnderstanding.understand(grid, new DocumentAnswers(sheet).read());
    Audit audit = LogAuditor.audit(grid, understanding);
    if (audit.columns().isEmpty()) {
      return Outcome.failed(say("audit.none", sheet.name()));
    }
    String name = NewSheet.free(sheet, NAME);
    NewSheet.write(
        sheet,
        MenuText.of("menu.audit", language),
        name,
        made -> {
          try {
            write(made, audit, understanding);
          } catch (com.sun.star.uno.Exception e) {
            throw new StoppedException("stopped.write", e);
          }
        });
    int compared = audit.columns().stream().mapToInt(Audit.Column::compared).sum();
    int differing = audit.columns().stream().mapToInt(Audit.Column::differing).sum();
    return Outcome.done(say("audit.done", compared, differing, name));
  }

  private void write(NewSheet made, Audit audit, Understanding understanding)
      throws com.sun.star.uno.Exception {
    List<Object[]> rows = new ArrayList<>();
    rows.add(cells(say("audit.title", sheet.name())));
    rows.add(cells());
    rows.add(
        heads(
            "audit.column",
            "audit.with",
            "audit.compared",
            "audit.differing",
            "audit.largest",
            "audit.cause"));
    for (Audit.Column column : audit.columns()) {
      rows.add(
          cells(
              column.own().header(),
              title(column.ours()),
              column.compared(),
              column.differing(),
              rounded(column.largest(), column),
              cause(column)));
    }
    rows.add(cells());
    int below = rows.size();
    Object[] heads =
        heads(
            "audit.column",
            "audit.batch",
            "audit.cell",
            "audit.own",
            "menu.title",
            "audit.difference");
    heads[4] = MenuText.of("menu.title", language);
    rows.add(heads);
    for (Audit.Column column : audit.columns()) {
      for (Audit.Batch batch : column.batches()) {
        differences(column, batch, understanding, rows);
      }
    }
    made.put(0, rows);
    for (int row : new int[] {0, 2, below}) {
      made.bold(row, 6);
    }
    made.widths(5, 6, 3, 3.8, 4.8, 9);
    made.show();
  }

  private void differences(
      Audit.Column column, Audit.Batch batch, Understanding understanding, List<Object[]> rows) {
    for (int i = 0; i < batch.compared(); i++) {
      double difference = batch.own()[i] - batch.ours()[i];
      if (Math.abs(difference) > batch.limit()) {
        rows.add(
            cells(
                column.own().header(),
                batch.name(),
                cell(understanding, batch.rows()[i], column.own().column()),
                batch.own()[i],
                rounded(batch.ours()[i], column),
                rounded(difference, column)));
      }
    }
  }

  private static String cell(Understanding understanding, int row, int column) {
    return understanding
        .across()
        .map(grid -> CellAddress.of(grid.sheetRow(column), grid.sheetColumn(row)))
        .orElseGet(() -> CellAddress.of(row, column));
  }

  /** With one place more than the column is shown with. */
  private static double rounded(double figure, Audit.Column column) {
    double power = Math.pow(10, column.ours().decimals() + 1);
    return Math.rint(figure * power) / power;
  }

  private String cause(Audit.Column column) {
    Message causes =
        column.causes().stream()
            .map(Audit.Cause::message)
            .reduce((one, other) -> Message.of("audit.cause.and", one, other))
            .orElse(Message.NONE);
    String said = causes.in(language);
    return column.detail().isBlank() ? said : said + " (" + column.detail().in(language) + ")";
  }

  private String title(ComputedColumn column) {
    return ComputedHeader.title(column, WrittenScale.SG, language);
  }

  private Object[] heads(String... keys) {
    return cells(Arrays.stream(keys).map(key -> (Object) say(key)).toArray());
  }

  private static Object[] cells(Object... cells) {
    return Arrays.copyOf(cells, 6);
  }

  private String say(String key, Object... arguments) {
    return OfficeText.of(key, arguments).in(language);
  }
}
