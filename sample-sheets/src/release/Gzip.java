import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.Deflater;
import java.util.zip.GZIPOutputStream;

/** Replaces each file by its compressed form, as {@code gzip -9n} does: pages of a Debian package. */
final class Gzip {
  /** RFC 1952, section 2.3.1: XFL, 2 for the slowest algorithm; OS, 3 for Unix. */
  private static final byte[] HEAD = {0x1f, (byte) 0x8b, 8, 0, 0, 0, 0, 0, 2, 3};

  private Gzip() {}

  public static void main(String[] files) throws IOException {
    for (String name : files) {
      Path plain = Path.of(name);
      Path packed = Path.of(name + ".gz");
      try (OutputStream out = Files.newOutputStream(packed);
          OutputStream gzip = new Packed(out)) {
        Files.copy(plain, gzip);
      }
      byte[] content = Files.readAllBytes(packed);
      System.arraycopy(HEAD, 0, content, 0, HEAD.length);
      Files.write(packed, content);
      Files.delete(plain);
    }
  }

  private static final class Packed extends GZIPOutputStream {
    Packed(OutputStream out) throws IOException {
      super(out);
      def.setLevel(Deflater.BEST_COMPRESSION);
    }
  }
}
