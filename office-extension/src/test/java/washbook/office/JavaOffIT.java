package washbook.office;

import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.office.testing.Book;
import washbook.office.testing.Dialogs;
import washbook.office.testing.JavaSettings;
import washbook.office.testing.Office;

/** Where Java is switched off, the menu says so instead of doing nothing. */
class JavaOffIT {
  @ParameterizedTest
  @ValueSource(strings = {"Fill", "Help"})
  void theMenuSaysHowToSwitchItOn(String macro) throws Exception {
    Path profile = Office.freshProfile();
    try {
      try (Office office = Office.on(profile)) {
        office.extensions().add(SharedOffice.extension());
      }
      JavaSettings.switchOff(profile);
      try (Office office = Office.onWithDialogs(profile);
          Book book = office.visibleBook()) {
        Dialogs dialogs = new Dialogs(office);
        String url =
            "vnd.sun.star.script:Washbook.Start.Start"
                + macro
                + "?language=Basic&location=application";
        CompletableFuture<Void> command =
            CompletableFuture.runAsync(() -> office.onMainThread(() -> book.dispatch(url)));
        // The office asks first.
        dialogs.end("Do you want to enable the use of a JRE now?", "Enable JRE?", "No");
        dialogs.end("Tools > Options > LibreOffice > Advanced", "Washbook", "OK");
        command.get(1, TimeUnit.MINUTES);
      }
    } finally {
      Office.delete(profile);
    }
  }
}
