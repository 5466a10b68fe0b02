package washbook.runner.read;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import washbook.runner.RawXlsx;
import washbook.runner.TestColumn;
import washbook.runner.XlsxSamples;
import washbook.runner.write.XlsxWriter;

/** Damaged files are refused by an IOException; nothing else comes out of reader and writer. */
class XlsxFuzzTest {
  private static final int ROUNDS = 1500;

  @TempDir private Path folder;

  private int readable;

  private void tryOut(byte[] bytes, String what) throws IOException {
    Path file = Files.write(folder.resolve("fuzz.xlsx"), bytes);
    try {
      String sheet = new XlsxReader().read(file).get(0).name();
      readable++;
      new XlsxWriter()
          .write(
              file,
              TestColumn.on(sheet, TestColumn.of(5, 2, "Probe", 9, 3, Map.of(4, 1.5, 5, "x"))),
              folder.resolve("out.xlsx"));
    } catch (IOException e) {
      // refused, as it should be
    } catch (RuntimeException | Error e) {
      fail(what, e);
    }
  }

  private static void damage(byte[] bytes, Random random) {
    int flips = 1 + random.nextInt(4);
    for (int i = 0; i < flips; i++) {
      bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
    }
  }

  @Test
  void truncatedAndFlippedArchives() throws Exception {
    byte[] whole = Files.readAllBytes(XlsxSamples.log(folder.resolve("log.xlsx")));
    for (int seed = 0; seed < ROUNDS; seed++) {
      Random random = new Random(seed);
      byte[] bytes = whole.clone();
      if (seed % 3 == 0) {
        bytes = Arrays.copyOf(bytes, random.nextInt(bytes.length));
      } else if (seed % 3 == 1) {
        damage(bytes, random);
      } else {
        // The directory is where most decisions are made.
        int start = bytes.length - 900 + random.nextInt(880);
        bytes[start] = (byte) random.nextInt(256);
      }
      tryOut(bytes, "seed " + seed);
    }
    assertTrue(readable < ROUNDS);
  }

  @Test
  void flippedPartsInWholeArchives() throws Exception {
    String cells =
        "<dimension ref=\"A1:E9\"/><cols><col min=\"1\" max=\"9\" width=\"9\"/></cols><sheetData>"
            + "<row r=\"3\" spans=\"1:5\"><c r=\"A3\" t=\"s\"><v>0</v></c><c r=\"B3\" t='str'>"
            + "<f>A1</f><v>x&amp;</v></c></row><!-- --><row r=\"5\"><c r=\"A5\" s=\"1\"><v>1.5</v>"
            + "</c><c r=\"F5\"/></row><row/></sheetData><mergeCells><mergeCell ref=\"A1:B1\"/>"
            + "</mergeCells>";
    List<String> names =
        List.of(
            "xl/worksheets/sheet1.xml",
            "xl/sharedStrings.xml",
            "xl/workbook.xml",
            "xl/_rels/workbook.xml.rels",
            "[Content_Types].xml");
    for (int seed = 0; seed < ROUNDS; seed++) {
      Random random = new Random(seed);
      RawXlsx raw =
          RawXlsx.withSheet(cells)
              .part(
                  "xl/sharedStrings.xml", "<sst><si><t>SG</t></si><si><r><t>a</t></r></si></sst>");
      byte[] part = raw.bytes(names.get(seed % 2 == 0 ? 0 : random.nextInt(names.size())));
      damage(part, random);
      tryOut(Files.readAllBytes(raw.write(folder.resolve("raw.xlsx"))), "seed " + seed);
    }
    assertTrue(readable > ROUNDS / 10, "some damage leaves a workbook");
  }
}
