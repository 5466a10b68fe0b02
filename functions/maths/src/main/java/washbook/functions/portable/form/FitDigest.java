package washbook.functions.portable.form;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;

/**
 * Tells whether a fit would come out as it did before: its digest covers every compiled class, on
 * which the fit depends, and what the fit wrote.
 */
final class FitDigest {
  private final Path classes;
  private final Path fitted;

  /**
   * @param classes folder of all compiled classes
   * @param fitted the file that the fit writes
   */
  FitDigest(Path classes, Path fitted) {
    this.classes = classes;
    this.fitted = fitted;
  }

  /** Whether classes and fitted formulas are those that {@link #keep} noted. */
  boolean isKeptIn(Path note) throws IOException {
    return Files.exists(fitted) && Files.exists(note) && Files.readString(note).equals(text());
  }

  void keep(Path note) throws IOException {
    Files.writeString(note, text());
  }

  private String text() throws IOException {
    MessageDigest digest = sha256();
    try (Stream<Path> files = Files.walk(classes)) {
      List<Path> inputs = files.filter(f -> f.toString().endsWith(".class")).sorted().toList();
      for (Path input : inputs) {
        add(digest, input);
      }
    }
    add(digest, fitted);
    return HexFormat.of().formatHex(digest.digest()) + "\n";
  }

  private void add(MessageDigest digest, Path file) throws IOException {
    String name = classes.relativize(file) + "\n" + Files.size(file) + "\n";
    digest.update(name.getBytes(StandardCharsets.UTF_8));
    digest.update(Files.readAllBytes(file));
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
