package washbook.runner.bench;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Enumeration;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;

/** Inflates and deflates the results and does nothing else: less cannot be done with them. */
final class Floor {
  private Floor() {}

  /** Number of threads, folder of the results, level of deflate. */
  public static void main(String[] arguments) throws Exception {
    ExecutorService pool = Executors.newFixedThreadPool(Integer.parseInt(arguments[0]));
    try (Stream<Path> files = Files.list(Path.of(arguments[1]))) {
      int level = Integer.parseInt(arguments[2]);
      List<Future<Long>> done = new ArrayList<>();
      for (Path file : files.toList()) {
        done.add(pool.submit(() -> repack(file, level)));
      }
      long bytes = 0;
      for (Future<Long> one : done) {
        bytes += one.get();
      }
      System.out.println(bytes);
    } finally {
      pool.shutdown();
    }
  }

  private static long repack(Path file, int level) throws IOException {
    byte[] content = new byte[1 << 16];
    byte[] packed = new byte[1 << 16];
    long bytes = 0;
    Deflater deflater = new Deflater(level, true);
    try (ZipFile zip = new ZipFile(file.toFile())) {
      Enumeration<? extends ZipEntry> entries = zip.entries();
      while (entries.hasMoreElements()) {
        deflater.reset();
        try (InputStream in = zip.getInputStream(entries.nextElement())) {
          for (int got = in.read(content); got > 0; got = in.read(content)) {
            deflater.setInput(content, 0, got);
            while (!deflater.needsInput()) {
              bytes += deflater.deflate(packed);
            }
          }
        }
        deflater.finish();
        while (!deflater.finished()) {
          bytes += deflater.deflate(packed);
        }
      }
    } finally {
      deflater.end();
    }
    return bytes;
  }
}
