package washbook.log.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import washbook.functions.RefusedException;

/** The scales of readings, and how people write a gravity. */
class ReadingScaleTest {
  /** ICUMSA SPS-4: SG 1.03998 at 10 °Bx and 1.08292 at 20 °Bx; 1080.978 kg/m3 at 20 °Bx. */
  @ParameterizedTest
  @CsvSource({
    "SG, 1.085, 1.085, 1e-15",
    "SG, 1085, 1.085, 1e-15",
    "SG, 998, 0.998, 1e-15",
    "POINTS, 85, 1.085, 1e-12",
    "OECHSLE, 85, 1.085, 1e-12",
    "TWADDELL, 17, 1.085, 1e-12",
    "BRIX, 10, 1.03998, 5e-6",
    "PLATO, 20, 1.08292, 5e-6",
    "BALLING, 20, 1.08292, 5e-6",
    "KGM3, 1080.978, 1.08292, 5e-6",
    "GCM3, 1.080978, 1.08292, 5e-6",
  })
  void aReadingIsThisGravity(ReadingScale scale, double shown, double gravity, double within) {
    assertEquals(gravity, scale.toGravity(shown), within);
    assertEquals(gravity, scale.toCheckedGravity(shown), within);
  }

  @ParameterizedTest
  @EnumSource(ReadingScale.class)
  void aGravityComesBackFromEveryScale(ReadingScale scale) {
    assertEquals(1.062, scale.toGravity(scale.fromGravity(1.062)), 1e-9);
    assertTrue(ReadingScale.isName(scale.name()));
    assertEquals(scale, ReadingScale.of(scale.name()));
  }

  @Test
  void aColumnWithoutAUnitHoldsSpecificGravities() {
    assertEquals(ReadingScale.SG, ReadingScale.of(""));
    assertFalse(ReadingScale.isName("STONE"));
    assertFalse(ReadingScale.isName(""));
  }

  @Test
  void aDensityInGramsPerCubicCentimetreIsAThousandthOfThatInKilogramsPerCubicMetre() {
    double kilograms = ReadingScale.KGM3.fromGravity(1.085);
    assertEquals(kilograms / 1000, ReadingScale.GCM3.fromGravity(1.085), 1e-12);
    assertTrue(ReadingScale.GCM3.isDensity());
    assertTrue(ReadingScale.KGM3.isDensity());
    assertFalse(ReadingScale.SG.isDensity());
    assertEquals("KGM3", ReadingScale.GCM3.wordOfConvert());
    assertEquals("BRIX", ReadingScale.BRIX.wordOfConvert());
  }

  @Test
  void whatIsOutsideAScaleIsRefusedWhereItIsChecked() {
    assertThrows(RefusedException.class, () -> ReadingScale.BRIX.toCheckedGravity(120));
    assertThrows(RefusedException.class, () -> ReadingScale.GCM3.toCheckedGravity(2));
  }

  @ParameterizedTest
  @CsvSource({
    "SG, 99.9, false",
    "SG, 100, true",
    "SG, 1085, true",
    "SG, 1.085, false",
    "KGM3, 1085, false",
    "OECHSLE, 120, false",
  })
  void onlyASpecificGravityIsWrittenInThousandths(
      ReadingScale scale, double shown, boolean inThousandths) {
    assertEquals(inThousandths, scale.isInThousandths(shown));
  }

  @ParameterizedTest
  @CsvSource({
    "0.969, false",
    "0.97, true",
    "1.085, true",
    "1.2, true",
    "1.201, false",
    "969, false",
    "970, true",
    "1085, true",
    "1200, true",
    "1201, false",
    "12, false",
    "NaN, false",
  })
  void aBareNumberLooksLikeAGravity(double value, boolean looks) {
    assertEquals(looks, ReadingScale.looksLikeGravity(value));
  }

  @ParameterizedTest
  @CsvSource({
    "1085, 1.085",
    "900, 0.9",
    "1200, 1.2",
    "899, 899",
    "1201, 1201",
    "1.085, 1.085",
    "12.5, 12.5"
  })
  void aNumberOfNoScaleStandsUnlessItIsAGravityInThousandths(double value, double meant) {
    assertEquals(meant, ReadingScale.withoutThousandths(value), 1e-15);
  }

  @ParameterizedTest
  @CsvSource({"BRIX, true", "PLATO, true", "BALLING, true", "SG, false", "OECHSLE, false"})
  void aRefractometerShowsPercentOfExtract(ReadingScale scale, boolean percent) {
    assertEquals(percent, scale.isPercentOfExtract());
  }

  /** The word after a number, as the cell's reader leaves it. */
  @ParameterizedTest
  @CsvSource({
    "sg, SG",
    "bx, BRIX",
    "brix, BRIX",
    "p, PLATO",
    "plato, PLATO",
    "balling, BALLING",
    "be, BAUME",
    "baume, BAUME",
    "oe, OECHSLE",
    "oechsle, OECHSLE",
    "kmw, KMW",
    "tw, TWADDELL",
    "points, POINTS",
    "kg/m3, KGM3",
  })
  void theWordAfterANumberNamesItsScale(String word, ReadingScale scale) {
    assertEquals(Optional.of(scale), ReadingScale.behind(word));
  }

  @ParameterizedTest
  @CsvSource({"kg", "litres", "g/cm3", "xyz", "c"})
  void otherWordsNameNoScale(String word) {
    assertEquals(Optional.empty(), ReadingScale.behind(word));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "SG | SG",
        "Specific gravity | SG",
        "Gravity (°Bx) | BRIX",
        "SG / Brix | BRIX",
        "Density kg/m3 | KGM3",
        "Density g/cm3 | GCM3",
        "Sugar g/L | GL",
        "Mostgewicht °Oe | OECHSLE",
        "Extrakt °P | PLATO",
        "°Bé | BAUME",
        "Gravity |",
        "Temperature |",
      })
  void aHeaderNamesItsScale(String header, ReadingScale scale) {
    assertEquals(Optional.ofNullable(scale), ReadingScale.in(Vocabulary.meanings(header)));
  }

  @ParameterizedTest
  @CsvSource({
    "SG, ''",
    "POINTS, ' points'",
    "BRIX, ' °Bx'",
    "PLATO, ' °P'",
    "BALLING, ' °Balling'",
    "BAUME, ' °Bé'",
    "OECHSLE, ' °Oe'",
    "KMW, ' °KMW'",
    "TWADDELL, ' °Tw'",
    "KGM3, ' kg/m³'",
    "GCM3, ' g/cm³'",
    "GL, ' g/L'",
    "POTENTIAL, ' % vol'",
  })
  void aNumberIsShownWithItsSign(ReadingScale scale, String sign) {
    assertEquals(sign, scale.sign());
  }
}
