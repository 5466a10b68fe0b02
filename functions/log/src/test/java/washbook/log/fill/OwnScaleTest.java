package washbook.log.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import washbook.functions.portable.FormulaRewriter;
import washbook.log.ComputedColumn;
import washbook.log.WrittenScale;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;
import washbook.log.words.ReadingScale;

/** The corrected reading on the scale on which the log's readings stand. */
class OwnScaleTest {
  /** The same ferment on any scale: 1.085 at 22 °C, 1.008 at 25 °C. */
  private static TestGrid log(String header, double first, double second) {
    return TestGrid.of(
        "Plum 3", "Day | " + header + " | Temp C\n0 | " + first + " | 22\n3 | " + second + " | 25");
  }

  private static Filling fill(TestGrid grid, FillOptions options) {
    return LogFiller.fill(grid, SheetUnderstanding.understand(grid, LogMap.none()), options);
  }

  private static FillOptions as(FormulaStyle style) {
    return new FillOptions(FillOptions.usual().columns(), style);
  }

  private static List<String> headers(Filling filling) {
    return filling.patch().columns().stream().map(ColumnPatch::header).toList();
  }

  @ParameterizedTest
  @CsvSource({
    "Points, POINTS, points, 1",
    "°Brix, BRIX, °Bx, 2",
    "°Plato, PLATO, °P, 2",
    "Balling, BALLING, °Balling, 2",
    "Baumé, BAUME, °Bé, 2",
    "°Oechsle, OECHSLE, °Oe, 1",
    "KMW, KMW, °KMW, 2",
    "Twaddell, TWADDELL, °Tw, 2",
    "Density kg/m3, KGM3, kg/m³, 1",
    "Density g/cm3, GCM3, g/cm³, 4",
    "Extract g/L, GL, g/L, 1",
    "Potential alcohol, POTENTIAL, potential % vol, 2",
    "SG, SG, SG, 4",
  })
  void figureHeaderAndDigitsAreThoseOfTheScale(
      String header, ReadingScale scale, String unit, int decimals) {
    TestGrid grid = log(header, scale.fromGravity(1.085), scale.fromGravity(1.008));
    Filling filling = fill(grid, FillOptions.usual());
    ColumnPatch own = filling.patch().columns().get(0);
    assertEquals("Corrected gravity (" + unit + ")", own.header());
    assertEquals(decimals, own.decimals());
    double gravity =
        fill(grid, FillOptions.usual().on(WrittenScale.SG))
            .patch()
            .columns()
            .get(0)
            .cells()
            .number(2);
    assertTrue(gravity > 1.0085 && gravity < 1.0105, "" + gravity);
    assertEquals(scale.fromGravity(gravity), own.cells().number(2), Math.pow(10, -decimals) / 1000);
  }

  @Test
  void aGravityInThousandthsStaysOne() {
    Filling filling = fill(log("SG", 1085, 1050), FillOptions.usual());
    ColumnPatch own = filling.patch().columns().get(0);
    assertEquals("Corrected gravity (SG × 1000)", own.header());
    assertEquals(1051.2, own.cells().number(2), 0.3);
    assertEquals(1, own.decimals());
  }

  @ParameterizedTest
  @EnumSource(value = FormulaStyle.class, names = "VALUES", mode = EnumSource.Mode.EXCLUDE)
  void withFormulasGravityStandsBesideAnyOtherScale(FormulaStyle style) {
    for (ReadingScale scale : ReadingScale.values()) {
      if (scale == ReadingScale.SG) {
        continue;
      }
      TestGrid grid = log(header(scale), scale.fromGravity(1.085), scale.fromGravity(1.008));
      Filling filling = fill(grid, as(style));
      Filling values = fill(grid, as(FormulaStyle.VALUES));
      FilledColumn own =
          filling
              .column(filling.columns().get(0).table(), ComputedColumn.CORRECTED_GRAVITY)
              .orElseThrow();
      assertEquals(scale, own.scale().scale());
      assertEquals(
          values.patch().columns().get(0).cells().number(2), own.patch().cells().number(2));
      assertTrue(
          headers(filling).contains("Corrected gravity (SG, Washbook)"), "" + headers(filling));
      for (ColumnPatch column : filling.patch().columns()) {
        if (!column.header().startsWith("First")) {
          String formula = column.cells().formula(2);
          assertNotNull(formula, scale + " " + column.header());
          assertTrue(formula.length() <= FormulaRewriter.LONGEST, column.header());
          assertEquals(
              style == FormulaStyle.PACK && formula.contains("WASHBOOK."),
              FormulaRewriter.concerns(formula));
        }
      }
    }
  }

  private static String header(ReadingScale scale) {
    return switch (scale) {
      case KGM3 -> "Density kg/m3";
      case GCM3 -> "Density g/cm3";
      case GL -> "Extract g/L";
      case POTENTIAL -> "Potential alcohol";
      default -> scale.name();
    };
  }

  @Test
  void aColumnOfAnEarlierVersionGoesOverToTheLogsScale() {
    TestGrid grid =
        TestGrid.of(
            "Plum 3",
            """
            Day | Oechsle | Temp C | Corrected gravity (Washbook) | ABV to date (Washbook)
            0 | 85 | 22 | 1.0853 | 0
            3 | 50 | 25 | 1.0512 | 4.6""");
    Filling filling = fill(grid, FillOptions.usual());
    assertEquals(
        List.of(
            "Corrected gravity (°Oe)",
            "Alcohol to date (% vol)",
            "Apparent attenuation (%)",
            "Real attenuation (%)"),
        headers(filling));
    assertEquals(3, filling.patch().columns().get(0).column());
    assertTrue(filling.patch().columns().get(0).isOurs("Corrected gravity (Washbook)"));
    assertEquals(51.2, filling.patch().columns().get(0).cells().number(2), 0.3);
  }

  @Test
  void withFormulasTheColumnOfAnEarlierVersionStaysOnGravity() {
    TestGrid grid =
        TestGrid.of(
            "Plum 3",
            """
            Day | Oechsle | Temp C | Corrected gravity (Washbook)
            0 | 85 | 22 | 1.0853
            3 | 50 | 25 | 1.0512""");
    Filling filling = fill(grid, as(FormulaStyle.PACK));
    FilledColumn gravity =
        filling
            .column(filling.columns().get(0).table(), ComputedColumn.SPECIFIC_GRAVITY)
            .orElseThrow();
    assertEquals(3, gravity.patch().column());
  }

  @Test
  void gravityAskedForBesideTheLogsScaleIsKeptByLaterRuns() {
    TestGrid grid = log("Oechsle", 85, 50);
    Set<ComputedColumn> both =
        Set.of(ComputedColumn.CORRECTED_GRAVITY, ComputedColumn.SPECIFIC_GRAVITY);
    TestGrid filled = grid.with(fill(grid, new FillOptions(both, FormulaStyle.VALUES)).patch());
    Filling again = fill(filled, new FillOptions(both, FormulaStyle.VALUES));
    assertEquals(filled.all(), filled.with(again.patch()).all());
    Filling onGravity = fill(filled, FillOptions.usual().on(WrittenScale.SG));
    assertEquals(6, onGravity.patch().columns().size() + 1, "" + headers(onGravity));
  }
}
