package org.tugtest.read;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.tugtest.model.Harness;
import org.tugtest.schema.PublishedSchema;
import org.tugtest.text.NaturalOrder;
import org.tugtest.text.Place;
import org.tugtest.text.Problem;
import org.tugtest.text.SourceText;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

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
    this.parser = new FileParser(limits, PublishedSchema.HARNESS);
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
    UseWalk walk = new UseWalk(root, files.paths(), this::file, limits.files());
    List<BoundFile> all = new ArrayList<>();
    all.add(root);
    all.addAll(walk.files());
    List<Problem> problems = new ArrayList<>(walk.problems());
    for (BoundFile file : all) {
      problems.addAll(file.problems());
      if (!root.said().sketch()) {
        problems.addAll(file.unlessSketch());
      }
    }
    List<FileIndex> indexes = new ArrayList<>();
    Map<String, SourceText> texts = new HashMap<>();
    for (BoundFile file : all) {
      if (file.index() != null) {
        indexes.add(file.index());
        texts.put(file.path(), file.index().source());
      }
    }
    HarnessPlaces places = new HarnessPlaces(rootPath, indexes);
    Union union = new Union(all);
    Harness harness = union.harness();
    problems.addAll(union.problems());
    return new ReadHarness(
        harness,
        places,
        Capped.of(problems),
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
        .filter(path -> !isRoot(path) && !RecordReader.isRecord(path))
        .filter(path -> !ChangesReader.isChanges(path) && !used.contains(path))
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

  private BoundFile file(String path) {
    return read.computeIfAbsent(path, this::bind);
  }

  private BoundFile bind(String path) {
    ParsedFile parsed = parser.parse(path, files.open(path));
    ObjectNode tree = parsed.root();
    FileIndex index = parsed.index();
    if (tree == null || index == null) {
      Harness nothing = HarnessBinder.bind(path, parsed.tree());
      return new BoundFile(path, index, nothing, false, List.of(), parsed.problems(), List.of());
    }
    Harness said = HarnessBinder.bind(path, tree);
    FileChecks checks = new FileChecks(index, said, parsed.problems()).run();
    List<Problem> problems = new ArrayList<>(parsed.problems());
    problems.addAll(checks.always());
    return new BoundFile(path, index, said, true, uses(tree), problems, checks.unlessSketch());
  }

  private static List<String> uses(ObjectNode tree) {
    List<String> uses = new ArrayList<>();
    for (JsonNode use : Fields.list(tree, "uses")) {
      uses.add(use.asString(""));
    }
    return uses;
  }
}
