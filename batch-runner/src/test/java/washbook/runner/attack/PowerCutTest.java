package washbook.runner.attack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * What the disk holds at the instant of a power cut: a file system of its own, its image copied
 * without a sync, mounted again. It writes data late and names at once, as FAT does.
 */
@Timeout(600)
final class PowerCutTest {
  /** An image with logs, mounted with nothing that helps. */
  private static final String SETUP =
      """
      set -e
      mounted() { mkdir -p "$2"; mount -o loop,data=writeback,nodelalloc,commit=300 "$1" "$2"; }
      truncate -s 48M disk.img
      mkfs.ext4 -q -O ^metadata_csum_seed disk.img
      mounted disk.img disk
      top=$PWD
      trap 'cd "$top"; umount disk' EXIT
      cp -r logs disk/
      sync -f disk
      cd disk
      """;

  /** What the disk holds now takes its place, as after a restart. */
  private static final String CUT =
      """
      cp ../disk.img ../after.img
      cd ..
      umount disk
      mounted after.img disk
      """;

  @TempDir private Path folder;
  private Attack attack;

  @BeforeEach
  void begin() throws Exception {
    assumeTrue(Attack.SUPERUSER, "only the superuser can mount an image");
    attack = new Attack(folder);
    Attack.logs(folder.resolve("logs"));
    Files.writeString(folder.resolve("probe.sh"), SETUP);
    assumeTrue(attack.sh("sh probe.sh").code() == 0, "no loop devices on this machine");
    Files.delete(folder.resolve("disk.img"));
    assertEquals(0, attack.run(folder, Map.of(), "fill", "logs", "--out", "filled").code());
  }

  @Test
  void copiesThatTheJournalKnowsAreWholeAfterAPowerCut() throws Exception {
    Attack.Ended done =
        script(
            "%1$s fill logs --out out --journal j.jsonl",
            """
            diff -r filled disk/out && echo whole
            cd disk
            %1$s fill logs --out out --journal j.jsonl --continue
            """);
    assertEquals(0, done.code(), done.said());
    assertTrue(done.said().contains("\nwhole\n"), done.said());
    assertTrue(done.said().contains("3 of them were done by an earlier run"), done.said());
  }

  @Test
  void inPlaceBothTheNewFilesAndTheKeptOnesAreWholeAfterAPowerCut() throws Exception {
    Attack.Ended done =
        script(
            "%1$s fill logs --in-place --backup --report r.html",
            """
            for log in apple.xlsx inner/plum.xlsx sugar.csv; do
              cmp filled/$log disk/logs/$log
              cmp logs/$log disk/logs/$log.bak
            done
            tail -1 disk/r.html
            """);
    assertEquals(0, done.code(), done.said());
    assertTrue(done.said().contains("</html>"), done.said());
  }

  @Test
  void theTestSeesWhatIsNotForced() throws Exception {
    Attack.Ended done =
        script("cp -r logs out", "diff -r logs disk/out > /dev/null && echo whole || echo lost");
    assertTrue(done.said().endsWith("lost\n"), "this file system forces by itself");
  }

  /** Each call in turn the last before the cut, in the long run; a few in the short one. */
  @Test
  void aPowerCutInTheMiddleLosesNothing() throws Exception {
    Path library = Attack.faults(folder);
    int step = Attack.MOMENTS == 0 ? 3 : 40;
    for (int at = step; at < 75; at += step) {
      Attack.Ended done =
          script(
              "LD_PRELOAD="
                  + library
                  + " FAULT_FOLDER=$PWD FAULT_AT="
                  + at
                  + " %1$s fill logs --in-place --backup --threads 1 --journal j.jsonl || true",
              """
              for log in apple.xlsx inner/plum.xlsx sugar.csv; do
                if ! cmp -s logs/$log disk/logs/$log; then
                  cmp filled/$log disk/logs/$log
                  cmp logs/$log disk/logs/$log.bak
                fi
              done
              cd disk
              %1$s fill logs --in-place --backup --journal j.jsonl --continue
              cd ..
              for log in apple.xlsx inner/plum.xlsx sugar.csv; do
                cmp filled/$log disk/logs/$log
              done
              find disk -name '.washbook*'
              echo complete
              """);
      assertEquals(0, done.code(), "cut at call " + at + ": " + done.said());
      assertTrue(done.said().endsWith("\ncomplete\n"), done.said());
      assertTrue(!done.said().contains("disk/"), "left behind: " + done.said());
      assertEquals(0, attack.sh("rm -rf disk.img after.img disk").code());
    }
  }

  private Attack.Ended script(String run, String look) throws Exception {
    String program = Attack.shellProgram();
    String text = SETUP + run.replace("%1$s", program) + "\n" + CUT + look.replace("%1$s", program);
    Files.writeString(folder.resolve("cut.sh"), text);
    return attack.sh("sh cut.sh 2>&1");
  }
}
