package washbook.office.generate;

import java.util.List;
import java.util.stream.Collectors;

/** Writes the interface in the office's own interface language. */
final class TypesWriter {
  private TypesWriter() {}

  static String typesOf(List<Method> methods) {
    return "module washbook { module office {\n"
        + "  interface XWashbook {\n"
        + methods.stream().map(TypesWriter::line).collect(Collectors.joining())
        + "  };\n"
        + "}; };\n";
  }

  private static String line(Method method) {
    return method.arguments().stream()
        .map(a -> "[in] " + a.type().idl() + " " + a.name())
        .collect(Collectors.joining(", ", "    any " + method.name() + "(", ");\n"));
  }
}
