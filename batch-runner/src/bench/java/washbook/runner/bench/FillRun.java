package washbook.runner.bench;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import washbook.functions.log.FillOptions;
import washbook.functions.log.Filling;
import washbook.functions.log.Grid;
import washbook.functions.log.LogFiller;
import washbook.functions.log.LogMap;
import washbook.functions.log.LogReader;
import washbook.functions.log.SheetPatch;
import washbook.runner.read.XlsxReader;
import washbook.runner.write.XlsxWriter;

/**
 * Fills one workbook and prints what it took; then inflates and deflates the part it wrote and
 * prints what that takes. Runs in a process of its own so that its peak memory is its own.
 */
final class FillRun {
  private FillRun() {}

  /** Source file and target file. */
  public static void main(String[] arguments) throws IOException {
    Path source = Path.of(arguments[0]);
    Path target = Path.of(arguments[1]);
    long start = System.nanoTime();
    List<SheetPatch> patches = new ArrayList<>();
    for (Grid grid : new XlsxReader().read(source)) {
      print("readSeconds", seconds(start));
      print("readProcessorSeconds", processorSeconds());
      Filling filling =
          LogFiller.fill(grid, LogReader.understand(grid, LogMap.none()), FillOptions.usual());
      print("refused", filling.refusals().size());
      patches.add(filling.patch());
    }
    print("computedSeconds", seconds(start));
    print("computedProcessorSeconds", processorSeconds());
    new XlsxWriter().write(source, patches, target);
    print("fillSeconds", seconds(start));
    print("fillProcessorSeconds", processorSeconds());
    print("peakMegabytes", peakKilobytes() / 1024.0);

    double before = processorSeconds();
    long again = System.nanoTime();
    byte[] buffer = new byte[1 << 16];
    Deflater deflater = new Deflater(6, true);
    inflate(target, "xl/worksheets/sheet1.xml", buffer, deflater);
    deflater.end();
    print("floorProcessorSeconds", processorSeconds() - before);
    print("floorSeconds", seconds(again));
  }

  /** Inflates an entry and, if wanted, deflates its content again into nothing. */
  private static void inflate(Path file, String name, byte[] buffer, Deflater deflater)
      throws IOException {
    byte[] out = new byte[1 << 16];
    try (ZipFile zip = new ZipFile(file.toFile())) {
      ZipEntry entry = zip.getEntry(name);
      try (InputStream in = zip.getInputStream(entry)) {
        for (int got = in.read(buffer); got >= 0; got = in.read(buffer)) {
          if (deflater != null) {
            deflater.setInput(buffer, 0, got);
            while (!deflater.needsInput()) {
              deflater.deflate(out);
            }
          }
        }
      }
    }
    if (deflater != null) {
      deflater.finish();
      while (!deflater.finished()) {
        deflater.deflate(out);
      }
    }
  }

  /** What all threads of this process have used. */
  private static double processorSeconds() {
    return ProcessHandle.current().info().totalCpuDuration().orElseThrow().toMillis() / 1e3;
  }

  private static double seconds(long start) {
    return (System.nanoTime() - start) / 1e9;
  }

  private static void print(String name, double value) {
    System.out.println(name + "=" + value);
  }

  /** Peak resident memory of this process (proc(5), VmHWM). */
  private static double peakKilobytes() throws IOException {
    for (String line : Files.readAllLines(Path.of("/proc/self/status"))) {
      if (line.startsWith("VmHWM:")) {
        return Double.parseDouble(line.replaceAll("\\D", ""));
      }
    }
    throw new IOException("this system does not tell the peak memory");
  }
}
