package org.tugtest.git;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.treewalk.TreeWalk;
import org.eclipse.jgit.treewalk.filter.PathFilterGroup;
import org.tugtest.files.Folders;

/** Lists the harness files of a commit. */
final class CommitListing {
  private CommitListing() {}

  static Listing of(Repository repository, Path top, Commit commit, Folders folders)
      throws IOException {
    Listing.Gathered gathered = new Listing.Gathered(folders, top);
    if (!gathered.any()) {
      return gathered.done();
    }
    try (RevWalk walk = new RevWalk(repository);
        TreeWalk tree = new TreeWalk(repository)) {
      tree.addTree(walk.parseCommit(ObjectId.fromString(commit.id())).getTree());
      tree.setRecursive(true);
      List<String> below = gathered.below();
      if (!below.isEmpty()) {
        tree.setFilter(PathFilterGroup.createFromStrings(below));
      }
      while (tree.next()) {
        if (gathered.takes(tree.getPathString())) {
          gathered.add(tree.getPathString(), tree.getFileMode(0), tree.getObjectId(0));
        }
      }
      return gathered.done();
    }
  }
}
