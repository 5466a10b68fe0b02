package washbook.office.menu;

import com.sun.star.uno.Any;
import com.sun.star.uno.IQueryInterface;
import com.sun.star.uno.Type;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.uno.XInterface;
import java.lang.reflect.InvocationHandler;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.util.Arrays;
import java.util.Set;
import java.util.function.Supplier;

/**
 * Stands between a command and the office: hands every call on, but throws at one of them. Objects
 * that come out of the office are treated alike.
 */
final class FaultyOffice {
  /** A command gives back with these what it holds; were they to fail there would be no way out. */
  private static final Set<String> WAYS_OUT =
      Set.of(
          "unlockControllers",
          "unlock",
          "leaveUndoContext",
          "addUndoAction",
          "isLocked",
          "undo",
          "clear",
          "clearRedo",
          "setModified",
          "enableAutomaticCalculation");

  private final int fatalCall;
  private final Supplier<Throwable> fault;
  private int calls;
  private String fatalMethod = "";

  /** Throws at the call of that number, from 1. */
  FaultyOffice(int fatalCall, Supplier<Throwable> fault) {
    this.fatalCall = fatalCall;
    this.fault = fault;
  }

  /** What was called when it threw; "" when the fatal call was not reached. */
  String fatalMethod() {
    return fatalMethod;
  }

  <T> T over(Class<T> type, T object) {
    return type.cast(stand(object, type));
  }

  private Object stand(Object target, Class<?> type) {
    InvocationHandler handler = (proxy, method, arguments) -> handle(target, method, arguments);
    return Proxy.newProxyInstance(
        FaultyOffice.class.getClassLoader(),
        new Class<?>[] {type, IQueryInterface.class, Stand.class},
        handler);
  }

  private interface Stand {
    Object standsFor();
  }

  private Object handle(Object target, Method method, Object... arguments) throws Throwable {
    if (method.getDeclaringClass() == Stand.class) {
      return target;
    }
    if (method.getDeclaringClass() == IQueryInterface.class
        && method.getName().equals("queryInterface")) {
      Type type = (Type) arguments[0];
      Object found = UnoRuntime.queryInterface(type, target);
      return found == null ? null : stand(found, type.getZClass());
    }
    if (XInterface.class.isAssignableFrom(method.getDeclaringClass())
        && !WAYS_OUT.contains(method.getName())
        && ++calls == fatalCall) {
      fatalMethod = method.getName();
      throw fault.get();
    }
    return stoodFor(method.getReturnType(), called(target, method, arguments));
  }

  private static Object called(Object target, Method method, Object... arguments) throws Throwable {
    Object[] real =
        arguments == null
            ? null
            : Arrays.stream(arguments)
                .map(a -> a instanceof Stand stand ? stand.standsFor() : a)
                .toArray();
    try {
      return method.invoke(target, real);
    } catch (InvocationTargetException e) {
      throw e.getCause();
    }
  }

  private Object stoodFor(Class<?> type, Object result) {
    Object object = result instanceof Any any ? any.getObject() : result;
    boolean fromOffice = object instanceof XInterface || object instanceof IQueryInterface;
    if (!fromOffice) {
      return result;
    }
    return stand(object, type.isInterface() ? type : XInterface.class);
  }
}
