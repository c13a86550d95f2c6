package org.tugtest.read;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Nearest;
import org.tugtest.text.Place;
import org.tugtest.text.Problem;
import org.tugtest.text.Quoted;

/** Finds every file that a root uses, each once, and what is wrong with how they are named. */
final class UseWalk {
  private final BoundFile root;
  private final List<String> known;
  private final Function<String, BoundFile> open;
  private final int mostFiles;
  private final TreeMap<String, BoundFile> found = new TreeMap<>(NaturalOrder.NATURAL);
  private final List<Problem> problems = new ArrayList<>();
  private final Set<String> seen = new HashSet<>();
  private final Deque<BoundFile> waiting = new ArrayDeque<>();
  private boolean full;

  UseWalk(BoundFile root, List<String> known, Function<String, BoundFile> open, int mostFiles) {
    this.root = root;
    this.known = known;
    this.open = open;
    this.mostFiles = mostFiles;
  }

  /** The used files, sorted by path, the root not among them. */
  Collection<BoundFile> files() {
    seen.add(root.path());
    waiting.add(root);
    while (!waiting.isEmpty()) {
      BoundFile file = waiting.pop();
      FileIndex index = file.index();
      for (int i = 0; index != null && i < file.uses().size(); i++) {
        Use use = new Use(file, index, i);
        use.follow();
      }
    }
    return found.values();
  }

  List<Problem> problems() {
    return problems;
  }

  /** One entry of one file's {@code uses}. */
  private final class Use {
    private final BoundFile file;
    private final FileIndex index;
    private final int at;
    private final String said;

    Use(BoundFile file, FileIndex index, int at) {
      this.file = file;
      this.index = index;
      this.at = at;
      this.said = file.uses().get(at);
    }

    void follow() {
      if (said.isEmpty()) {
        return;
      }
      String fault = UsePath.fault(said);
      if (fault != null) {
        wrong(Quoted.text(said) + " under uses " + fault + ".", "Write it as looms/front.json.");
        return;
      }
      String path = UsePath.resolve(file.path(), said);
      if (path.equals(file.path()) || !seen.add(path)) {
        return;
      }
      if (HarnessReader.isRoot(path)) {
        wrong(
            Quoted.text(said) + " is a root; a root is used by no other file.",
            "Move what both share into a file whose name does not end in .harness.json.");
      } else if (found.size() + 1 >= mostFiles) {
        tooMany();
      } else {
        use(path);
      }
    }

    private void tooMany() {
      if (!full) {
        full = true;
        wrong(
            root.path() + " uses more than " + mostFiles + " files; the others are not read.",
            "Put small files together.");
      }
    }

    private void use(String path) {
      BoundFile used = open.apply(path);
      if (used.index() != null || known.contains(path)) {
        found.put(path, used);
        waiting.push(used);
        return;
      }
      for (Problem problem : used.problems()) {
        String near = problem.message().contains(SourceFiles.MISSING) ? near(path) : "";
        problems.add(
            new Problem(
                problem.kind(),
                problem.subject(),
                near.isEmpty() ? problem.message() : missing(problem.message()),
                near.isEmpty() ? problem.remedy() : near,
                List.of(place())));
      }
    }

    /** Without what it was likened to: the remedy says that, as it is to be written here. */
    private static String missing(String message) {
      int end = message.indexOf(SourceFiles.MISSING) + SourceFiles.MISSING.length();
      return message.substring(0, end) + ".";
    }

    private String near(String path) {
      List<String> candidates =
          known.stream()
              .filter(name -> name.endsWith(".json") && !HarnessReader.isRoot(name))
              .filter(name -> !name.equals(file.path()))
              .toList();
      List<String> near = new ArrayList<>(Nearest.to(path, candidates));
      String name = path.substring(path.lastIndexOf('/') + 1);
      for (String candidate : candidates) {
        boolean sameName = candidate.equals(name) || candidate.endsWith("/" + name);
        if (near.isEmpty() && sameName) {
          near.add(candidate);
        }
      }
      List<String> shown =
          near.stream().map(to -> Quoted.text(UsePath.relative(file.path(), to))).toList();
      return shown.isEmpty() ? "" : "Did you mean " + String.join(" or ", shown) + "?";
    }

    private void wrong(String message, String remedy) {
      problems.add(
          new Problem(
              Problem.Kind.SHAPE_WRONG, "files/" + file.path(), message, remedy, List.of(place())));
    }

    private Place place() {
      return index.at("uses", Integer.toString(at));
    }
  }
}
