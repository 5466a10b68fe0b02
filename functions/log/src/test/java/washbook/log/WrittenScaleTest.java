package washbook.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.log.language.Language;
import washbook.log.language.Message;
import washbook.log.sheet.TestGrid;
import washbook.log.words.ReadingScale;

/** How figures are written on the scale of a log. */
class WrittenScaleTest {
  private static WrittenScale scale(String name) {
    return name.equals("THOUSANDTHS")
        ? new WrittenScale(ReadingScale.SG, true)
        : WrittenScale.named(name).orElseThrow();
  }

  /** ICUMSA SPS-4: SG 1.08292 at 20 °Bx is 1080.978 kg/m3 and 216.196 g/L. */
  @ParameterizedTest
  @CsvSource({
    "SG, 1.0829, SG",
    "THOUSANDTHS, 1082.9, SG × 1000",
    "POINTS, 82.9, points",
    "OECHSLE, 82.9, °Oe",
    "BRIX, 20.00, °Bx",
    "PLATO, 20.00, °P",
    "BALLING, 20.00, °Balling",
    "BAUME, 11.10, °Bé",
    "TWADDELL, 16.58, °Tw",
    "KGM3, 1081.0, kg/m³",
    "GCM3, 1.0810, g/cm³",
    "GL, 216.2, g/L",
  })
  void aGravityIsShownWithTheDecimalsOfItsScale(String name, String shown, String header) {
    WrittenScale scale = scale(name);
    assertEquals(shown, scale.shown(1.08292).plain());
    assertEquals(header, scale.name().in(Language.EN));
    assertEquals(1.08292, scale.toGravity(scale.fromGravity(1.08292)), 1e-9);
  }

  /** Two points are two points on every scale that counts from water. */
  @ParameterizedTest
  @CsvSource({
    "SG, 0.002",
    "THOUSANDTHS, 2",
    "POINTS, 2",
    "OECHSLE, 2",
    "TWADDELL, 0.4",
    "BAUME, 0.2894",
  })
  void aDifferenceOfTwoPointsIs(String name, double change) {
    assertEquals(change, scale(name).change(0.002), 5e-5);
  }

  @Test
  void onlySpecificGravityWithItsDecimalsIsWhatFunctionsTake() {
    assertTrue(WrittenScale.SG.isPlainGravity());
    assertTrue(scale(" sg ").isPlainGravity());
    assertFalse(scale("THOUSANDTHS").isPlainGravity());
    assertFalse(scale("POINTS").isPlainGravity());
    assertEquals(Optional.empty(), WrittenScale.named("stone"));
    assertEquals(ReadingScale.values().length + 1, WrittenScale.all().size());
  }

  private static WrittenScale of(String unit, String... cells) {
    TestGrid grid = TestGrid.of("x", "Gravity\n" + String.join("\n", cells));
    LogColumn column = new LogColumn(0, "Gravity", Role.GRAVITY, unit, Message.NONE);
    return WrittenScale.of(
        grid,
        new LogTable(
            0,
            1,
            cells.length,
            0,
            0,
            List.of(column),
            List.of(),
            LogSettings.none(),
            List.of(),
            true));
  }

  /** The first figure that looks like a gravity tells: 1085 is in thousandths. */
  @ParameterizedTest
  @ValueSource(strings = {"1085", "990", "'1085"})
  void aLogInThousandthsIsKnownByItsFirstGravity(String cell) {
    assertEquals(scale("THOUSANDTHS"), of("SG", "foam", "0", cell, "1.05"));
    assertEquals(WrittenScale.SG, of("SG", "1.05", cell));
    assertEquals(scale("KGM3"), of("KGM3", cell));
    assertEquals(WrittenScale.SG, of("SG", "foam"));
  }

  @Test
  void aTableWithoutAReadingIsInSpecificGravity() {
    TestGrid grid = TestGrid.of("x", "Date\n#2025-01-01");
    assertEquals(
        WrittenScale.SG,
        WrittenScale.of(
            grid,
            new LogTable(
                0, 1, 1, 0, 0, List.of(), List.of(), LogSettings.none(), List.of(), true)));
  }
}
