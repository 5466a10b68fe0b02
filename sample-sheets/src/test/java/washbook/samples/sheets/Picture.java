package washbook.samples.sheets;

import com.sun.star.awt.PosSize;
import com.sun.star.beans.PropertyValue;
import com.sun.star.frame.XComponentLoader;
import com.sun.star.frame.XController;
import com.sun.star.frame.XDispatchHelper;
import com.sun.star.frame.XDispatchProvider;
import com.sun.star.frame.XModel;
import com.sun.star.lang.DisposedException;
import com.sun.star.lang.XComponent;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.sheet.XSpreadsheetView;
import com.sun.star.uno.UnoRuntime;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.concurrent.TimeUnit;
import washbook.office.testing.Office;

/**
 * Takes README's pictures of Calc's own windows: a log before and after filling, and the dialog of
 * the menu. Writes down beside them what they were taken of. Needs a screen, which .ci/pictures
 * makes, and ImageMagick's import.
 */
public final class Picture {
  private static final String BEFORE = "samples/molasses-2-messy.xlsx";
  private static final String AFTER = "golden/molasses-2-messy.xlsx";
  private static final String SHEET = "winter";
  private static final String REPORT = "../batch-runner/src/main/resources/washbook/runner/report/";

  /** What the pictures show: when one of these changes they are to be taken again. */
  private static final List<String> SHOWN =
      List.of(
          BEFORE,
          AFTER,
          REPORT + "page.css",
          REPORT + "page.js",
          "../office-extension/src/main/java/washbook/office/dialog/FillDialog.java");

  private static final int WIDTH = 1500;
  private static final int HEIGHT = 860;
  private static final long DRAWN_SECONDS = 12;

  private Picture() {}

  /** Arguments: the folder of the sample sheets, the packed extension, where to put the windows. */
  public static void main(String[] arguments) throws Exception {
    Path folder = Path.of(arguments[0]);
    Path windows = Files.createDirectories(Path.of(arguments[2]));
    Path profile = Office.freshProfile();
    try (Office first = Office.on(profile)) {
      first.extensions().add(Path.of(arguments[1]));
    }
    try (Office office = Office.withWindows(profile)) {
      for (String file : List.of(BEFORE, AFTER)) {
        open(office, folder.resolve(file));
        shoot(windows.resolve(file.substring(0, file.indexOf('/')) + ".png"));
      }
      XController window = open(office, folder.resolve(BEFORE));
      // A dialog that nobody answers holds the thread that asked for it, until the office ends.
      Thread command = new Thread(() -> fill(office, window));
      command.setDaemon(true);
      command.start();
      shoot(windows.resolve("dialog.png"));
    }
    Files.writeString(folder.resolve("pictures.source.txt"), source(folder));
  }

  private static XController open(Office office, Path file) throws com.sun.star.uno.Exception {
    XComponentLoader loader = office.service("com.sun.star.frame.Desktop", XComponentLoader.class);
    XComponent book =
        loader.loadComponentFromURL(
            file.toAbsolutePath().toUri().toString(), "_blank", 0, new PropertyValue[0]);
    XController window = UnoRuntime.queryInterface(XModel.class, book).getCurrentController();
    Object sheet =
        UnoRuntime.queryInterface(XSpreadsheetDocument.class, book).getSheets().getByName(SHEET);
    UnoRuntime.queryInterface(XSpreadsheetView.class, window)
        .setActiveSheet(UnoRuntime.queryInterface(XSpreadsheet.class, sheet));
    window.getFrame().getContainerWindow().setPosSize(0, 0, WIDTH, HEIGHT, PosSize.POSSIZE);
    return window;
  }

  private static void fill(Office office, XController window) {
    XDispatchProvider frame = UnoRuntime.queryInterface(XDispatchProvider.class, window.getFrame());
    try {
      office
          .service("com.sun.star.frame.DispatchHelper", XDispatchHelper.class)
          .executeDispatch(frame, "washbook.office:fill", "_self", 0, new PropertyValue[0]);
    } catch (DisposedException gone) {
      // The office ended with the dialog open, as it should.
    }
  }

  /** A window says nothing when it is drawn: so it is given its time. */
  private static void shoot(Path picture) throws IOException, InterruptedException {
    TimeUnit.SECONDS.sleep(DRAWN_SECONDS);
    Process process =
        new ProcessBuilder("import", "-window", "root", picture.toString()).inheritIO().start();
    if (process.waitFor() != 0) {
      throw new IOException("no picture of the window was taken");
    }
  }

  /** What the pictures show, with a digest of each. */
  static String source(Path folder) throws IOException {
    StringBuilder text = new StringBuilder("SHA-256 of what README's pictures show:\n");
    for (String file : SHOWN) {
      text.append(digest(folder.resolve(file))).append("  ").append(file).append("\n");
    }
    return text.toString();
  }

  private static String digest(Path file) throws IOException {
    try {
      byte[] sum = MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
      return HexFormat.of().formatHex(sum);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
