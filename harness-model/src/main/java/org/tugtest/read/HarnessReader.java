package org.tugtest.read;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import org.tugtest.model.Harness;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Place;
import org.tugtest.text.Problem;
import org.tugtest.text.SourceText;

/**
 * Reads harnesses: a root and the files it uses. Each file is read once, however many roots use it;
 * several threads may read different roots at once.
 */
public final class HarnessReader {
  private static final String ROOT_END = ".harness.json";

  private final SourceFiles files;
  private final ReadLimits limits;
  private final FileParser parser;
  private final Map<String, BoundFile> read = new ConcurrentHashMap<>();

  /** A reader of these files within these limits. */
  public HarnessReader(SourceFiles files, ReadLimits limits) {
    this.files = files;
    this.limits = limits;
    this.parser = new FileParser(limits);
  }

  /** The paths of all roots ({@code *.harness.json}) below the harness folder, sorted. */
  public List<String> roots() {
    return files.paths().stream()
        .filter(HarnessReader::isRoot)
        .sorted(NaturalOrder.NATURAL)
        .toList();
  }

  /** Whether a path is that of a root. */
  public static boolean isRoot(String path) {
    return path.endsWith(ROOT_END);
  }

  /** Reads one root. Whatever is wrong is a problem of the result; nothing is thrown. */
  public ReadHarness read(String rootPath) {
    BoundFile root = file(rootPath);
    List<Problem> problems = new ArrayList<>();
    List<BoundFile> all = new ArrayList<>();
    all.add(root);
    all.addAll(used(root, problems));
    all.forEach(file -> problems.addAll(file.problems()));
    List<FileIndex> indexes = new ArrayList<>();
    Map<String, SourceText> texts = new HashMap<>();
    for (BoundFile file : all) {
      if (file.index() != null) {
        indexes.add(file.index());
        texts.put(file.path(), file.index().source());
      }
    }
    HarnessPlaces places = new HarnessPlaces(rootPath, indexes);
    Harness harness = new Union(problems).of(all);
    problems.sort(java.util.Comparator.comparing(problem -> problem.at().get(0)));
    return new ReadHarness(
        harness,
        places,
        problems,
        texts,
        all.stream().filter(file -> !file.readable()).map(BoundFile::path).toList());
  }

  /**
   * The files below the harness folder that none of {@code roots} uses, each as a {@link
   * Problem.Kind#FILE_UNUSED}. Roots, records, announced changes and shared libraries are never
   * among them.
   */
  public List<Problem> unused(Collection<ReadHarness> roots) {
    Set<String> used = new HashSet<>();
    roots.forEach(root -> used.addAll(root.harness().files()));
    return files.paths().stream()
        .filter(path -> path.endsWith(".json") && !path.startsWith("../"))
        .filter(path -> !isRoot(path) && !path.endsWith(".record.json"))
        .filter(path -> !path.startsWith("changes/") && !used.contains(path))
        .sorted(NaturalOrder.NATURAL)
        .map(
            path ->
                new Problem(
                    Problem.Kind.FILE_UNUSED,
                    "files/" + path,
                    path + " is used by no root, so nothing in it is checked.",
                    "Name it under \"uses\" of a root or of a file that a root uses, or delete it.",
                    List.of(Place.point(path, 1, 1, ""))))
        .toList();
  }

  /** The other files of a root, sorted by path. */
  private Collection<BoundFile> used(BoundFile root, List<Problem> problems) {
    TreeMap<String, BoundFile> found = new TreeMap<>(NaturalOrder.NATURAL);
    Set<String> seen = new LinkedHashSet<>(List.of(root.path()));
    Deque<BoundFile> open = new ArrayDeque<>(List.of(root));
    while (!open.isEmpty()) {
      BoundFile file = open.pop();
      for (int i = 0; i < file.uses().size(); i++) {
        String path = UsePath.resolve(file.path(), file.uses().get(i));
        if (!seen.add(path)) {
          continue;
        }
        BoundFile used = file(path);
        if (used.index() == null && file.index() != null) {
          Place at = file.index().at("uses", Integer.toString(i));
          used.problems()
              .forEach(
                  problem ->
                      problems.add(
                          new Problem(
                              problem.kind(),
                              problem.subject(),
                              problem.message(),
                              problem.remedy(),
                              List.of(at))));
        } else if (seen.size() <= limits.files()) {
          found.put(path, used);
          open.push(used);
        }
      }
    }
    return found.values();
  }

  private BoundFile file(String path) {
    return read.computeIfAbsent(path, this::bind);
  }

  private BoundFile bind(String path) {
    ParsedFile parsed = parser.parse(path, files.open(path));
    tools.jackson.databind.node.ObjectNode tree =
        parsed.root() == null
            ? tools.jackson.databind.node.JsonNodeFactory.instance.objectNode()
            : parsed.root();
    return new BoundFile(
        path,
        parsed.index(),
        HarnessBinder.bind(path, tree),
        parsed.root() != null,
        Fields.texts(tree, "uses"),
        parsed.problems());
  }
}
