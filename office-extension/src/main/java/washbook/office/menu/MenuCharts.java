package washbook.office.menu;

import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheets;
import com.sun.star.uno.UnoRuntime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import washbook.log.ComputedColumn;
import washbook.log.ComputedHeader;
import washbook.log.Understanding;
import washbook.log.WrittenScale;
import washbook.log.fill.BatchCurve;
import washbook.log.fill.FillOptions;
import washbook.log.fill.LogFiller;
import washbook.log.language.Language;
import washbook.log.understand.ChartsSheet;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;
import washbook.office.dialog.Outcome;
import washbook.office.dialog.StoppedException;
import washbook.office.language.MenuText;
import washbook.office.language.OfficeText;

/** Draws the batches of all logs of the document into the sheet with charts. */
record MenuCharts(OpenSheet sheet, Language language) {
  /** More batches than these make a sheet that no one reads. */
  private static final int MOST_BATCHES = 60;

  private static final int FIRST_ROW = 2;

  Outcome run() {
    sheet.requireChangeable();
    List<BatchCurve> all = curves();
    if (all.isEmpty()) {
      return Outcome.failed(say("charts.none"));
    }
    String name = NewSheet.free(sheet, ChartsSheet.name(language));
    List<BatchCurve> drawn = all.subList(0, Math.min(all.size(), MOST_BATCHES));
    int[] charts = new int[1];
    NewSheet.write(
        sheet, MenuText.of("menu.charts", language), name, made -> charts[0] = draw(made, drawn));
    return Outcome.done(say("charts.done", charts[0], drawn.size(), all.size(), name));
  }

  private List<BatchCurve> curves() {
    LogMap map = new DocumentAnswers(sheet).read();
    List<BatchCurve> curves = new ArrayList<>();
    for (String name : sheets().getElementNames()) {
      CalcGrid grid = CalcGrid.of(named(name));
      Understanding understanding = SheetUnderstanding.understand(grid, map);
      FillOptions options = FillOptions.usual().forUser(language);
      curves.addAll(
          BatchCurve.of(grid, understanding, LogFiller.fill(grid, understanding, options)));
    }
    return curves;
  }

  private XSpreadsheets sheets() {
    return NewSheet.sheets(sheet);
  }

  private OpenSheet named(String name) {
    try {
      Object found = sheets().getByName(name);
      return new OpenSheet(sheet.document(), UnoRuntime.queryInterface(XSpreadsheet.class, found));
    } catch (com.sun.star.uno.Exception e) {
      throw new StoppedException("stopped.usedArea", e);
    }
  }

  /** The numbers stand on the left, a block for each batch, and the charts beside them. */
  private int draw(NewSheet made, List<BatchCurve> curves) {
    try {
      made.widths(3, 3, 3, 3);
      List<Object[]> rows = new ArrayList<>();
      rows.add(new Object[] {ChartsSheet.title(language), null, null, null});
      while (rows.size() < FIRST_ROW) {
        rows.add(new Object[4]);
      }
      SheetCharts charts = new SheetCharts(made);
      List<Integer> heads = new ArrayList<>();
      List<Runnable> later = new ArrayList<>();
      for (BatchCurve curve : curves) {
        rows.add(new Object[] {name(curve), null, null, null});
        int head = rows.size();
        heads.add(head);
        rows.add(heads(curve));
        for (int point = 0; point < curve.days().length; point++) {
          rows.add(
              new Object[] {
                rounded(curve.days()[point], 3),
                rounded(curve.shownGravity(point), curve.scale().decimals()),
                rounded(curve.abv()[point], 2),
                rounded(curve.temperatureUnit().fromCelsius(curve.temperatureC()[point]), 1)
              });
        }
        int last = rows.size() - 1;
        rows.add(new Object[4]);
        later.add(() -> charts.draw(name(curve), head, last, drawn(curve)));
      }
      made.put(0, rows);
      made.bold(0, 1);
      heads.forEach(row -> made.wrap(row, 4));
      later.forEach(Runnable::run);
      made.show();
      return charts.count();
    } catch (com.sun.star.uno.Exception e) {
      throw new StoppedException("stopped.write", e);
    }
  }

  private static String name(BatchCurve curve) {
    return curve.batch().equals(curve.sheet())
        ? curve.batch()
        : curve.batch() + " (" + curve.sheet() + ")";
  }

  private Object[] heads(BatchCurve curve) {
    return new Object[] {
      say(curve.timed() ? "charts.days" : "charts.reading"),
      ComputedHeader.title(ComputedColumn.CORRECTED_GRAVITY, curve.scale(), language),
      ComputedHeader.title(ComputedColumn.ABV, WrittenScale.SG, language),
      say("charts.temperature", curve.temperatureUnit())
    };
  }

  /** The columns of numbers that have two or more of them. */
  private static List<Integer> drawn(BatchCurve curve) {
    double[][] columns = {curve.gravity(), curve.abv(), curve.temperatureC()};
    List<Integer> drawn = new ArrayList<>();
    for (int i = 0; i < columns.length; i++) {
      if (Arrays.stream(columns[i]).filter(Double::isFinite).count() > 1) {
        drawn.add(i + 1);
      }
    }
    return drawn;
  }

  private static double rounded(double value, int decimals) {
    double power = Math.pow(10, decimals);
    return Math.rint(value * power) / power;
  }

  private String say(String key, Object... arguments) {
    return OfficeText.of(key, arguments).in(language);
  }
}
