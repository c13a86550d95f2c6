package org.tugtest.goal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FolderContentsTest {
  @TempDir private Path top;

  private Path folder() throws IOException {
    Path folder = Files.createDirectories(top.resolve("documents"));
    for (String name : List.of("index.html", "loom-nose/cut.html", "ring-out-filled.csv")) {
      Files.createDirectories(folder.resolve(name).getParent());
      Files.writeString(folder.resolve(name), name);
    }
    Files.writeString(top.resolve("report.html"), "report");
    return folder;
  }

  @Test
  void removesWhatAnEarlierRunWroteAndNothingElse() throws IOException {
    Path folder = folder();
    Files.writeString(
        folder.resolve(FolderContents.FILE),
        FolderContents.text(List.of("index.html", "loom-nose/cut.html")));
    int gone = FolderContents.of(folder).removeAllBut(List.of("index.html", "cut.html"));
    assertThat(gone).isEqualTo(1);
    assertThat(folder.resolve("loom-nose/cut.html")).doesNotExist();
    assertThat(folder.resolve("index.html")).exists();
    assertThat(folder.resolve("ring-out-filled.csv")).exists();
  }

  @Test
  void removesNothingWithoutAList() throws IOException {
    assertThat(FolderContents.of(folder()).removeAllBut(List.of())).isZero();
  }

  @Test
  void neverLeavesTheFolderWhateverTheListSays() throws IOException {
    Path folder = folder();
    Files.writeString(
        folder.resolve(FolderContents.FILE),
        "../report.html\n" + top.resolve("report.html") + "\n.\n\nloom-nose\nno\0name\n");
    assertThat(FolderContents.of(folder).removeAllBut(List.of())).isZero();
    assertThat(top.resolve("report.html")).exists();
    assertThat(folder.resolve("loom-nose/cut.html")).exists();
  }
}
