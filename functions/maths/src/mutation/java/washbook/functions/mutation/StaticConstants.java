package washbook.functions.mutation;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.platform.engine.discovery.DiscoverySelectors;
import org.junit.platform.launcher.LauncherDiscoveryRequest;
import org.junit.platform.launcher.core.LauncherDiscoveryRequestBuilder;
import org.junit.platform.launcher.core.LauncherFactory;
import org.junit.platform.launcher.listeners.SummaryGeneratingListener;
import org.pitest.classinfo.ClassByteArraySource;
import org.pitest.classinfo.ClassName;
import org.pitest.mutationtest.EngineArguments;
import org.pitest.mutationtest.engine.Mutater;
import org.pitest.mutationtest.engine.MutationDetails;
import org.pitest.mutationtest.engine.gregor.config.GregorEngineFactory;

/**
 * Changes one constant of a static initialiser at a time and sees whether a test fails. Those run
 * once in a Java machine, so that the mutation tool itself cannot change them; here every change
 * gets a class loader of its own. Ordinals of enums are passed over: nobody sees them.
 *
 * <p>Arguments: classes, then tests, each separated by commas.
 */
public final class StaticConstants {
  private static final String OURS = "washbook.";

  private final URL[] classPath;
  private final List<String> tests;

  private StaticConstants(URL[] classPath, List<String> tests) {
    this.classPath = classPath;
    this.tests = tests;
  }

  /** Loads our own classes again, one of them changed. */
  private static final class Changed extends URLClassLoader {
    private final String name;
    private final byte[] bytes;

    Changed(URL[] classPath, String name, byte[] bytes) {
      super(classPath, StaticConstants.class.getClassLoader());
      this.name = name;
      this.bytes = bytes;
    }

    @Override
    protected Class<?> loadClass(String wanted, boolean resolve) throws ClassNotFoundException {
      if (!wanted.startsWith(OURS)) {
        return super.loadClass(wanted, resolve);
      }
      synchronized (getClassLoadingLock(wanted)) {
        Class<?> loaded = findLoadedClass(wanted);
        if (loaded != null) {
          return loaded;
        }
        return wanted.equals(name)
            ? defineClass(wanted, bytes, 0, bytes.length)
            : findClass(wanted);
      }
    }
  }

  /** Ends with 1 where a test fails without any change. */
  public static void main(String[] arguments) throws Exception {
    List<URL> classPath = new ArrayList<>();
    for (String part : System.getProperty("java.class.path").split(File.pathSeparator)) {
      classPath.add(url(part));
    }
    StaticConstants here =
        new StaticConstants(classPath.toArray(URL[]::new), List.of(arguments[1].split(",")));
    if (here.fails("", new byte[0])) {
      System.out.println("A test fails without any change.");
      System.exit(1);
    }
    Count all = new Count();
    for (String name : arguments[0].split(",")) {
      here.change(name, all);
    }
    System.out.printf("%d of %d killed%n", all.killed, all.changed);
    System.exit(0);
  }

  private static URL url(String path) throws MalformedURLException {
    return Path.of(path).toUri().toURL();
  }

  private static final class Count {
    private int changed;
    private int killed;
  }

  private void change(String name, Count all) throws Exception {
    Mutater mutater =
        new GregorEngineFactory()
            .createEngine(EngineArguments.arguments().withMutators(List.of("INLINE_CONSTS")))
            .createMutator(bytes());
    boolean isEnum;
    try (Changed loader = new Changed(classPath, "", new byte[0])) {
      isEnum = Class.forName(name, false, loader).isEnum();
    }
    int ordinal = 0;
    for (MutationDetails change : mutater.findMutations(ClassName.fromString(name))) {
      if (!change.getMethod().equals("<clinit>")
          && !change.getMethod().startsWith("lambda$static$")) {
        continue;
      }
      if (isEnum && isOrdinal(change.getDescription(), ordinal)) {
        ordinal++;
        continue;
      }
      all.changed++;
      if (fails(name, mutater.getMutation(change.getId()).getBytes())) {
        all.killed++;
      } else {
        System.out.printf(
            "%s:%d %s%n", change.getFilename(), change.getLineNumber(), change.getDescription());
      }
    }
  }

  private static boolean isOrdinal(String description, int ordinal) {
    return description.startsWith("Substituted " + ordinal + " with ");
  }

  private ClassByteArraySource bytes() {
    ClassLoader plain = new URLClassLoader(classPath, null);
    return name -> {
      try (InputStream in = plain.getResourceAsStream(name.replace('.', '/') + ".class")) {
        return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
      } catch (IOException unreadable) {
        return Optional.empty();
      }
    };
  }

  private boolean fails(String name, byte[] bytes) throws Exception {
    Thread thread = Thread.currentThread();
    ClassLoader before = thread.getContextClassLoader();
    try (Changed loader = new Changed(classPath, name, bytes)) {
      thread.setContextClassLoader(loader);
      for (String test : tests) {
        if (failures(loader.loadClass(test)) > 0) {
          return true;
        }
      }
      return false;
    } finally {
      thread.setContextClassLoader(before);
    }
  }

  private static long failures(Class<?> test) {
    LauncherDiscoveryRequest request =
        LauncherDiscoveryRequestBuilder.request()
            .selectors(DiscoverySelectors.selectClass(test))
            .configurationParameter("junit.jupiter.execution.parallel.enabled", "false")
            .build();
    SummaryGeneratingListener listener = new SummaryGeneratingListener();
    LauncherFactory.create().execute(request, listener);
    long found = listener.getSummary().getTestsFoundCount();
    return found == 0 ? 1 : listener.getSummary().getTotalFailureCount();
  }
}
