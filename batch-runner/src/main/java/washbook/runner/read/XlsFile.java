package washbook.runner.read;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;
import org.apache.poi.poifs.filesystem.DirectoryNode;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import washbook.runner.file.ReadFile;
import washbook.runner.file.UnusableFileException;

/**
 * Opens Excel 97-2003 workbooks (BIFF8). Before the workbook itself is parsed the first records of
 * its stream tell what cannot be worked on ([MS-XLS] 2.1.7.20: a substream starts with BOF, and
 * FilePass stands among the global records when the file is encrypted).
 */
public final class XlsFile {
  private static final int BOF = 0x809;
  private static final int EOF = 0x0A;
  private static final int FILE_PASS = 0x2F;
  private static final int BIFF8 = 0x600;

  /** Larger ones would not fit the memory; the format itself holds 65536 rows a sheet. */
  private static final long LARGEST = 256L << 20;

  private XlsFile() {}

  /** What is done with an open workbook. */
  public interface Work<T> {
    T apply(HSSFWorkbook workbook) throws IOException;
  }

  /**
   * Opens the workbook, hands it to {@code work} and closes it. The file itself is never written.
   *
   * @throws UnusableFileException when the file is encrypted, signed, too old or damaged
   */
  public static <T> T with(Path file, Work<T> work) throws IOException {
    check(file);
    try (ReadFile open = ReadFile.open(file);
        POIFSFileSystem files = new POIFSFileSystem(open.channel().position(0), true, false)) {
      checkStreams(files.getRoot());
      byte[] stream = stream(files);
      byte[] whole = XlsMissingRecords.added(stream);
      return whole == stream ? apply(files, work) : apply(file, whole, work);
    } catch (UnusableFileException e) {
      throw e;
    } catch (IOException | RuntimeException | StackOverflowError e) {
      // POI reports damage by whatever its parsing stumbles over.
      throw UnusableFileException.from(e, "damaged.xls");
    }
  }

  private static <T> T apply(POIFSFileSystem files, Work<T> work) throws IOException {
    try (HSSFWorkbook workbook = new HSSFWorkbook(files.getRoot(), true)) {
      return work.apply(workbook);
    }
  }

  /** Works on a copy in memory whose workbook has another stream. */
  private static <T> T apply(Path file, byte[] stream, Work<T> work) throws IOException {
    try (InputStream in = ReadFile.stream(file);
        POIFSFileSystem copy = new POIFSFileSystem(in)) {
      String name =
          copy.getRoot().getEntryNames().stream()
              .filter(entry -> entry.equalsIgnoreCase("Workbook"))
              .findFirst()
              .orElseThrow();
      copy.createOrUpdateDocument(new ByteArrayInputStream(stream), name);
      return apply(copy, work);
    }
  }

  private static byte[] stream(POIFSFileSystem files) throws IOException {
    try (InputStream in = files.getRoot().createDocumentInputStream("Workbook")) {
      return in.readAllBytes();
    }
  }

  private static void check(Path path) throws IOException {
    try (ReadFile file = ReadFile.open(path)) {
      if (file.channel().size() > LARGEST) {
        throw UnusableFileException.of("xls.large");
      }
    }
    byte[] start;
    try (InputStream in = ReadFile.stream(path)) {
      start = in.readNBytes(8);
    }
    if (start.length >= 4 && start[0] == 'P' && start[1] == 'K') {
      throw UnusableFileException.of("xls.zip");
    }
    if (start.length >= 2 && start[0] == 9 && (start[1] & ~0xE) == 0) {
      throw UnusableFileException.of("xls.old");
    }
    if (start.length < 8 || (start[0] & 0xff) != 0xD0 || (start[1] & 0xff) != 0xCF) {
      throw UnusableFileException.of("none.xls");
    }
  }

  private static void checkStreams(DirectoryNode root) throws IOException {
    if (root.hasEntryCaseInsensitive("EncryptedPackage")) {
      throw UnusableFileException.of("encrypted.file");
    }
    if (root.hasEntryCaseInsensitive("_signatures")
        || root.hasEntryCaseInsensitive("_xmlsignatures")) {
      throw UnusableFileException.of("signed");
    }
    if (!root.hasEntryCaseInsensitive("Workbook")) {
      if (root.hasEntryCaseInsensitive("Book")) {
        throw UnusableFileException.of("xls.old");
      }
      throw UnusableFileException.of("none.book");
    }
    try (InputStream in = root.createDocumentInputStream("Workbook")) {
      checkGlobals(in);
    }
  }

  private static void checkGlobals(InputStream in) throws IOException {
    boolean first = true;
    while (true) {
      byte[] head = in.readNBytes(4);
      if (head.length < 4) {
        return;
      }
      int kind = head[0] & 0xff | (head[1] & 0xff) << 8;
      int length = head[2] & 0xff | (head[3] & 0xff) << 8;
      if (kind == FILE_PASS) {
        throw UnusableFileException.of("encrypted.file");
      }
      if (!first && kind == EOF) {
        return;
      }
      byte[] body = in.readNBytes(length);
      if (first && kind == BOF && body.length >= 2) {
        int version = body[0] & 0xff | (body[1] & 0xff) << 8;
        if (version < BIFF8) {
          throw UnusableFileException.of("xls.old");
        }
      }
      first = false;
    }
  }
}
