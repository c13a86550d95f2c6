package org.tugtest.base;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.files.Folders;
import org.tugtest.git.Environment;
import org.tugtest.git.WorkTree;

/**
 * The ground a check stands on: the work tree around the harness folder, or none.
 *
 * @param tree null outside git, and where git's own folder cannot be read
 * @param trouble why it cannot be read, a sentence without a full stop; null when it can, or when
 *     there is none
 */
public record Ground(@Nullable WorkTree tree, @Nullable String trouble) implements AutoCloseable {

  /** Looks for a work tree around the harness folder. */
  public static Ground of(Folders folders, Environment environment) {
    try {
      return new Ground(WorkTree.around(folders.harness(), environment).orElse(null), null);
    } catch (IOException broken) {
      return new Ground(null, String.valueOf(broken.getMessage()));
    }
  }

  /**
   * The work tree, where nothing can be done without one.
   *
   * @param what needs it, such as {@code tugtest.staged}
   * @throws IOException when there is none; the message is a whole sentence
   */
  public WorkTree needed(String what) throws IOException {
    if (tree != null) {
      return tree;
    }
    throw new IOException(
        what
            + " needs git, and "
            + (trouble == null ? "the harness folder lies in no git work tree" : trouble));
  }

  /**
   * The folder that places are shown from: the top of the work tree, else {@code project} where the
   * harness lies in it.
   */
  public Path shownFrom(Folders folders, Path project) {
    if (tree != null) {
      return tree.top();
    }
    return folders.harness().startsWith(project) ? project : folders.harness();
  }

  /** The library folder that lies outside the work tree, so that revisions would not have it. */
  public Optional<Path> outside(Folders folders) {
    return tree == null
        ? Optional.empty()
        : folders.libraries().stream().filter(folder -> !folder.startsWith(tree.top())).findFirst();
  }

  @Override
  public void close() {
    if (tree != null) {
      tree.close();
    }
  }
}
