package org.tugtest.hook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tugtest.git.RealGit;
import org.tugtest.git.WorkTree;

class InstallationTest {
  private static final String FOREIGN = "#!/bin/sh\nexit 0\n";
  @TempDir Path top;
  private RealGit git;
  private Path hooks;

  @BeforeEach
  void emptyRepository() throws IOException {
    git = RealGit.init(top);
    hooks = top.resolve(".git/hooks");
  }

  @Test
  void putsBothHooksInPlace() throws IOException {
    List<String> done = Guarded.install(git);

    assertThat(done)
        .containsExactly(
            "the hook pre-commit is in place", "the hook pre-merge-commit is in place");
    for (String name : List.of("pre-commit", "pre-merge-commit")) {
      String text = Files.readString(hooks.resolve(name));
      assertThat(text).startsWith("#!/bin/sh\n" + HookScript.MARKER + "\n").doesNotContain("\r");
      assertThat(Files.isExecutable(hooks.resolve(name))).isTrue();
    }
    assertThat(git.run("status", "--porcelain")).isEmpty();
  }

  @Test
  void aSecondTimeNothingChanges() throws IOException {
    Guarded.install(git);
    git.write(".git/hooks/tugtest/guard.jsa", "");
    Map<String, String> before = hooks();
    Path jar = hooks.resolve("tugtest/guard.jar");

    try (WorkTree tree = WorkTree.around(top).orElseThrow()) {
      List<String> done =
          Installation.of(tree).install(Guarded.order(), Guarded.PLUGIN, jar, Guarded.java());
      assertThat(done).isEmpty();
    }

    assertThat(hooks()).isEqualTo(before);
  }

  @Test
  void anotherOrderRenewsTheScriptsAlone() throws IOException {
    Guarded.install(git);
    GuardOrder order =
        new GuardOrder(
            "looms of '41'",
            List.of("shared"),
            List.of("car*.json"),
            List.of("old/**"),
            "warning",
            "mvn tugtest:",
            "later");

    try (WorkTree tree = WorkTree.around(top).orElseThrow()) {
      Path jar = hooks.resolve("tugtest/guard.jar");
      assertThat(Installation.of(tree).install(order, Guarded.PLUGIN, jar, Guarded.java()))
          .containsExactly(
              "the hook pre-commit is in place", "the hook pre-merge-commit is in place");
    }

    assertThat(Files.readString(hooks.resolve("pre-commit")))
        .contains(
            "-- 'looms of '\\''41'\\''' 'shared' && exit 0",
            "--harness 'looms of '\\''41'\\''' --library"
                .replace("--harness", "'--harness'")
                .replace("--library", "'--library'"),
            "-Dtugtest.includes='car*.json'",
            "-Dtugtest.excludes='old/**'");
  }

  @Test
  void theOrderIsReadBackAsItWasWritten() {
    GuardOrder order =
        new GuardOrder(
            "a b", List.of("c", "d"), List.of("e*"), List.of("f"), "note", "mvn x:", "later");

    assertThat(GuardOrder.of(order.arguments())).isEqualTo(order);
    assertThatThrownBy(() -> GuardOrder.of(List.of("--harnes", "x")))
        .hasMessageStartingWith("the guard does not know --harnes; it takes --harness, ");
    assertThatThrownBy(() -> GuardOrder.of(List.of("--harness")))
        .hasMessage("--harness lacks its value");
  }

  @Test
  void takingItAwayLeavesAllAsItWas() throws IOException {
    Files.writeString(hooks.resolve("pre-commit"), FOREIGN);
    Files.setPosixFilePermissions(
        hooks.resolve("pre-commit"), PosixFilePermissions.fromString("rwx------"));
    Map<String, String> before = hooks();

    assertThat(Guarded.install(git))
        .contains("the hook pre-commit that was there is kept and called first");
    assertThat(Files.readString(hooks.resolve("pre-commit.before-tugtest"))).isEqualTo(FOREIGN);
    Guarded.install(git);
    List<String> done = Guarded.remove(git);

    assertThat(done)
        .contains(
            "the hook pre-commit is taken away",
            "the hook pre-commit that was there before is back",
            "the hook pre-merge-commit is taken away");
    assertThat(hooks()).isEqualTo(before);
    assertThat(Guarded.remove(git)).isEmpty();
  }

  @Test
  void aHookOfSomebodyElseIsNeverTakenAway() throws IOException {
    Guarded.install(git);
    Files.writeString(hooks.resolve("pre-commit"), FOREIGN);

    Guarded.remove(git);

    assertThat(Files.readString(hooks.resolve("pre-commit"))).isEqualTo(FOREIGN);
    assertThat(hooks.resolve("pre-merge-commit")).doesNotExist();
  }

  @Test
  void twoHooksOfOthersAreNotMixed() throws IOException {
    Files.writeString(hooks.resolve("pre-commit"), FOREIGN);
    Guarded.install(git);
    Files.writeString(hooks.resolve("pre-commit"), FOREIGN + "#\n");
    Map<String, String> before = hooks();

    assertThatThrownBy(() -> Guarded.install(git))
        .isInstanceOf(IOException.class)
        .hasMessageStartingWith("there are two hooks that are not ours, ");

    assertThat(hooks()).containsAllEntriesOf(without(before, "tugtest"));
  }

  private static Map<String, String> without(Map<String, String> all, String start) {
    Map<String, String> left = new TreeMap<>(all);
    left.keySet().removeIf(name -> name.startsWith(start));
    return left;
  }

  @Test
  void anotherFolderOfHooksIsNotWritten() throws IOException {
    Path elsewhere = Files.createDirectories(top.resolve("team-hooks"));
    git.run("config", "core.hooksPath", "team-hooks");

    assertThatThrownBy(() -> Guarded.install(git))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("(core.hooksPath)")
        .hasMessageContaining("nothing was written; add this line")
        .hasMessageEndingWith(
            "mvn -o -q -N org.tugtest:tugtest-maven-plugin:1.2.3:check -Dtugtest.staged=true"
                + " -Dtugtest.failOnlyNew=true");

    assertThat(elsewhere).isEmptyDirectory();
    assertThat(hooks.resolve("pre-commit")).doesNotExist();
  }

  @Test
  void gitsOwnFolderMayBeNamedByTheConfiguration() throws IOException {
    git.run("config", "core.hooksPath", hooks.toString());

    assertThat(Guarded.install(git)).isNotEmpty();
  }

  @Test
  void aSecondWorkTreeSharesTheHooks() throws IOException {
    git.write("a", "a");
    git.commitAll("a");
    git.run("worktree", "add", "-q", top.resolve("second").toString(), "-b", "side");

    Guarded.install(RealGit.in(top.resolve("second")));

    assertThat(hooks.resolve("pre-commit")).exists();
  }

  @Test
  void theProgramIsCopiedAndRehearsedOnce() throws IOException {
    Path jar = top.resolve("standalone.jar");
    Guarded.writeJar(jar);
    try (WorkTree tree = WorkTree.around(top).orElseThrow()) {
      Installation installation = Installation.of(tree);
      List<String> done =
          installation.install(Guarded.order(), Guarded.PLUGIN, jar, Guarded.java());

      assertThat(done)
          .contains("the guard is copied to " + hooks.toRealPath().resolve("tugtest"))
          .anyMatch(line -> line.startsWith("its classes "));
      assertThat(hooks.resolve("tugtest/guard.jar")).hasSameBinaryContentAs(jar);
    }
  }

  @Test
  void aJavaThatCannotBeStartedDoesNotHinder() throws IOException {
    Path jar = top.resolve("standalone.jar");
    Guarded.writeJar(jar);
    try (WorkTree tree = WorkTree.around(top).orElseThrow()) {
      List<String> done =
          Installation.of(tree)
              .install(
                  Guarded.order(),
                  Guarded.PLUGIN,
                  jar,
                  new Installation.JavaHome(top.resolve("none"), 17));
      assertThat(done).anyMatch(line -> line.startsWith("its classes could not be prepared ("));
      assertThat(hooks.resolve("pre-commit")).exists();
    }
  }

  /** Name, permissions and content of every file among the hooks. */
  private Map<String, String> hooks() throws IOException {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(hooks)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(
            hooks.relativize(file).toString(),
            Files.getPosixFilePermissions(file)
                + " "
                + Files.getLastModifiedTime(file)
                + " "
                + Arrays.hashCode(Files.readAllBytes(file)));
      }
    }
    return files;
  }
}
