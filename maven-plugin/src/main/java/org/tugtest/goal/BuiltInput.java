package org.tugtest.goal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.maven.plugin.MojoExecutionException;
import org.jspecify.annotations.Nullable;
import org.tugtest.built.Refusal;
import org.tugtest.files.Choice;
import org.tugtest.files.HarnessFiles;
import org.tugtest.model.BuildRecord;
import org.tugtest.model.Reading;
import org.tugtest.read.HarnessReader;
import org.tugtest.read.ReadFile;
import org.tugtest.read.ReadLimits;
import org.tugtest.read.ReadingsReader;
import org.tugtest.read.RecordReader;
import org.tugtest.text.Nearest;

/**
 * The files that tell of a loom as built.
 *
 * @param plan path of the plan's root
 * @param asBuilt path of the root that says how everything was built; null: none
 * @param records those of this plan
 * @param readings all of them
 * @param astray records that name no root of the folder
 */
record BuiltInput(
    String plan,
    @Nullable String asBuilt,
    List<ReadFile<BuildRecord>> records,
    List<ReadFile<Map<Integer, Reading>>> readings,
    List<Refusal> astray) {

  static BuiltInput of(HarnessFiles files, AsBuiltOrder order) throws MojoExecutionException {
    List<String> roots = new HarnessReader(files, ReadLimits.STANDARD).roots();
    String asBuilt = root("tugtest.asBuilt.harness", order.harness(), roots);
    RecordReader reader = new RecordReader(files, ReadLimits.STANDARD);
    List<ReadFile<BuildRecord>> all =
        chosen("tugtest.asBuilt.records", reader.paths(), order.records()).stream()
            .map(reader::read)
            .toList();
    String plan = plan(order, roots, asBuilt, all);
    ReadingsReader readings = new ReadingsReader(files, ReadLimits.STANDARD);
    List<Refusal> astray = new ArrayList<>();
    List<ReadFile<BuildRecord>> its = new ArrayList<>();
    for (ReadFile<BuildRecord> record : all) {
      String named = record.value().plan();
      if (named == null || named.equals(plan)) {
        its.add(record);
      } else if (!roots.contains(named)) {
        String near = Nearest.question(named, roots);
        astray.add(
            new Refusal(
                record.value().file() + " is of plan " + named + ", which there is not",
                near.isEmpty() ? "the roots are " + String.join(", ", roots) : near,
                record.places().of("record")));
      }
    }
    return new BuiltInput(
        plan,
        asBuilt,
        its,
        chosen("tugtest.asBuilt.readings", readings.paths(), order.readings()).stream()
            .map(readings::read)
            .toList(),
        astray);
  }

  /** Whether nothing at all is told. */
  boolean nothing() {
    return asBuilt == null && records.isEmpty() && readings.isEmpty() && astray.isEmpty();
  }

  private static @Nullable String root(String parameter, @Nullable String given, List<String> roots)
      throws MojoExecutionException {
    return given == null || given.isBlank()
        ? null
        : Words.oneOf(parameter, given.strip().replace('\\', '/'), roots);
  }

  private static String plan(
      AsBuiltOrder order,
      List<String> roots,
      @Nullable String asBuilt,
      List<ReadFile<BuildRecord>> records)
      throws MojoExecutionException {
    String given = root("tugtest.asBuilt.plan", order.plan(), roots);
    if (given != null) {
      return given;
    }
    List<String> plans = roots.stream().filter(root -> !root.equals(asBuilt)).toList();
    if (plans.size() == 1) {
      return plans.get(0);
    }
    List<String> named =
        plans.stream()
            .filter(root -> records.stream().anyMatch(one -> root.equals(one.value().plan())))
            .toList();
    if (named.size() == 1) {
      return named.get(0);
    }
    throw new MojoExecutionException(
        "there are the roots "
            + String.join(", ", plans)
            + "; say which is the plan with -Dtugtest.asBuilt.plan="
            + (plans.isEmpty() ? "NAME.harness.json" : plans.get(0)));
  }

  private static List<String> chosen(
      String parameter, List<String> paths, @Nullable List<String> patterns)
      throws MojoExecutionException {
    if (patterns == null) {
      return paths;
    }
    Choice choice = Choice.of(patterns, List.of());
    List<String> idle = choice.idle(paths);
    if (!idle.isEmpty()) {
      throw new MojoExecutionException(
          parameter
              + " names "
              + idle.get(0)
              + ", which fits no file; there are "
              + (paths.isEmpty() ? "none" : String.join(", ", paths)));
    }
    return paths.stream().filter(choice::takes).toList();
  }
}
