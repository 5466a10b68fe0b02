package washbook.runner.read;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import washbook.runner.archive.Archive;
import washbook.runner.archive.Part;
import washbook.runner.file.UnusableFileException;
import washbook.runner.markup.XmlScanner;
import washbook.runner.markup.XmlScanner.Token;
import washbook.runner.sheet.Texts;

/**
 * An open .xlsx or .xlsm: which part is what (ECMA-376-1:2016, 12.3). Transitional and Strict files
 * are told apart nowhere, as they differ in namespaces only.
 */
public final class XlsxPackage implements Closeable {
  /** A worksheet; chart and dialog sheets are left out. */
  public record Sheet(String name, Part part) {
    /** Written out: Java takes long over the first hash that it makes of a record itself. */
    @Override
    public int hashCode() {
      return name.hashCode();
    }
  }

  private static final byte[] SHEET_DATA = XmlScanner.ascii("sheetData");
  private static final byte[] COLUMN = XmlScanner.ascii("col");
  private static final byte[] FORMAT = XmlScanner.ascii("sheetFormatPr");
  private static final Set<String> CONTROLS = Set.of("ctrlProp", "control", "oleObject", "package");

  private final Archive archive;
  private final List<Sheet> sheets = new ArrayList<>();
  private final Part workbook;
  private final Relations relations;
  private boolean date1904;

  private XlsxPackage(Archive archive) throws IOException {
    this.archive = archive;
    Map<String, String> types = contentTypes(archive);
    refuseSigned(types);
    workbook =
        new Relations(archive, "")
            .partByKind("officeDocument")
            .orElseThrow(() -> UnusableFileException.of("none.workbook"));
    String type = types.getOrDefault("/" + workbook.name().toLowerCase(Locale.ROOT), "");
    if (type.contains("sheet.binary") || workbook.name().endsWith(".bin")) {
      throw UnusableFileException.of("binary");
    }
    if (!type.isEmpty() && !type.contains("spreadsheetml") && !type.contains("ms-excel")) {
      throw UnusableFileException.of("none.workbook");
    }
    relations = new Relations(archive, workbook.name());
    readWorkbook();
  }

  public static XlsxPackage open(Path file) throws IOException {
    Archive archive = Archive.open(file);
    try {
      return new XlsxPackage(archive);
    } catch (IOException | RuntimeException e) {
      archive.close();
      throw e;
    }
  }

  private static Map<String, String> contentTypes(Archive archive) throws IOException {
    Part part =
        archive
            .find("[Content_Types].xml")
            .orElseThrow(() -> UnusableFileException.of("none.workbook"));
    Map<String, String> types = new HashMap<>();
    SmallXml.read(
        archive,
        part,
        at -> {
          if (at.name().equals("Override")) {
            types.put(
                at.attribute("PartName").toLowerCase(Locale.ROOT), at.attribute("ContentType"));
          }
        });
    return types;
  }

  private void refuseSigned(Map<String, String> types) throws IOException {
    boolean signed =
        types.values().stream().anyMatch(type -> type.contains("digital-signature"))
            || archive.parts().stream()
                .anyMatch(
                    part -> part.name().toLowerCase(Locale.ROOT).startsWith("_xmlsignatures/"));
    if (signed) {
      throw UnusableFileException.of("signed");
    }
  }

  private void readWorkbook() throws IOException {
    boolean[] first = {true};
    SmallXml.read(
        archive,
        workbook,
        at -> {
          if (at.name().equals("workbookPr")) {
            date1904 = at.isTrue("date1904");
          } else if (at.name().equals("sheet")) {
            addSheet(at.attribute("name"), at.attribute("id"), first[0]);
            first[0] = false;
          }
        });
    if (sheets.isEmpty()) {
      throw UnusableFileException.of("none.sheet");
    }
  }

  private void addSheet(String name, String id, boolean first) throws IOException {
    Relations.Relation relation =
        relations.byId(id).orElseThrow(() -> UnusableFileException.damaged(null, "how.sheetPart"));
    String kind = relation.kind();
    if (kind.equals("worksheet")) {
      Part part =
          relations
              .part(relation)
              .orElseThrow(() -> UnusableFileException.of("sheet.noPart", name));
      sheets.add(new Sheet(name, part));
    } else if (first && kind.endsWith("acrosheet")) {
      throw UnusableFileException.of("macroSheet");
    }
  }

  public Archive archive() {
    return archive;
  }

  /** The worksheets in their order, hidden ones too. */
  public List<Sheet> sheets() {
    return List.copyOf(sheets);
  }

  /** The part that lists the sheets. */
  public Part workbook() {
    return workbook;
  }

  public boolean date1904() {
    return date1904;
  }

  public Optional<Part> styles() {
    return relations.partByKind("styles");
  }

  public Optional<Part> calculationChain() {
    return relations.partByKind("calcChain");
  }

  /** The part with a sheet's charts and pictures. */
  public Optional<Part> drawing(Part sheet) throws IOException {
    return new Relations(archive, sheet.name()).partByKind("drawing");
  }

  /** The parts with a sheet's tables. */
  public List<Part> tables(Part sheet) throws IOException {
    Relations ofSheet = new Relations(archive, sheet.name());
    return ofSheet.all().stream()
        .filter(relation -> relation.kind().equals("table"))
        .flatMap(relation -> ofSheet.part(relation).stream())
        .toList();
  }

  /** Whether buttons or embedded objects stand on a sheet, whose places are stated elsewhere. */
  public boolean hasControls(Part sheet) throws IOException {
    return new Relations(archive, sheet.name())
        .all().stream().anyMatch(relation -> CONTROLS.contains(relation.kind()));
  }

  /** The widths that a sheet states, which stand before its cells. */
  public XlsxSizes sizes(Part sheet) throws IOException {
    XlsxSizes sizes = new XlsxSizes();
    try (InputStream in = archive.read(sheet)) {
      XmlScanner scanner = new XmlScanner(in, sheet.name(), sheet.size());
      Token token = scanner.next();
      while (token != Token.DONE && !(token != Token.TEXT && scanner.is(SHEET_DATA))) {
        if ((token == Token.EMPTY || token == Token.START) && scanner.is(COLUMN)) {
          sizes.readColumns(scanner);
        } else if ((token == Token.EMPTY || token == Token.START) && scanner.is(FORMAT)) {
          sizes.readUsual(scanner);
        }
        token = scanner.next();
      }
    }
    return sizes;
  }

  /** Where the drawings of a sheet stand; none where their part cannot be read. */
  public List<XlsxAnchor> anchors(Part sheet) throws IOException {
    Optional<Part> drawing = drawing(sheet);
    List<XlsxAnchor> anchors = new ArrayList<>();
    if (drawing.isEmpty()) {
      return anchors;
    }
    try (InputStream in = archive.read(drawing.get())) {
      XmlScanner scanner = new XmlScanner(in, drawing.get().name(), drawing.get().size());
      for (Token token = scanner.next(); token != Token.DONE; token = scanner.next()) {
        if (XlsxAnchor.isAnchor(scanner, token)) {
          anchors.add(XlsxAnchor.read(scanner, XmlScanner::tokenStart));
        }
      }
    } catch (UnusableFileException unreadable) {
      anchors.clear();
    }
    return anchors;
  }

  /** By what the workbook's relationships name a part. */
  public Optional<String> relationId(Part part) {
    return relations.all().stream()
        .filter(relation -> relations.part(relation).filter(part::equals).isPresent())
        .map(Relations.Relation::id)
        .findFirst();
  }

  /** Whether one of the workbook's relationships has that name. */
  public boolean hasRelation(String id) {
    return relations.byId(id).isPresent();
  }

  /** Where the workbook's relationships are written down. */
  public Optional<Part> workbookRelations() {
    int slash = workbook.name().lastIndexOf('/');
    return archive.find(
        workbook.name().substring(0, slash + 1)
            + "_rels/"
            + workbook.name().substring(slash + 1)
            + ".rels");
  }

  public Optional<Part> contentTypes() {
    return archive.find("[Content_Types].xml");
  }

  /** All shared strings, numbered as in the file. */
  public Texts sharedStrings() throws IOException {
    Texts texts = new Texts();
    Optional<Part> part = relations.partByKind("sharedStrings");
    if (part.isPresent()) {
      XlsxStrings.read(archive, part.get(), texts);
    }
    return texts;
  }

  @Override
  public void close() throws IOException {
    archive.close();
  }
}
