package org.tugtest.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tugtest.read.ReadLimits;
import org.tugtest.read.SourceFiles.Content;

class DiskFilesTest {
  private static final ReadLimits LIMITS = new ReadLimits(100, 32, 4_000, 1_000);
  @TempDir Path top;
  private Path harness;

  @BeforeEach
  void makeFolder() throws IOException {
    harness = Files.createDirectories(top.resolve("Wagen # 1 %41 ä").resolve("harness"));
  }

  @Test
  void listsNothingWhereThereIsNoFolder() throws IOException {
    assertThat(files(top.resolve("nowhere")).paths()).isEmpty();
  }

  @Test
  void listsInNaturalOrderWithSlashes() throws IOException {
    write("w10.json", "w2.json", "looms/nose.json", "readings/a.csv", "car.harness.json");

    assertThat(files(harness).paths())
        .containsExactly(
            "car.harness.json", "looms/nose.json", "readings/a.csv", "w2.json", "w10.json");
  }

  @Test
  void passesOverOtherFilesDotsAndTheReports() throws IOException {
    write("a.json", ".hidden.json", ".git/x.json", "notes.txt", "target/tugtest/report.json");
    Folders folders = new Folders(harness, List.of(), List.of(harness.resolve("target")));

    DiskFiles files = DiskFiles.of(folders, Choice.ALL, LIMITS);

    assertThat(files.paths()).containsExactly("a.json");
  }

  @Test
  void tellsOfNamesThatLookLikeThoseOfHarnessFiles() throws IOException {
    write(
        "a.json", "NIGHT.Harness.JSON", "b.harness.json.txt", "PARTS.JSON", "notes.txt", ".X.JSON");

    assertThat(files(harness).paths()).containsExactly("a.json");
    assertThat(files(harness).remarks())
        .containsExactly(
            "b.harness.json.txt is not read; rename it so that it ends in .harness.json",
            "NIGHT.Harness.JSON is not read; rename it so that it ends in .harness.json",
            "PARTS.JSON is not read; rename it so that it ends in .json");
  }

  @Test
  void aLeftOutFolderAroundTheHarnessDoesNotHideIt() throws IOException {
    write("a.json");
    Folders folders = new Folders(harness, List.of(), List.of(top));

    assertThat(DiskFiles.of(folders, Choice.ALL, LIMITS).paths()).containsExactly("a.json");
  }

  @Test
  void namesSharedPartsFromTheHarnessFolder() throws IOException {
    write("a.json", "../shared/parts.json");
    Folders folders = new Folders(harness, List.of(harness.resolve("../shared")), List.of());

    DiskFiles files = DiskFiles.of(folders, Choice.ALL, LIMITS);

    assertThat(files.paths()).containsExactly("../shared/parts.json", "a.json");
    assertThat(text(files.open("../shared/parts.json"))).isEqualTo("{}");
  }

  @Test
  void opensWhatIsNotChosen() throws IOException {
    write("a.json", "b.json");
    DiskFiles files =
        DiskFiles.of(
            new Folders(harness, List.of(), List.of()),
            Choice.of(List.of("a.json"), List.of()),
            LIMITS);

    assertThat(files.paths()).containsExactly("a.json");
    assertThat(files.all()).containsExactly("a.json", "b.json");
    assertThat(text(files.open("b.json"))).isEqualTo("{}");
  }

  @Test
  void refusesWhatIsNotThereAndNamesTheNearest() throws IOException {
    write("looms/nose.json");

    assertThat(refused("looms/nsoe.json").message())
        .isEqualTo("is not there; did you mean looms/nose.json?");
    assertThat(refused("elsewhere.json").message()).isEqualTo("is not there");
    assertThat(refused("looms/nose.json/x.json").message())
        .isEqualTo("is not there; did you mean looms/nose.json?");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", "/etc/passwd", "a//b.json", "./a.json", "a\\b.json", "a\0b.json", "a/"})
  void refusesWhatIsNoRelativePath(String path) throws IOException {
    assertThat(refused(path).message()).isEqualTo("is no relative path with / between its names");
  }

  @ParameterizedTest
  @ValueSource(strings = {"../secret.json", "../../secret.json", "x/../../secret.json"})
  void refusesToLeaveTheFolders(String path) throws IOException {
    write("../secret.json", "x/a.json");

    assertThat(refused(path).message())
        .isEqualTo("lies outside the harness folder and the library folders");
  }

  @Test
  void refusesAPointerThatGitLfsLeftInPlaceOfTheFile() throws IOException {
    write("a.json");
    Files.writeString(
        harness.resolve("a.json"), "version https://git-lfs.github.com/spec/v1\noid sha256:ab\n");

    assertThat(refused("a.json").message())
        .isEqualTo("is a pointer of Git LFS, not the file itself");
  }

  @Test
  void refusesARoundTrip() throws IOException {
    write("a.json");

    assertThat(refused("../harness/a.json"))
        .isEqualTo(
            new Content.Refused("leaves the harness folder and comes back", "Write \"a.json\"."));
  }

  @Test
  void refusesALinkedFile() throws IOException {
    write("../secret.json");
    link(harness.resolve("a.json"), top.resolve("secret.json"));

    assertThat(files(harness).paths()).containsExactly("a.json");
    assertThat(refused("a.json").message()).isEqualTo("is a symbolic link; links are not followed");
  }

  @Test
  void refusesAFileBelowALinkedFolderAndSaysSo() throws IOException {
    write("../elsewhere/inner/a.json", "b.json");
    link(harness.resolve("looms"), harness.resolve("../elsewhere"));

    DiskFiles files = files(harness);

    assertThat(files.paths()).containsExactly("b.json");
    assertThat(files.remarks())
        .containsExactly(
            "looms is a link to another folder and is not followed; put the files themselves there,"
                + " or add the folder to tugtest.libraryDirectories");
    assertThat(refused("looms/inner/a.json").message())
        .isEqualTo("lies below looms, a symbolic link; links are not followed");
  }

  @Test
  void aHarnessFolderMayItselfBeReachedByALink() throws IOException {
    write("a.json");
    Path link = top.resolve("link");
    link(link, harness);

    assertThat(text(files(link).open("a.json"))).isEqualTo("{}");
  }

  @Test
  void readsUpToTheLimitAndNoFurther() throws IOException {
    Files.write(harness.resolve("most.json"), new byte[100]);
    Files.write(harness.resolve("over.json"), new byte[101]);

    assertThat(files(harness).open("most.json")).isEqualTo(new Content.Bytes(new byte[100]));
    assertThat(refused("over.json").message()).isEqualTo("is 101 bytes long; at most 100 are read");
  }

  @Test
  void refusesAFolder() throws IOException {
    Files.createDirectories(harness.resolve("looms.json"));

    assertThat(refused("looms.json").message()).isEqualTo("is a folder");
  }

  @Test
  void refusesAnotherSpellingWhereTheSystemDoesNotTellThemApart() throws IOException {
    write("Nose.json");
    boolean folds = Files.exists(harness.resolve("nose.json"));

    assertThat(refused("nose.json").message())
        .isEqualTo(
            folds
                ? "is spelled Nose.json on disk, and other systems tell the two apart"
                : "is not there; did you mean Nose.json?");
  }

  @Test
  void saysWhichFolderCannotBeListed() throws IOException {
    write("locked/a.json");
    Path locked = harness.resolve("locked");
    boolean posix = locked.getFileSystem().supportedFileAttributeViews().contains("posix");
    assumeTrue(posix, "folders are locked by POSIX permissions");
    Files.setPosixFilePermissions(locked, PosixFilePermissions.fromString("---------"));
    try {
      assumeTrue(!Files.isReadable(locked), "a superuser may list any folder");
      assertThatThrownBy(() -> files(harness))
          .isInstanceOf(IOException.class)
          .hasMessage(locked + " cannot be listed: access is denied");
    } finally {
      Files.setPosixFilePermissions(locked, PosixFilePermissions.fromString("rwx------"));
    }
  }

  private static DiskFiles files(Path folder) throws IOException {
    return DiskFiles.of(new Folders(folder, List.of(), List.of()), Choice.ALL, LIMITS);
  }

  private Content.Refused refused(String path) throws IOException {
    Content content = files(harness).open(path);
    assertThat(content).as(path).isInstanceOf(Content.Refused.class);
    return (Content.Refused) content;
  }

  private static String text(Content content) {
    assertThat(content).isInstanceOf(Content.Bytes.class);
    return new String(((Content.Bytes) content).bytes(), StandardCharsets.UTF_8);
  }

  private void write(String... paths) throws IOException {
    for (String path : paths) {
      Path file = harness.resolve(path).normalize();
      Files.createDirectories(file.getParent());
      Files.writeString(file, "{}");
    }
  }

  private static void link(Path link, Path target) throws IOException {
    try {
      Files.createSymbolicLink(link, target);
    } catch (UnsupportedOperationException | FileSystemException cannot) {
      assumeTrue(false, "this system makes no symbolic links: " + cannot);
    }
  }
}
