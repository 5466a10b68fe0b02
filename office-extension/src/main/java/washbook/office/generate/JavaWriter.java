package washbook.office.generate;

import java.util.List;
import java.util.stream.Collectors;

/** Writes the add-in's interface and the class that hands every call on. */
final class JavaWriter {
  private static final String HEAD =
      "package washbook.office;\n\n// Generated from the catalogue.\n";

  private JavaWriter() {}

  static String interfaceOf(List<Method> methods) {
    return HEAD
        + "public interface XWashbook extends com.sun.star.uno.XInterface {\n"
        + methods.stream().map(m -> "  " + head(m) + ";\n").collect(Collectors.joining())
        + "}\n";
  }

  static String classOf(List<Method> methods) {
    return HEAD
        + "public final class WashbookFunctions extends washbook.office.call.Service"
        + " implements XWashbook {\n"
        + "  public WashbookFunctions(com.sun.star.uno.XComponentContext context) {\n    super(context);\n  }\n"
        + methods.stream().map(JavaWriter::body).collect(Collectors.joining())
        + "}\n";
  }

  private static String body(Method method) {
    if (method.function() == ColumnEntry.FUNCTION) {
      return """

            @Override
            public %s {
              return column(new Object[] {%s});
            }
          """
          .formatted(head(method), values(method));
    }
    String constant = "f_" + method.name();
    return """

          private static final washbook.functions.catalogue.CatalogueFunction %s =
              washbook.functions.catalogue.Catalogue.get("%s");

          @Override
          public %s {
            return answer(%s, new Object[] {%s});
          }
        """
        .formatted(constant, method.function().name(), head(method), constant, values(method));
  }

  private static String values(Method method) {
    return method.arguments().stream().map(Method.Argument::name).collect(Collectors.joining(", "));
  }

  private static String head(Method method) {
    return method.arguments().stream()
        .map(a -> a.type().java() + " " + a.name())
        .collect(Collectors.joining(", ", "Object " + method.name() + "(", ")"));
  }
}
