package org.tugtest.git;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.jgit.dircache.DirCache;
import org.eclipse.jgit.dircache.DirCacheEntry;
import org.eclipse.jgit.lib.Repository;
import org.tugtest.files.Folders;

/**
 * Lists the harness files of the index: the content that the next commit would have. Files left out
 * of a sparse work tree are among them, since the commit keeps them.
 */
final class IndexListing {
  private IndexListing() {}

  /**
   * Reads the index; one that is not there is empty.
   *
   * @throws IOException when it cannot be read; the message is a whole sentence
   */
  static Listing of(Repository repository, Path top, Folders folders) throws IOException {
    Listing.Gathered gathered = new Listing.Gathered(folders, top);
    DirCache index = read(repository);
    for (int i = 0; i < index.getEntryCount(); i++) {
      DirCacheEntry entry = index.getEntry(i);
      String path = entry.getPathString();
      if (!gathered.takes(path)) {
        continue;
      }
      if (entry.getStage() != DirCacheEntry.STAGE_0) {
        gathered.put(path, new Entry.Conflict());
      } else if (entry.isIntentToAdd()) {
        gathered.remark(
            path
                + " is announced only (git add -N) and not part of the commit; add it with: git add"
                + " "
                + path);
      } else {
        gathered.add(path, entry.getFileMode(), entry.getObjectId());
      }
    }
    return gathered.done();
  }

  private static DirCache read(Repository repository) throws IOException {
    try {
      return repository.readDirCache();
    } catch (IOException unread) {
      throw new IOException(why(repository.getIndexFile(), unread), unread);
    }
  }

  /** Two forms of the index that JGit does not read begin an extension with these letters. */
  private static String why(File index, IOException unread) throws IOException {
    String raw = new String(Files.readAllBytes(index.toPath()), StandardCharsets.ISO_8859_1);
    if (raw.contains("sdir\0")) {
      return "git's index is a sparse one, which is not supported yet; make it whole with: git"
          + " sparse-checkout reapply --no-sparse-index";
    }
    if (raw.contains("link\0")) {
      return "git's index is split in two files, which is not supported yet; make it one with: git"
          + " update-index --no-split-index";
    }
    return "git's index cannot be read: " + unread.getMessage();
  }
}
