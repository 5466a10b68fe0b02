package washbook.runner.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;

/** The files of a folder, one after the other in so many threads. */
final class EachFile {
  /** What is done with a file; the target has its name in the other folder. */
  interface Work {
    void on(Path source, Path target) throws Exception;
  }

  private EachFile() {}

  static void in(Path sources, Path targets, int threads, Work work) throws Exception {
    Files.createDirectories(targets);
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try (Stream<Path> files = Files.list(sources)) {
      List<Future<Path>> done = new ArrayList<>();
      for (Path file : files.toList()) {
        Path target = targets.resolve(file.getFileName());
        done.add(
            pool.submit(
                () -> {
                  work.on(file, target);
                  return target;
                }));
      }
      for (Future<Path> one : done) {
        one.get();
      }
    } finally {
      pool.shutdown();
    }
  }
}
