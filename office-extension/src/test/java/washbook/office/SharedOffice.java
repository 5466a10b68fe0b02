package washbook.office;

import java.nio.file.Path;
import washbook.office.testing.Office;

/** One office with the packed extension for all tests of the module; it ends with the program. */
public final class SharedOffice {
  private static Office office;

  private SharedOffice() {}

  public static synchronized Office get() {
    if (office == null) {
      office = Office.with(extension());
      Runtime.getRuntime().addShutdownHook(new Thread(office::close));
    }
    return office;
  }

  /** The packed extension. */
  static Path extension() {
    String oxt = System.getProperty("washbook.oxt");
    if (oxt == null) {
      throw new IllegalStateException("washbook.oxt is not set; run mvn verify");
    }
    return Path.of(oxt);
  }
}
