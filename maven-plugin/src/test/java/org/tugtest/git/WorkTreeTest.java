package org.tugtest.git;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.jgit.api.Git;
import org.eclipse.jgit.api.errors.GitAPIException;
import org.eclipse.jgit.lib.PersonIdent;
import org.eclipse.jgit.lib.StoredConfig;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tugtest.files.Choice;
import org.tugtest.files.DiskFiles;
import org.tugtest.files.Folders;
import org.tugtest.files.Scope;
import org.tugtest.read.ReadLimits;

class WorkTreeTest {
  /** 23:30 on the 24th in the committer's zone, the 25th already in UTC. */
  private static final Instant LATE = Instant.parse("2026-11-25T04:30:00Z");

  private static final ZoneOffset ZONE = ZoneOffset.ofHours(-5);
  @TempDir Path top;
  private Path harness;

  @BeforeEach
  void makeFolder() throws IOException {
    QuietReader.install();
    harness = Files.createDirectories(top.resolve("car").resolve("harness"));
    Files.writeString(harness.resolve("a.harness.json"), "{\"format\": 1}\n");
    Files.writeString(top.resolve("other.json"), "{}\n");
  }

  @Test
  void thereIsNoneOutsideGit() throws IOException {
    assertThat(WorkTree.around(harness)).isEmpty();
  }

  @Test
  void thereIsNoneForAFolderThatIsNotThere() throws IOException {
    assertThat(WorkTree.around(top.resolve("x").resolve("y"))).isEmpty();
  }

  @Test
  void beforeTheFirstCommitThereIsNoHead() throws Exception {
    Git.init().setDirectory(top.toFile()).call().close();

    try (WorkTree tree = tree(harness)) {
      assertThat(tree.top()).isEqualTo(top);
      assertThat(tree.head()).isEmpty();
    }
  }

  @Test
  void theDayIsThatOfTheCommittersZone() throws Exception {
    String id = commitAll();

    try (WorkTree tree = tree(harness)) {
      assertThat(tree.head()).contains(new Commit(id, LocalDate.of(2026, 11, 24)));
    }
  }

  @Test
  void isFoundFromAFolderThatIsNotThereYet() throws Exception {
    commitAll();

    try (WorkTree tree = tree(harness.resolve("later").resolve("on"))) {
      assertThat(tree.top()).isEqualTo(top);
    }
  }

  @Test
  void nothingDiffersAfterACommit() throws Exception {
    commitAll();
    Files.setLastModifiedTime(
        harness.resolve("a.harness.json"), FileTime.from(Instant.parse("2030-01-01T00:00:00Z")));

    assertThat(differs()).isFalse();
  }

  @Test
  void filesOutsideTheHarnessDoNotCount() throws Exception {
    commitAll();
    Files.writeString(top.resolve("other.json"), "{\"x\": 1}\n");
    Files.writeString(harness.resolve("notes.txt"), "x");
    Files.createDirectories(harness.resolve(".idea"));
    Files.writeString(harness.resolve(".idea").resolve("x.json"), "{}");

    assertThat(differs()).isFalse();
  }

  @Test
  void anotherContentDiffers() throws Exception {
    commitAll();
    Files.writeString(harness.resolve("a.harness.json"), "{\"format\": 2}\n");

    assertThat(differs()).isTrue();
  }

  @Test
  void oneFileMoreDiffers() throws Exception {
    commitAll();
    Files.writeString(harness.resolve("b.json"), "{}\n");

    assertThat(differs()).isTrue();
  }

  @Test
  void oneFileLessDiffers() throws Exception {
    Files.writeString(harness.resolve("b.json"), "{}\n");
    commitAll();
    Files.delete(harness.resolve("b.json"));

    assertThat(differs()).isTrue();
  }

  @Test
  void aChangedSharedPartDiffers() throws Exception {
    Path shared = Files.createDirectories(top.resolve("shared"));
    Files.writeString(shared.resolve("parts.json"), "{}\n");
    commitAll();
    assertThat(differs(shared)).isFalse();

    Files.writeString(shared.resolve("parts.json"), "{\"format\": 1}\n");

    assertThat(differs(shared)).isTrue();
  }

  @Test
  void endsOfLinesDoNotDiffer() throws Exception {
    commitAll();
    Files.writeString(harness.resolve("a.harness.json"), "{\"format\": 1}\r\n");

    assertThat(differs()).isFalse();
  }

  @Test
  void theHarnessMayBeTheWholeWorkTree() throws Exception {
    commitAll();

    try (WorkTree tree = tree(top)) {
      Commit head = tree.head().orElseThrow();
      Folders folders = new Folders(top, List.of(), List.of());
      assertThat(tree.differs(head, scope(folders), files(folders))).isFalse();
      Files.writeString(top.resolve("other.json"), "[]");
      assertThat(tree.differs(head, scope(folders), files(folders))).isTrue();
    }
  }

  @Test
  void aSecondWorkTreeHasItsOwnTopAndHead() throws Exception {
    String id = commitAll();
    Path second = Files.createDirectories(top.resolveSibling("second"));
    Path admin = Files.createDirectories(top.resolve(".git/worktrees/second"));
    Files.writeString(admin.resolve("HEAD"), id + "\n");
    Files.writeString(admin.resolve("commondir"), "../..\n");
    Files.writeString(admin.resolve("gitdir"), second.resolve(".git") + "\n");
    Files.writeString(second.resolve(".git"), "gitdir: " + admin + "\n");

    try (WorkTree tree = tree(second)) {
      assertThat(tree.top()).isEqualTo(second);
      assertThat(tree.head()).map(Commit::id).contains(id);
    } finally {
      Files.delete(second.resolve(".git"));
      Files.delete(second);
    }
  }

  @Test
  void aShallowCloneHasItsHead() throws Exception {
    commitAll();
    Files.writeString(harness.resolve("b.json"), "{}\n");
    String id = commitAll();
    Path clone = top.resolve("clone");
    Git.cloneRepository()
        .setURI(top.toUri().toString())
        .setDirectory(clone.toFile())
        .setDepth(1)
        .call()
        .close();

    try (WorkTree tree = tree(clone)) {
      assertThat(clone.resolve(".git/shallow")).exists();
      assertThat(tree.head()).map(Commit::id).contains(id);
      Folders folders = new Folders(clone.resolve("car/harness"), List.of(), List.of());
      assertThat(tree.differs(tree.head().orElseThrow(), scope(folders), files(folders))).isFalse();
    }
  }

  @Test
  void sha256IsSaidPlainly() throws Exception {
    commitAll();
    try (Git git = Git.open(top.toFile())) {
      StoredConfig config = git.getRepository().getConfig();
      config.setInt("core", null, "repositoryformatversion", 1);
      config.setString("extensions", null, "objectformat", "sha256");
      config.save();
    }

    assertThatThrownBy(() -> WorkTree.around(harness))
        .isInstanceOf(IOException.class)
        .hasMessage("this repository names its objects by sha256, which is not supported yet");
  }

  @Test
  void aWorkTreeWhoseRepositoryIsGoneIsSaidPlainly() throws Exception {
    Files.writeString(top.resolve(".git"), "gitdir: " + top.resolve("gone") + "\n");

    assertThatThrownBy(() -> WorkTree.around(harness))
        .isInstanceOf(IOException.class)
        .hasMessageStartingWith("git's own folder cannot be read: ");
  }

  @Test
  void aMissingCommitIsSaidPlainly() throws Exception {
    String id = commitAll();
    Files.delete(top.resolve(".git/objects/" + id.substring(0, 2) + "/" + id.substring(2)));

    try (WorkTree tree = tree(harness)) {
      assertThatThrownBy(tree::head)
          .isInstanceOf(IOException.class)
          .hasMessageStartingWith("git's HEAD cannot be read: ")
          .hasMessageContaining(id);
    }
  }

  @Test
  void nothingIsWrittenToTheRepository() throws Exception {
    commitAll();
    List<String> before = everything();

    assertThat(differs()).isFalse();

    assertThat(everything()).isEqualTo(before);
  }

  /** JGit measures a file system when it first meets one; a fresh JVM has met none. */
  @Test
  void aFreshJvmWritesNothingToTheRepository() throws Exception {
    commitAll();
    List<String> before = everything();

    Process reader =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                ReadOnce.class.getName(),
                harness.toString())
            .redirectErrorStream(true)
            .start();
    String said = new String(reader.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

    assertThat(reader.waitFor()).isZero();
    assertThat(said).endsWith("false\n");
    assertThat(everything()).isEqualTo(before);
  }

  /** Opens and reads a repository, as a goal does. */
  static final class ReadOnce {
    private ReadOnce() {}

    public static void main(String[] folder) throws IOException {
      Folders folders = new Folders(Path.of(folder[0]), List.of(), List.of());
      try (WorkTree tree = tree(folders.harness())) {
        boolean differs = tree.differs(tree.head().orElseThrow(), scope(folders), files(folders));
        System.out.print(differs + "\n");
      }
    }
  }

  private List<String> everything() throws IOException {
    try (Stream<Path> files = Files.walk(top.resolve(".git"))) {
      return files
          .sorted()
          .map(file -> file + " " + file.toFile().lastModified() + " " + file.toFile().length())
          .toList();
    }
  }

  private boolean differs(Path... libraries) throws IOException {
    try (WorkTree tree = tree(harness)) {
      Folders folders = new Folders(harness, List.of(libraries), List.of());
      return tree.differs(tree.head().orElseThrow(), scope(folders), files(folders));
    }
  }

  private static WorkTree tree(Path folder) throws IOException {
    return WorkTree.around(folder).orElseThrow();
  }

  private static Scope scope(Folders folders) {
    return new Scope(folders, Choice.ALL, ReadLimits.STANDARD);
  }

  private static DiskFiles files(Folders folders) throws IOException {
    return DiskFiles.of(folders, Choice.ALL, ReadLimits.STANDARD);
  }

  private String commitAll() throws GitAPIException {
    PersonIdent bench = new PersonIdent("bench", "bench@localhost", LATE, ZONE);
    try (Git git = Git.init().setDirectory(top.toFile()).call()) {
      git.add().addFilepattern(".").call();
      return git.commit()
          .setMessage("looms")
          .setSign(false)
          .setAuthor(bench)
          .setCommitter(bench)
          .call()
          .name();
    }
  }
}
