package org.tugtest.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SafeWriteTest {
  private static final byte[] OLD = "old".getBytes(StandardCharsets.UTF_8);
  private static final byte[] NEW = "new".getBytes(StandardCharsets.UTF_8);
  @TempDir Path folder;

  @Test
  void refusesToCreateOverAFile() throws IOException {
    Path file = Files.write(folder.resolve("a.json"), OLD);

    assertThatThrownBy(() -> SafeWrite.create(file, NEW))
        .isInstanceOf(IOException.class)
        .hasMessageEndingWith(
            "a.json is there already and was not read; nothing was written. Give another name.");
    assertThat(file).hasBinaryContent(OLD);
    assertNothingElse(file);
  }

  @Test
  void createsWithItsFolders() throws IOException {
    Path file = folder.resolve("x/y/a.json");

    SafeWrite.create(file, NEW);

    assertThat(file).hasBinaryContent(NEW);
    assertNothingElse(file);
  }

  @Test
  void refusesToReplaceWhatChangedSinceItWasRead() throws IOException {
    Path file = Files.write(folder.resolve("a.json"), NEW);

    assertThatThrownBy(() -> SafeWrite.replace(file, OLD, OLD))
        .isInstanceOf(IOException.class)
        .hasMessageEndingWith(
            "a.json was changed by something else since it was read; nothing was written");
    assertThat(file).hasBinaryContent(NEW);
    assertNothingElse(file);
  }

  @Test
  void saysWhyAFolderTakesNothing() throws IOException {
    Path inTheWay = Files.write(folder.resolve("x"), OLD);

    assertThatThrownBy(() -> SafeWrite.create(folder.resolve("x/y/a.json"), NEW))
        .isInstanceOf(IOException.class)
        .hasMessageStartingWith("the folder " + folder.resolve("x/y") + " cannot be made: ")
        .hasMessageMatching(".*: (Not a directory|a file of that name is in the way|.*)");
    assertThat(inTheWay).hasBinaryContent(OLD);
  }

  @Test
  void refusesToReplaceAFileThatIsGone() {
    Path file = folder.resolve("a.json");

    assertThatThrownBy(() -> SafeWrite.replace(file, OLD, NEW))
        .isInstanceOf(IOException.class)
        .hasMessageEndingWith("a.json is no plain file any more; nothing was written");
    assertThat(file).doesNotExist();
  }

  @Test
  void replacesAndKeepsThePermissions() throws IOException {
    Path file = Files.write(folder.resolve("a.json"), OLD);
    boolean posix = file.getFileSystem().supportedFileAttributeViews().contains("posix");
    assumeTrue(posix, "permissions are looked at on POSIX systems");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-x---"));

    SafeWrite.replace(file, OLD, NEW);

    assertThat(file).hasBinaryContent(NEW);
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo("rwxr-x---");
    assertNothingElse(file);
  }

  @Test
  void stepsAsideForALeftover() throws IOException {
    Path file = Files.write(folder.resolve("a.json"), OLD);
    Path leftover = Files.write(folder.resolve(".a.json.0.part"), OLD);

    SafeWrite.replace(file, OLD, NEW);

    assertThat(file).hasBinaryContent(NEW);
    assertThat(leftover).hasBinaryContent(OLD);
  }

  private static void assertNothingElse(Path file) throws IOException {
    try (Stream<Path> entries = Files.list(file.getParent())) {
      assertThat(entries).containsExactly(file);
    }
  }
}
