package org.tugtest.route;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Basis;
import org.tugtest.model.Covering;
import org.tugtest.model.Harness;
import org.tugtest.model.Layout;

/**
 * Where coverings meet: for each node at which covered segments join, what comes together there and
 * what goes over the joint. Nodes stand in the natural order of their ids.
 */
public record Transitions(List<AtNode> nodes) {
  private static final double NEAR_MM = 1e-6;

  public Transitions {
    nodes = List.copyOf(nodes);
  }

  /** A bundle with its coverings, where it reaches the node; diameters in mm. */
  public record Branch(
      String segment,
      List<String> coverings,
      double bundleMm,
      double outerMm,
      List<String> unsized,
      Basis basis) {
    public Branch {
      coverings = List.copyOf(coverings);
      unsized = List.copyOf(unsized);
    }

    /** Whether it has wires here and every one of them has a diameter. */
    public boolean sized() {
      return bundleMm > 0 && unsized.isEmpty();
    }
  }

  /** From the thickest branch to another; {@code mm} is how much thinner that is outside. */
  public record Step(Branch from, Branch to, double mm) {
    /** Whether what lies outside is another covering. */
    public boolean covering() {
      return !from.coverings().equals(to.coverings());
    }
  }

  /** How a covering over the joint stands to the branches in it. */
  public enum Fit {
    /** It goes over the thickest and closes on the thinnest. */
    FITS,
    /** The thickest branch is too thick for it. */
    TOO_SMALL,
    /** It does not close on the thinnest branch. */
    TOO_LARGE,
    /** A diameter is missing. */
    NOT_KNOWN
  }

  /** A covering over the joint, with the diameters it takes; null when its part gives none. */
  public record Over(String covering, @Nullable Double leastMm, @Nullable Double mostMm, Fit fit) {}

  /** A node at which covered segments join, the thickest branch first. */
  public record AtNode(String node, List<Branch> branches, List<Over> over) {
    public AtNode {
      branches = List.copyOf(branches);
      over = List.copyOf(over);
    }

    /** Whether a branch leaves a run that goes on: three branches or more. */
    public boolean breakout() {
      return branches.size() > 2;
    }

    /** The steps from the thickest branch down to each other one. */
    public List<Step> steps() {
      Branch thickest = branches.get(0);
      return branches.stream()
          .skip(1)
          .map(branch -> new Step(thickest, branch, thickest.outerMm() - branch.outerMm()))
          .toList();
    }

    /** Whether every branch has a known diameter. */
    public boolean sized() {
      return branches.stream().allMatch(Branch::sized);
    }
  }

  /** The transitions of a harness; linear in its segments. */
  public static Transitions of(Harness harness, Bundles bundles) {
    Map<String, List<Branch>> meeting = new LinkedHashMap<>();
    harness.layout().nodes().keySet().forEach(id -> meeting.put(id, new ArrayList<>()));
    for (Layout.Segment segment : harness.layout().segments().values()) {
      List<Bundle> pieces = bundles.of(segment.id());
      for (boolean start : new boolean[] {true, false}) {
        String node = start ? segment.from() : segment.to();
        if (node != null && meeting.containsKey(node)) {
          branch(harness, segment, end(segment, pieces, start)).ifPresent(meeting.get(node)::add);
        }
      }
    }
    List<AtNode> nodes = new ArrayList<>();
    meeting.forEach(
        (id, branches) -> {
          List<String> over = harness.layout().nodes().get(id).coverings();
          boolean covered = branches.stream().anyMatch(branch -> !branch.coverings().isEmpty());
          if (branches.size() > 1 && (covered || !over.isEmpty())) {
            // stable: equal ones stay in the order of the layout
            branches.sort(Comparator.comparingDouble((Branch branch) -> -branch.outerMm()));
            nodes.add(new AtNode(id, branches, over(harness, over, branches)));
          }
        });
    return new Transitions(nodes);
  }

  /** The bundle that reaches one end of a segment; empty where no wire does. */
  private static Optional<Bundle> end(Layout.Segment segment, List<Bundle> pieces, boolean start) {
    if (pieces.isEmpty()) {
      return Optional.empty();
    }
    Bundle last = pieces.get(start ? 0 : pieces.size() - 1);
    Double length = segment.lengthMm();
    boolean reaches =
        start ? last.fromMm() <= NEAR_MM : length == null || last.toMm() >= length - NEAR_MM;
    return reaches ? Optional.of(last) : Optional.empty();
  }

  private static Optional<Branch> branch(
      Harness harness, Layout.Segment segment, Optional<Bundle> bundle) {
    if (bundle.isEmpty() && segment.coverings().isEmpty()) {
      return Optional.empty();
    }
    List<String> unsized = bundle.map(Bundle::unsized).orElse(List.of());
    boolean sized = bundle.isPresent() && !bundle.get().strands().isEmpty();
    double expected = sized ? bundle.get().expectedMm() : 0;
    double loose = sized ? bundle.get().looseMm() : 0;
    CoverLayers layers =
        CoverLayers.of(harness.parts().coverings(), segment.coverings(), expected, loose);
    return Optional.of(
        new Branch(
            segment.id(),
            segment.coverings(),
            expected,
            layers.expectedMm(),
            unsized,
            bundle.map(Bundle::basis).orElse(Basis.GIVEN)));
  }

  private static List<Over> over(Harness harness, List<String> ids, List<Branch> branches) {
    List<Over> over = new ArrayList<>();
    for (String id : ids) {
      Covering part = harness.parts().coverings().get(id);
      Double least = part == null ? null : CoverLayers.least(part);
      Double most = part == null ? null : CoverLayers.most(part);
      over.add(new Over(id, least, most, fit(least, most, branches)));
    }
    return over;
  }

  private static Fit fit(@Nullable Double least, @Nullable Double most, List<Branch> branches) {
    if (least == null || most == null || !branches.stream().allMatch(Branch::sized)) {
      return Fit.NOT_KNOWN;
    }
    if (branches.get(0).outerMm() > most) {
      return Fit.TOO_SMALL;
    }
    return branches.get(branches.size() - 1).outerMm() < least ? Fit.TOO_LARGE : Fit.FITS;
  }
}
