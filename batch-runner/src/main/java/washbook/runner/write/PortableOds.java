package washbook.runner.write;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import washbook.functions.Numbers;
import washbook.functions.portable.FormulaRewriter;
import washbook.functions.portable.FormulaSyntax;
import washbook.runner.archive.Archive;
import washbook.runner.archive.ArchiveCopy;
import washbook.runner.archive.Part;
import washbook.runner.file.UnusableFileException;
import washbook.runner.markup.XmlScanner;
import washbook.runner.markup.XmlSplicer;
import washbook.runner.sheet.PortableResult;
import washbook.runner.sheet.PortableWriter;
import washbook.runner.write.FormulaCell.Place;

/**
 * Makes the pack formulas of an OpenDocument spreadsheet portable, as {@link PortableXlsx} does.
 */
public final class PortableOds implements PortableWriter {
  private static final int MOST_REPEATED = 1000;

  @Override
  public PortableResult write(Path source, Path target) throws IOException {
    try (Archive archive = Archive.open(source);
        ArchiveCopy copy = new ArchiveCopy(source, archive)) {
      Part content = content(archive);
      Map<Place, Object> values = new HashMap<>();
      PortableFormulaSet formulas = find(archive, values);
      if (formulas.result().formulas() > 0) {
        PortableFormulaSet.Values stored = place -> stored(values, place);
        copy.change(
            content,
            (old, to) -> {
              XmlSplicer splicer = new XmlSplicer(old, content.name(), to);
              new OdsFormulaCells(splicer).visitAll(cell -> replace(cell, formulas, stored));
              splicer.finish();
            });
      }
      copy.write(target);
      return formulas.result();
    }
  }

  @Override
  public PortableResult inspect(Path source) throws IOException {
    try (Archive archive = Archive.open(source)) {
      return find(archive, new HashMap<>()).result();
    }
  }

  @Override
  public boolean isEarlier(Path source, Path other) throws IOException {
    Set<String> shapes;
    try (Archive archive = Archive.open(source)) {
      shapes = find(archive, new HashMap<>()).shapes();
    }
    boolean[] holds = new boolean[1];
    try (Archive archive = Archive.open(other)) {
      Part content = content(archive);
      try (InputStream in = archive.read(content)) {
        new OdsFormulaCells(new XmlScanner(in, content.name(), content.size()))
            .visitAll(cell -> holds[0] |= isOneOf(shapes, cell.attribute("table:formula")));
      }
    }
    return holds[0];
  }

  private static boolean isOneOf(Set<String> shapes, String formula) {
    return formula != null
        && formula.startsWith(OdsFormulaCells.PREFIX)
        && shapes.contains(
            PortableFormulaSet.shape(formula.substring(OdsFormulaCells.PREFIX.length())));
  }

  private static Part content(Archive archive) throws IOException {
    return archive
        .find("content.xml")
        .orElseThrow(() -> UnusableFileException.of("none.spreadsheet"));
  }

  private static PortableFormulaSet find(Archive archive, Map<Place, Object> values)
      throws IOException {
    PortableFormulaSet formulas = new PortableFormulaSet(FormulaSyntax.OPEN);
    Part content = content(archive);
    try (InputStream in = archive.read(content)) {
      new OdsFormulaCells(new XmlScanner(in, content.name(), content.size()))
          .visitAll(cell -> collect(cell, formulas, values));
    }
    FormulasOutsideCells.findInOds(archive, formulas);
    return formulas;
  }

  /** A mark for a value that is neither number, text nor blank. */
  private static final Object OTHER = new Object();

  private static Optional<Object> stored(Map<Place, Object> values, Place place) {
    Object value = values.getOrDefault(place, "");
    return value == OTHER ? Optional.empty() : Optional.of(value);
  }

  private static void collect(
      OdsFormulaCells cell, PortableFormulaSet formulas, Map<Place, Object> values) {
    String formula = cell.attribute("table:formula");
    Place place = cell.place();
    if (formula != null && FormulaRewriter.concerns(bare(formula))) {
      if (!formula.startsWith(OdsFormulaCells.PREFIX)) {
        formulas.leave(place, UnusableFileException.message("portable.older"));
      } else if (cell.attribute("table:number-matrix-columns-spanned") != null) {
        formulas.addArray(place, formula.substring(OdsFormulaCells.PREFIX.length()));
      } else {
        formulas.add(place, formula.substring(OdsFormulaCells.PREFIX.length()));
      }
    }
    Object value = value(cell);
    if (!value.equals("") && cell.rowsRepeated() <= MOST_REPEATED) {
      for (int r = 0; r < cell.rowsRepeated(); r++) {
        for (int c = 0; c < Math.min(cell.columnsRepeated(), MOST_REPEATED); c++) {
          values.put(new Place(place.sheet(), place.row() + r, place.column() + c), value);
        }
      }
    }
  }

  private static String bare(String formula) {
    return formula.substring(formula.indexOf('=') + 1);
  }

  private static Object value(OdsFormulaCells cell) {
    String type = cell.attribute("office:value-type");
    if (type == null) {
      return "";
    }
    if ("error".equals(cell.attribute("calcext:value-type"))) {
      return OTHER;
    }
    String number = cell.attribute("office:value");
    if (number != null) {
      Double parsed = Numbers.parse(number);
      return parsed == null ? OTHER : parsed;
    }
    if (!type.equals("string")) {
      return OTHER;
    }
    String text = cell.attribute("office:string-value");
    return text != null ? text : cell.content().replaceAll("<[^>]*>", "");
  }

  private static void replace(
      OdsFormulaCells cell, PortableFormulaSet formulas, PortableFormulaSet.Values values)
      throws IOException {
    if (cell.attribute("table:formula") != null) {
      formulas.replace(cell.place(), cell, values);
    }
  }
}
