package washbook.office.generate;

import java.util.List;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.functions.catalogue.Parameter;
import washbook.functions.catalogue.Parameter.Kind;

/** A function as a method of the add-in: its name and the type of each argument. */
record Method(CatalogueFunction function) {

  /** How Calc hands an argument over: type in the interface description and in Java. */
  enum Type {
    /** May be left out; a range arrives as rows, everything else alone. */
    ANY("any", "Object"),
    /** Must be given; always arrives as rows, where a single blank cell is 0. */
    ROWS("sequence< sequence< any > >", "Object[][]"),
    /** Must be given; every number arrives as its text to 15 digits, a blank cell as "". */
    TEXTS("sequence< sequence< string > >", "String[][]"),
    /** All that is left, as many as are given. */
    REST("sequence< any >", "Object[]");

    private final String idl;
    private final String java;

    Type(String idl, String java) {
      this.idl = idl;
      this.java = java;
    }

    String idl() {
      return idl;
    }

    String java() {
      return java;
    }
  }

  /** One argument: catalogue entry and type. */
  record Argument(Parameter parameter, Type type) {
    String name() {
      return parameter.name();
    }
  }

  String name() {
    return function.methodName();
  }

  List<Argument> arguments() {
    return function.parameters().stream().map(p -> new Argument(p, typeOf(p))).toList();
  }

  private static Type typeOf(Parameter parameter) {
    if (parameter.kind() == Kind.REST) {
      return Type.REST;
    }
    if (parameter.optional()) {
      return Type.ANY;
    }
    boolean mayBeZero = parameter.kind() == Kind.NUMBER && parameter.quantity().zeroIsPossible();
    return mayBeZero ? Type.TEXTS : Type.ROWS;
  }
}
