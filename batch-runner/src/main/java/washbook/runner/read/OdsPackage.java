package washbook.runner.read;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.Closeable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import washbook.runner.archive.Archive;
import washbook.runner.archive.Part;
import washbook.runner.file.UnusableFileException;
import washbook.runner.markup.XmlScanner;

/**
 * An OpenDocument spreadsheet (OASIS OpenDocument 1.3, part 2 for the package and part 3 for its
 * content) open for reading. Refused: encrypted and signed packages and other kinds of documents.
 */
public final class OdsPackage implements Closeable {
  private static final String KIND = "application/vnd.oasis.opendocument.spreadsheet";
  private static final int LARGEST_MANIFEST = 8 << 20;

  private static final String[][] NAMESPACES = {
    {"office", "urn:oasis:names:tc:opendocument:xmlns:office:1.0"},
    {"table", "urn:oasis:names:tc:opendocument:xmlns:table:1.0"},
    {"text", "urn:oasis:names:tc:opendocument:xmlns:text:1.0"},
    {"style", "urn:oasis:names:tc:opendocument:xmlns:style:1.0"},
    {"number", "urn:oasis:names:tc:opendocument:xmlns:datastyle:1.0"},
    {"fo", "urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0"},
    {"of", "urn:oasis:names:tc:opendocument:xmlns:of:1.2"},
  };

  private final Archive archive;
  private final Part content;

  private OdsPackage(Archive archive) throws IOException {
    this.archive = archive;
    if (archive.find("META-INF/documentsignatures.xml").isPresent()) {
      throw UnusableFileException.of("signed");
    }
    Optional<Part> manifest = archive.find("META-INF/manifest.xml");
    boolean encrypted =
        archive.find("encrypted-package").isPresent()
            || manifest.isPresent() && text(manifest.get()).contains("encryption-data");
    if (encrypted) {
      throw UnusableFileException.of("encrypted");
    }
    Optional<Part> kind = archive.find("mimetype");
    if (kind.isPresent() && !text(kind.get()).startsWith(KIND)) {
      throw UnusableFileException.of("none.ods");
    }
    content =
        archive
            .find("content.xml")
            .orElseThrow(() -> UnusableFileException.damaged(null, "how.content"));
  }

  public static OdsPackage open(Path file) throws IOException {
    Archive archive = Archive.open(file);
    try {
      return new OdsPackage(archive);
    } catch (IOException | RuntimeException e) {
      archive.close();
      throw e;
    }
  }

  private String text(Part part) throws IOException {
    return new String(archive.bytes(part, LARGEST_MANIFEST), StandardCharsets.UTF_8);
  }

  public Archive archive() {
    return archive;
  }

  public Part content() {
    return content;
  }

  /**
   * Checks that the root element, which must be the current token, gives the usual prefixes their
   * usual meaning: names are compared with their prefixes.
   *
   * @return the declarations of those prefixes that the root leaves out, as attributes
   */
  public static String missingNamespaces(XmlScanner root) throws UnusableFileException {
    StringBuilder missing = new StringBuilder();
    for (String[] namespace : NAMESPACES) {
      if (!root.attribute(ascii("xmlns:" + namespace[0]))) {
        refuseOtherPrefix(root, namespace[1]);
        missing.append(" xmlns:").append(namespace[0]).append("=\"");
        missing.append(namespace[1]).append('"');
      } else if (!root.value().equals(namespace[1])) {
        throw UnusableFileException.of("ods.prefix", namespace[0]);
      }
    }
    return missing.toString();
  }

  /** A namespace that goes by another prefix only would make a log look blank. */
  private static void refuseOtherPrefix(XmlScanner root, String namespace)
      throws UnusableFileException {
    root.rewindAttributes();
    while (root.nextAttribute()) {
      if (root.value().equals(namespace)) {
        throw UnusableFileException.of("ods.otherPrefix");
      }
    }
  }

  @Override
  public void close() throws IOException {
    archive.close();
  }
}
