package org.tugtest.goal;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.maven.plugin.MojoExecutionException;
import org.jspecify.annotations.Nullable;
import org.tugtest.files.DiskFiles;
import org.tugtest.files.Folders;
import org.tugtest.files.Scope;
import org.tugtest.git.Commit;
import org.tugtest.git.WorkTree;
import org.tugtest.report.Revision;

/**
 * What is checked, as git sees it, and the day it is held against. The one place where that day is
 * decided.
 *
 * @param from folder that places are shown from: the top of the work tree, else the project's
 * @param remarks what could not be found out, each a sentence
 */
record Seen(Revision revision, Path from, List<String> remarks) {

  /**
   * Looks at git and, where that gives no day, at the clock.
   *
   * @param today the day that was asked for; null: that of the commit, else of the clock
   */
  static Seen of(
      Surroundings around, Scope scope, DiskFiles files, @Nullable LocalDate today, Clock clock)
      throws MojoExecutionException {
    Folders folders = scope.folders();
    Path project = folders.harness().startsWith(around.base()) ? around.base() : folders.harness();
    List<String> remarks = new ArrayList<>();
    try (Opened git = open(folders.harness(), remarks)) {
      Path from = git.tree() == null ? project : git.tree().top();
      if (git.tree() != null) {
        refuseOutside(around, folders, from);
      }
      Commit head = git.head(remarks);
      boolean dirty = differs(git.tree(), head, scope, files, remarks);
      String commit = head == null ? null : head.id();
      return new Seen(
          new Revision(commit, dirty, day(today, head, clock), dayFrom(today, head, git)),
          from,
          List.copyOf(remarks));
    }
  }

  private static LocalDate day(@Nullable LocalDate today, @Nullable Commit head, Clock clock) {
    if (today != null) {
      return today;
    }
    return head == null ? LocalDate.now(clock) : head.day();
  }

  private static String dayFrom(@Nullable LocalDate today, @Nullable Commit head, Opened git) {
    if (today != null) {
      return "tugtest.today";
    }
    if (head != null) {
      return "the date of the commit";
    }
    return git.tree() == null ? "the clock" : "the clock, since nothing is committed yet";
  }

  private static boolean differs(
      @Nullable WorkTree tree,
      @Nullable Commit head,
      Scope scope,
      DiskFiles files,
      List<String> remarks) {
    if (tree == null || head == null) {
      return tree != null;
    }
    try {
      return tree.differs(head, scope, files);
    } catch (IOException missing) {
      remarks.add(missing.getMessage() + "; they are taken as changed");
      return true;
    }
  }

  private static void refuseOutside(Surroundings around, Folders folders, Path top)
      throws MojoExecutionException {
    for (Path library : folders.libraries()) {
      if (!library.startsWith(top)) {
        throw new MojoExecutionException(
            "tugtest.libraryDirectories names "
                + around.show(library)
                + ", which lies outside the git work tree "
                + around.show(top)
                + "; move it inside, so that every revision has its own parts");
      }
    }
  }

  private static Opened open(Path folder, List<String> remarks) {
    try {
      return new Opened(WorkTree.around(folder).orElse(null));
    } catch (IOException broken) {
      remarks.add(broken.getMessage() + "; the check goes on as outside git");
      return new Opened(null);
    }
  }

  /** The work tree, if there is one. */
  private record Opened(@Nullable WorkTree tree) implements AutoCloseable {
    @Nullable Commit head(List<String> remarks) {
      if (tree == null) {
        return null;
      }
      try {
        Optional<Commit> head = tree.head();
        return head.orElse(null);
      } catch (IOException broken) {
        remarks.add(broken.getMessage() + "; the check goes on without a revision");
        return null;
      }
    }

    @Override
    public void close() {
      if (tree != null) {
        tree.close();
      }
    }
  }
}
