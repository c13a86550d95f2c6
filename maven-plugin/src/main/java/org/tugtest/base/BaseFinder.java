package org.tugtest.base;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.tugtest.base.Against.Side;
import org.tugtest.files.Choice;
import org.tugtest.files.DiskFiles;
import org.tugtest.files.Folders;
import org.tugtest.files.Scope;
import org.tugtest.git.Commit;
import org.tugtest.git.Environment;
import org.tugtest.git.Revisions;
import org.tugtest.git.WorkTree;

/**
 * Finds what a check is held against.
 *
 * @param path how a path that a person gave is resolved
 */
public record BaseFinder(
    Ground ground, Environment environment, Scope scope, Function<String, Path> path) {
  private static final String BASE = "tugtest.base";

  /**
   * Finds the base.
   *
   * @throws IOException when a base that was named cannot be read, or the history that is needed is
   *     cut short; the message is a whole sentence and names the command that mends it
   */
  public Against find(BaseWord word) throws IOException {
    if (word instanceof BaseWord.None) {
      return new Against.Unasked();
    }
    if (word instanceof BaseWord.OnDisk file) {
      return new Against.Sides(onDisk(file.path()), List.of());
    }
    if (word instanceof BaseWord.Auto auto) {
      return auto(auto);
    }
    WorkTree tree = ground.needed(BASE);
    if (word instanceof BaseWord.Staged) {
      return new Against.Sides(new Side("the index", tree.staged(scope), null, null), List.of());
    }
    String name = ((BaseWord.Revision) word).name();
    Optional<Commit> head = tree.head();
    if (head.isEmpty()) {
      return new Against.Nothing("nothing is committed yet");
    }
    return new Against.Sides(side(tree, tree.revisions().named(name), name), List.of());
  }

  /**
   * HEAD, and what is being merged into it: the parents of the commit to come.
   *
   * @throws IOException when one of them cannot be read; the message is a whole sentence
   */
  public static Against parents(WorkTree tree, Scope scope) throws IOException {
    Optional<Commit> head = tree.head();
    if (head.isEmpty()) {
      return new Against.Nothing("nothing is committed yet");
    }
    List<Side> merged = new ArrayList<>();
    for (Commit parent : tree.revisions().merging()) {
      merged.add(new Side(parent.shortId(), tree.at(parent, parent.id(), scope), parent, null));
    }
    return new Against.Sides(
        new Side("HEAD", tree.at(head.get(), "HEAD", scope), head.get(), null), merged);
  }

  private Side side(WorkTree tree, Commit commit, String name) throws IOException {
    String shown = commit.id().startsWith(name) ? commit.shortId() : name;
    return new Side(shown, tree.at(commit, name, scope), commit, null);
  }

  private Side onDisk(String given) throws IOException {
    Path file = path.apply(given);
    List<Path> shared = scope.folders().libraries();
    if (Files.isDirectory(file)) {
      Folders folders = new Folders(file, shared, scope.folders().leftOut());
      return new Side(given, DiskFiles.of(folders, scope.choice(), scope.limits()), null, null);
    }
    if (!Files.isRegularFile(file) || file.getParent() == null) {
      throw new IOException(
          BASE + " names the file " + given + ", which is not there; correct the path");
    }
    Folders folders = new Folders(file.getParent(), shared, scope.folders().leftOut());
    return new Side(
        given,
        DiskFiles.of(folders, Choice.ALL, scope.limits()),
        null,
        String.valueOf(file.getFileName()));
  }

  private Against auto(BaseWord.Auto auto) throws IOException {
    if (ground.tree() == null) {
      return new Against.Unfound(
          ground.trouble() == null
              ? "the harness folder lies in no git work tree"
              : ground.trouble());
    }
    WorkTree tree = ground.tree();
    Optional<Commit> head = tree.head();
    if (head.isEmpty()) {
      return new Against.Nothing("nothing is committed yet");
    }
    Revisions revisions = tree.revisions();
    Optional<TargetBranch> told = TargetBranch.of(environment, auto.branch());
    Optional<TargetBranch> target = told.isPresent() ? told : usual(revisions);
    if (target.isEmpty()) {
      return new Against.Unfound(
          "no target branch is known; name it, such as -Dtugtest.base=auto:main");
    }
    String name = target.get().name();
    Optional<Commit> tip = revisions.branch(name);
    Optional<Commit> base =
        tip.isPresent() ? revisions.mergeBase(head.get(), tip.get()) : toldBase(revisions);
    if (base.isPresent()) {
      return new Against.Sides(
          new Side(
              base.get().shortId() + ", where this branch left " + name,
              tree.at(base.get(), base.get().id(), scope),
              base.get(),
              null),
          List.of());
    }
    if (revisions.shallow()) {
      throw new IOException(
          "this clone's history is cut short before it reaches "
              + name
              + " ("
              + target.get().from()
              + "); fetch the rest with: git fetch --unshallow origin"
              + " \"+refs/heads/*:refs/remotes/origin/*\"");
    }
    return new Against.Unfound(
        tip.isPresent()
            ? "this branch and " + name + " share no commit"
            : "there is no branch " + name + " here (" + target.get().from() + ")");
  }

  /** GitLab tells the commit itself, and fetches no target branch. */
  private Optional<Commit> toldBase(Revisions revisions) throws IOException {
    Optional<String> id = environment.get("CI_MERGE_REQUEST_DIFF_BASE_SHA");
    return id.isEmpty() ? Optional.empty() : revisions.held(id.get());
  }

  private static Optional<TargetBranch> usual(Revisions revisions) throws IOException {
    Optional<String> named = revisions.branchOfOrigin();
    if (named.isPresent()) {
      return named.map(branch -> new TargetBranch(branch, "told by origin"));
    }
    for (String usual : List.of("main", "master")) {
      if (revisions.branch(usual).isPresent()) {
        return Optional.of(new TargetBranch(usual, "a usual name"));
      }
    }
    return Optional.empty();
  }
}
