package org.tugtest.git;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Collectors;
import org.eclipse.jgit.errors.MissingObjectException;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.storage.file.FileRepositoryBuilder;
import org.tugtest.files.DiskFiles;
import org.tugtest.files.Folders;
import org.tugtest.files.Scope;

/** The git work tree that holds a folder. It is only read; nothing is written to the repository. */
public final class WorkTree implements AutoCloseable {
  private static final String SHA_1 = "sha1";
  private final Repository repository;
  private final Path top;
  private final Revisions revisions;

  private WorkTree(Repository repository, Path top, Environment environment) {
    this.repository = repository;
    this.top = top;
    this.revisions = new Revisions(repository, environment);
  }

  /** Opens the innermost work tree around {@code folder}, outside any hook. */
  public static Optional<WorkTree> around(Path folder) throws IOException {
    return around(folder, Environment.EMPTY);
  }

  /**
   * Opens the innermost work tree around {@code folder}, which need not exist.
   *
   * @param environment where git tells its hooks which index holds the content of the commit
   * @return empty when no folder above it is a work tree
   * @throws IOException when there is one that cannot be read; the message is a whole sentence
   */
  public static Optional<WorkTree> around(Path folder, Environment environment) throws IOException {
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
    if (builder.getGitDir() == null && !toldBy(environment, builder, from)) {
      return Optional.empty();
    }
    return open(builder, environment);
  }

  /** A repository whose folder lies elsewhere, as git tells its hooks. */
  private static boolean toldBy(
      Environment environment, FileRepositoryBuilder builder, Path folder) {
    Optional<Path> own = environment.get("GIT_DIR").map(Path::of);
    Optional<Path> tree = environment.get("GIT_WORK_TREE").map(Path::of);
    if (own.isEmpty() || tree.isEmpty() || !own.get().isAbsolute()) {
      return false;
    }
    if (!folder.startsWith(tree.get().normalize())) {
      return false;
    }
    builder.setGitDir(own.get().toFile()).setWorkTree(tree.get().normalize().toFile());
    return true;
  }

  private static Optional<WorkTree> open(FileRepositoryBuilder builder, Environment environment)
      throws IOException {
    Repository repository;
    try {
      builder.setMustExist(true).setup();
      if (!builder.getGitDir().isDirectory()) {
        throw new IOException(builder.getGitDir() + " is not there");
      }
      if (builder.isBare() || builder.getWorkTree() == null) {
        return Optional.empty();
      }
      Path top = builder.getWorkTree().toPath();
      environment
          .get("GIT_INDEX_FILE")
          .ifPresent(index -> builder.setIndexFile(top.resolve(index).toFile()));
      repository = builder.build();
    } catch (IOException | IllegalArgumentException broken) {
      throw new IOException("git's own folder cannot be read: " + broken.getMessage(), broken);
    }
    boolean kept = false;
    try {
      String objects = repository.getConfig().getString("extensions", null, "objectFormat");
      if (objects != null && !objects.equalsIgnoreCase(SHA_1)) {
        throw new IOException(
            "this repository names its objects by " + objects + ", which is not supported yet");
      }
      Path top = repository.getWorkTree().toPath().toAbsolutePath().normalize();
      kept = true;
      return Optional.of(new WorkTree(repository, top, environment));
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

  /** Where git keeps the hooks of this repository and all its work trees, unless told otherwise. */
  public Path hooks() {
    return repository.getCommonDirectory().toPath().toAbsolutePath().normalize().resolve("hooks");
  }

  /** The folder of hooks that the repository's own configuration names, as it is written there. */
  public Optional<String> hooksPath() {
    return Optional.ofNullable(repository.getConfig().getString("core", null, "hooksPath"));
  }

  /** Its commits. */
  public Revisions revisions() {
    return revisions;
  }

  /** The commit that HEAD names; see {@link Revisions#head}. */
  public Optional<Commit> head() throws IOException {
    return revisions.head();
  }

  /**
   * The harness files of a commit.
   *
   * @param named what a person calls the commit
   * @throws IOException when its folders cannot be read; the message is a whole sentence
   */
  public StoredFiles at(Commit commit, String named, Scope scope) throws IOException {
    String fetch = fetch(named, scope.folders());
    try {
      return new StoredFiles(
          repository,
          top,
          CommitListing.of(repository, top, commit, scope.folders()),
          scope,
          new StoredFiles.Source("at " + named, fetch));
    } catch (MissingObjectException absent) {
      throw new IOException(
          "the folders of " + named + " are not in this clone; fetch them with: " + fetch, absent);
    } catch (IOException broken) {
      throw new IOException(
          "the files of " + named + " cannot be listed: " + broken.getMessage(), broken);
    }
  }

  /**
   * The harness files of the index: the content that the next commit would have. Inside a hook it
   * is the index that git makes the commit from, which is another one for a commit of some paths.
   *
   * @throws IOException when the index cannot be read; the message is a whole sentence
   */
  public StoredFiles staged(Scope scope) throws IOException {
    return new StoredFiles(
        repository,
        top,
        IndexListing.of(repository, top, scope.folders()),
        scope,
        new StoredFiles.Source("in the index", fetch("HEAD", scope.folders())));
  }

  /** A command that reads all harness files of a commit, so that git fetches what is lacking. */
  private String fetch(String named, Folders folders) {
    String paths =
        folders.all().stream()
            .filter(folder -> folder.startsWith(top) && !folder.equals(top))
            .map(folder -> " " + Folders.slashed(top.relativize(folder)))
            .collect(Collectors.joining());
    return "git archive -o /dev/null " + named + paths;
  }

  /**
   * Whether the harness files on disk are others than in a commit: one more, one less, or another
   * content. Ends of lines do not count, since git may change them on the way to the disk.
   *
   * @throws IOException when the commit's folders cannot be read
   */
  public boolean differs(Commit commit, Scope scope, DiskFiles files) throws IOException {
    return !at(commit, "HEAD", scope).sameAs(files);
  }

  @Override
  public void close() {
    repository.close();
  }
}
