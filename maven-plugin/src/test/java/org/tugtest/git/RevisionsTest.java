package org.tugtest.git;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.assertj.core.api.AbstractThrowableAssert;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tugtest.files.Choice;
import org.tugtest.files.Folders;
import org.tugtest.files.Scope;
import org.tugtest.read.ReadLimits;
import org.tugtest.read.SourceFiles.Content;

class RevisionsTest {
  @TempDir Path top;
  @TempDir Path clone;
  private RealGit git;
  private String first;
  private String second;

  @BeforeEach
  void twoCommits() throws IOException {
    git = RealGit.init(top.resolve("origin"));
    git.write("looms/car.harness.json", "one\n");
    git.write("other.txt", "x\n");
    first = git.commitAll("first");
    git.write("looms/car.harness.json", "two\n");
    second = git.commitAll("second");
  }

  @Test
  void branchesTagsIdsAndWhatGitMakesOfThem() throws IOException {
    git.run("tag", "plain", first);
    git.run("tag", "-a", "-m", "m", "annotated", first);
    git.run("branch", "night/run", first);

    for (String name :
        List.of(
            "plain", "annotated", "night/run", "HEAD~1", "main^", first, first.substring(0, 7))) {
      assertThat(named(git, name).id()).as(name).isEqualTo(first);
    }
    assertThat(named(git, "HEAD").id()).isEqualTo(second);
    assertThat(named(git, "main@{1}").id()).isEqualTo(first);
  }

  @Test
  void filesOfARevision() throws IOException {
    try (WorkTree tree = tree(git)) {
      StoredFiles files = tree.at(tree.revisions().named("HEAD~1"), "HEAD~1", scope(git));
      assertThat(files.paths()).containsExactly("car.harness.json");
      assertThat(text(files)).isEqualTo("one\n");
      assertThat(files.unheld()).isEmpty();
      StoredFiles head = tree.at(tree.revisions().named("HEAD"), "HEAD", scope(git));
      assertThat(head.sameAs(tree.staged(scope(git)))).isTrue();
      assertThat(head.sameAs(files)).isFalse();
    }
  }

  @Test
  void aNearNameIsProposed() throws IOException {
    for (String branch : List.of("develop", "b1", "b2", "b3", "b4")) {
      git.run("branch", branch);
    }

    refusal(git, "maim").hasMessage("there is no revision \"maim\"; did you mean main?");
    refusal(git, "devlop").hasMessage("there is no revision \"devlop\"; did you mean develop?");
    refusal(git, "quite-another")
        .hasMessage(
            "there is no revision \"quite-another\"; there is b1, b2, b3, b4, develop and 1 more");
  }

  @Test
  void aBranchThatOnlyTheOriginHasIsProposedByItsFullName() throws IOException {
    git.run("branch", "night/run");
    RealGit here = cloned();

    refusal(here, "night/run")
        .hasMessage("there is no revision \"night/run\"; did you mean origin/night/run?");
    assertThat(named(here, "origin/night/run").id()).isEqualTo(second);
  }

  @Test
  void whatIsNoCommitIsSaid() throws IOException {
    git.run("tag", "a-file", git.run("rev-parse", "HEAD:other.txt"));

    refusal(git, "a-file").hasMessage("\"a-file\" names no commit");
    refusal(git, "HEAD:other.txt").hasMessageStartingWith("there is no revision \"HEAD:other.txt");
    refusal(git, "main^{nonsense").hasMessage("\"main^{nonsense\" is no name of a revision");
    refusal(git, "0123456789012345678901234567890123456789")
        .hasMessage(
            "the commit 0123456789012345678901234567890123456789 is not in this clone; fetch it"
                + " with: git fetch --all");
  }

  @Test
  void beforeTheFirstCommitThereIsNoHead(@TempDir Path fresh) throws IOException {
    RealGit empty = RealGit.init(fresh);

    refusal(empty, "HEAD").hasMessage("there is no revision \"HEAD\": nothing is committed yet");
    try (WorkTree tree = tree(empty)) {
      assertThat(tree.head()).isEmpty();
      assertThat(tree.revisions().find("HEAD")).isEmpty();
    }
  }

  @Test
  void aHistoryCutShortIsSaidAndTheCommandMendsIt() throws IOException {
    RealGit here = cloned("--depth", "1");

    refusal(here, "HEAD~1")
        .hasMessage(
            "there is no revision \"HEAD~1\" in this clone, whose history is cut short; fetch the"
                + " rest with: git fetch --unshallow");
    refusal(here, first)
        .hasMessage(
            "the commit " + first + " is not in this clone; fetch it with: git fetch --unshallow");
    here.run("fetch", "-q", "--unshallow");
    assertThat(named(here, "HEAD~1").id()).isEqualTo(first);
  }

  @Test
  void theMergeBaseIsWhereBothSidesPart() throws IOException {
    git.run("checkout", "-q", "-b", "side", first);
    git.write("looms/side.json", "{}\n");
    git.commitAll("side");
    git.run("checkout", "-q", "--orphan", "unrelated");
    git.commitAll("unrelated");

    try (WorkTree tree = tree(git)) {
      Revisions revisions = tree.revisions();
      assertThat(revisions.mergeBase(revisions.named("side"), revisions.named("main")))
          .map(Commit::id)
          .contains(first);
      assertThat(revisions.mergeBase(revisions.named("main"), revisions.named("main")))
          .map(Commit::id)
          .contains(second);
      assertThat(revisions.mergeBase(revisions.named("side"), revisions.named("unrelated")))
          .isEmpty();
      assertThat(revisions.shallow()).isFalse();
    }
  }

  @Test
  void aHistoryCutShortMayHideTheMergeBase() throws IOException {
    git.run("checkout", "-q", "-b", "side", first);
    git.write("looms/side.json", "{}\n");
    git.commitAll("side");
    git.run("checkout", "-q", "main");
    RealGit here = cloned("--depth", "1", "--no-single-branch");

    try (WorkTree tree = tree(here)) {
      Revisions revisions = tree.revisions();
      assertThat(revisions.mergeBase(revisions.named("HEAD"), revisions.named("origin/side")))
          .isEmpty();
      assertThat(revisions.shallow()).isTrue();
    }
    here.run("fetch", "-q", "--unshallow");
    try (WorkTree tree = tree(here)) {
      Revisions revisions = tree.revisions();
      assertThat(revisions.mergeBase(revisions.named("HEAD"), revisions.named("origin/side")))
          .map(Commit::id)
          .contains(first);
    }
  }

  @Test
  void theHookOfAMergeKnowsWhatIsMerged() throws IOException {
    Environment hook = new Environment(Map.of("GITHEAD_" + first, "side", "GITHEAD_nonsense", "x"));
    try (WorkTree tree = WorkTree.around(git.folder(), hook).orElseThrow()) {
      assertThat(tree.revisions().merging()).extracting(Commit::id).containsExactly(first);
    }
    try (WorkTree tree = tree(git)) {
      assertThat(tree.revisions().merging()).isEmpty();
    }
  }

  @Test
  void aCloneMadeInPartNamesTheCommandThatFetches() throws IOException {
    git.run("config", "uploadpack.allowFilter", "true");
    git.run("config", "uploadpack.allowAnySHA1InWant", "true");
    RealGit here = cloned("--filter=blob:none");

    try (WorkTree tree = tree(here)) {
      StoredFiles files = tree.at(tree.revisions().named("HEAD~1"), "HEAD~1", scope(here));
      assertThat(files.open("car.harness.json"))
          .isEqualTo(
              new Content.Refused(
                  "has no content in this clone, which was made in part",
                  "Fetch it with: git archive -o /dev/null HEAD~1 looms"));
      assertThat(files.unheld())
          .contains(
              "looms/car.harness.json at HEAD~1 has no content in this clone, which was made in"
                  + " part; fetch it with: git archive -o /dev/null HEAD~1 looms");
      assertThat(text(tree.staged(scope(here)))).isEqualTo("two\n");
    }
    here.run("archive", "-o", "/dev/null", "HEAD~1", "looms");
    try (WorkTree tree = tree(here)) {
      assertThat(text(tree.at(tree.revisions().named("HEAD~1"), "HEAD~1", scope(here))))
          .isEqualTo("one\n");
    }
  }

  @Test
  void aCloneWithoutFoldersNamesTheCommandThatFetches() throws IOException {
    git.run("config", "uploadpack.allowFilter", "true");
    git.run("config", "uploadpack.allowAnySHA1InWant", "true");
    RealGit here = cloned("--filter=tree:0");

    try (WorkTree tree = tree(here)) {
      Commit before = tree.revisions().named("HEAD~1");
      assertThatThrownBy(() -> tree.at(before, "HEAD~1", scope(here)))
          .isInstanceOf(IOException.class)
          .hasMessage(
              "the folders of HEAD~1 are not in this clone; fetch them with: git archive -o"
                  + " /dev/null HEAD~1 looms");
    }
    here.run("archive", "-o", "/dev/null", "HEAD~1", "looms");
    try (WorkTree tree = tree(here)) {
      assertThat(text(tree.at(tree.revisions().named("HEAD~1"), "HEAD~1", scope(here))))
          .isEqualTo("one\n");
    }
  }

  @Test
  void aPackedRepositoryAndABorrowedStoreAreRead() throws IOException {
    git.run("gc", "-q");
    RealGit here = cloned("--shared");

    assertThat(named(here, "HEAD~1").id()).isEqualTo(first);
    try (WorkTree tree = tree(here)) {
      assertThat(text(tree.staged(scope(here)))).isEqualTo("two\n");
    }
  }

  @Test
  void aRepositoryNamedBySha256IsSaidPlainly(@TempDir Path fresh) throws IOException {
    RealGit sha = RealGit.in(fresh);
    sha.run("init", "-q", "--object-format=sha256", ".");

    assertThatThrownBy(() -> WorkTree.around(fresh))
        .isInstanceOf(IOException.class)
        .hasMessage("this repository names its objects by sha256, which is not supported yet");
  }

  private RealGit cloned(String... options) throws IOException {
    Path to = clone.resolve("here");
    String[] command = new String[options.length + 4];
    command[0] = "clone";
    command[1] = "-q";
    System.arraycopy(options, 0, command, 2, options.length);
    command[command.length - 2] = "file://" + git.folder();
    command[command.length - 1] = to.toString();
    git.run(command);
    return RealGit.in(to);
  }

  private static Commit named(RealGit git, String name) throws IOException {
    try (WorkTree tree = tree(git)) {
      return tree.revisions().named(name);
    }
  }

  private static AbstractThrowableAssert<?, ? extends Throwable> refusal(RealGit git, String name) {
    return assertThatThrownBy(() -> named(git, name)).isInstanceOf(IOException.class);
  }

  private static WorkTree tree(RealGit git) throws IOException {
    return WorkTree.around(git.folder()).orElseThrow();
  }

  private static String text(StoredFiles files) {
    Content content = files.open("car.harness.json");
    return new String(((Content.Bytes) content).bytes(), StandardCharsets.UTF_8);
  }

  private static Scope scope(RealGit git) {
    Folders folders = new Folders(git.folder().resolve("looms"), List.of(), List.of());
    return new Scope(folders, Choice.ALL, ReadLimits.STANDARD);
  }
}
