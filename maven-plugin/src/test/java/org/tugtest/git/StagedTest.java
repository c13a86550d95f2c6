package org.tugtest.git;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tugtest.files.Choice;
import org.tugtest.files.Folders;
import org.tugtest.files.Scope;
import org.tugtest.read.ReadLimits;
import org.tugtest.read.SourceFiles.Content;

/** The index in all its forms, as the git program leaves it. */
class StagedTest {
  private static final String CAR = "car.harness.json";
  @TempDir Path top;
  private RealGit git;

  @BeforeEach
  void twoFiles() throws IOException {
    git = RealGit.init(top);
    git.write("looms/" + CAR, "one\n");
    git.write("looms/nose.json", "nose one\n");
    git.write("readme.json", "{}\n");
    git.commitAll("looms");
  }

  @Test
  void holdsWhatWasAddedNotWhatLiesOnDisk() throws IOException {
    git.write("looms/" + CAR, "two\n");
    git.run("add", "-A");
    git.write("looms/" + CAR, "three\n");
    git.write("looms/later.json", "not added\n");

    assertThat(staged()).isEqualTo(Map.of(CAR, "two\n", "nose.json", "nose one\n"));
  }

  @Test
  void doesNotHoldWhatWasRemoved() throws IOException {
    git.run("rm", "-q", "--cached", "looms/nose.json");

    assertThat(staged()).containsOnlyKeys(CAR);
  }

  @Test
  void isWholeInASubfolderAndWithSharedParts() throws IOException {
    git.write("shared/parts.json", "parts\n");
    git.run("add", "-A");

    try (WorkTree tree = WorkTree.around(top.resolve("looms")).orElseThrow()) {
      Folders folders =
          new Folders(top.resolve("looms"), List.of(top.resolve("shared")), List.of());
      StoredFiles files = tree.staged(scope(folders));
      assertThat(files.paths()).containsExactly("../shared/parts.json", CAR, "nose.json");
      assertThat(text(files, "../shared/parts.json")).isEqualTo("parts\n");
    }
  }

  @Test
  void isThatOfAPlainCommitInsideItsHook() throws IOException {
    git.write("looms/" + CAR, "two\n");
    git.run("add", "-A");
    git.write("looms/nose.json", "not added\n");

    assertThat(stagedInHook("commit", "-q", "-m", "x"))
        .isEqualTo(Map.of(CAR, "two\n", "nose.json", "nose one\n"));
  }

  @Test
  void isThatOfACommitOfAllInsideItsHook() throws IOException {
    git.write("looms/" + CAR, "two\n");

    assertThat(stagedInHook("commit", "-q", "-a", "-m", "x"))
        .isEqualTo(Map.of(CAR, "two\n", "nose.json", "nose one\n"));
  }

  @Test
  void isThatOfACommitOfOnePathInsideItsHook() throws IOException {
    git.write("looms/" + CAR, "two\n");
    git.run("add", "-A");
    git.write("looms/nose.json", "nose two\n");

    assertThat(stagedInHook("commit", "-q", "-m", "x", "looms/nose.json"))
        .isEqualTo(Map.of(CAR, "one\n", "nose.json", "nose two\n"));
  }

  @Test
  void aSecondWorkTreeHasItsOwn() throws IOException {
    Path second = top.resolveSibling(top.getFileName() + "-second");
    git.run("worktree", "add", "-q", second.toString(), "-b", "side");
    try {
      RealGit side = RealGit.in(second);
      side.write("looms/" + CAR, "side\n");
      side.run("add", "-A");

      assertThat(staged(second, Environment.EMPTY)).containsEntry(CAR, "side\n");
      assertThat(staged()).containsEntry(CAR, "one\n");
    } finally {
      git.run("worktree", "remove", "--force", second.toString());
    }
  }

  @Test
  void isEmptyBeforeAnythingWasAdded(@TempDir Path fresh) throws IOException {
    RealGit.init(fresh);

    assertThat(staged(fresh, Environment.EMPTY)).isEmpty();
  }

  @Test
  void leavesOutWhatIsOnlyAnnounced() throws IOException {
    git.write("looms/later.json", "later\n");
    git.run("add", "-N", "looms/later.json");

    try (WorkTree tree = WorkTree.around(top).orElseThrow()) {
      StoredFiles files = tree.staged(scope(folders(top)));
      assertThat(files.paths()).containsExactly(CAR, "nose.json");
      assertThat(files.remarks())
          .containsExactly(
              "looms/later.json is announced only (git add -N) and not part of the commit; add it"
                  + " with: git add looms/later.json");
      assertThat(((Content.Refused) files.open("later.json")).message()).startsWith("is not there");
    }
  }

  @Test
  void refusesAFileInConflict() throws IOException {
    git.run("checkout", "-q", "-b", "side");
    git.write("looms/nose.json", "side\n");
    git.commitAll("side");
    git.run("checkout", "-q", "main");
    git.write("looms/nose.json", "main\n");
    git.commitAll("main");
    assertThat(git.attempt(Map.of(), "merge", "side").code()).isNotZero();

    try (WorkTree tree = WorkTree.around(top).orElseThrow()) {
      StoredFiles files = tree.staged(scope(folders(top)));
      assertThat(files.paths()).containsExactly(CAR, "nose.json");
      assertThat(files.open("nose.json"))
          .isEqualTo(
              new Content.Refused(
                  "is in conflict: a merge left several versions of it",
                  "Resolve the conflict and add the file with git add."));
      assertThat(tree.revisions().merging())
          .extracting(Commit::id)
          .containsExactly(git.run("rev-parse", "side"));
    }
  }

  @Test
  void keepsWhatASparseWorkTreeLeavesOut() throws IOException {
    git.write("other/x.txt", "x\n");
    git.commitAll("other");
    git.run("sparse-checkout", "set", "other");
    assertThat(top.resolve("looms")).doesNotExist();

    assertThat(staged()).isEqualTo(Map.of(CAR, "one\n", "nose.json", "nose one\n"));
  }

  @Test
  void aSparseIndexIsSaidPlainlyAndTheCommandMendsIt() throws IOException {
    git.write("other/x.txt", "x\n");
    git.commitAll("other");
    git.run("sparse-checkout", "set", "--cone", "--sparse-index", "other");

    assertThatThrownBy(this::staged)
        .isInstanceOf(IOException.class)
        .hasMessage(
            "git's index is a sparse one, which is not supported yet; make it whole with: git"
                + " sparse-checkout reapply --no-sparse-index");
    git.run("sparse-checkout", "reapply", "--no-sparse-index");
    assertThat(staged()).containsEntry(CAR, "one\n");
  }

  @Test
  void aSplitIndexIsSaidPlainlyAndTheCommandMendsIt() throws IOException {
    git.run("update-index", "--split-index");
    git.write("looms/" + CAR, "two\n");
    git.run("add", "-A");

    assertThatThrownBy(this::staged)
        .isInstanceOf(IOException.class)
        .hasMessage(
            "git's index is split in two files, which is not supported yet; make it one with: git"
                + " update-index --no-split-index");
    git.run("update-index", "--no-split-index");
    assertThat(staged()).containsEntry(CAR, "two\n");
  }

  @Test
  void aSplitIndexIsSaidPlainlyThoughNothingIsStaged() throws IOException {
    git.run("update-index", "--split-index");

    assertThatThrownBy(this::staged)
        .isInstanceOf(IOException.class)
        .hasMessageStartingWith("git's index is split in two files");
  }

  @Test
  void otherFormsOfTheIndexAreRead() throws IOException {
    git.run("update-index", "--index-version", "4");
    git.run("update-index", "--untracked-cache", "--assume-unchanged", "looms/nose.json");
    git.write("looms/" + CAR, "two\n");
    git.run("add", "looms/" + CAR);

    assertThat(staged()).isEqualTo(Map.of(CAR, "two\n", "nose.json", "nose one\n"));
  }

  @Test
  void refusesLinksAndPointersOfLfs() throws IOException {
    Files.createSymbolicLink(top.resolve("looms/link.json"), Path.of("nose.json"));
    git.write(
        "looms/big.json",
        "version https://git-lfs.github.com/spec/v1\noid sha256:ab\nsize 12345\n");
    git.run("add", "-A");

    try (WorkTree tree = WorkTree.around(top).orElseThrow()) {
      StoredFiles files = tree.staged(scope(folders(top)));
      assertThat(((Content.Refused) files.open("link.json")).message())
          .isEqualTo("is a symbolic link; links are not followed");
      assertThat(files.unheld()).isEmpty();
      assertThat(((Content.Refused) files.open("big.json")).message())
          .isEqualTo("is a pointer of Git LFS, so git itself does not hold its content");
      assertThat(files.unheld())
          .contains(
              "looms/big.json in the index is a pointer of Git LFS, so git itself does not hold its"
                  + " content; keep harness files in git: git lfs untrack \"*.json\" && git add"
                  + " --renormalize .");
    }
  }

  @Test
  void bytesAreThoseOfGitWhateverItsFiltersDo() throws IOException {
    git.write(".gitattributes", "*.json text eol=crlf filter=shout\n");
    git.run("config", "filter.shout.smudge", "tr a-z A-Z");
    git.write("looms/nose.json", "nose two\r\n");
    git.run("add", "-A");
    Files.delete(top.resolve("looms/nose.json"));
    git.run("checkout", "--", "looms/nose.json");
    assertThat(Files.readString(top.resolve("looms/nose.json"))).isEqualTo("NOSE TWO\r\n");

    assertThat(staged()).containsEntry("nose.json", "nose two\n");
  }

  @Test
  void aFileOverTheLimitIsNotLoaded() throws IOException {
    try (WorkTree tree = WorkTree.around(top).orElseThrow()) {
      StoredFiles files =
          tree.staged(new Scope(folders(top), Choice.ALL, new ReadLimits(8, 10, 10, 10)));
      assertThat(text(files, CAR)).isEqualTo("one\n");
      assertThat(((Content.Refused) files.open("nose.json")).message())
          .isEqualTo("is 9 bytes long; at most 8 are read");
    }
  }

  @Test
  void aNearNameAndAWayOutAreAnsweredAsOnDisk() throws IOException {
    try (WorkTree tree = WorkTree.around(top).orElseThrow()) {
      StoredFiles files = tree.staged(scope(folders(top)));
      assertThat(((Content.Refused) files.open("noze.json")).message())
          .isEqualTo("is not there; did you mean nose.json?");
      assertThat(((Content.Refused) files.open("../readme.json")).message())
          .isEqualTo("lies outside the harness folder and the library folders");
      assertThat(((Content.Refused) files.open("../looms/nose.json")).message())
          .isEqualTo("leaves the harness folder and comes back");
    }
  }

  @Test
  void readingLeavesTheRepositoryAsItIs() throws IOException {
    git.write("looms/" + CAR, "two\n");
    git.run("add", "-A");
    List<String> before = git.ownFiles();

    staged();

    assertThat(git.ownFiles()).isEqualTo(before);
  }

  /**
   * The content of the commit as its hook sees it: the hook keeps a copy of the index it is given.
   */
  private Map<String, String> stagedInHook(String... commit) throws IOException {
    Path hook = top.resolve(".git/hooks/pre-commit");
    Files.writeString(hook, "#!/bin/sh\ncp \"$GIT_INDEX_FILE\" .git/seen\n");
    Files.setPosixFilePermissions(hook, PosixFilePermissions.fromString("rwxr-xr-x"));
    git.run(commit);
    return staged(top, new Environment(Map.of("GIT_INDEX_FILE", ".git/seen")));
  }

  private Map<String, String> staged() throws IOException {
    return staged(top, Environment.EMPTY);
  }

  private static Map<String, String> staged(Path top, Environment environment) throws IOException {
    try (WorkTree tree = WorkTree.around(top, environment).orElseThrow()) {
      StoredFiles files = tree.staged(scope(folders(top)));
      Map<String, String> texts = new TreeMap<>();
      for (String path : files.paths()) {
        texts.put(path, text(files, path));
      }
      return texts;
    }
  }

  private static String text(StoredFiles files, String path) {
    return new String(((Content.Bytes) files.open(path)).bytes(), StandardCharsets.UTF_8);
  }

  private static Folders folders(Path top) {
    return new Folders(top.resolve("looms"), List.of(), List.of());
  }

  private static Scope scope(Folders folders) {
    return new Scope(folders, Choice.ALL, ReadLimits.STANDARD);
  }
}
