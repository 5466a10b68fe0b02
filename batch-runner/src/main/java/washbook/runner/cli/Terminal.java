package washbook.runner.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;

/** Standard output and error in an encoding that can hold our texts. */
final class Terminal {
  private Terminal() {}

  static PrintStream out() {
    return fit(System.out, FileDescriptor.out);
  }

  static PrintStream err() {
    return fit(System.err, FileDescriptor.err);
  }

  /** Without a locale Java falls back to ASCII and would print "?C" for degrees. */
  static Charset charset() {
    return isAscii() ? StandardCharsets.UTF_8 : Charset.defaultCharset();
  }

  private static PrintStream fit(PrintStream given, FileDescriptor target) {
    return isAscii() ? new PrintStream(new FileOutputStream(target), true, charset()) : given;
  }

  private static boolean isAscii() {
    return Charset.defaultCharset().equals(StandardCharsets.US_ASCII);
  }
}
