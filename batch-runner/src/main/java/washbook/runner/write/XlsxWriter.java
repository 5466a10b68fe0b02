package washbook.runner.write;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.SheetPatch;
import washbook.runner.archive.ArchiveCopy;
import washbook.runner.archive.Part;
import washbook.runner.archive.PartOutput;
import washbook.runner.extent.NewColumns;
import washbook.runner.extent.PageFit;
import washbook.runner.extent.XlsxNames;
import washbook.runner.extent.XlsxTable;
import washbook.runner.file.UnusableFileException;
import washbook.runner.markup.XmlScanner.Token;
import washbook.runner.markup.XmlSplicer;
import washbook.runner.read.XlsxPackage;
import washbook.runner.read.XlsxPaper;
import washbook.runner.sheet.SheetWriter;
import washbook.runner.sheet.Texts;

/**
 * Patches .xlsx and .xlsm: the sheet parts that get columns, the cell formats if one for so many
 * digits is missing, how far tables, filters and print areas beside them reach, and nothing else.
 * Where a formula of ours becomes a value the order of calculation, which would still name it, is
 * left out; programs make a new one.
 */
public final class XlsxWriter implements SheetWriter {
  private static final byte[] PART_NAME = ascii("PartName");
  private static final byte[] TARGET = ascii("Target");

  /** A sheet's markup in bytes: nobody prints tens of thousands of rows. */
  private static final long LARGEST_PRINTED = 4L << 20;

  /** Some programs state that a sheet's cells reach much farther than they do. */
  private static final int FARTHEST = 40;

  @Override
  public void write(Path source, List<SheetPatch> patches, Path target) throws IOException {
    try (XlsxPackage workbook = XlsxPackage.open(source);
        ArchiveCopy copy = new ArchiveCopy(source, workbook.archive())) {
      XlsxStyles styles = new XlsxStyles(workbook.archive(), workbook.styles());
      Texts[] texts = new Texts[1];
      XlsxOldCell.SharedStrings shared =
          () -> texts[0] == null ? texts[0] = workbook.sharedStrings() : texts[0];
      boolean formulaGone = false;
      Map<String, NewColumns> added = new HashMap<>();
      for (Map.Entry<XlsxPackage.Sheet, List<ColumnPatch>> entry :
          bySheet(workbook, patches).entrySet()) {
        XlsxPackage.Sheet sheet = entry.getKey();
        boolean[] gone = new boolean[1];
        XlsxDrawings drawings =
            new XlsxDrawings(
                workbook.anchors(sheet.part()),
                workbook.sizes(sheet.part()),
                workbook.hasControls(sheet.part()));
        PageFit fit = fit(workbook, sheet.part(), drawings, entry.getValue());
        copy.change(
            sheet.part(),
            (old, to) -> {
              XlsxSheetPatch patch =
                  new XlsxSheetPatch(
                      new XmlSplicer(old, sheet.part().name(), to),
                      sheet.name(),
                      entry.getValue(),
                      styles,
                      shared,
                      drawings,
                      fit);
              patch.apply();
              gone[0] = patch.isFormulaGone();
              added.put(sheet.name(), patch.added());
            });
        formulaGone |= gone[0];
        for (Part table : workbook.tables(sheet.part())) {
          XlsxTable.grow(workbook.archive(), copy, table, added.get(sheet.name()));
        }
        Optional<Part> drawing = workbook.drawing(sheet.part());
        if (drawing.isPresent() && drawings.isChanged()) {
          String name = drawing.get().name();
          copy.change(drawing.get(), (old, to) -> drawings.patch(old, name, to, entry.getValue()));
        }
      }
      if (added.values().stream().anyMatch(columns -> !columns.isEmpty())) {
        String name = workbook.workbook().name();
        copy.change(workbook.workbook(), (old, to) -> XlsxNames.patch(old, name, to, added));
      }
      styles.write(copy);
      Optional<Part> chain = workbook.calculationChain();
      if (formulaGone && chain.isPresent()) {
        leaveOut(workbook, copy, chain.get());
      }
      copy.write(target);
    }
  }

  /** How a sheet that columns come into is printed; null where that stays as it is. */
  private static PageFit fit(
      XlsxPackage workbook, Part sheet, XlsxDrawings drawings, List<ColumnPatch> columns)
      throws IOException {
    if (sheet.size() > LARGEST_PRINTED) {
      return null;
    }
    int headerRow = columns.get(0).headerRow();
    XlsxPaper paper = XlsxPaper.of(workbook.archive(), sheet, headerRow);
    boolean allThere =
        columns.stream()
            .filter(column -> column.headerRow() == headerRow)
            .allMatch(column -> paper.hasHead(column.column()));
    if (paper.isOwn() || allThere) {
      return null;
    }
    int right = columns.stream().mapToInt(ColumnPatch::column).max().orElse(0) + FARTHEST;
    int last = paper.lastColumn() <= right ? paper.lastColumn() : -1;
    drawings.look().fitNotes(() -> PageFit.pages(fit(paper, drawings, columns, last)));
    return fit(paper, drawings, columns, last);
  }

  private static PageFit fit(
      XlsxPaper paper, XlsxDrawings drawings, List<ColumnPatch> columns, int last) {
    double width = drawings.printedWidth(columns, last);
    double spare = PageFit.spare(paper.leftMargin(), paper.rightMargin());
    PageFit whole = PageFit.of(width, paper.isLandscape(), paper::across, spare);
    int end = drawings.endOfCells(columns, last);
    if (whole == null || whole.pages() == 1 || end < 0) {
      return whole;
    }
    double cells = drawings.cellsWidth(columns, last);
    PageFit apart = PageFit.apart(cells, paper.isLandscape(), paper::across, spare, end);
    return apart == null ? whole : apart;
  }

  private static Map<XlsxPackage.Sheet, List<ColumnPatch>> bySheet(
      XlsxPackage workbook, List<SheetPatch> patches) throws UnusableFileException {
    Map<XlsxPackage.Sheet, List<ColumnPatch>> bySheet = new LinkedHashMap<>();
    for (SheetPatch patch : patches) {
      XlsxPackage.Sheet sheet =
          workbook.sheets().stream()
              .filter(candidate -> candidate.name().equals(patch.sheet()))
              .findFirst()
              .orElseThrow(() -> UnusableFileException.of("sheet.noneNamed", patch.sheet()));
      boolean partTwice =
          workbook.sheets().stream()
                  .filter(s -> s.part().name().equals(sheet.part().name()))
                  .count()
              > 1;
      if (partTwice) {
        throw UnusableFileException.of("sheet.onePart");
      }
      if (!patch.columns().isEmpty()) {
        bySheet.computeIfAbsent(sheet, key -> new ArrayList<>()).addAll(patch.columns());
      }
    }
    return bySheet;
  }

  private static void leaveOut(XlsxPackage workbook, ArchiveCopy copy, Part part)
      throws IOException {
    copy.leaveOut(part);
    String fileName = part.name().substring(part.name().lastIndexOf('/') + 1);
    Optional<Part> types = workbook.contentTypes();
    Optional<Part> relations = workbook.workbookRelations();
    if (types.isPresent()) {
      copy.change(
          types.get(), (old, to) -> removeElement(old, to, types.get(), PART_NAME, fileName));
    }
    if (relations.isPresent()) {
      copy.change(
          relations.get(), (old, to) -> removeElement(old, to, relations.get(), TARGET, fileName));
    }
  }

  /** Removes the elements whose attribute ends with the name. */
  private static void removeElement(
      InputStream old, PartOutput to, Part part, byte[] attribute, String fileName)
      throws IOException {
    XmlSplicer splicer = new XmlSplicer(old, part.name(), to);
    String end = "/" + fileName.toLowerCase(Locale.ROOT);
    for (Token token = splicer.next(); token != Token.DONE; token = splicer.next()) {
      if ((token == Token.EMPTY || token == Token.START)
          && splicer.attribute(attribute)
          && ("/" + splicer.value().toLowerCase(Locale.ROOT)).endsWith(end)) {
        splicer.remove(token);
      }
    }
    splicer.finish();
  }
}
