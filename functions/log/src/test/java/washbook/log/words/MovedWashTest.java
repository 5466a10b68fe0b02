package washbook.log.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Notes in eight languages of wash that went from one batch into another. */
class MovedWashTest {
  private static final List<String> BATCHES = List.of("T1", "T2", "Bottich 1", "Bottich 3", "rood");

  @ParameterizedTest
  @CsvSource({
    "T1, topped up with 3 L from T2, OWN, true",
    "T1, topped up with 3 L from T2, SHARED, false",
    "T2, topped up T1 from T2, SHARED, false",
    "T2, pumped all of T1 into T2, SHARED, true",
    "T1, pumped all of T1 into T2, OWN, false",
    "Bottich 1, zwei Eimer aus B3 in B1 gekippt, SHARED, true",
    "Cuve 8, + fond de cuve 3 ??, OWN, true",
    "Cuve 3, + fond de cuve 3 ??, OWN, false",
    "Bottich 1, abends B3 in B1 geleert, SHARED, true",
    "Bottich 3, zwei Eimer aus B3 in B1 gekippt, SHARED, false",
    "T2, na het meten bijgevuld met most uit rood, OWN, true",
    "T2, hele T1 by T2 ingepomp, SHARED, true",
    "T1, ouillé avec 5 L de T2, OWN, true",
    "T1, rellenado con mosto de T2, OWN, true",
    "T1, rabboccato da T2, OWN, true",
    "T1, atestado com vinho de T2, OWN, true",
    "T1, T2 smells better, OWN, false",
    "T2, T1 en T2 saam na T4 oorgepomp, OWN, false",
    "T1, topped up with fresh juice, OWN, true",
    "Bottich 3, danach mit Rest von Fass 2 vollgemacht, OWN, true",
    "Bottich 3, mit Rest von Bottich 3 vollgemacht, OWN, false",
    "Bottich 3, se pasó mosto de la 1 a la 3, SHARED, true",
    "Bottich 1, se pasó mosto de la 1 a la 3, SHARED, false",
    "T1, cuve T1 : presse ajoutée ce matin, SHARED, true",
    "T1, Apfelmaische dazugekippt, OWN, true",
    "T1, SO2 ajouté au moût, OWN, false",
    "T1, wine yeast added, OWN, false",
    "T1, 'sugar added to the must', OWN, false",
    "T1, topped up with water, OWN, false",
    "T1, same as T2, OWN, false",
    "T9, se añaden 150 l del depósito 6, OWN, true",
    "T9, topped up with 5 L from the other tank, OWN, true",
    "T9, topped up from the other tank, OWN, false",
    "T9, moved 20 L from tank 6, OWN, false",
    "T9, 5 L added, OWN, false",
    "T1, all pumped into T1, ANOTHERS, true",
    "T1, topped up, ANOTHERS, false",
    "Bottich 3, B1 passada para B3, SHARED, true",
    "1b (metà del tino 1), in 1b versato il resto del tino vecchio, SHARED, true",
    "T1, ná lesing opgevul uit tenk T2, OWN, true",
    "Bottich 1, dopo il prelievo ricevuti 20 hl da T2, OWN, true",
    "Bottich 1, après relevé : 3 hL de 3 passés dans 1, SHARED, true",
    "Bottich 3, après relevé : 3 hL de 3 passés dans 1, SHARED, false",
    "T1, T1 topped up with about 60 L from T2, SHARED, true",
    "T2, T1 topped up with about 60 L from T2, SHARED, false",
    "Bottich 1, B1 bijgevuld met 5 l uit B3, SHARED, true",
    "Bottich 1, colmata la 1 con il resto della 3, SHARED, true",
    "Bottich 3, colmata la 1 con il resto della 3, SHARED, false",
    "Bottich 1, 'colmata la 1 con il resto della 3, nella 3 non aggiunto niente', SHARED, true",
    "Bottich 3, 'colmata la 1 con il resto della 3, nella 3 non aggiunto niente', SHARED, false",
    "Bottich 1, atestada a 1 com vinho da 3, SHARED, true",
    "Bottich 3, leído tras echarle vino del 1, OWN, true",
    "Bottich 1, leído tras echarle vino del 1, OWN, false",
    "Bottich 3, most uit 1 erbij, OWN, false",
    "Bottich 3, dazu Wein aus 1, OWN, true",
    "T9, wine of 2023, OWN, false",
    "Bottich 1, même odeur que le vin du 12.9, OWN, false",
    "Bottich 1, dégusté à côté du vin de 23, OWN, false",
    "Bottich 1, topped up with wine as it was not full, OWN, true",
    "Bottich 1, topped up with 2.5 L from the other tank - not stirred, OWN, true",
    "Bottich 1, ouillé avec du vin car pas plein, OWN, true",
    "Bottich 1, mit 5 L aus Fass 2 aufgefüllt und nicht gerührt, OWN, true",
    "Bottich 1, rellenado con mosto y nada más, OWN, true",
    "Bottich 1, pas bijgevuld met 5 L uit vat 2, OWN, true",
    "Bottich 1, level of bottich 1 topped up with juice, SHARED, true",
    "Bottich 1, Hals von Bottich 1 mit Wein aufgefüllt, SHARED, true",
    "Bottich 3, juice from 12 trees, OWN, false",
  })
  void wherePouredWashWent(String batch, String note, MovedWash.Row row, boolean into) {
    assertEquals(into, MovedWash.into(batch, BATCHES, note, row));
  }

  @ParameterizedTest
  @CsvSource({
    "after reading, true",
    "nach dem Spindeln zwei Eimer, true",
    "na het meten bijgevuld, true",
    "après la mesure, true",
    "danach Zucker, true",
    "+ sucre après lecture, true",
    "ná lesing opgevul, true",
    "dopo il prelievo, true",
    "después de medir: miel, true",
    "after this sample knocked over, true",
    "after the weekend, false",
    "topped up, false",
    "nach Hause, false",
  })
  void whatWasDoneAfterTheReading(String note, boolean after) {
    assertEquals(after, MovedWash.isAfterReading(note));
  }

  @Test
  void aNameOfItsOwnNeedsNoWordForVessel() {
    List<String> vessels = List.of("vat links (20 l)", "vat rechts (20 l)");
    String note = "rechts bij links gegoten";
    assertTrue(MovedWash.into(vessels.get(0), vessels, note, MovedWash.Row.SHARED));
    assertFalse(MovedWash.into(vessels.get(1), vessels, note, MovedWash.Row.SHARED));
  }

  @Test
  void aLetterBehindANumberMayBeTheWordForAnd() {
    List<String> vessels = List.of("botte 1", "botte 2");
    String note = "colmata la 1 con un po' della 2 e qualche litro di acqua";
    assertTrue(MovedWash.into("botte 1", vessels, note, MovedWash.Row.SHARED));
    assertFalse(MovedWash.into("botte 2", vessels, note, MovedWash.Row.SHARED));
  }

  @ParameterizedTest
  @CsvSource({
    "T2, T1 en T2 saam na Bottich 3 oorgepomp, true",
    "T1, all of T1 into T2, true",
    "T2, all of T1 into T2, false",
    "T2, all of it into T1, false",
  })
  void aNoteMayTellThatOnesWashWentAway(String batch, String note, boolean away) {
    assertEquals(away, MovedWash.away(batch, BATCHES, note));
  }

  @ParameterizedTest
  @CsvSource({
    "T1, evening: T2 sweetened, true",
    "T2, evening: T2 sweetened, false",
    "T1, evening: both sweetened, false",
  })
  void aNoteMayBeAboutOthers(String batch, String note, boolean others) {
    assertEquals(others, MovedWash.isAboutOthers(batch, BATCHES, note));
  }
}
