package washbook.runner.write;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.SheetPatch;
import washbook.runner.archive.ArchiveCopy;
import washbook.runner.archive.Part;
import washbook.runner.extent.NewColumns;
import washbook.runner.extent.OdsExtent;
import washbook.runner.extent.OdsPages;
import washbook.runner.file.UnusableFileException;
import washbook.runner.markup.XmlScanner.Token;
import washbook.runner.markup.XmlSplicer;
import washbook.runner.read.OdsCell;
import washbook.runner.read.OdsDrawings;
import washbook.runner.read.OdsPackage;
import washbook.runner.read.OdsReader;
import washbook.runner.sheet.SheetWriter;

/**
 * Patches OpenDocument spreadsheets: the rows that get cells, the columns and the styles declared
 * for them, all in content.xml, and nothing else. Repeated rows and cells are divided only where a
 * new cell makes one differ.
 */
public final class OdsWriter implements SheetWriter {
  private static final byte[] BODY = ascii("body");

  /** So many rows show how a log looks; most logs have no more. */
  private static final int LOOKED_AT = 5_000;

  private static final int LARGEST_STYLES = 4 << 20;

  @Override
  public void write(Path source, List<SheetPatch> patches, Path target) throws IOException {
    Map<String, List<ColumnPatch>> bySheet = new LinkedHashMap<>();
    for (SheetPatch patch : patches) {
      if (!patch.columns().isEmpty()) {
        bySheet.computeIfAbsent(patch.sheet(), key -> new ArrayList<>()).addAll(patch.columns());
      }
    }
    try (OdsPackage workbook = OdsPackage.open(source);
        ArchiveCopy copy = new ArchiveCopy(source, workbook.archive())) {
      if (!bySheet.isEmpty()) {
        String name = workbook.content().name();
        OdsStyles styles = new OdsStyles();
        OdsForesight foresight = new OdsForesight(styles);
        OdsPages pages = pages(workbook);
        Map<String, OdsDrawings.OnSheet> drawings = OdsDrawings.of(workbook);
        Changes changes = new Changes(bySheet, styles, foresight, drawings, pages, new HashMap<>());
        try (InputStream in = workbook.archive().read(workbook.content())) {
          patch(new XmlSplicer(in, name, workbook.content().size()), changes, LOOKED_AT);
        }
        if (pages.patched() != null) {
          byte[] all = pages.patched();
          copy.change(styles(workbook), (old, to) -> to.write(all, 0, all.length));
        }
        do {
          foresight.begin();
          copy.change(
              workbook.content(),
              (old, to) -> patch(new XmlSplicer(old, name, to), changes, Integer.MAX_VALUE));
        } while (!foresight.cameTrue());
      }
      copy.write(target);
    }
  }

  /** Nothing where the part is missing, large, or not in UTF-8. */
  private static OdsPages pages(OdsPackage workbook) throws IOException {
    Part part = styles(workbook);
    if (part == null || part.size() > LARGEST_STYLES) {
      return new OdsPages("");
    }
    byte[] bytes = workbook.archive().bytes(part, LARGEST_STYLES);
    String text = new String(bytes, StandardCharsets.UTF_8);
    return new OdsPages(Arrays.equals(bytes, text.getBytes(StandardCharsets.UTF_8)) ? text : "");
  }

  private static Part styles(OdsPackage workbook) {
    return workbook.archive().find("styles.xml").orElse(null);
  }

  /**
   * What is to be changed.
   *
   * @param drawings where they stand, by sheet
   * @param pages the document's, among which a sheet grown too wide finds others
   * @param papers how sheets are to be printed, found by the first look
   */
  private record Changes(
      Map<String, List<ColumnPatch>> columns,
      OdsStyles styles,
      OdsForesight foresight,
      Map<String, OdsDrawings.OnSheet> drawings,
      OdsPages pages,
      Map<String, OdsColumns.Paper> papers) {}

  /**
   * Passes the document on with its changes.
   *
   * @param mostRows after so many rows of a sheet the rest is left, for a look at the beginning
   */
  private static void patch(XmlSplicer splicer, Changes changes, int mostRows) throws IOException {
    OdsStyles styles = changes.styles;
    Map<String, List<ColumnPatch>> open = new LinkedHashMap<>(changes.columns);
    boolean stylesSeen = false;
    boolean inSheets = false;
    for (Token token = splicer.next(); token != Token.DONE; token = splicer.next()) {
      boolean start = token == Token.START;
      int level = splicer.depth() - (start ? 1 : 0);
      if (!start && token != Token.EMPTY) {
        inSheets &= token != Token.END || level > 2;
      } else if (level == 0) {
        String missing = OdsPackage.missingNamespaces(splicer);
        int end = splicer.tokenEnd() - (start ? 1 : 2);
        splicer.insert(end, ascii(missing), missing.length());
      } else if (level == 1 && splicer.is(OdsStyles.AUTOMATIC)) {
        stylesSeen = true;
        styles.patch(splicer, !start);
      } else if (level == 1 && splicer.is(BODY)) {
        if (!stylesSeen) {
          styles.insertAll(splicer);
        }
      } else if (level == 2) {
        inSheets = start && splicer.is(OdsReader.SPREADSHEET);
      } else if (inSheets && OdsReader.isTable(splicer, token)) {
        String sheet = OdsReader.name(splicer);
        List<ColumnPatch> columns = open.remove(sheet);
        if (columns != null) {
          OdsRoom room =
              new OdsRoom(changes.drawings.getOrDefault(sheet, OdsDrawings.OnSheet.NONE), columns);
          NewColumns foreseen = changes.foresight.added(sheet, columns);
          OdsColumns.Paper paper = changes.papers.getOrDefault(sheet, OdsColumns.Paper.SAME);
          OdsSheetPatch patch =
              new OdsSheetPatch(splicer, sheet, columns, styles, room, foreseen, paper);
          boolean whole = patch.apply(token, mostRows);
          if (mostRows == LOOKED_AT) {
            changes.papers.put(sheet, patch.paper(changes.pages));
          }
          changes.foresight.found(sheet, patch.added());
          if (!whole) {
            return;
          }
        } else {
          OdsCell.skip(splicer, token);
        }
      } else if (inSheets && level == 3 && start && splicer.is(OdsExtent.DATABASE_RANGES)) {
        OdsExtent.patchFilters(splicer, changes.foresight.found());
      } else if (level == 1 || level == 3) {
        OdsCell.skip(splicer, token);
      }
    }
    if (!open.isEmpty()) {
      throw UnusableFileException.of("sheet.noneNamed", open.keySet().iterator().next());
    }
    splicer.finish();
  }
}
