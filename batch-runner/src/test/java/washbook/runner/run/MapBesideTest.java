package washbook.runner.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.runner.ask.MapBeside;
import washbook.runner.file.UnusableFileException;

/** A map beside a log is used without being named, and a log is due again when it changes. */
class MapBesideTest {
  @TempDir Path folder;
  private Path log;

  @BeforeEach
  void aLog() throws Exception {
    log = folder.resolve("Plum 3.csv");
    Files.writeString(log, "date,SG\n2025-10-01,1.085\n");
  }

  @Test
  void withoutAMapNothingIsSaid() throws Exception {
    MapBeside found = MapBeside.of(log);
    assertNull(found.file());
    assertTrue(found.map().tables().isEmpty());
  }

  @Test
  void theLogsOwnMapGoesBeforeThatOfItsFolder() throws Exception {
    Path ofFolder = Files.writeString(folder.resolve("washbook.map"), "temperature = 25 C\n");
    assertEquals(ofFolder, MapBeside.of(log).file());
    Path own = Files.writeString(folder.resolve("Plum 3.map"), "temperature = 20 C\n");
    MapBeside found = MapBeside.of(log);
    assertEquals(own, found.file());
    assertEquals(20, found.map().tables().get(0).temperatureC());
  }

  /** What the person said of the log is not passed over. */
  @Test
  void aMapThatCannotBeReadRefusesTheLogWithItsLine() throws Exception {
    Files.writeString(folder.resolve("Plum 3.map"), "temperature = 20 C\nwarm\n");
    UnusableFileException unusable =
        assertThrows(UnusableFileException.class, () -> MapBeside.of(log));
    assertTrue(unusable.getMessage().startsWith("The map 'Plum 3.map' beside it: "));
    assertTrue(unusable.getMessage().contains("2"), unusable.getMessage());
  }

  @Test
  void aLogIsDueAgainWhenAMapIsPutBesideItOrTakenAway() throws Exception {
    FileStamp.WithMap without = FileStamp.WithMap.of(log);
    assertEquals(without, FileStamp.WithMap.of(log));
    Path map = Files.writeString(folder.resolve("Plum 3.map"), "temperature = 20 C\n");
    FileStamp.WithMap with = FileStamp.WithMap.of(log);
    assertNotEquals(without, with);
    Files.writeString(map, "temperature = 20.5 C\n");
    assertNotEquals(with, FileStamp.WithMap.of(log));
    Files.delete(map);
    assertEquals(without, FileStamp.WithMap.of(log));
  }
}
