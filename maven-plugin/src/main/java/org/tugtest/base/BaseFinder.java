package org.tugtest.base;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.tugtest.base.Against.Fork;
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
      return new Against.Sides(onDisk(file.path()));
    }
    if (word instanceof BaseWord.Auto auto) {
      return auto(auto);
    }
    WorkTree tree = ground.needed(BASE);
    if (word instanceof BaseWord.Staged) {
      return new Against.Sides(new Side("the index", tree.staged(scope), null, null));
    }
    String name = ((BaseWord.Revision) word).name();
    Optional<Commit> head = tree.head();
    if (head.isEmpty()) {
      return new Against.Nothing("nothing is committed yet");
    }
    return new Against.Sides(side(tree, tree.revisions().named(name), name));
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
    Side ours = new Side("HEAD", tree.at(head.get(), "HEAD", scope), head.get(), null);
    List<Side> further = new ArrayList<>();
    for (Commit parent : tree.revisions().merging()) {
      further.add(side(tree, parent, parent.id(), scope));
    }
    Fork fork = further.size() == 1 ? fork(tree, ours, further.get(0), scope).orElse(null) : null;
    return new Against.Sides(ours, further, fork);
  }

  /** Where two sides part; empty when that is not known here, which hinders no check. */
  private static Optional<Fork> fork(WorkTree tree, Side ours, Side theirs, Scope scope)
      throws IOException {
    if (ours.commit() == null || theirs.commit() == null) {
      return Optional.empty();
    }
    Optional<Commit> origin = tree.revisions().mergeBase(ours.commit(), theirs.commit());
    return origin.isEmpty()
        ? Optional.empty()
        : Optional.of(new Fork(side(tree, origin.get(), origin.get().id(), scope), ours, theirs));
  }

  /**
   * Two revisions and where they part.
   *
   * @throws IOException when one cannot be read or they share nothing here; the message is a whole
   *     sentence
   */
  public Against.Sides fork(String ours, String theirs) throws IOException {
    WorkTree tree = ground.needed("a comparison of two branches");
    Revisions revisions = tree.revisions();
    Side mine = side(tree, revisions.named(ours), ours, scope);
    Side other = side(tree, revisions.named(theirs), theirs, scope);
    Optional<Fork> fork = fork(tree, mine, other, scope);
    if (fork.isEmpty()) {
      throw new IOException(
          ours
              + " and "
              + theirs
              + " share no commit here"
              + (revisions.shallow()
                  ? ", since this clone's history is cut short; fetch the rest with: "
                      + revisions.fetching()
                  : ""));
    }
    return new Against.Sides(fork.get().origin(), List.of(mine, other), fork.get());
  }

  private Side side(WorkTree tree, Commit commit, String name) throws IOException {
    return side(tree, commit, name, scope);
  }

  private static Side side(WorkTree tree, Commit commit, String name, Scope scope)
      throws IOException {
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
              null));
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
