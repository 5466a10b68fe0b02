package washbook.functions.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import washbook.functions.Answer;
import washbook.functions.Answer.Code;
import washbook.functions.Calls;

class ReasonTest {
  @Test
  void saysWhatTheFunctionWouldSay() {
    for (CatalogueFunction function : Catalogue.all()) {
      List<Object> call = new ArrayList<>(List.of(function.name()));
      call.addAll(List.of(CommandWords.read(function, function.example())));
      assertEquals("", Calls.text("REASON", call.toArray()), function.name());
      call.set(1, "");
      Answer.Refusal refusal =
          (Answer.Refusal) function.call(call.subList(1, call.size()).toArray());
      assertEquals(refusal.reason(), Calls.text("REASON", call.toArray()), function.name());
    }
  }

  @Test
  void takesNamesAsTheyStandInACell() {
    assertTrue(Calls.text("REASON", "washbook.abv", 1.05, 1.06).contains("1.06"));
    assertTrue(Calls.text("REASON", "ABV").contains("blank"));
    assertTrue(Calls.text("REASON", "ABV", 1.05, 1.04, "MALT", 1.03).contains("4 arguments"));
    assertTrue(
        Calls.text("REASON", "FERMENTRATE", List.of(1.0, 2.0), List.of(1.05)).contains("2 cells"));
  }

  @Test
  void refusesANameThatIsNone() {
    assertEquals(Code.UNKNOWN_WORD, Calls.refusal("REASON", "ABX", 1.0).code());
    assertEquals(Code.BLANK, Calls.refusal("REASON").code());
  }
}
