package org.tugtest.git;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.eclipse.jgit.errors.AmbiguousObjectException;
import org.eclipse.jgit.errors.IncorrectObjectTypeException;
import org.eclipse.jgit.errors.MissingObjectException;
import org.eclipse.jgit.errors.RevisionSyntaxException;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.Ref;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.revwalk.filter.RevFilter;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Nearest;

/** The commits of a repository, by what people call them. */
public final class Revisions {
  private static final String MERGING = "GITHEAD_";
  private static final String ORIGIN = "origin/";
  private static final int MOST_NAMED = 5;
  private final Repository repository;
  private final Environment environment;

  Revisions(Repository repository, Environment environment) {
    this.repository = repository;
    this.environment = environment;
  }

  /**
   * The commit that HEAD names.
   *
   * @return empty before the first commit
   * @throws IOException when it cannot be read; the message is a whole sentence
   */
  public Optional<Commit> head() throws IOException {
    try {
      return found(Constants.HEAD);
    } catch (IOException broken) {
      throw new IOException("git's HEAD cannot be read: " + broken.getMessage(), broken);
    }
  }

  /**
   * The commit of that name: a branch, a tag, an id, or what git makes of them such as {@code
   * HEAD~1}.
   *
   * @return empty when there is none of that name
   * @throws IOException when the name is no name, fits several, is of something else, or its commit
   *     is not here; the message is a whole sentence
   */
  public Optional<Commit> find(String name) throws IOException {
    try {
      return found(name);
    } catch (RevisionSyntaxException notAName) {
      throw new IOException("\"" + name + "\" is no name of a revision", notAName);
    } catch (AmbiguousObjectException several) {
      throw new IOException(
          "\"" + name + "\" is the beginning of several ids; give more digits", several);
    } catch (IncorrectObjectTypeException other) {
      throw new IOException("\"" + name + "\" names no commit", other);
    } catch (MissingObjectException absent) {
      throw new IOException(
          "the commit " + name + " is not in this clone; fetch it with: " + fetching(), absent);
    } catch (IOException broken) {
      throw new IOException(
          "the revision \"" + name + "\" cannot be read: " + broken.getMessage(), broken);
    }
  }

  /**
   * The commit of that name, which a person gave.
   *
   * @throws IOException when there is none; the message is a whole sentence that says what is near,
   *     or the command that mends a history cut short
   */
  public Commit named(String name) throws IOException {
    Optional<Commit> found = find(name);
    if (found.isPresent()) {
      return found.get();
    }
    if (shallow()) {
      throw new IOException(
          "there is no revision \""
              + name
              + "\" in this clone, whose history is cut short; fetch the rest with: "
              + fetching());
    }
    if (head().isEmpty() && name.startsWith(Constants.HEAD)) {
      throw new IOException("there is no revision \"" + name + "\": nothing is committed yet");
    }
    throw new IOException("there is no revision \"" + name + "\"; " + near(name));
  }

  /**
   * The commit of that full id, when this clone has it.
   *
   * @throws IOException when git's store is broken; the message is a whole sentence
   */
  public Optional<Commit> held(String id) throws IOException {
    if (!ObjectId.isId(id)) {
      return Optional.empty();
    }
    try {
      return found(id);
    } catch (MissingObjectException absent) {
      return Optional.empty();
    } catch (IOException broken) {
      throw new IOException("the commit " + id + " cannot be read: " + broken.getMessage(), broken);
    }
  }

  /**
   * The tip of a branch: as the origin has it, else as the one other remote that has it, else the
   * local one.
   *
   * @throws IOException when it cannot be read; the message is a whole sentence
   */
  public Optional<Commit> branch(String name) throws IOException {
    Optional<Commit> ofOrigin = find(Constants.R_REMOTES + ORIGIN + name);
    if (ofOrigin.isPresent()) {
      return ofOrigin;
    }
    List<Ref> ofOthers =
        repository.getRefDatabase().getRefsByPrefix(Constants.R_REMOTES).stream()
            .filter(ref -> ref.getName().endsWith("/" + name))
            .toList();
    return ofOthers.size() == 1 ? find(ofOthers.get(0).getName()) : find(Constants.R_HEADS + name);
  }

  /**
   * The name of the branch that the origin takes for its main one, when it said so.
   *
   * @throws IOException when it cannot be read
   */
  public Optional<String> branchOfOrigin() throws IOException {
    String prefix = Constants.R_REMOTES + ORIGIN;
    Ref head = repository.exactRef(prefix + Constants.HEAD);
    return head != null && head.isSymbolic() && head.getTarget().getName().startsWith(prefix)
        ? Optional.of(head.getTarget().getName().substring(prefix.length()))
        : Optional.empty();
  }

  private Optional<Commit> found(String name) throws IOException {
    ObjectId id = repository.resolve(name + "^{commit}");
    return id == null ? Optional.empty() : Optional.of(commit(id));
  }

  private Commit commit(ObjectId id) throws IOException {
    try (RevWalk walk = new RevWalk(repository)) {
      RevCommit commit = walk.parseCommit(id);
      LocalDate day =
          commit
              .getCommitterIdent()
              .getWhenAsInstant()
              .atZone(commit.getCommitterIdent().getZoneId())
              .toLocalDate();
      return new Commit(commit.name(), day);
    }
  }

  private String near(String name) throws IOException {
    Set<String> known = new TreeSet<>(NaturalOrder.NATURAL);
    for (Ref ref : repository.getRefDatabase().getRefs()) {
      String shown = Repository.shortenRefName(ref.getName());
      if (!ref.isSymbolic()) {
        known.add(shown);
      }
    }
    for (String ref : known) {
      if (ref.endsWith("/" + name)) {
        return "did you mean " + ref + "?";
      }
    }
    String question = Nearest.question(name, known);
    if (!question.isEmpty() || known.isEmpty()) {
      return question.isEmpty() ? "there is no branch yet" : question;
    }
    int more = known.size() - MOST_NAMED;
    return "there is "
        + known.stream().limit(MOST_NAMED).collect(Collectors.joining(", "))
        + (more > 0 ? " and " + more + " more" : "");
  }

  /**
   * The last commit that both have in common.
   *
   * @return empty when there is none, or when the history here is cut short before it
   * @throws IOException when a commit cannot be read; the message is a whole sentence
   */
  public Optional<Commit> mergeBase(Commit one, Commit other) throws IOException {
    try (RevWalk walk = new RevWalk(repository)) {
      walk.setRevFilter(RevFilter.MERGE_BASE);
      walk.markStart(walk.parseCommit(ObjectId.fromString(one.id())));
      walk.markStart(walk.parseCommit(ObjectId.fromString(other.id())));
      RevCommit base = walk.next();
      return base == null ? Optional.empty() : Optional.of(commit(base));
    } catch (IOException broken) {
      throw new IOException(
          "the history cannot be followed to where both sides part: "
              + broken.getMessage()
              + "; fetch the rest with: "
              + fetching(),
          broken);
    }
  }

  /** Whether the history of this clone is cut short. */
  public boolean shallow() throws IOException {
    return !repository.getObjectDatabase().getShallowCommits().isEmpty();
  }

  /** The command that fetches the history this clone lacks. */
  public String fetching() throws IOException {
    return shallow() ? "git fetch --unshallow" : "git fetch --all";
  }

  /**
   * The commits that are being merged into HEAD: those that git notes while a merge waits for its
   * commit, or names to the hook of a merge that went through.
   *
   * @throws IOException when a commit cannot be read; the message is a whole sentence
   */
  public List<Commit> merging() throws IOException {
    Set<ObjectId> ids = new TreeSet<>();
    List<ObjectId> waiting = repository.readMergeHeads();
    if (waiting != null) {
      ids.addAll(waiting);
    }
    for (Map.Entry<String, String> named : environment.after(MERGING).entrySet()) {
      if (ObjectId.isId(named.getKey())) {
        ids.add(ObjectId.fromString(named.getKey()));
      }
    }
    List<Commit> commits = new ArrayList<>();
    for (ObjectId id : ids) {
      find(id.name()).ifPresent(commits::add);
    }
    return commits;
  }
}
