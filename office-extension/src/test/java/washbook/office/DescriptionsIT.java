package washbook.office;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.sun.star.beans.PropertyValue;
import com.sun.star.container.XNameAccess;
import com.sun.star.sheet.FunctionArgument;
import java.util.Arrays;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.functions.catalogue.Parameter;
import washbook.log.language.Language;
import washbook.office.generate.ColumnEntry;
import washbook.office.generate.WizardText;

/** The function wizard says what the catalogue says. */
class DescriptionsIT {
  private static final WizardText ENGLISH = new WizardText(Language.EN);

  static Stream<CatalogueFunction> functions() {
    return Stream.concat(Catalogue.all().stream(), Stream.of(ColumnEntry.FUNCTION));
  }

  @ParameterizedTest
  @MethodSource("functions")
  void wizard(CatalogueFunction function) throws Exception {
    XNameAccess all =
        SharedOffice.get().service("com.sun.star.sheet.FunctionDescriptions", XNameAccess.class);
    Map<String, Object> shown =
        Arrays.stream((PropertyValue[]) all.getByName("WASHBOOK." + function.name()))
            .collect(Collectors.toMap(p -> p.Name, p -> p.Value));
    assertEquals("WASHBOOK." + function.name(), shown.get("Name"));
    assertEquals(ENGLISH.of(function), shown.get("Description"));
    FunctionArgument[] arguments = (FunctionArgument[]) shown.get("Arguments");
    assertEquals(function.parameters().size(), arguments.length);
    for (int i = 0; i < arguments.length; i++) {
      Parameter parameter = function.parameters().get(i);
      assertEquals(parameter.name(), arguments[i].Name);
      assertEquals(ENGLISH.of(function, i), arguments[i].Description);
      assertEquals(parameter.optional(), arguments[i].IsOptional, parameter.name());
    }
  }
}
