package org.tugtest.hook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tugtest.hook.Guarded.LEFT;
import static org.tugtest.hook.Guarded.RIGHT;
import static org.tugtest.hook.Guarded.ROOT;
import static org.tugtest.hook.Guarded.commit;
import static org.tugtest.hook.Guarded.left;
import static org.tugtest.hook.Guarded.right;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tugtest.git.RealGit;
import org.tugtest.git.RealGit.Ended;

/** Commits as people make them, in real repositories with the guard installed. */
class GuardTest {
  private static final String[] DOUBLED = {"W1 X1:1 X2:1", "W5 X1:2 X2:2"};
  @TempDir Path top;

  @Test
  void aCommitThatDoublesACavityIsBlocked() throws IOException {
    RealGit git = Guarded.repository(top);
    String head = git.run("rev-parse", "HEAD");
    left(git, DOUBLED);
    git.run("add", "-A");

    Ended ended = commit(git);

    assertThat(ended.code()).isEqualTo(1);
    assertThat(ended.said())
        .contains(
            RIGHT + ":4:20: error cavity-doubled X1:2 holds W2 and W5",
            "see " + LEFT + ":5:20",
            "blocked: car.harness.json by 1 new error",
            "against HEAD: 1 new finding, 0 known, 0 resolved",
            "left to CI");
    assertThat(git.run("rev-parse", "HEAD")).isEqualTo(head);
  }

  /** Git itself writes to the index before it calls a hook, so the hook is called alone here. */
  @Test
  void theHookLeavesTheIndexByteForByteAndAllElseAsItIs() throws IOException {
    RealGit git = Guarded.repository(top);
    left(git, DOUBLED);
    git.run("add", "-A");
    String status = git.run("status", "--porcelain");
    byte[] index = Files.readAllBytes(top.resolve(".git/index"));
    List<String> own = git.ownFiles();

    Ended ended = git.attempt(Map.of(), "hook", "run", "pre-commit");

    assertThat(ended.code()).isEqualTo(1);
    assertThat(ended.said()).contains("cavity-doubled");
    assertThat(Files.readAllBytes(top.resolve(".git/index"))).isEqualTo(index);
    assertThat(git.ownFiles()).isEqualTo(own);
    assertThat(git.run("status", "--porcelain")).isEqualTo(status);
  }

  @Test
  void aSoundCommitGoesOn() throws IOException {
    RealGit git = Guarded.repository(top);
    left(git, "W1 X1:1 X2:1", "W5 X1:3 X2:2");
    git.run("add", "-A");

    Ended ended = commit(git);

    assertThat(ended.code()).isZero();
    assertThat(ended.said()).contains("passes: car.harness.json", "0 errors", "left to CI");
    assertThat(git.run("status", "--porcelain")).isEmpty();
  }

  @Test
  void aHarnessThatHoldsNothingIsNamed() throws IOException {
    RealGit git = Guarded.repository(top);
    Files.writeString(top.resolve(ROOT), "{\"format\": 1}");
    git.run("add", "-A");

    Ended ended = commit(git);

    assertThat(ended.code()).isZero();
    assertThat(ended.said())
        .contains(
            ROOT
                + " holds no wire, no device and no connector, so there was nothing to check in"
                + " it");
  }

  @Test
  void warningsAndNotesAreNotToldUnlessTheyBlock() throws IOException {
    RealGit git = Guarded.repository(top);
    String note = "part-unused";
    git.write(
        ROOT,
        """
        {"format": 1, "sketch": true, "uses": ["looms/left.json", "looms/right.json"],
         "parts": {"wires": {"w": {"areaMm2": 1.0, "maxC": 105}}}}
        """);

    Ended ended = commit(git, "-a");

    assertThat(ended.said())
        .contains(
            "0 errors, 0 waived",
            "looked for errors alone; warnings and notes are told by: mvn tugtest:check")
        .doesNotContain(note);
    GuardOrder all =
        new GuardOrder(
            "src/main/harness", List.of(), List.of(), List.of(), "note", "mvn tugtest:", "");
    Guarded.install(git, all);
    git.run("reset", "-q", "--soft", "HEAD~1");
    Ended blocked = commit(git);
    assertThat(blocked.code()).isEqualTo(1);
    assertThat(blocked.said()).contains("note " + note).doesNotContain("looked for");
  }

  @Test
  void aCommitOfOtherFilesIsNotEvenLookedAt() throws IOException {
    RealGit git = Guarded.repository(top);
    Files.delete(top.resolve(".git/hooks/tugtest/guard.jar"));
    git.write("notes.txt", "two\n");
    left(git, DOUBLED);

    Ended ended = commit(git, "notes.txt");

    assertThat(ended).isEqualTo(new Ended(0, ""));
  }

  @Test
  void whatIsStagedCountsNotWhatLiesOnDisk() throws IOException {
    RealGit git = Guarded.repository(top);
    left(git, DOUBLED);
    git.run("add", "-A");
    left(git, "W1 X1:1 X2:1");
    assertThat(commit(git).code()).isEqualTo(1);

    left(git, "W1 X1:1 X2:1", "W5 X1:3 X2:2");
    git.run("add", "-A");
    left(git, DOUBLED);
    assertThat(commit(git).code()).isZero();
  }

  @Test
  void aCommitOfAllIsChecked() throws IOException {
    RealGit git = Guarded.repository(top);
    left(git, DOUBLED);

    assertThat(commit(git, "-a").code()).isEqualTo(1);
    assertThat(git.run("diff", "--cached", "--name-only")).isEmpty();
  }

  @Test
  void aCommitOfOnePathIsCheckedAsItWillBe() throws IOException {
    RealGit git = Guarded.repository(top);
    left(git, DOUBLED);
    right(git, "W2 X1:4 X3:1");
    assertThat(commit(git, LEFT).code()).isEqualTo(1);

    assertThat(commit(git, LEFT, RIGHT).code()).isZero();
  }

  @Test
  void aSecondWorkTreeIsGuardedToo() throws IOException {
    RealGit git = Guarded.repository(top.resolve("main"));
    git.run("worktree", "add", "-q", top.resolve("second").toString(), "-b", "side");
    RealGit second = RealGit.in(top.resolve("second"));
    left(second, DOUBLED);
    second.run("add", "-A");

    Ended ended = commit(second);

    assertThat(ended.code()).isEqualTo(1);
    assertThat(ended.said()).contains("cavity-doubled X1:2");
    left(second, "W1 X1:1 X2:1", "W5 X1:3 X2:2");
    assertThat(commit(second, "-a").code()).isZero();
  }

  @Test
  void aMergeOfTwoBranchesThatFillOneCavityIsBlocked() throws IOException {
    RealGit git = Guarded.repository(top);
    git.run("checkout", "-q", "-b", "side");
    left(git, "W1 X1:1 X2:1", "W5 X1:3 X2:2");
    assertThat(commit(git, "-a").code()).isZero();
    git.run("checkout", "-q", "main");
    right(git, "W2 X1:2 X3:1", "W6 X1:3 X3:2");
    assertThat(commit(git, "-a").code()).isZero();

    Ended ended = git.attempt(Map.of(), "merge", "--no-edit", "side");

    assertThat(ended.code()).isNotZero();
    assertThat(ended.said())
        .contains(
            "cavity-doubled X1:3 holds W5 and W6",
            LEFT + ":5:20",
            RIGHT + ":5:20",
            "in the merge alone; ours: Wire W6 ",
            "theirs: Wire W5 ",
            "they meet at cavity X1:3");
    git.run("merge", "--abort");
    assertThat(git.run("log", "--format=%s", "-1")).isEqualTo("change");
  }

  @Test
  void whatTheOtherBranchHasAlreadyDoesNotBlockAMerge() throws IOException {
    RealGit git = Guarded.repository(top);
    git.run("checkout", "-q", "-b", "side");
    left(git, DOUBLED);
    git.commitAll("past the guard");
    git.run("checkout", "-q", "main");
    right(git, "W2 X1:2 X3:1", "W6 X1:4 X3:2");
    assertThat(commit(git, "-a").code()).isZero();

    Ended ended = git.attempt(Map.of(), "merge", "--no-edit", "side");

    assertThat(ended.said()).contains("against HEAD: 0 new findings, 1 known");
    assertThat(ended.code()).isZero();
  }

  @Test
  void aConflictSolvedByHandIsChecked() throws IOException {
    RealGit git = Guarded.repository(top);
    git.run("checkout", "-q", "-b", "side");
    left(git, "W1 X1:1 X2:1", "W5 X1:3 X2:2");
    git.commitAll("side");
    git.run("checkout", "-q", "main");
    left(git, "W1 X1:1 X2:1", "W6 X1:3 X2:3");
    git.commitAll("main");
    assertThat(git.attempt(Map.of(), "merge", "side").code()).isNotZero();
    left(git, "W1 X1:1 X2:1", "W5 X1:3 X2:2", "W6 X1:3 X2:3");
    git.run("add", "-A");

    Ended ended = commit(git);

    assertThat(ended.code()).isEqualTo(1);
    assertThat(ended.said()).contains("cavity-doubled X1:3 holds W5 and W6");
  }

  @Test
  void anOldFindingDoesNotBlockAndAMendedOneIsTold() throws IOException {
    RealGit git = Guarded.repository(top);
    left(git, DOUBLED);
    git.commitAll("past the guard");
    left(git, "W1 X1:1 X2:1", "W5 X1:2 X2:2", "W7 X1:7 X2:7");

    Ended ended = commit(git, "-a");

    assertThat(ended.code()).isZero();
    assertThat(ended.said()).contains("against HEAD: 0 new findings, 1 known, 0 resolved");
  }

  @Test
  void theFirstCommitIsCheckedAgainstNothing() throws IOException {
    RealGit git = RealGit.init(top);
    Guarded.install(git);
    git.write(ROOT, "{\"format\": 1, \"sketch\": true, \"uses\": [\"looms/left.json\"]}\n");
    left(git, "W1 X1:1 X2:1");
    git.run("add", "-A");

    Ended ended = commit(git);

    assertThat(ended.code()).isZero();
    assertThat(ended.said()).contains("passes: car.harness.json");
  }

  @Test
  void theFirstCommitOfAnOldLoomTellsItsFindingsAndPasses() throws IOException {
    RealGit git = RealGit.init(top);
    Guarded.install(git);
    git.write(ROOT, "{\"format\": 1, \"sketch\": true, \"uses\": [\"looms/left.json\"]}\n");
    left(git, "W1 X1:1 X2:1", "W5 X1:1 X2:2");
    git.run("add", "-A");

    Ended ended = commit(git);

    assertThat(ended.code()).isZero();
    assertThat(ended.said())
        .contains("error cavity-doubled X1:1", "so everything is new and passes");
  }

  @Test
  void aShallowCloneIsGuarded() throws IOException {
    RealGit git = Guarded.repository(top.resolve("origin"));
    git.run(
        "clone", "-q", "--depth", "1", "file://" + git.folder(), top.resolve("here").toString());
    RealGit here = RealGit.in(top.resolve("here"));
    Guarded.install(here);
    left(here, DOUBLED);

    Ended ended = commit(here, "-a");

    assertThat(ended.code()).isEqualTo(1);
    assertThat(ended.said()).contains("against HEAD: 1 new finding");
  }

  @Test
  void aPointerOfLfsCannotBeCheckedAndIsSaid() throws IOException {
    RealGit git = Guarded.repository(top);
    git.write(LEFT, "version https://git-lfs.github.com/spec/v1\noid sha256:ab\nsize 12\n");
    git.run("add", "-A");

    Ended ended = commit(git);

    assertThat(ended.code()).isEqualTo(1);
    assertThat(ended.said())
        .contains(
            "cannot check: " + LEFT + " in the index is a pointer of Git LFS", "git lfs untrack");
  }

  @Test
  void aBrokenFileIsTold() throws IOException {
    RealGit git = Guarded.repository(top);
    git.write(LEFT, "{\"format\": 1,");
    git.run("add", "-A");

    Ended ended = commit(git);

    assertThat(ended.code()).isEqualTo(1);
    assertThat(ended.said()).contains("error file-unreadable", LEFT + ":1:");
  }

  @Test
  void aHookThatWasThereIsCalledFirstAndMayBlock() throws IOException {
    RealGit git = Guarded.repository(top);
    Guarded.remove(git);
    Path hook = top.resolve(".git/hooks/pre-commit");
    Files.writeString(hook, "#!/bin/sh\necho foreign \"$#\"\n[ ! -e block ]\n");
    assertThat(hook.toFile().setExecutable(true)).isTrue();
    Guarded.install(git);
    left(git, DOUBLED);
    git.run("add", "-A");

    Ended blocked = commit(git);
    assertThat(blocked.code()).isEqualTo(1);
    assertThat(blocked.said()).startsWith("foreign 0\n").contains("cavity-doubled");

    git.write("block", "");
    Ended foreign = commit(git);
    assertThat(foreign).isEqualTo(new Ended(1, "foreign 0\n"));
  }

  @Test
  void withoutJavaThreeLinesSayWhatToDo() throws IOException {
    RealGit git = Guarded.repository(top);
    left(git, DOUBLED);
    git.run("add", "-A");
    Path hook = top.resolve(".git/hooks/pre-commit");
    String java = Guarded.java().program().toString();
    Files.writeString(hook, Files.readString(hook).replace(java, "/nowhere/bin/java"));
    Path bin = Files.createDirectories(top.resolve("bin"));
    for (String tool : new String[] {"git", "sh", "sed"}) {
      Files.createSymbolicLink(bin.resolve(tool), program(tool));
    }

    Ended ended = git.attempt(Map.of("PATH", bin.toString(), "JAVA_HOME", ""), "commit", "-qmx");

    assertThat(ended.code()).isEqualTo(1);
    assertThat(ended.said().lines())
        .containsExactly(
            "tugtest: this commit changes a harness and could not be checked:",
            "no Java of version 17 or later is found; set JAVA_HOME, or put java on the PATH",
            "(git commit --no-verify commits without the check; continuous integration still runs"
                + " it)");
  }

  private static Path program(String name) {
    for (String folder : System.getenv("PATH").split(":", -1)) {
      Path file = Path.of(folder, name);
      if (Files.isExecutable(file)) {
        return file;
      }
    }
    throw new IllegalStateException("there is no " + name);
  }

  @Test
  void anotherJavaIsTakenWhereTheOneOfTheInstallationIsGone() throws IOException {
    RealGit git = Guarded.repository(top);
    left(git, DOUBLED);
    git.run("add", "-A");
    Path hook = top.resolve(".git/hooks/pre-commit");
    String java = Guarded.java().program().toString();
    Files.writeString(hook, Files.readString(hook).replace(java, "/nowhere/bin/java"));

    Ended ended =
        git.attempt(Map.of("JAVA_HOME", Guarded.java().home().toString()), "commit", "-qmx");

    assertThat(ended.code()).isEqualTo(1);
    assertThat(ended.said()).contains("cavity-doubled");
  }

  @Test
  void withoutTheJarMavenIsAsked() throws IOException {
    RealGit git = Guarded.repository(top);
    left(git, DOUBLED);
    git.run("add", "-A");
    Files.delete(top.resolve(".git/hooks/tugtest/guard.jar"));
    Path bin = Files.createDirectories(top.resolve("bin"));
    Path mvn = bin.resolve("mvn");
    Files.writeString(mvn, "#!/bin/sh\nfor word in \"$@\"; do echo \"<$word>\"; done\nexit 1\n");
    assertThat(mvn.toFile().setExecutable(true)).isTrue();

    Ended ended = git.attempt(Map.of("PATH", bin + ":" + System.getenv("PATH")), "commit", "-qmx");

    assertThat(ended.code()).isEqualTo(1);
    assertThat(ended.said().lines())
        .containsExactly(
            "<-o>",
            "<-q>",
            "<-N>",
            "<org.tugtest:tugtest-maven-plugin:1.2.3:check>",
            "<-Dtugtest.staged=true>",
            "<-Dtugtest.failOnlyNew=true>",
            "<-Dtugtest.outputDirectory=" + top + "/.git/hooks/tugtest/report>",
            "<-Dtugtest.harnessDirectory=" + top + "/src/main/harness>",
            "<-Dtugtest.failOn=error>");
  }
}
