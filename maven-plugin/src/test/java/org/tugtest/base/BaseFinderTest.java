package org.tugtest.base;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tugtest.files.Choice;
import org.tugtest.files.Folders;
import org.tugtest.files.Scope;
import org.tugtest.git.Commit;
import org.tugtest.git.Environment;
import org.tugtest.git.RealGit;
import org.tugtest.read.ReadLimits;

class BaseFinderTest {
  private static final String CAR = "looms/car.harness.json";
  @TempDir Path top;
  private RealGit git;
  private String first;

  /** main has two commits; the branch side left it after the first. */
  @BeforeEach
  void twoBranches() throws IOException {
    git = RealGit.init(top.resolve("origin"));
    git.write(CAR, "one\n");
    first = git.commitAll("first");
    git.run("branch", "side");
    git.write(CAR, "two\n");
    git.commitAll("second");
    git.run("checkout", "-q", "side");
    git.write("looms/nose.json", "nose\n");
    git.commitAll("side");
  }

  @Test
  void wordsOfThePerson() {
    assertThat(BaseWord.of(null)).isEqualTo(new BaseWord.None());
    assertThat(BaseWord.of("  ")).isEqualTo(new BaseWord.None());
    assertThat(BaseWord.of("auto")).isEqualTo(new BaseWord.Auto(null));
    assertThat(BaseWord.of("auto:")).isEqualTo(new BaseWord.Auto(null));
    assertThat(BaseWord.of(" auto:night/run ")).isEqualTo(new BaseWord.Auto("night/run"));
    assertThat(BaseWord.of("file:../a b.json")).isEqualTo(new BaseWord.OnDisk("../a b.json"));
    assertThat(BaseWord.of("staged")).isEqualTo(new BaseWord.Staged());
    assertThat(BaseWord.of("automatic")).isEqualTo(new BaseWord.Revision("automatic"));
  }

  @Test
  void noneIsNotAsked() throws IOException {
    assertThat(find(git, "", Map.of())).isEqualTo(new Against.Unasked());
  }

  @Test
  void aNamedRevision() throws IOException {
    Against.Side side = side(find(git, "main~1", Map.of()));

    assertThat(side.shown()).isEqualTo("main~1");
    assertThat(side.commit()).extracting(Commit::id).isEqualTo(first);
    assertThat(side.files().paths()).containsExactly("car.harness.json");
    assertThat(side(find(git, first, Map.of())).shown()).isEqualTo(first.substring(0, 7));
  }

  @Test
  void aNamedRevisionThatIsNotThereCannotBeChecked() {
    assertThatThrownBy(() -> find(git, "sidee", Map.of()))
        .isInstanceOf(IOException.class)
        .hasMessage("there is no revision \"sidee\"; did you mean side?");
  }

  @Test
  void theIndex() throws IOException {
    git.write(CAR, "staged\n");
    git.run("add", "-A");

    Against.Side side = side(find(git, "staged", Map.of()));

    assertThat(side.shown()).isEqualTo("the index");
    assertThat(side.files().open("car.harness.json"))
        .isEqualTo(
            new org.tugtest.read.SourceFiles.Content.Bytes(
                "staged\n".getBytes(StandardCharsets.UTF_8)));
  }

  @Test
  void aFileOrAFolderOnDisk() throws IOException {
    Path old = Files.createDirectories(top.resolve("old one"));
    Files.writeString(old.resolve("donor.json"), "{}");
    Files.writeString(old.resolve("car.harness.json"), "{}");

    Against.Side file = side(find(git, "file:" + old.resolve("donor.json"), Map.of()));
    assertThat(file.root()).isEqualTo("donor.json");
    Against.Side folder = side(find(git, "file:" + old, Map.of()));
    assertThat(folder.root()).isNull();
    assertThat(folder.files().paths()).containsExactly("car.harness.json", "donor.json");
    assertThatThrownBy(() -> find(git, "file:" + old.resolve("none.json"), Map.of()))
        .isInstanceOf(IOException.class)
        .hasMessageEndingWith("none.json, which is not there; correct the path");
  }

  @Test
  void autoIsWhereTheBranchLeftTheOneThatTheCiSystemNames() throws IOException {
    for (Map<String, String> variables :
        List.of(
            Map.of("CI_MERGE_REQUEST_TARGET_BRANCH_NAME", "main"),
            Map.of("GITHUB_BASE_REF", "main"),
            Map.of("CHANGE_TARGET", "main"),
            Map.of("BITBUCKET_PR_DESTINATION_BRANCH", "main"),
            Map.of("SYSTEM_PULLREQUEST_TARGETBRANCH", "refs/heads/main"))) {
      Against.Side side = side(find(git, "auto:side", variables));
      assertThat(side.commit()).as("%s", variables).extracting(Commit::id).isEqualTo(first);
      assertThat(side.shown()).isEqualTo(first.substring(0, 7) + ", where this branch left main");
    }
  }

  @Test
  void autoIsElseTheBranchNamedThenThatOfTheOriginThenAUsualName() throws IOException {
    git.run("branch", "-m", "main", "trunk");
    assertThat(side(find(git, "auto:trunk", Map.of())).commit())
        .extracting(Commit::id)
        .isEqualTo(first);
    git.run("checkout", "-q", "trunk");
    RealGit here = cloned();
    here.run("checkout", "-q", "side");
    assertThat(side(find(here, "auto", Map.of())).commit()).extracting(Commit::id).isEqualTo(first);
    git.run("checkout", "-q", "side");
    git.run("branch", "-m", "trunk", "master");
    assertThat(side(find(git, "auto", Map.of())).commit()).extracting(Commit::id).isEqualTo(first);
  }

  @Test
  void autoTakesTheOriginsBranchBeforeAnOldLocalOne() throws IOException {
    git.run("checkout", "-q", "main");
    RealGit here = cloned();
    here.run("checkout", "-q", "-b", "topic", "origin/main");
    here.run("branch", "-f", "main", first);

    assertThat(side(find(here, "auto:main", Map.of())).commit())
        .extracting(Commit::id)
        .isEqualTo(git.run("rev-parse", "main"));
  }

  @Test
  void autoWithoutATargetIsUnfound() throws IOException {
    git.run("branch", "-m", "main", "trunk");

    assertThat(find(git, "auto", Map.of()))
        .isEqualTo(
            new Against.Unfound(
                "no target branch is known; name it, such as -Dtugtest.base=auto:main"));
    assertThat(find(git, "auto", Map.of("GITHUB_BASE_REF", "gone")))
        .isEqualTo(new Against.Unfound("there is no branch gone here (told by GITHUB_BASE_REF)"));
  }

  @Test
  void autoOfAForkThatSharesNothingIsUnfound() throws IOException {
    git.run("checkout", "-q", "--orphan", "fork");
    git.commitAll("fork");

    assertThat(find(git, "auto:main", Map.of()))
        .isEqualTo(new Against.Unfound("this branch and main share no commit"));
  }

  @Test
  void autoOfAHistoryCutShortNamesTheCommandThatMendsIt() throws IOException {
    git.run("checkout", "-q", "main");
    RealGit here = cloned("--depth", "1", "--branch", "side");

    assertThatThrownBy(() -> find(here, "auto", Map.of("GITHUB_BASE_REF", "main")))
        .isInstanceOf(IOException.class)
        .hasMessage(
            "this clone's history is cut short before it reaches main (told by GITHUB_BASE_REF);"
                + " fetch the rest with: git fetch --unshallow origin"
                + " \"+refs/heads/*:refs/remotes/origin/*\"");
    here.run("fetch", "-q", "--unshallow", "origin", "+refs/heads/*:refs/remotes/origin/*");
    assertThat(side(find(here, "auto", Map.of("GITHUB_BASE_REF", "main"))).commit())
        .extracting(Commit::id)
        .isEqualTo(first);
  }

  @Test
  void gitlabsOwnCommitServesWhereTheTargetBranchWasNotFetched() throws IOException {
    git.run("branch", "-m", "main", "elsewhere");

    Against.Side side =
        side(
            find(
                git,
                "auto",
                Map.of(
                    "CI_MERGE_REQUEST_TARGET_BRANCH_NAME",
                    "main",
                    "CI_MERGE_REQUEST_DIFF_BASE_SHA",
                    first)));

    assertThat(side.commit()).extracting(Commit::id).isEqualTo(first);
  }

  @Test
  void beforeTheFirstCommitThereIsNothing() throws IOException {
    RealGit fresh = RealGit.init(top.resolve("fresh"));
    Against nothing = new Against.Nothing("nothing is committed yet");

    assertThat(find(fresh, "HEAD", Map.of())).isEqualTo(nothing);
    assertThat(find(fresh, "auto", Map.of())).isEqualTo(nothing);
  }

  @Test
  void outsideGitANamedBaseCannotBeChecked() throws IOException {
    RealGit none = RealGit.in(top.resolve("none"));

    assertThatThrownBy(() -> find(none, "main", Map.of()))
        .isInstanceOf(IOException.class)
        .hasMessage("tugtest.base needs git, and the harness folder lies in no git work tree");
    assertThat(find(none, "auto", Map.of()))
        .isEqualTo(new Against.Unfound("the harness folder lies in no git work tree"));
  }

  @Test
  void parentsOfAMergeAreHeadAndWhatIsMerged() throws IOException {
    git.run("merge", "-q", "--no-commit", "--no-ff", "main");
    try (Ground ground = Ground.of(folders(git), Environment.EMPTY)) {
      Against.Sides sides =
          (Against.Sides) BaseFinder.parents(ground.needed("the test"), scope(git));

      assertThat(sides.base().commit())
          .extracting(Commit::id)
          .isEqualTo(git.run("rev-parse", "side"));
      assertThat(sides.further())
          .extracting(side -> side.commit().id())
          .containsExactly(git.run("rev-parse", "main"));
    }
  }

  private RealGit cloned(String... options) throws IOException {
    Path to = top.resolve("clone");
    ArrayList<String> command = new ArrayList<>(List.of("clone", "-q"));
    command.addAll(List.of(options));
    command.addAll(List.of("file://" + git.folder(), to.toString()));
    git.run(command.toArray(String[]::new));
    return RealGit.in(to);
  }

  private static Against find(RealGit git, String word, Map<String, String> variables)
      throws IOException {
    Environment environment = new Environment(variables);
    Ground ground = Ground.of(folders(git), environment);
    return new BaseFinder(ground, environment, scope(git), git.folder()::resolve)
        .find(BaseWord.of(word));
  }

  private static Against.Side side(Against against) {
    assertThat(against).isInstanceOf(Against.Sides.class);
    return ((Against.Sides) against).base();
  }

  private static Folders folders(RealGit git) {
    return new Folders(git.folder().resolve("looms"), List.of(), List.of());
  }

  private static Scope scope(RealGit git) {
    return new Scope(folders(git), Choice.ALL, ReadLimits.STANDARD);
  }
}
