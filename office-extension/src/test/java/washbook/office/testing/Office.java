package washbook.office.testing;

import com.sun.star.awt.XCallback;
import com.sun.star.awt.XRequestCallback;
import com.sun.star.bridge.UnoUrlResolver;
import com.sun.star.bridge.XUnoUrlResolver;
import com.sun.star.comp.helper.Bootstrap;
import com.sun.star.connection.NoConnectException;
import com.sun.star.deployment.ExtensionManager;
import com.sun.star.frame.XDesktop;
import com.sun.star.lang.DisposedException;
import com.sun.star.lib.uno.helper.ComponentBase;
import com.sun.star.uno.Any;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.uno.XComponentContext;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;

/**
 * A real office with a profile of its own. Nothing of it outlives the test: the profile is deleted
 * and the process ended on {@link #close}, and also when the test program fails or is killed.
 */
public final class Office implements AutoCloseable {
  private static final Map<String, String> DIALOGS = Map.of("SAL_USE_VCLPLUGIN", "svp");

  private final Path profile;
  private final OfficeProcess process;
  private final XComponentContext context;
  private final boolean keepProfile;

  private Office(Path profile, boolean keepProfile, boolean headless) {
    this(profile, keepProfile, headless, Map.of());
  }

  private Office(
      Path profile, boolean keepProfile, boolean headless, Map<String, String> environment) {
    this.profile = profile;
    this.keepProfile = keepProfile;
    int port = freePort();
    List<String> arguments =
        new ArrayList<>(
            List.of(
                "--norestore",
                "--nologo",
                "--nodefault",
                "--nolockcheck",
                "-env:UserInstallation=" + profile.toUri(),
                "--accept=socket,host=127.0.0.1,port=" + port + ";urp;"));
    if (headless) {
      arguments.add("--headless");
    }
    process = OfficeProcess.start(arguments, environment);
    context = connect(port);
  }

  /** An office with a fresh profile and nothing installed in it. */
  public static Office plain() {
    return new Office(freshProfile(), false, true);
  }

  /** An office with a fresh profile and the extension installed by the extension manager. */
  public static Office with(Path extension) {
    return with(extension, "");
  }

  /** The same, with options for the Java machine in it, such as a user can set. */
  public static Office with(Path extension, String javaOptions) {
    Map<String, String> environment =
        javaOptions.isEmpty() ? Map.of() : Map.of("JAVA_TOOL_OPTIONS", javaOptions);
    return new Office(profileWith(extension), false, true, environment);
  }

  /** The same, with dialogs that wait for an answer: without a head each would be called off. */
  public static Office withDialogs(Path extension) {
    return new Office(profileWith(extension), false, false, DIALOGS);
  }

  /** The same on a profile that the caller keeps. */
  public static Office onWithDialogs(Path profile) {
    return new Office(profile, true, false, DIALOGS);
  }

  private static Path profileWith(Path extension) {
    Path profile = freshProfile();
    try (Office first = new Office(profile, true, true)) {
      first.extensions().add(extension);
    }
    return profile;
  }

  /** An office on a profile that the caller keeps. */
  public static Office on(Path profile) {
    return new Office(profile, true, true);
  }

  /** An office that draws its windows on the display that DISPLAY names. */
  public static Office withWindows(Path profile) {
    return new Office(profile, true, false);
  }

  public static Path freshProfile() {
    try {
      return Files.createTempDirectory("washbook-office-");
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  public XComponentContext context() {
    return context;
  }

  /** A service of the office, asked for its interface. */
  public <T> T service(String name, Class<T> type) {
    try {
      Object made = context.getServiceManager().createInstanceWithContext(name, context);
      T found = UnoRuntime.queryInterface(type, made);
      if (found == null) {
        throw new IllegalStateException(name + " has no " + type.getSimpleName());
      }
      return found;
    } catch (com.sun.star.uno.Exception e) {
      throw new IllegalStateException(name, e);
    }
  }

  public Extensions extensions() {
    return new Extensions(context, ExtensionManager.get(context));
  }

  /** A new spreadsheet document, not shown. */
  public Book newBook() {
    return Book.load(this, "private:factory/scalc", true);
  }

  /** A new spreadsheet document in a window. */
  public Book visibleBook() {
    return Book.load(this, "private:factory/scalc", false);
  }

  public Book open(Path file) {
    return Book.load(this, file.toUri().toString(), true);
  }

  /**
   * Runs calls to the office on its main thread, as commands of a user do; otherwise they run on a
   * thread that serves the connection.
   */
  public void onMainThread(Runnable calls) {
    CompletableFuture<Void> end = new CompletableFuture<>();
    service("com.sun.star.awt.AsyncCallback", XRequestCallback.class)
        .addCallback(new Callback(calls, end), Any.VOID);
    end.join();
  }

  private static final class Callback extends ComponentBase implements XCallback {
    private final Runnable calls;
    private final CompletableFuture<Void> end;

    Callback(Runnable calls, CompletableFuture<Void> end) {
      this.calls = calls;
      this.end = end;
    }

    @Override
    public void notify(Object nothing) {
      try {
        calls.run();
        end.complete(null);
      } catch (RuntimeException e) {
        end.completeExceptionally(e);
      }
    }
  }

  /** The processes of this office that run now. */
  public List<ProcessHandle> processes() {
    return process.alive();
  }

  @Override
  public void close() {
    try {
      UnoRuntime.queryInterface(XDesktop.class, desktop()).terminate();
    } catch (DisposedException gone) {
      // It ends while it answers.
    }
    process.endsWithin(20);
    process.kill();
    if (!keepProfile) {
      delete(profile);
    }
  }

  XDesktop desktop() {
    return service("com.sun.star.frame.Desktop", XDesktop.class);
  }

  private XComponentContext connect(int port) {
    String url = "uno:socket,host=127.0.0.1,port=" + port + ";urp;StarOffice.ComponentContext";
    try {
      XUnoUrlResolver resolver =
          UnoUrlResolver.create(Bootstrap.createInitialComponentContext(null));
      for (int tries = 0; tries < 6000; tries++) {
        try {
          return UnoRuntime.queryInterface(XComponentContext.class, resolver.resolve(url));
        } catch (NoConnectException notYet) {
          OfficeProcess.pause();
        }
      }
    } catch (Exception e) {
      process.kill();
      throw new IllegalStateException("no connection to the office", e);
    }
    process.kill();
    throw new IllegalStateException("the office did not answer within five minutes");
  }

  private static int freePort() {
    try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      return socket.getLocalPort();
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Deletes a directory with everything in it. */
  public static void delete(Path directory) {
    try (var paths = Files.walk(directory)) {
      for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(path);
      }
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }
}
