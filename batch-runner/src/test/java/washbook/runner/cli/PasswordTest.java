package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Workbooks that a real office (LibreOffice 7.4) has saved with a password: "cellar". */
class PasswordTest {
  @TempDir private Path directory;

  @ParameterizedTest
  @ValueSource(strings = {"password.ods", "password.xlsx", "password.xls"})
  void areRefusedWithTheReasonAndLeftAsTheyAre(String name) throws Exception {
    Path file = directory.resolve(name);
    try (InputStream in = PasswordTest.class.getResourceAsStream(name)) {
      Files.copy(in, file);
    }
    byte[] before = Files.readAllBytes(file);
    Path out = directory.resolve("out");
    for (String[] line :
        new String[][] {
          {"fill", "--out", out.toString(), file.toString()},
          {"fill", "--in-place", file.toString()},
          {"explain", file.toString()},
          {"audit", file.toString()}
        }) {
      Cli cli = Cli.run(line);
      assertEquals(3, cli.code(), line[0]);
      assertTrue((cli.out() + cli.err()).contains("encrypted"), cli.out() + cli.err());
    }
    assertArrayEquals(before, Files.readAllBytes(file));
    assertTrue(Files.notExists(out.resolve(name)));
  }
}
