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
import washbook.runner.TestLogs;

/** Folders that others have a hand in: mounts, containers, other users, letter case. */
@Timeout(300)
final class SharedFolderTest {
  @TempDir private Path folder;
  private Attack attack;

  @BeforeEach
  void begin() throws Exception {
    attack = new Attack(folder);
    Attack.logs(folder.resolve("logs"));
    assertEquals(0, attack.sh("cp -r logs before").code());
  }

  @Test
  void resultsThroughAMountOfTheInputAreRefused() throws Exception {
    assumeTrue(attack.sh("unshare -rm true").code() == 0, "no mounts allowed on this machine");
    Attack.Ended done =
        script(
            "unshare -rm",
            """
            mkdir alias inner
            mount --bind logs alias
            mount --bind logs/inner inner
            %1$s fill logs --out alias; echo "exit $?"
            %1$s watch logs --out alias --once --settle 0; echo "exit $?"
            %1$s watch logs --out inner --once --settle 0; echo "exit $?"
            %1$s watch logs --out inner --once --settle 0; echo "exit $?"
            rm inner/apple.xlsx inner/sugar.csv
            diff -r before logs && echo same
            """);
    assertEquals("exit 3 exit 0 exit 0 exit 0 same", kept(done, "exit|same"), done.said());
  }

  @Test
  void aLinkAmongTheResultsIsNotFollowed() throws Exception {
    Path elsewhere = Files.createDirectories(folder.resolve("elsewhere"));
    Files.createDirectory(folder.resolve("out"));
    Files.createSymbolicLink(folder.resolve("out/inner"), elsewhere);
    Attack.Ended done = attack.run(folder, Map.of(), "fill", "logs", "--out", "out");
    assertEquals(3, done.code(), done.said());
    assertTrue(done.said().contains("a link, which is not followed"), done.said());
    assertEquals(0, Attack.contents(elsewhere).size());
  }

  @Test
  void twoNamesThatAreOneInAFolderWithoutLetterCaseDoNotOverwriteEachOther() throws Exception {
    assumeTrue(Attack.SUPERUSER, "only the superuser can mount an image");
    TestLogs.plain(folder.resolve("x/Plum.xlsx"), 1.060, 9);
    TestLogs.plain(folder.resolve("y/plum.xlsx"), 1.090, 9);
    Attack.Ended done =
        script(
            "",
            """
            mkdir disk
            folded() { mkdir disk/out; $1 disk/out; touch disk/out/a; test -e disk/out/A && rm disk/out/a; }
            trap 'umount disk' EXIT
            truncate -s 16M disk.img
            mkfs.ext4 -q -O casefold -E encoding=utf8 disk.img && mount -o loop disk.img disk && folded 'chattr +F' || {
              mountpoint -q disk && umount disk
              mkntfs -F -q disk.img && lowntfs-3g -o ignore_case,permissions disk.img disk && folded :
            } || exit 77
            echo folded
            %1$s fill x/Plum.xlsx y/plum.xlsx --out disk/out; echo "exit $?"
            ls disk/out | wc -l
            mkdir disk/out/in; cp x/Plum.xlsx disk/out/in/log.xlsx
            %1$s fill disk/out/in/log.xlsx --out disk/out/IN; echo "exit $?"
            cmp x/Plum.xlsx disk/out/in/log.xlsx && echo same
            """);
    assumeTrue(done.code() != 77, "no file system without letter case here");
    assertTrue(done.said().contains("another file of this run"), done.said());
    assertEquals("exit 3 1 exit 3 same", kept(done, "exit|same|1$"), done.said());
  }

  /** Two containers have one host name and the same numbers of processes. */
  @Test
  void runnersInTwoContainersLeaveEachOthersUnfinishedFilesAlone() throws Exception {
    assumeTrue(
        attack.sh("unshare -r --pid --fork true").code() == 0, "no containers on this machine");
    for (int i = 0; i < (Attack.MOMENTS == 0 ? 40 : 8); i++) {
      TestLogs.plain(folder.resolve("logs/log " + i + ".xlsx"), 1.060 + i * 0.001, 40);
    }
    Attack.Ended done =
        script(
            "",
            """
            %1$s fill logs --out filled > /dev/null 2>&1
            container() { unshare -r --pid --fork --mount-proc "$@"; }
            (XDG_STATE_HOME=s1 container %1$s fill logs --in-place > one.txt 2> /dev/null) &
            (XDG_STATE_HOME=s2 container %1$s fill logs --in-place > two.txt 2> /dev/null) &
            wait
            grep -h '^ *refused:' one.txt two.txt | grep -v 'changed by another' | grep -v 'at work on it'
            %1$s fill logs --in-place > /dev/null 2>&1; echo "exit $?"
            diff -r filled logs && echo same
            """);
    assertEquals("exit 0 same", kept(done, ".*"), done.said());
  }

  /** Another user who owns the folder puts links in the place of our unfinished files. */
  @Test
  void aUserWhoSwapsFilesForLinksCannotLeadTheSuperuserElsewhere() throws Exception {
    assumeTrue(Attack.SUPERUSER, "this is about the superuser's work in another's folder");
    for (int i = 0; i < (Attack.MOMENTS == 0 ? 60 : 12); i++) {
      TestLogs.plain(folder.resolve("logs/log " + i + ".xlsx"), 1.060 + i * 0.001, 60);
    }
    Attack.Ended done =
        script(
            "",
            """
            echo secret > victim; chmod 600 victim; chmod 755 .
            chown -R 65534:65534 logs; chmod 777 logs
            cat > swap.sh <<'EOF'
            cd logs
            while [ ! -e ../stop ]; do
              for f in .washbook-*; do
                [ -e "$f" ] && mv -f "$f" gone 2>/dev/null && ln -s "$PWD/../victim" "$f" 2>/dev/null
              done
            done
            EOF
            setpriv --reuid=65534 --regid=65534 --clear-groups sh swap.sh &
            for i in %2$s; do %1$s fill logs --in-place > said.txt; done
            touch stop; wait
            stat -c '%%u %%a' victim; cat victim
            """);
    assertTrue(done.said().endsWith("0 600\nsecret\n"), done.said());
  }

  private Attack.Ended script(String before, String text) throws Exception {
    Path script = folder.resolve("attack.sh");
    Files.writeString(
        script,
        text.replace("%1$s", Attack.shellProgram())
            .replace("%2$s", Attack.MOMENTS == 0 ? "1 2 3 4 5 6" : "1")
            .replace("%%", "%"));
    return attack.sh(before + " sh attack.sh 2>&1");
  }

  private static String kept(Attack.Ended done, String lines) {
    return String.join(
        " ",
        done.said()
            .lines()
            .map(String::strip)
            .filter(l -> l.matches("(" + lines + ").*"))
            .toList());
  }
}
