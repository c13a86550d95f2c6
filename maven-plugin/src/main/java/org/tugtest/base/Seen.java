package org.tugtest.base;

import java.io.IOException;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.files.DiskFiles;
import org.tugtest.files.HarnessFiles;
import org.tugtest.files.Scope;
import org.tugtest.git.Commit;
import org.tugtest.git.StoredFiles;
import org.tugtest.git.WorkTree;
import org.tugtest.report.Revision;

/**
 * What is checked, as git sees it, and the day it is held against. The one place where that day is
 * decided.
 *
 * @param remarks what could not be found out and what a person should know, each a sentence
 */
public record Seen(HarnessFiles files, Revision revision, List<String> remarks) {
  private static final String FROM_COMMIT = "the date of the commit";

  public Seen {
    remarks = List.copyOf(remarks);
  }

  /**
   * The files on disk. What git cannot answer is a remark.
   *
   * @param today the day that was asked for; null: that of the commit, else of the clock
   */
  public static Seen onDisk(
      Ground ground, Scope scope, DiskFiles files, @Nullable LocalDate today, Clock clock) {
    List<String> remarks = new ArrayList<>(files.remarks());
    if (ground.trouble() != null) {
      remarks.add(ground.trouble() + "; the check goes on as outside git");
    }
    Commit head = head(ground.tree(), remarks);
    boolean dirty = differs(ground.tree(), head, scope, files, remarks);
    LocalDate day = head == null ? LocalDate.now(clock) : head.day();
    String from = head == null ? "the clock" : FROM_COMMIT;
    if (head == null && ground.tree() != null) {
      from = "the clock, since nothing is committed yet";
    }
    return seen(files, head, dirty, day, from, today, remarks);
  }

  private static @Nullable Commit head(@Nullable WorkTree tree, List<String> remarks) {
    if (tree == null) {
      return null;
    }
    try {
      return tree.head().orElse(null);
    } catch (IOException broken) {
      remarks.add(broken.getMessage() + "; the check goes on without a revision");
      return null;
    }
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

  /**
   * The content of the next commit. Its day is the clock's, but never before that of HEAD.
   *
   * @param today the day that was asked for; null: see above
   * @throws IOException when git cannot say; the message is a whole sentence
   */
  public static Seen staged(WorkTree tree, Scope scope, @Nullable LocalDate today, Clock clock)
      throws IOException {
    StoredFiles files = tree.staged(scope);
    Commit head = tree.head().orElse(null);
    LocalDate now = LocalDate.now(clock);
    boolean ahead = head != null && head.day().isAfter(now);
    boolean dirty = head == null || !files.sameAs(tree.at(head, "HEAD", scope));
    return seen(
        files,
        head,
        dirty,
        ahead ? head.day() : now,
        ahead ? FROM_COMMIT : "the clock",
        today,
        files.remarks());
  }

  /**
   * The files of a revision. Its day is that of its commit.
   *
   * @param today the day that was asked for; null: see above
   * @throws IOException when there is no such revision, or it cannot be read; the message is a
   *     whole sentence
   */
  public static Seen at(WorkTree tree, Scope scope, String name, @Nullable LocalDate today)
      throws IOException {
    Commit commit = tree.revisions().named(name);
    StoredFiles files = tree.at(commit, name, scope);
    return seen(files, commit, false, commit.day(), FROM_COMMIT, today, List.of());
  }

  private static Seen seen(
      HarnessFiles files,
      @Nullable Commit head,
      boolean dirty,
      LocalDate day,
      String from,
      @Nullable LocalDate today,
      List<String> remarks) {
    String commit = head == null ? null : head.id();
    Revision revision =
        today == null
            ? new Revision(commit, dirty, day, from)
            : new Revision(commit, dirty, today, "tugtest.today");
    return new Seen(files, revision, remarks);
  }
}
