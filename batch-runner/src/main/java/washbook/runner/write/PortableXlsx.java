package washbook.runner.write;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import washbook.functions.portable.FormulaShift;
import washbook.functions.portable.FormulaSyntax;
import washbook.log.sheet.Grid;
import washbook.runner.archive.ArchiveCopy;
import washbook.runner.markup.XmlScanner;
import washbook.runner.markup.XmlSplicer;
import washbook.runner.read.XlsxPackage;
import washbook.runner.read.XlsxReader;
import washbook.runner.sheet.PortableResult;
import washbook.runner.sheet.PortableWriter;
import washbook.runner.write.FormulaCell.Place;

/**
 * Makes the pack formulas of an .xlsx or .xlsm portable, also those that share one text. The stored
 * result of a formula that is one call becomes what the new formula gives; inside other functions
 * it stays what the pack's function gave, which is the same within the formula's error.
 */
public final class PortableXlsx implements PortableWriter {
  @Override
  public PortableResult write(Path source, Path target) throws IOException {
    try (XlsxPackage workbook = XlsxPackage.open(source);
        ArchiveCopy copy = new ArchiveCopy(source, workbook.archive())) {
      PortableFormulaSet formulas = find(workbook);
      if (formulas.result().formulas() > 0) {
        PortableFormulaSet.Values values = values(new XlsxReader().read(source));
        for (XlsxPackage.Sheet sheet : workbook.sheets()) {
          copy.change(
              sheet.part(),
              (old, to) -> {
                XmlSplicer splicer = new XmlSplicer(old, sheet.part().name(), to);
                new XlsxFormulaCells(splicer)
                    .visitAll(
                        cell ->
                            formulas.replace(
                                new Place(sheet.name(), cell.row(), cell.column()), cell, values));
                splicer.finish();
              });
        }
      }
      copy.write(target);
      return formulas.result();
    }
  }

  @Override
  public PortableResult inspect(Path source) throws IOException {
    try (XlsxPackage workbook = XlsxPackage.open(source)) {
      return find(workbook).result();
    }
  }

  @Override
  public boolean isEarlier(Path source, Path other) throws IOException {
    Set<String> shapes;
    try (XlsxPackage workbook = XlsxPackage.open(source)) {
      shapes = find(workbook).shapes();
    }
    boolean[] holds = new boolean[1];
    try (XlsxPackage workbook = XlsxPackage.open(other)) {
      for (XlsxPackage.Sheet sheet : workbook.sheets()) {
        try (InputStream in = workbook.archive().read(sheet.part())) {
          new XlsxFormulaCells(new XmlScanner(in, sheet.part().name(), sheet.part().size()))
              .visitAll(
                  cell -> holds[0] |= shapes.contains(PortableFormulaSet.shape(cell.formula())));
        }
      }
    }
    return holds[0];
  }

  private static PortableFormulaSet find(XlsxPackage workbook) throws IOException {
    PortableFormulaSet formulas = new PortableFormulaSet(FormulaSyntax.A1);
    for (XlsxPackage.Sheet sheet : workbook.sheets()) {
      try (InputStream in = workbook.archive().read(sheet.part())) {
        collect(
            new XmlScanner(in, sheet.part().name(), sheet.part().size()), sheet.name(), formulas);
      }
    }
    FormulasOutsideCells.findInXlsx(workbook, formulas);
    return formulas;
  }

  private record Master(int row, int column, String formula) {}

  private static void collect(XmlScanner scanner, String sheet, PortableFormulaSet formulas)
      throws IOException {
    Map<String, Master> masters = new HashMap<>();
    new XlsxFormulaCells(scanner)
        .visitAll(
            cell -> {
              Place place = new Place(sheet, cell.row(), cell.column());
              String text = cell.formula();
              if (cell.kind().equals("shared")) {
                if (text.isEmpty()) {
                  Master master = masters.get(cell.shared());
                  if (master != null) {
                    formulas.add(
                        place,
                        FormulaShift.shift(
                            master.formula,
                            cell.row() - master.row,
                            cell.column() - master.column));
                  }
                  return;
                }
                masters.put(cell.shared(), new Master(cell.row(), cell.column(), text));
              }
              if (cell.kind().equals("array")) {
                formulas.addArray(place, text);
              } else {
                formulas.add(place, text);
              }
            });
  }

  /** Stored values by place; a cell outside the used area is blank. */
  static PortableFormulaSet.Values values(List<Grid> grids) {
    Map<String, Grid> byName = new HashMap<>();
    grids.forEach(grid -> byName.put(grid.name(), grid));
    return place -> {
      Grid grid = byName.get(place.sheet());
      if (grid == null) {
        return Optional.empty();
      }
      return switch (grid.kind(place.row(), place.column())) {
        case NUMBER, DATE -> Optional.of(grid.number(place.row(), place.column()));
        case BLANK -> Optional.of("");
        case TEXT -> Optional.of(grid.text(place.row(), place.column()));
        case LOGICAL, ERROR -> Optional.empty();
      };
    };
  }
}
