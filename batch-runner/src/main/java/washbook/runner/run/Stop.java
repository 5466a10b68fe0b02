package washbook.runner.run;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** A wish to stop, as a service manager or Ctrl-C sends it: what is begun is finished first. */
public final class Stop {
  private static final long LONGEST_WAIT_SECONDS = 60;

  private final CountDownLatch asked = new CountDownLatch(1);
  private final CountDownLatch ended = new CountDownLatch(1);

  /** A stop that only {@link #ask} sets off. */
  public static Stop byHand() {
    return new Stop();
  }

  /** A stop that is set off when the process is told to end. */
  public static Stop onTermination() {
    Stop stop = new Stop();
    Runtime.getRuntime().addShutdownHook(new Thread(stop::askAndWait, "stop"));
    return stop;
  }

  public void ask() {
    asked.countDown();
  }

  public boolean isAsked() {
    return asked.getCount() == 0;
  }

  /** Waits that long, or until asked to stop. */
  public void sleep(long millis) {
    try {
      if (asked.await(millis, TimeUnit.MILLISECONDS)) {
        return;
      }
    } catch (InterruptedException interrupted) {
      ask();
      Thread.currentThread().interrupt();
    }
  }

  /** Says that all work has ended, so that the process may. */
  public void done() {
    ended.countDown();
  }

  private void askAndWait() {
    ask();
    try {
      if (!ended.await(LONGEST_WAIT_SECONDS, TimeUnit.SECONDS)) {
        return;
      }
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
    }
  }
}
