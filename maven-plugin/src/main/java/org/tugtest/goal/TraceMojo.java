package org.tugtest.goal;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.jspecify.annotations.Nullable;
import org.tugtest.facts.Facts;
import org.tugtest.facts.KnownRules;
import org.tugtest.read.ReadHarness;
import org.tugtest.report.PrintableText;
import org.tugtest.text.Place;
import org.tugtest.trace.TraceLine;
import org.tugtest.trace.Tracer;

/**
 * Prints everything on a contact, both ways: wires with colours and sizes, their other ends, what
 * lies across plugged connectors and through splices, the devices, and where it is fed from.
 */
@Mojo(name = "trace", requiresProject = false, threadSafe = true)
public final class TraceMojo extends HarnessGoal {
  /** Skips this goal alone. */
  @Parameter(property = "tugtest.trace.skip", defaultValue = "false")
  private boolean skipTrace;

  /**
   * What to trace: a cavity or pin such as <code>R1:3</code>, or the id of a wire, connector,
   * device, splice or group, or a port or element such as <code>ECU.A</code>.
   */
  @Parameter(property = "tugtest.at")
  private @Nullable String at;

  @Override
  boolean skippedAlone() {
    return skipTrace;
  }

  @Override
  void run(Surroundings around, Workplace place) throws MojoExecutionException {
    if (at == null || at.isBlank()) {
      throw new MojoExecutionException(
          "say what to trace: "
              + around.goals()
              + "trace -Dtugtest.at=R1:3, or the id of a wire, connector, device or splice");
    }
    List<String> answers = new ArrayList<>();
    boolean found = false;
    for (ReadHarness root : Roots.of(around, place, getLog()).read()) {
      // No day matters here: nothing is held against it.
      Tracer tracer = new Tracer(Facts.of(root, LocalDate.EPOCH, KnownRules.NONE));
      Optional<List<TraceLine>> lines = tracer.trace(at);
      if (!root.problems().isEmpty()) {
        getLog()
            .warn(
                around.show(file(place, root.harness().root()))
                    + " has faults as written, so something may be missing here: "
                    + around.goals()
                    + "check");
      }
      if (lines.isPresent()) {
        found = true;
        getLog().info("in " + around.show(file(place, root.harness().root())));
        lines.get().forEach(line -> print(around, place, line));
      } else {
        answers.add(tracer.notFound(at));
      }
    }
    if (!found) {
      throw new MojoExecutionException(String.join("; ", answers.stream().distinct().toList()));
    }
  }

  private void print(Surroundings around, Workplace place, TraceLine line) {
    Place where = line.at();
    String written =
        where == null
            ? ""
            : "  [" + around.show(file(place, where.file())) + ":" + where.line() + "]";
    getLog().info("  ".repeat(line.depth() + 1) + PrintableText.of(line.text() + written));
  }

  private static Path file(Workplace place, String path) {
    return place.folders().harness().resolve(path).normalize();
  }
}
