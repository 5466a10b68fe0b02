package washbook.office.help;

import com.sun.star.deployment.PackageInformationProvider;
import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.system.SystemShellExecuteException;
import com.sun.star.system.SystemShellExecuteFlags;
import com.sun.star.system.XSystemShellExecute;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.uno.XComponentContext;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import washbook.log.language.Language;

/** The page in one language, a file of the installed extension. */
public record HelpPage(Path file) {
  private static final String EXTENSION = "washbook.office";

  /** Empty where the extension's files are gone. */
  public static Optional<HelpPage> of(XComponentContext context, Language language) {
    String folder = PackageInformationProvider.get(context).getPackageLocation(EXTENSION);
    if (folder.isEmpty()) {
      return Optional.empty();
    }
    Path file = Path.of(URI.create(folder)).resolve(HelpFile.of(language));
    return Files.isRegularFile(file) ? Optional.of(new HelpPage(file)) : Optional.empty();
  }

  /** Hands the page to the system's browser; whether the system took it. */
  public boolean isTaken(XComponentContext context) {
    try {
      UnoRuntime.queryInterface(
              XSystemShellExecute.class,
              context
                  .getServiceManager()
                  .createInstanceWithContext("com.sun.star.system.SystemShellExecute", context))
          .execute(file.toUri().toString(), "", SystemShellExecuteFlags.URIS_ONLY);
      return true;
    } catch (SystemShellExecuteException | IllegalArgumentException noBrowser) {
      return false;
    } catch (com.sun.star.uno.Exception noService) {
      throw new IllegalStateException(noService);
    }
  }
}
