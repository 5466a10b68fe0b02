package washbook.runner.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import washbook.functions.portable.form.NotPortableException;
import washbook.runner.bench.Tool.Does;

/** Washbook and its peers, made ready to be run. */
final class Tools {
  private static final String THREADS = "2";
  private static final String LIBRARY = "exceljs@4.4.0";
  private static final Path NODE_FOLDER = Path.of("target", "bench-node").toAbsolutePath();
  private static final int USERMODEL_GIGABYTES = 12;
  private static final int STREAMING_MEGABYTES = 512;

  private final Path folder;
  private final long mostSeconds;
  private final String office;
  private final String noScript;

  /** Makes the class archive, installs the JavaScript library, and makes the office's profile. */
  Tools(Path folder, long mostSeconds) throws Exception {
    this.folder = folder;
    this.mostSeconds = mostSeconds;
    office = program("soffice");
    noScript = installScript();
    makeArchive(folder);
    warmOffice();
  }

  /** The starter makes its class archive at the first use, in the background. */
  static void makeArchive(Path folder) throws IOException, InterruptedException {
    Timed.run(folder, 60, List.of("bin/washbook", "calc", "ABV", "1.080", "1.010"));
    Path archive = folder.resolve("cache/washbook/classes.jsa");
    for (int waited = 0; !Files.exists(archive); waited++) {
      if (waited == 600) {
        throw new IOException("the starter makes no class archive");
      }
      Thread.sleep(100);
    }
  }

  private void warmOffice() throws IOException, InterruptedException {
    if (!office.isEmpty()) {
      Path one = Files.createDirectories(folder.resolve("warm"));
      Job first = Job.ofOne(one, "xlsx", 60);
      Timed.run(folder, mostSeconds, officeCommand(first, one.resolve("filled")));
    }
  }

  static String program(String name) {
    return Stream.of(System.getenv("PATH").split(":"))
        .map(where -> Path.of(where, name))
        .filter(Files::isExecutable)
        .map(Path::toString)
        .findFirst()
        .orElse("");
  }

  /** Gives why there is no library, or nothing. */
  private String installScript() throws IOException, InterruptedException, NotPortableException {
    if (program("node").isEmpty() || program("npm").isEmpty()) {
      return "no Node here";
    }
    Files.createDirectories(NODE_FOLDER);
    Files.writeString(NODE_FOLDER.resolve("package.json"), "{\"private\": true}");
    Files.writeString(NODE_FOLDER.resolve("maths.js"), ScriptMaths.module());
    Files.copy(
        Path.of("src/bench/js/exceljs-fill.js"),
        NODE_FOLDER.resolve("exceljs-fill.js"),
        StandardCopyOption.REPLACE_EXISTING);
    if (Files.isDirectory(NODE_FOLDER.resolve("node_modules/exceljs"))) {
      return "";
    }
    Process npm =
        new ProcessBuilder("npm", "install", "--no-audit", "--no-fund", "--ignore-scripts", LIBRARY)
            .directory(NODE_FOLDER.toFile())
            .inheritIO()
            .start();
    return npm.waitFor() == 0 ? "" : "npm could not install " + LIBRARY;
  }

  Tool washbook(Job job) {
    return new Tool(
        "Washbook",
        "bin/washbook fill, with its class archive; finds out what the columns are, keeps all else of"
            + " the file, reads its result back, forces it to the disk",
        Does.FILLS,
        "",
        results -> {
          List<String> command =
              new ArrayList<>(
                  List.of("bin/washbook", "fill", job.named(), "--out", results.toString()));
          if (!job.isOne()) {
            command.addAll(List.of("--threads", THREADS));
          }
          return command;
        });
  }

  Tool floor(Path filled) {
    return new Tool(
        "floor",
        "inflates and deflates Washbook's results at level 4, two threads for many files, and does"
            + " nothing else",
        Does.FILLS_NOTHING,
        "",
        results ->
            java(
                List.of(),
                Floor.class,
                THREADS,
                filled.toString(),
                Integer.toString(KnownColumns.DEFLATE_LEVEL)));
  }

  List<Tool> plainCommands() {
    return List.of(
        new Tool(
            "java -version", "", Does.FILLS_NOTHING, "", results -> List.of("java", "-version")),
        new Tool(
            "calc",
            "bin/washbook calc ABV 1.080 1.010",
            Does.FILLS_NOTHING,
            "",
            results -> List.of("bin/washbook", "calc", "ABV", "1.080", "1.010")));
  }

  /** The first is the usermodel, which a limit is about. */
  List<Tool> peers(Job job) {
    String noOds = job.kind().equals("ods") ? "does not read .ods" : "";
    return List.of(
        new Tool(
            "POI usermodel",
            "reads all of a workbook, Washbook's own code recognises and computes, POI writes;"
                + " level 4, two threads, -Xmx"
                + USERMODEL_GIGABYTES
                + "g",
            Does.FILLS,
            noOds,
            results ->
                java(
                    List.of("-Xmx" + USERMODEL_GIGABYTES + "g"),
                    UsermodelFill.class,
                    job,
                    results)),
        new Tool(
            "POI streaming",
            "XSSFReader with StAX, SXSSF into a new workbook; the columns are known beforehand, of the"
                + " formats only the dates' is kept, maths by Washbook's single functions; level 4, two"
                + " threads, -Xmx"
                + STREAMING_MEGABYTES
                + "m",
            Does.FILLS,
            noOds,
            results -> streaming(StreamingFill.class, job, results)),
        new Tool(
            "fastexcel",
            "its reader's stream of rows, its writer into a new workbook; otherwise as POI streaming",
            Does.FILLS,
            noOds,
            results -> streaming(FastexcelFill.class, job, results)),
        new Tool(
            "LibreOffice",
            "one office without a window, its profile made before; a UNO program in Java fetches the"
                + " known columns, computes by Washbook's single functions and puts the cells in; the"
                + " office loads and stores, at a level of its own",
            Does.FILLS,
            office.isEmpty() ? "no office here" : "",
            results -> officeCommand(job, results)),
        new Tool(
            LIBRARY + " under Node",
            "small logs as whole workbooks, those above 1 MB as streams of rows, as its streams lose words"
                + " of small ones; the columns are known beforehand, maths by Washbook's portable formulas"
                + " turned into JavaScript; level 4, two threads for many files",
            Does.FILLS_BY_PORTABLE_FORMULAS,
            noOds.isEmpty() ? noScript : noOds,
            results ->
                List.of(
                    "node",
                    NODE_FOLDER.resolve("exceljs-fill.js").toString(),
                    THREADS,
                    job.logs().toString(),
                    results.toString())));
  }

  private List<String> officeCommand(Job job, Path results) {
    return java(
        List.of(),
        OfficeFill.class,
        office,
        folder.resolve("office").toString(),
        job.logs().toString(),
        results.toString());
  }

  private List<String> streaming(Class<?> program, Job job, Path results) {
    return java(List.of("-Xmx" + STREAMING_MEGABYTES + "m"), program, job, results);
  }

  private List<String> java(List<String> options, Class<?> program, Job job, Path results) {
    return java(options, program, THREADS, job.logs().toString(), results.toString());
  }

  private List<String> java(List<String> options, Class<?> program, String... arguments) {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.add("-Djava.io.tmpdir=" + folder.resolve("temporary"));
    command.addAll(options);
    command.addAll(List.of("-cp", System.getProperty("java.class.path"), program.getName()));
    command.addAll(List.of(arguments));
    return command;
  }
}
