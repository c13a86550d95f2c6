package org.tugtest.git;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.eclipse.jgit.errors.MissingObjectException;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectLoader;
import org.eclipse.jgit.lib.Repository;
import org.tugtest.files.Folders;
import org.tugtest.files.HarnessFiles;
import org.tugtest.files.LfsPointer;
import org.tugtest.files.Refusals;
import org.tugtest.files.Scope;
import org.tugtest.text.NaturalOrder;

/**
 * The harness files of a commit or of the index, byte for byte as git keeps them: no filter, no
 * change of line ends. Good for as long as the {@link WorkTree} is open.
 */
public final class StoredFiles implements HarnessFiles {
  private final Repository repository;
  private final Path top;
  private final Listing listing;
  private final Scope scope;
  private final Source source;
  private final List<String> all;
  private final List<String> chosen;
  private final Set<String> unheld = new TreeSet<>(NaturalOrder.NATURAL);

  /**
   * Where in git the files are.
   *
   * @param shown as a sentence goes on after a path, such as {@code at main}
   * @param fetch the command that fetches contents which this clone lacks
   */
  record Source(String shown, String fetch) {}

  StoredFiles(Repository repository, Path top, Listing listing, Scope scope, Source source) {
    this.repository = repository;
    this.top = top;
    this.listing = listing;
    this.scope = scope;
    this.source = source;
    this.all = List.copyOf(listing.entries().keySet());
    this.chosen = all.stream().filter(scope.choice()::takes).toList();
  }

  @Override
  public List<String> paths() {
    return chosen;
  }

  @Override
  public List<String> all() {
    return all;
  }

  @Override
  public List<String> remarks() {
    return listing.remarks();
  }

  /**
   * Why a file that was opened could not be judged, when git holds its name without its content;
   * one whole sentence for all such files.
   */
  public Optional<String> unheld() {
    synchronized (unheld) {
      return unheld.stream().findFirst();
    }
  }

  /** Whether the same files have the same contents in both. */
  public boolean sameAs(StoredFiles other) {
    return listing.entries().equals(other.listing.entries());
  }

  /** Whether the files on disk are the same; line ends do not count, as git may change them. */
  boolean sameAs(HarnessFiles disk) {
    return all.equals(disk.all()) && all.stream().allMatch(path -> same(path, disk.open(path)));
  }

  private boolean same(String path, Content content) {
    Entry entry = listing.entries().get(path);
    if (content instanceof Content.Bytes read && entry instanceof Entry.Blob blob) {
      return Blobs.holds(blob.id(), read.bytes());
    }
    return entry instanceof Entry.Link && content.equals(Refusals.link());
  }

  @Override
  public Content open(String path) {
    Optional<Content.Refused> refused = Refusals.ofPath(scope.folders(), path);
    if (refused.isPresent()) {
      return refused.get();
    }
    Entry entry = listing.entries().get(path);
    if (entry instanceof Entry.Blob blob) {
      return read(path, blob.id());
    }
    if (entry instanceof Entry.Link) {
      return Refusals.link();
    }
    if (entry instanceof Entry.Conflict) {
      return new Content.Refused(
          "is in conflict: a merge left several versions of it",
          "Resolve the conflict and add the file with git add.");
    }
    return Refusals.notThere(path, all);
  }

  private Content read(String path, ObjectId id) {
    try {
      ObjectLoader loader = repository.open(id, Constants.OBJ_BLOB);
      if (loader.getSize() > scope.limits().bytes()) {
        return Refusals.tooLong(loader.getSize() + " bytes", scope.limits());
      }
      byte[] bytes = loader.getBytes();
      return LfsPointer.is(bytes) ? pointer(path) : new Content.Bytes(bytes);
    } catch (MissingObjectException absent) {
      return unheld(
          path,
          "has no content in this clone, which was made in part",
          "Fetch it with: " + source.fetch());
    } catch (IOException broken) {
      return unheld(
          path,
          "cannot be read from git's store: " + broken.getMessage(),
          "Look what is broken with: git fsck");
    }
  }

  private Content pointer(String path) {
    return unheld(
        path,
        "is a pointer of Git LFS, so git itself does not hold its content",
        "Keep harness files in git: git lfs untrack \"*.json\" && git add --renormalize .");
  }

  private Content unheld(String path, String message, String remedy) {
    synchronized (unheld) {
      unheld.add(
          inTree(path) + " " + source.shown() + " " + message + "; " + decapitalised(remedy));
    }
    return new Content.Refused(message, remedy);
  }

  private String inTree(String path) {
    return Folders.slashed(top.relativize(scope.folders().at(path)));
  }

  private static String decapitalised(String sentence) {
    return Character.toLowerCase(sentence.charAt(0)) + sentence.substring(1);
  }
}
