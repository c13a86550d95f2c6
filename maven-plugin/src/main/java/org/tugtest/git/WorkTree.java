package org.tugtest.git;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectInserter;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.storage.file.FileRepositoryBuilder;
import org.eclipse.jgit.treewalk.TreeWalk;
import org.eclipse.jgit.treewalk.filter.PathFilterGroup;
import org.tugtest.files.DiskFiles;
import org.tugtest.files.Folders;
import org.tugtest.read.SourceFiles.Content;

/** The git work tree that holds a folder. It is only read; nothing is written to the repository. */
public final class WorkTree implements AutoCloseable {
  private final Repository repository;
  private final Path top;

  private WorkTree(Repository repository, Path top) {
    this.repository = repository;
    this.top = top;
  }

  /**
   * Opens the innermost work tree around {@code folder}, which need not exist.
   *
   * @return empty when no folder above it is a work tree
   * @throws IOException when there is one that cannot be read; the message is a whole sentence
   */
  public static Optional<WorkTree> around(Path folder) throws IOException {
    QuietReader.install();
    Path from = folder.toAbsolutePath().normalize();
    while (!Files.isDirectory(from)) {
      Path parent = from.getParent();
      if (parent == null) {
        return Optional.empty();
      }
      from = parent;
    }
    FileRepositoryBuilder builder = new FileRepositoryBuilder().findGitDir(from.toFile());
    if (builder.getGitDir() == null) {
      return Optional.empty();
    }
    return open(builder);
  }

  private static Optional<WorkTree> open(FileRepositoryBuilder builder) throws IOException {
    Repository repository;
    try {
      repository = builder.setMustExist(true).build();
    } catch (IOException | IllegalArgumentException broken) {
      throw new IOException("git's own folder cannot be read: " + broken.getMessage(), broken);
    }
    boolean kept = false;
    try {
      if (repository.isBare()) {
        return Optional.empty();
      }
      String objects = repository.getConfig().getString("extensions", null, "objectFormat");
      if (objects != null && !objects.equalsIgnoreCase("sha1")) {
        throw new IOException(
            "this repository names its objects by " + objects + ", which is not supported yet");
      }
      File top = repository.getWorkTree();
      kept = true;
      return Optional.of(new WorkTree(repository, top.toPath().toAbsolutePath().normalize()));
    } finally {
      if (!kept) {
        repository.close();
      }
    }
  }

  /** Its uppermost folder, absolute. */
  public Path top() {
    return top;
  }

  /**
   * The commit that HEAD names.
   *
   * @return empty before the first commit
   * @throws IOException when it cannot be read; the message is a whole sentence
   */
  public Optional<Commit> head() throws IOException {
    try (RevWalk walk = new RevWalk(repository)) {
      ObjectId id = repository.resolve(Constants.HEAD + "^{commit}");
      if (id == null) {
        return Optional.empty();
      }
      RevCommit commit = walk.parseCommit(id);
      LocalDate day =
          commit
              .getCommitterIdent()
              .getWhenAsInstant()
              .atZone(commit.getCommitterIdent().getZoneId())
              .toLocalDate();
      return Optional.of(new Commit(commit.name(), day));
    } catch (IOException broken) {
      throw new IOException("git's HEAD cannot be read: " + broken.getMessage(), broken);
    }
  }

  /**
   * Whether the harness files on disk are others than in a commit: one more, one less, or another
   * content. Ends of lines do not count, since git may change them on the way to the disk.
   *
   * @throws IOException when the commit's folders cannot be read
   */
  public boolean differs(Commit commit, Folders folders, DiskFiles files) throws IOException {
    Map<String, ObjectId> committed = committed(commit, folders);
    Set<String> onDisk = new LinkedHashSet<>();
    for (String path : files.all()) {
      Path file = folders.harness().resolve(path).normalize();
      if (file.startsWith(top)) {
        String inTree = Folders.slashed(top.relativize(file));
        onDisk.add(inTree);
        if (!same(committed.get(inTree), files.open(path))) {
          return true;
        }
      }
    }
    return !onDisk.equals(committed.keySet());
  }

  private static boolean same(@org.jspecify.annotations.Nullable ObjectId id, Content content) {
    if (id == null || !(content instanceof Content.Bytes read)) {
      return false;
    }
    return id.equals(blobId(read.bytes())) || id.equals(blobId(withoutReturns(read.bytes())));
  }

  private static ObjectId blobId(byte[] content) {
    try (ObjectInserter.Formatter formatter = new ObjectInserter.Formatter()) {
      return formatter.idFor(Constants.OBJ_BLOB, content);
    }
  }

  /** The content with LF for each CRLF. */
  private static byte[] withoutReturns(byte[] content) {
    byte[] kept = new byte[content.length];
    int length = 0;
    for (int i = 0; i < content.length; i++) {
      boolean dropped = content[i] == '\r' && i + 1 < content.length && content[i + 1] == '\n';
      if (!dropped) {
        kept[length++] = content[i];
      }
    }
    return java.util.Arrays.copyOf(kept, length);
  }

  private Map<String, ObjectId> committed(Commit commit, Folders folders) throws IOException {
    Map<String, ObjectId> found = new HashMap<>();
    try (RevWalk walk = new RevWalk(repository);
        TreeWalk tree = new TreeWalk(repository)) {
      tree.addTree(walk.parseCommit(ObjectId.fromString(commit.id())).getTree());
      tree.setRecursive(true);
      Set<String> below = new LinkedHashSet<>();
      for (Path folder : folders.all()) {
        if (folder.startsWith(top)) {
          below.add(Folders.slashed(top.relativize(folder)));
        }
      }
      if (!below.isEmpty() && !below.contains("")) {
        tree.setFilter(PathFilterGroup.createFromStrings(below));
      }
      while (tree.next()) {
        boolean file = (tree.getRawMode(0) & 0170000) == 0100000;
        if (file && folders.takes(top.resolve(tree.getPathString()))) {
          found.put(tree.getPathString(), tree.getObjectId(0));
        }
      }
      return found;
    } catch (IOException missing) {
      throw new IOException(
          "the files cannot be compared with git's HEAD: " + missing.getMessage(), missing);
    }
  }

  @Override
  public void close() {
    repository.close();
  }
}
