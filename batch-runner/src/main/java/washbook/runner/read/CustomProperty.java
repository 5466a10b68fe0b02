package washbook.runner.read;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import washbook.runner.archive.Archive;
import washbook.runner.archive.Part;
import washbook.runner.file.ReadFile;
import washbook.runner.file.UnusableFileException;

/**
 * Custom properties of a workbook: the part of the relationship {@code custom-properties}
 * (ECMA-376-1:2016, 22.3), and {@code meta:user-defined} of an OpenDocument (OpenDocument 1.3 part
 * 3, 4.3.3).
 */
public final class CustomProperty {
  private static final int LARGEST_MANIFEST = 8 << 20;

  private static final Pattern ESCAPED = Pattern.compile("_x([0-9A-Fa-f]{4})_");

  private CustomProperty() {}

  /**
   * The text of the property of that name; empty where the file has none, is of a kind without
   * properties, or is encrypted.
   */
  public static Optional<String> of(Path file, String name) throws IOException {
    if (!isPackage(file)) {
      return Optional.empty();
    }
    try (Archive archive = Archive.open(file)) {
      boolean openDocument = archive.find("mimetype").isPresent();
      Optional<Part> part =
          openDocument
              ? archive.find("meta.xml")
              : new Relations(archive, "").partByKind("custom-properties");
      if (part.isEmpty() || isEncrypted(archive)) {
        return Optional.empty();
      }
      Found found = new Found(openDocument ? "user-defined" : "property", name);
      try {
        SmallXml.read(archive, part.get(), found);
      } catch (UnusableFileException damaged) {
        // Its sheets may be whole: a property that nobody can read is none.
        return Optional.empty();
      }
      return Optional.ofNullable(found.text).map(CustomProperty::decoded);
    }
  }

  /** With the characters that are written as {@code _xHHHH_} (ECMA-376-1:2016, 22.4.2.4). */
  private static String decoded(String text) {
    return ESCAPED
        .matcher(text)
        .replaceAll(
            found ->
                Matcher.quoteReplacement(
                    String.valueOf((char) Integer.parseInt(found.group(1), 16))));
  }

  private static boolean isPackage(Path file) throws IOException {
    try (InputStream in = ReadFile.stream(file)) {
      byte[] start = in.readNBytes(4);
      return start.length == 4 && start[0] == 'P' && start[1] == 'K' && start[2] == 3;
    }
  }

  private static boolean isEncrypted(Archive archive) throws IOException {
    Optional<Part> manifest = archive.find("META-INF/manifest.xml");
    return manifest.isPresent()
        && new String(archive.bytes(manifest.get(), LARGEST_MANIFEST), StandardCharsets.UTF_8)
            .contains("encryption-data");
  }

  /** Keeps the characters inside the first element of that name that has the property's name. */
  private static final class Found implements SmallXml.Handler {
    private final String element;
    private final String property;
    private final StringBuilder characters = new StringBuilder();
    private boolean inside;
    private String text;

    Found(String element, String property) {
      this.element = element;
      this.property = property;
    }

    @Override
    public void start(SmallXml.Element at) throws IOException {
      inside |=
          text == null
              && at.name().equals(element)
              && at.attribute("name").equalsIgnoreCase(property);
    }

    @Override
    public boolean takesText() {
      return inside;
    }

    @Override
    public void text(String more) {
      characters.append(more);
    }

    @Override
    public void end(String ended) {
      if (inside && ended.equals(element)) {
        inside = false;
        text = characters.toString();
      }
    }
  }
}
