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
    /** Must be given; always arrives as rows. */
    ROWS("sequence< sequence< any > >", "Object[][]"),
    /**
     * One value that must be given, as text with 15 digits: of a range Calc takes the formula's own
     * row, and a blank cell is "" where a 0 is "0".
     */
    VALUE("string", "String"),
    /** A range of cells by itself, so that of a whole column only the filled rows are fetched. */
    RANGE("com::sun::star::table::XCellRange", "com.sun.star.table.XCellRange"),
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
    return switch (parameter.kind()) {
      case NUMBERS -> Type.RANGE;
      case ANYTHING -> Type.ROWS;
      default -> Type.VALUE;
    };
  }
}
