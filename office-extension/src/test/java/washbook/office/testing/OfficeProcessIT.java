package washbook.office.testing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Tests go on when an office has ended, and not after the longest time that it may take. */
class OfficeProcessIT {
  @Test
  void anOfficeThatHasEndedIsSeenToHaveEnded() {
    OfficeProcess office = OfficeProcess.start(List.of("--version"), Map.of());
    try {
      assertTrue(office.endsWithin(120));
      assertEquals(List.of(), office.alive());
    } finally {
      office.kill();
    }
  }
}
